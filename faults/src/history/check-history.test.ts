import { describe, expect, it } from 'vitest';
import { checkHistory, type Rule, rules } from './check-history.ts';
import type { Happening, HistoryEvent } from './event.ts';

const timed = (events: readonly Happening[]): readonly HistoryEvent[] =>
  events.map((event, at) => ({ ...event, at }));

const found = (events: readonly Happening[]): readonly Rule[] =>
  checkHistory(timed(events)).map(({ rule }) => rule);

const opened = (epoch = 'e', last = 0): Happening => ({ kind: 'opened', epoch, last });
const killed: Happening = { kind: 'killed', what: 'server' };
const sent = (id: string, hash = `#${id}`): Happening => ({ kind: 'sent', client: 'a', id, hash });

type Place = { hash?: string; client?: string; epoch?: string };
const placed =
  (kind: 'acknowledged' | 'read') =>
  (id: string, position: number, { hash = `#${id}`, client = 'a', epoch = 'e' }: Place = {}): Happening => ({
    kind,
    client,
    id,
    hash,
    position,
    epoch,
  });
const acknowledged = placed('acknowledged');
const read = placed('read');

const cursor = (position: number, epoch = 'e'): Happening => ({
  kind: 'cursor',
  client: 'a',
  position,
  epoch,
});

/** The auditor reads the whole log. */
const audit = (held: readonly (readonly [id: string, position: number])[], epoch = 'e'): Happening[] => [
  { kind: 'reading', client: 'audit', epoch },
  ...held.map(([id, position]) => read(id, position, { client: 'audit', epoch })),
  {
    kind: 'read-through',
    client: 'audit',
    last: Math.max(0, ...held.map(([, position]) => position)),
    epoch,
  },
];

describe('a good history', () => {
  it.each<readonly [string, readonly Happening[]]>([
    ['an empty one', []],
    [
      'acknowledged, killed, read again',
      [opened(), sent('x'), acknowledged('x', 1), killed, opened('e', 1), ...audit([['x', 1]])],
    ],
    [
      'sent twice and acknowledged both times at its first place',
      [
        opened(),
        sent('x'),
        killed,
        opened(),
        sent('x'),
        acknowledged('x', 1),
        sent('x'),
        acknowledged('x', 1),
      ],
    ],
    ['sent, killed and never seen again', [opened(), sent('x'), killed, opened(), ...audit([])]],
    [
      'kept though the answer was cut off',
      [opened(), sent('x'), killed, opened('e', 1), ...audit([['x', 1]])],
    ],
    [
      'acknowledged while a reading that began before goes on',
      [
        opened(),
        sent('x'),
        { kind: 'reading', client: 'audit', epoch: 'e' },
        acknowledged('x', 1),
        { kind: 'read-through', client: 'audit', last: 0, epoch: 'e' },
      ],
    ],
    ['what was there before anybody sent', [opened('e', 1), ...audit([['own', 1]]), sent('x')]],
    [
      'a page kept, then its cursor, then the next',
      [opened(), sent('x'), sent('y'), read('x', 1), cursor(1), read('y', 2), cursor(2), cursor(2)],
    ],
    [
      'an older state restored: a new epoch counts anew',
      [
        opened(),
        sent('x'),
        acknowledged('x', 1),
        read('x', 1),
        cursor(1),
        { kind: 'restored' },
        opened('f'),
        ...audit([], 'f'),
        sent('x'),
        acknowledged('x', 1, { epoch: 'f' }),
        cursor(0, 'f'),
      ],
    ],
  ])('%s passes', (_title, events) => {
    expect(checkHistory(timed(events))).toEqual([]);
  });
});

const bad: readonly (readonly [Rule, string, readonly Happening[]])[] = [
  [
    'lost',
    'acknowledged and not found after the kill',
    [opened(), sent('x'), acknowledged('x', 1), killed, opened(), ...audit([])],
  ],
  [
    'lost',
    'found by the first reading and not by the second',
    [opened(), sent('x'), acknowledged('x', 1), ...audit([['x', 1]]), killed, opened(), ...audit([])],
  ],
  [
    'moved',
    'acknowledged at one place and read at another',
    [opened(), sent('x'), sent('y'), acknowledged('x', 1), acknowledged('y', 2), read('x', 3)],
  ],
  [
    'moved',
    'kept twice, at two places',
    [opened(), sent('x'), acknowledged('x', 1), sent('x'), acknowledged('x', 2)],
  ],
  [
    'shared',
    'two entries at one place',
    [opened(), sent('x'), sent('y'), acknowledged('x', 1), acknowledged('y', 1)],
  ],
  [
    'altered',
    'read with another hash',
    [opened(), sent('x'), acknowledged('x', 1), read('x', 1, { hash: '#z' })],
  ],
  ['unsent', 'read, and nobody sent it', [opened(), sent('x'), acknowledged('x', 1), read('z', 2)]],
  [
    'back',
    'a cursor that goes back',
    [
      opened(),
      sent('x'),
      sent('y'),
      read('x', 1),
      read('y', 2),
      cursor(2),
      killed,
      opened('e', 2),
      cursor(1),
    ],
  ],
  ['gap', 'a cursor beyond an entry that was never read', [opened(), sent('y'), read('y', 2), cursor(2)]],
  [
    'gap',
    'a log with a hole in it',
    [
      opened(),
      sent('x'),
      sent('y'),
      ...audit([
        ['x', 1],
        ['y', 3],
      ]),
    ],
  ],
  [
    'gap',
    'a hole where the same client read something before',
    [
      opened(),
      sent('x'),
      sent('y'),
      ...audit([
        ['x', 1],
        ['y', 2],
      ]),
      ...audit([['y', 2]]),
    ],
  ],
  [
    'epoch',
    'another epoch without a restore',
    [opened(), sent('x'), acknowledged('x', 1), killed, opened('f')],
  ],
];

describe('a bad history', () => {
  it.each(bad)('is caught by the rule “%s”: %s', (rule, _title, events) => {
    expect(found(events)).toEqual([rule]);
  });

  it('has a case for every rule', () => {
    expect([...new Set(bad.map(([rule]) => rule))]).toEqual([...rules]);
  });

  it('is told with the line where it shows', () => {
    expect(checkHistory(timed([opened(), sent('x'), sent('x', '#other')]))).toEqual([
      { rule: 'altered', line: 3, what: 'x: #x became #other' },
    ]);
  });
});
