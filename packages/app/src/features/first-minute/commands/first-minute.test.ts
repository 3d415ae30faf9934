import { describe, expect, test } from 'vitest';
import { bareVisit, english, madeOf } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { readSetting, settingsFound } from './found-settings.ts';
import { photoTaken } from './photo-taken.ts';
import { complaintTold, historyTold, isNothingTold } from './told.ts';

const about = { stream: testStream, visit: bareVisit.id, conditioner: 'u1' };
const after = (...drafts: Parameters<typeof madeOf>[2] & object) => madeOf(bareVisit, english, drafts).visit;

describe('what is entered in the first minute', () => {
  test('the complaint keeps the words of the customer, and the kinds chosen', () => {
    const visit = after(...complaintTold(about, { words: ' Stiff towels ', kinds: ['hard-water'] }));
    expect(visit.complaint).toEqual({ words: 'Stiff towels', kinds: ['hard-water'] });
  });

  test('of the history only what was said is written', () => {
    const told = { changed: '', changes: ['power-cut'], by: 'Pell', what: '' };
    expect(after(...historyTold(about, told)).history).toEqual({
      changes: ['power-cut'],
      lastWork: { by: 'Pell' },
    });
    expect(isNothingTold({ changed: ' ', changes: [], by: '', what: '' })).toBe(true);
  });

  test('settings as found fold into the visit with the units they were typed in', () => {
    const read = {
      backwash: readSetting({ kind: 'time' }, { figure: '10', unit: 'min' }),
      volume: readSetting({ kind: 'volume' }, { figure: '2300', unit: 'gal' }),
      days: readSetting({ kind: 'days' }, { figure: '7', unit: '' }),
      at: readSetting({ kind: 'clock' }, { figure: '2:00', unit: '' }),
      refill: readSetting({ kind: 'time' }, { figure: '', unit: 'min' }),
    };
    const { settings } = after(...settingsFound(about, read));
    expect(settings?.found).toMatchObject({
      backwash: { kind: 'time', si: 600, as: '10 min' },
      volume: { as: '2300 gal' },
      days: 7,
      at: '02:00',
    });
    expect(settings?.found?.refill).toBeUndefined();
  });

  test.each([
    ['clock', '25:00'],
    ['clock', 'two'],
    ['days', '1.5'],
    ['days', '0'],
    ['time', 'ten'],
  ] as const)('a %s written as %s is refused, not guessed', (kind, figure) => {
    expect(readSetting({ kind }, { figure, unit: 'min' })).toEqual({ state: 'wrong' });
  });

  test('a photo says in both languages what it shows', () => {
    const kept = { file: 'a'.repeat(64), bytes: 12, type: 'image/jpeg' };
    const visit = after(...photoTaken(about, kept, { en: 'Label of the unit', es: 'Etiqueta del equipo' }));
    expect(visit.photos).toMatchObject([{ file: kept.file, of: { es: 'Etiqueta del equipo' } }]);
  });
});
