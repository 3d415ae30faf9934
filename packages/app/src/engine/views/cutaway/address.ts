import type { Stop } from '@brinewright/equipment';

/** Where the piston stands, as the reader asks for it; at the stop of the brine there are two steps. */
export type CutStop = Stop | 'slow-rinse';

export const cutStops: readonly CutStop[] = [
  'service',
  'backwash',
  'brine',
  'slow-rinse',
  'fast-rinse',
  'refill',
];

/** What is asked of the cut: stop, torn seal, piston fitted. */
export type CutChoice = {
  readonly stop?: CutStop | undefined;
  readonly torn?: number | undefined;
  readonly piston?: string | undefined;
};

/** As an address holds it: 'brine', 'brine.torn-4', 'backwash.piston-shut-outlet'. What is not understood is left out. */
export const cutChoiceOf = (part: string | undefined): CutChoice => {
  const words = part?.split('.') ?? [];
  const stop = cutStops.find((one) => words.includes(one));
  const torn = Number(after(words, 'torn-'));
  return {
    stop,
    torn: Number.isInteger(torn) && torn > 0 ? torn : undefined,
    piston: after(words, 'piston-'),
  };
};

const after = (words: readonly string[], sign: string): string | undefined =>
  words.find((word) => word.startsWith(sign))?.slice(sign.length);

export const partOfCut = ({ stop, torn, piston }: CutChoice): string | undefined => {
  const words = [
    stop,
    torn === undefined ? undefined : `torn-${torn}`,
    piston === undefined || piston === 'right' ? undefined : `piston-${piston}`,
  ].filter((word) => word !== undefined);
  return words.length === 0 ? undefined : words.join('.');
};
