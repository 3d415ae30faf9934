/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export const randomFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

type Random = () => number;

const pick = <T>(items: readonly T[], random: Random): T | undefined =>
  items[Math.floor(random() * items.length)];

/** Replaces one of the matches; the text as it is where nothing matches. */
const replaceOne = (
  text: string,
  pattern: RegExp,
  to: (match: RegExpExecArray) => string,
  random: Random,
): string => {
  const match = pick([...text.matchAll(pattern)], random);
  if (match === undefined) return text;
  return text.slice(0, match.index) + to(match) + text.slice(match.index + match[0].length);
};

const key = /(?<=^ *|[{,] )[a-z][a-z-]+(?=: )/gmu;
const scalar = /(?<=: )[A-Za-z0-9][\w .%-]*(?=[,}\n])/gu;
const quantity = /\b\d+(?:\.\d+)? (?:mm|in|gpm|gal|psi|min|degF|kg\/m3)\b/gu;
const line = /^.*\S.*\n/gmu;

type Mutation = (text: string, random: Random) => string;

/** Ways to break a definition; some happen to leave it sound. */
export const mutations = {
  'drop a line': (text, random) => replaceOne(text, line, () => '', random),
  'misspell a key': (text, random) =>
    replaceOne(text, key, ([found]) => `${found.slice(0, 1)}x${found.slice(1)}`, random),
  'swap letters of a key': (text, random) =>
    replaceOne(text, key, ([found]) => found.slice(0, -2) + found.slice(-1) + found.slice(-2, -1), random),
  'wrong type': (text, random) => replaceOne(text, scalar, () => '[[7]]', random),
  'wrong unit': (text, random) => replaceOne(text, quantity, () => '12 furlongs', random),
  'decimal comma': (text, random) => replaceOne(text, quantity, () => '"4,5 gpm"', random),
  'duplicate key': (text, random) =>
    replaceOne(text, /^ *[a-z][a-z-]*: .*\n/gmu, ([found]) => found + found, random),
  'bad reference': (text, random) =>
    replaceOne(text, /(?<=(?:after|tools|hazards|also|do): \[)[a-z-]+/gu, ([found]) => `${found}x`, random),
  'bad indentation': (text, random) => replaceOne(text, /^ {2,}/gmu, ([found]) => `${found} `, random),
  'a tab': (text, random) => replaceOne(text, /^ {2,}/gmu, () => '\t', random),
  'absurd number': (text, random) =>
    replaceOne(text, /(?<=: )\d+(?:\.\d+)?(?=[,}\n])/gu, () => '-1e99', random),
  null: (text, random) => replaceOne(text, scalar, () => 'null', random),
  emoji: (text, random) => replaceOne(text, scalar, () => '🧂💧', random),
  'huge text': (text, random) => replaceOne(text, scalar, () => 'salt '.repeat(5000), random),
  'a bracket too many': (text, random) => replaceOne(text, /[[{}\]]/gu, ([found]) => found + found, random),
  'a quote': (text, random) => replaceOne(text, scalar, ([found]) => `"${found}`, random),
} as const satisfies Record<string, Mutation>;

export type MutationName = keyof typeof mutations;

export const mutationNames = Object.keys(mutations).filter((name): name is MutationName =>
  Object.hasOwn(mutations, name),
);
