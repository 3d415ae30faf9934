import { describe, expect, test } from 'vitest';
import type { CautionView, StepView } from '../../engine/views/work/work-types.ts';
import { actionOf } from './action.ts';
import { counted, countsNow, differences, movedOf } from './counting.ts';

const asked = [
  { is: 'seal', one: 'seal', name: 'Seals', of: 3 },
  { is: 'spacer', one: 'spacer', name: 'Spacers', of: 2 },
];

describe('counting', () => {
  test('names what is missing, and too many as less than none', () => {
    expect(differences({ seal: 1, spacer: 3 }, asked)).toEqual([
      { is: 'seal', one: 'seal', name: 'Seals', missing: 2 },
      { is: 'spacer', one: 'spacer', name: 'Spacers', missing: -1 },
    ]);
    expect(differences({ seal: 3, spacer: 2 }, asked)).toEqual([]);
  });

  test('moves pieces in their order, as far as none is passed over', () => {
    const order = ['plug', 'seal', 'spacer', 'seal'];
    expect(movedOf(order, {})).toBe(0);
    expect(movedOf(order, { plug: 1, seal: 2 })).toBe(2);
    expect(movedOf(order, { plug: 1, seal: 2, spacer: 1 })).toBe(4);
  });

  test('never goes below none', () => {
    expect(counted({ seal: 0 }, 'seal', -1)).toEqual({ seal: 0 });
    expect(counted({}, 'seal', 1)).toEqual({ seal: 1 });
  });

  test('starts from what was recorded, until something else is counted', () => {
    const recorded = asked.map((one) => ({ ...one, counted: 1 }));
    expect(countsNow({}, recorded)).toEqual({ seal: 1, spacer: 1 });
    expect(countsNow({ seal: 2 }, recorded)).toEqual({ seal: 2 });
    expect(countsNow({}, asked)).toEqual({});
  });
});

const caution: CautionView = {
  id: 'c',
  signal: 'Warning. Pressure.',
  does: '',
  act: [],
  fact: 'Gauge at 0',
  isDue: true,
};

const step: StepView = {
  id: 'one',
  kind: 'operation',
  number: 1,
  order: 'Draw the stack',
  done: false,
  writes: { operation: 'one' },
  tools: '',
  side: '',
  minutes: '',
  how: [],
  lookOvers: [],
  consumables: [],
  puts: [],
  cautions: [],
  counts: [],
  aloud: '',
};

describe('the main action', () => {
  test('waits for what another step has to settle first', () => {
    const blocked = { ...step, blocked: { why: 'The gate is not passed.', at: 'gate' }, cautions: [caution] };
    expect(actionOf(blocked, {})).toEqual({ kind: 'blocked', why: 'The gate is not passed.', at: 'gate' });
  });

  test('is the fact of its own caution before anything else', () => {
    const own = { ...step, cautions: [caution], counts: asked, blocked: { why: 'To be seen', at: 'one' } };
    expect(actionOf(own, {})).toEqual({ kind: 'fact', caution });
  });

  test('counts before it is done, and never by itself', () => {
    const count = { ...step, counts: asked, cautions: [{ ...caution, seen: {} }] };
    expect(actionOf(count, { seal: 3 })).toMatchObject({
      kind: 'count',
      differences: [{ is: 'spacer', missing: 2 }],
    });
    expect(actionOf(count, { seal: 3, spacer: 2 })).toEqual({ kind: 'done' });
    expect(actionOf({ ...step, done: true }, {})).toEqual({ kind: 'was-done' });
  });
});
