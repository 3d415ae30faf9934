import { describe, expect, it } from 'vitest';
import type { Json } from '../entry/entry.ts';
import { tombstone } from '../entry/read-entry.ts';
import { Desk, testId } from '../testing/desk.ts';
import { fold, visitOf } from './fold.ts';
import { historyOf } from './history.ts';

const visit = { visit: 'v1' };
const unit = { conditioner: 's1' };

const begun = (desk: Desk): Desk => {
  desk.write('site-opened', { name: 'Mill Lane' });
  desk.write(
    'conditioner-added',
    { family: 'osier', kind: 'softener', tank: { height: '60 in' } },
    { about: unit },
  );
  desk.write('visit-started', { subject: 's1', date: '2026-11-25' }, { about: visit });
  return desk;
};

const two = (): readonly [Desk, Desk] => {
  const first = begun(new Desk(1));
  const second = new Desk(2);
  second.take(first);
  return [first, second];
};

const merged = (...desks: readonly Desk[]): Desk => {
  const all = new Desk(9);
  for (const desk of desks) all.take(desk);
  return all;
};

const folded = (desk: Desk) => fold(desk.entries);
const only = (desk: Desk) => visitOf(folded(desk), 'v1');

describe('single values (F2)', () => {
  it('take the later one where its writer had seen the other', () => {
    const [first, second] = two();
    first.write('setting-set', { refill: '12 min' }, { about: visit });
    second.take(first);
    second.write('setting-set', { refill: '8 min' }, { about: visit });
    const all = merged(first, second);
    expect(only(all)?.settings?.set?.refill?.as).toBe('8 min');
    expect(folded(all).rivals).toEqual([]);
  });

  it('are rivals where neither had seen the other, and writing again settles it', () => {
    const [first, second] = two();
    first.write('setting-set', { refill: '12 min' }, { about: visit });
    second.write('setting-set', { refill: '8 min', backwash: '10 min' }, { about: visit });
    const all = merged(first, second);
    expect(folded(all).rivals).toMatchObject([
      {
        about: visit,
        kind: 'setting-set/1',
        what: 'refill',
        values: [
          { value: '8 min', author: 'hand 2000' },
          { value: '12 min', author: 'hand 1000' },
        ],
      },
    ]);
    expect(only(all)?.settings?.set).toMatchObject({ refill: { as: '8 min' }, backwash: { as: '10 min' } });
    all.write('setting-set', { refill: '12 min' }, { about: visit });
    expect(folded(all).rivals).toEqual([]);
    expect(only(all)?.settings?.set?.refill?.as).toBe('12 min');
  });

  it('that say the same are no rivals', () => {
    const [first, second] = two();
    for (const desk of [first, second])
      desk.write('tell-answered', { tell: 'boss', answer: 'tube' }, { about: visit });
    expect(folded(merged(first, second)).rivals).toEqual([]);
    expect(only(merged(first, second))?.answers).toHaveLength(1);
  });

  it('of a part are put together field by field', () => {
    const [first, second] = two();
    first.write('conditioner-described', { tank: { girth: '45 in' } }, { about: unit });
    second.write('conditioner-described', { tank: { wall: '0.25 in' } }, { about: unit });
    const { tank } = folded(merged(first, second)).conditioners[0] ?? {};
    expect([tank?.girth?.value.as, tank?.wall?.value.as, tank?.height?.value.as]).toEqual([
      '45 in',
      '0.25 in',
      '60 in',
    ]);
  });
});

describe('sets (F2)', () => {
  it('take an operation that two have ticked once, and flag two counts', () => {
    const [first, second] = two();
    const at = (hour: number) => `2026-11-25T${hour}:00:00Z`;
    first.write(
      'operation-done',
      { operation: 'pull-seals', counted: { seal: 7 }, at: at(10) },
      { about: visit },
    );
    second.write(
      'operation-done',
      { operation: 'pull-seals', counted: { seal: 6 }, at: at(11) },
      { about: visit },
    );
    first.write('operation-done', { operation: 'shut-water', at: at(10) }, { about: visit });
    second.write('operation-done', { operation: 'shut-water', at: at(11) }, { about: visit });
    const all = merged(first, second);
    expect(only(all)?.done?.map(({ operation }) => operation)).toEqual(['pull-seals', 'shut-water']);
    expect(folded(all).rivals).toHaveLength(1);
  });

  it('keep every reading, as repeats', () => {
    const [first, second] = two();
    first.write('reading-taken', { test: 'drain', value: '0.4 gpm' }, { about: visit });
    second.write('reading-taken', { test: 'drain', value: '0.5 gpm' }, { about: { ...visit, ...unit } });
    expect(only(merged(first, second))?.readings).toMatchObject([
      { test: 'drain', value: '0.4 gpm' },
      { test: 'drain', value: '0.5 gpm', conditioner: 's1' },
    ]);
  });
});

describe('corrections (F3)', () => {
  const reading = { test: 'drain', value: '0.4 gpm' };

  it('put another payload in the place of the first', () => {
    const desk = begun(new Desk(1));
    const { id } = desk.write('reading-taken', reading, { about: visit });
    desk.write('corrected', { target: id, payload: { ...reading, value: '0.2 gpm' } });
    expect(only(desk)?.readings).toMatchObject([{ value: '0.2 gpm', entry: id }]);
  });

  it('take it back, and are undone by another correction', () => {
    const desk = begun(new Desk(1));
    const { id } = desk.write('reading-taken', reading, { about: visit });
    desk.write('corrected', { target: id, withdrawn: 'wrong unit' });
    expect(only(desk)?.readings).toBeUndefined();
    desk.write('corrected', { target: id, payload: reading });
    expect(only(desk)?.readings).toHaveLength(1);
  });

  it('wait for their target and count', () => {
    const desk = begun(new Desk(1));
    desk.write('corrected', { target: testId(77), withdrawn: 'twice' });
    expect(folded(desk).waiting).toMatchObject([{ kind: 'corrected/1', for: testId(77) }]);
  });

  it('never hold for a correction, and one that does not fit its target is set aside', () => {
    const desk = begun(new Desk(1));
    const { id } = desk.write('reading-taken', reading, { about: visit });
    const { id: correction } = desk.write('corrected', {
      target: id,
      payload: { ...reading, value: '0.2 gpm' },
    });
    desk.write('corrected', { target: correction, withdrawn: 'no' });
    desk.write('corrected', { target: id, payload: { value: 3 } });
    expect(only(desk)?.readings).toMatchObject([{ value: '0.2 gpm' }]);
    expect(folded(desk).setAside).toHaveLength(2);
  });

  it('of two offices are rivals', () => {
    const [first, second] = two();
    const { id } = first.write('reading-taken', reading, { about: visit });
    second.take(first);
    first.write('corrected', { target: id, payload: { ...reading, value: '0.2 gpm' } });
    second.write('corrected', { target: id, withdrawn: 'other tank' });
    expect(folded(merged(first, second)).rivals).toMatchObject([
      { kind: 'reading-taken/1', values: [{ value: null }, { value: { value: '0.2 gpm' } }] },
    ]);
  });

  it('of a visit that was started by mistake take it away, with all that hangs on it', () => {
    const desk = begun(new Desk(1));
    const start = desk.entries.find(({ kind }) => kind === 'visit-started/1');
    desk.write('reading-taken', reading, { about: visit });
    desk.write('corrected', { target: start?.id ?? '', withdrawn: 'wrong site' });
    expect(folded(desk)).toMatchObject({ visits: [], waiting: [] });
  });
});

describe('versions and faults (F4)', () => {
  it('keep what a newer program wrote, and set aside what breaks its schema, with the reason', () => {
    const desk = begun(new Desk(1));
    desk.writeKind('reading-taken/9', { anything: true }, { about: visit });
    desk.writeKind('smell-noted/1', {}, { about: visit });
    desk.write('reading-taken', { test: 'drain', value: 4 }, { about: visit });
    desk.write('reading-taken', { test: 'drain' });
    const { newer, setAside, visits } = folded(desk);
    expect(newer.map(({ kind }) => kind)).toEqual(['reading-taken/9', 'smell-noted/1']);
    expect(setAside.map(({ issues }) => issues.map(({ code }) => code))).toEqual([
      ['schema.quote-number'],
      ['record.about-missing'],
    ]);
    expect(visits).toHaveLength(1);
  });

  it('let entries about a visit or a unit that has not come wait', () => {
    const desk = new Desk(1);
    desk.write('visit-started', { subject: 's1' }, { about: visit });
    desk.write('reading-taken', { test: 'drain' }, { about: { visit: 'v2' } });
    desk.write('conditioner-described', { name: 'East' }, { about: unit });
    expect(folded(desk)).toMatchObject({
      visits: [],
      waiting: [{ for: 'v2' }, { for: 's1' }, { for: 'v1' }],
    });
    begun(desk);
    expect(folded(desk)).toMatchObject({ visits: [{ id: 'v1' }], waiting: [{ for: 'v2' }] });
  });
});

describe('a finished visit (F5)', () => {
  it('stays what it was when the site is described anew', () => {
    const desk = begun(new Desk(1));
    desk.write('handed-over', { to: 'Ms Ware', said: 'salt low' }, { about: visit });
    desk.write('site-described', { name: 'Mill Lane North' });
    desk.write('visit-started', { subject: 's1' }, { about: { visit: 'v2' } });
    const site = folded(desk);
    expect(visitOf(site, 'v1')?.site.name).toBe('Mill Lane');
    expect(visitOf(site, 'v2')?.site.name).toBe('Mill Lane North');
    expect(site.site?.name).toBe('Mill Lane North');
  });

  it('keeps the figures it was handed over with', () => {
    const desk = begun(new Desk(1));
    const shown = {
      engine: 'brinewright/0.1.0',
      definitions: 'abc',
      figures: { 'program.refill.minutes': '12 min' },
    };
    desk.write('handed-over', { shown }, { about: visit });
    expect(folded(desk).visits[0]?.handedOver?.shown).toEqual(shown);
  });

  it('stands in the history of its unit', () => {
    const desk = begun(new Desk(1));
    desk.write('part-used', { part: 'seal-kit', count: 1 }, { about: visit });
    expect(historyOf(folded(desk), 's1')).toMatchObject([
      {
        visit: 'v1',
        date: '2026-11-25',
        by: 'hand 1000',
        used: [{ part: 'seal-kit', count: 1 }],
        isHandedOver: false,
      },
    ]);
    expect(historyOf(folded(desk), 'other')).toEqual([]);
  });
});

describe('one entry of several (S1, R1)', () => {
  it('is taken once when it was written again, and its corrections hold', () => {
    const desk = begun(new Desk(1));
    const first = desk.write('reading-taken', { test: 'drain', value: '0.4 gpm' }, { about: visit });
    const again = desk.write(
      'reading-taken',
      { test: 'drain', value: '0.4 gpm' },
      { about: visit, again: first.id },
    );
    expect(only(desk)?.readings).toMatchObject([{ entry: again.id }]);
    desk.write('corrected', { target: first.id, withdrawn: 'no' });
    expect(only(desk)?.readings).toBeUndefined();
  });

  it('is gone where its content was taken out, whether its text still lies here or not', () => {
    const desk = begun(new Desk(1));
    const note = desk.write('visit-noted', { note: 'door code 1234' }, { about: visit });
    const other = desk.write('visit-noted', { note: 'fine' }, { about: visit });
    const redaction = desk.write('redacted', { target: note.id, reason: 'door code' });
    const whole = folded(desk);
    desk.held.set(note.id, tombstone(note, redaction.id));
    expect(fold(desk.entries)).toEqual(whole);
    expect(only(desk)?.note).toBe('fine');
    desk.held.set(other.id, tombstone(other, redaction.id));
    expect(only(desk)?.note).toBeUndefined();
    expect(folded(desk).setAside).toEqual([]);
  });
});

it('shows times by the clock of the server, and marks a clock that was wrong (J5)', () => {
  const desk = begun(new Desk(1));
  const wall = '2024-11-25T09:00:00Z';
  const year = 365 * 86_400_000;
  desk.write(
    'advice-given',
    { engine: 'e', definitions: 'd', figures: {} },
    { about: visit, wall, clock: 2 * year },
  );
  expect(folded(desk).visits[0]?.advice[0]).toMatchObject({
    at: '2026-11-25T09:00:00.000Z',
    clockOff: 2 * year,
  });
});

it.each<readonly [string, Json]>([
  ['a list where an object is wanted', []],
  ['a key that objects have of themselves', { constructor: 'x', ['__proto__']: { test: 'y' } }],
  ['nothing', null],
])('sets aside %s', (_, payload) => {
  const desk = begun(new Desk(1));
  desk.write('reading-taken', payload, { about: visit });
  expect(folded(desk).setAside).toHaveLength(1);
});
