import { type Random, randomFrom } from '../random.ts';

export const opKinds = [
  'write',
  'correct',
  'redact',
  'write-and-crash',
  'sync',
  'sync-cut',
  'sync-rough',
  'sync-crash',
  'sync-two-tabs',
  'late',
  'clock',
  'copy',
  'evict',
  'follow',
  'unfollow',
  'import',
  'spoil-order',
  'server-write',
  'server-restart',
  'server-backup',
  'server-restore',
] as const;
export type OpKind = (typeof opKinds)[number];

/** One thing that happens. It chooses by chance of its own, so that others may be left out when a failure is cut down. */
export type Op = {
  readonly kind: OpKind;
  readonly salt: number;
  /** Which device, counted round; by chance where it is not said. */
  readonly at?: number;
  /** In which stream, likewise. */
  readonly stream?: number;
};

const weights: Readonly<Record<OpKind, number>> = {
  write: 30,
  correct: 6,
  redact: 2,
  'write-and-crash': 3,
  sync: 22,
  'sync-cut': 10,
  'sync-rough': 8,
  'sync-crash': 6,
  'sync-two-tabs': 3,
  late: 3,
  clock: 3,
  copy: 2,
  evict: 1,
  follow: 4,
  unfollow: 3,
  import: 2,
  'spoil-order': 0.3,
  'server-write': 3,
  'server-restart': 1,
  'server-backup': 2,
  'server-restore': 1,
};

type Step = readonly [OpKind, at?: number, stream?: number];

/**
 * Sequences that chance alone would hit too seldom. Each stands somewhere in a schedule of chance, in which anything
 * else may have happened before.
 */
const stories: readonly [readonly Step[], ...(readonly Step[])[]] = [
  // A profile is copied, and both write under one number.
  [
    ['sync', 0],
    ['write', 0, 1],
    ['copy', 0],
    ['write', 0, 1],
    ['write', -1, 1],
    ['write', -1, 1],
    ['sync', 0],
    ['sync', -1],
  ],
  // The copy hears of the other's entries before it sends its own.
  [
    ['write', 0, 1],
    ['copy', 0],
    ['write', 0, 1],
    ['sync', 0],
    ['sync-cut', -1],
    ['sync', -1],
    ['write', -1, 1],
    ['sync', -1],
  ],
  // A backup lacks what one twin had sent; the other sends first, the first is gone, a third held its entries.
  [
    ['server-backup'],
    ['write', 1, 1],
    ['sync', 1],
    ['copy', 1],
    ['write', 1, 1],
    ['sync', 1],
    ['sync', 0],
    ['evict', 1],
    ['server-restore'],
    ['write', -1, 1],
    ['write', -1, 1],
    ['sync', -1],
    ['sync', 0],
  ],
  // The same, and the author loses its name too.
  [
    ['server-backup'],
    ['write', 2, 1],
    ['copy', 2],
    ['write', 2, 1],
    ['sync', 2],
    ['sync', 0],
    ['server-restore'],
    ['write', -1, 1],
    ['sync', -1],
    ['evict', 2],
    ['evict', -1],
    ['sync', 0],
  ],
  // What was acknowledged is lost with the server's disk; only others still hold it.
  [
    ['server-backup'],
    ['write', 1, 1],
    ['sync', 1],
    ['sync', 0],
    ['evict', 1],
    ['server-restore'],
    ['sync', 0],
    ['sync', 1],
  ],
  // An owner takes out what twins have yet to settle.
  [
    ['write', 0, 1],
    ['copy', 0],
    ['write', 0, 1],
    ['write', -1, 1],
    ['sync', 0],
    ['redact', 0, 1],
    ['sync', 0],
    ['sync', -1],
    ['redact', 0, 1],
    ['sync', 0],
  ],
  // A correction overtakes what it corrects.
  [
    ['write', 1, 1],
    ['import', 3],
    ['correct', 3, 1],
    ['sync-rough', 3],
    ['sync', 2],
  ],
  [
    ['unfollow', 2],
    ['sync', 2],
    ['unfollow', 2],
    ['follow', 2],
    ['sync-cut', 2],
    ['sync', 2],
  ],
];

const usualLength = 45;

/** What happens in the schedule of a seed. */
export const opsOf = (seed: number): readonly Op[] => {
  const random = randomFrom(seed);
  const ops = Array.from({ length: random.between(20, usualLength * 2) }, () => anyOp(random));
  if (random.between(1, 2) === 1) return ops;
  const [story, place] = [random.pick(stories), random.between(0, ops.length)];
  return [...ops.slice(0, place), ...told(story, random), ...ops.slice(place)];
};

const told = (story: readonly Step[], random: Random): readonly Op[] =>
  story.map(([kind, at, stream]) => ({
    kind,
    salt: saltOf(random),
    ...(at === undefined ? {} : { at }),
    ...(stream === undefined ? {} : { stream }),
  }));

const anyOp = (random: Random): Op => ({ kind: anyKind(random), salt: saltOf(random) });

const saltOf = (random: Random): number => random.between(1, 2 ** 31 - 1);

const whole = Object.values(weights).reduce((sum, weight) => sum + weight, 0);

const anyKind = (random: Random): OpKind => {
  let left = random.next() * whole;
  for (const kind of opKinds) {
    left -= weights[kind];
    if (left < 0) return kind;
  }
  return 'write';
};
