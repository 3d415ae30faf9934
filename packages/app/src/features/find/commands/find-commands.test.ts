import { describe, expect, it } from 'vitest';
import { bareVisit, english, madeOf, madeOfDemo } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { findView } from '../../../engine/views/find-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { chooseFault } from './choose-fault.ts';
import { correctReading, takeReading } from './take-reading.ts';

const at = '2026-11-25T10:00:00Z';
const about = { stream: testStream, visit: 'bare', conditioner: 'u1' };
const after = (more: Parameters<typeof madeOf>[2]) => madeOf(bareVisit, english, more);

describe('readings taken', () => {
  it('three pails are three readings, of which the median counts', () => {
    const runs = ['0.20 gpm', '0.21 gpm', '0.19 gpm'].map((value) => ({ value, u: '0.004 gpm' }));
    const made = after(takeReading(about, 'drain-in-service', runs, at));
    expect(made.site.setAside).toEqual([]);
    expect(made.visit.readings).toHaveLength(3);
    expect(findView(made).readings).toMatchObject([
      { test: 'drain-in-service', count: 3, text: '0.2\u00a0gpm' },
    ]);
  });

  it('a state and what cannot be done stand as they were said', () => {
    const made = after([
      ...takeReading(about, 'bypass-look', [{ state: 'service' }], at),
      ...takeReading(about, 'salt-look', [{ state: 'cannot-do' }], at),
    ]);
    expect(made.site.setAside).toEqual([]);
    expect(findView(made).readings.map(({ text }) => text)).toEqual(['In service', 'Can’t be done']);
  });

  it('a correction stands in the place of the reading, and taking it back leaves nothing', () => {
    const taken = takeReading(about, 'hardness-outlet', [{ value: '300 gpg' }], at);
    const [first] = after(taken).visit.readings ?? [];
    const entry = first?.entry ?? '';
    const corrected = [
      ...taken,
      ...correctReading(about, entry, 'hardness-outlet', { value: '300 mg/L CaCO3' }, at),
    ];
    expect(after(corrected).visit.readings?.map(({ value }) => value)).toEqual(['300 mg/L CaCO3']);
    const gone = after([...taken, ...undoOf(testStream, [entry], 'mistyped')]);
    expect(gone.visit.readings ?? []).toEqual([]);
  });
});

describe('a fault chosen', () => {
  it('is decided with its reason, whatever the odds say', () => {
    const laundry = { stream: testStream, visit: 'laundry-fast', conditioner: 's1' };
    const made = madeOfDemo('laundry-fast', english, chooseFault(laundry, 'no-salt', ' seen '));
    expect(made.site.setAside).toEqual([]);
    expect(findView(made).decided).toEqual({ title: 'No salt', reason: 'seen' });
  });
});
