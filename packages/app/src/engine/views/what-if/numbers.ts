import type { QuantityKind } from '@brinewright/units';

/** Numbers that a program follows from, by the name they have in a link. */
export const whatIfNumbers = [
  'hardness',
  'iron',
  'coldest',
  'warmest',
  'daily',
  'diameter',
  'depth',
  'free',
  'backwash',
  'draw',
  'slow',
  'refill',
  'dose',
] as const;

export type WhatIfNumber = (typeof whatIfNumbers)[number];

/** Each as it was typed, with its unit: '18 gpg'. */
export type WhatIf = Readonly<Partial<Record<WhatIfNumber, string>>>;

export const kindOfNumber: Readonly<Record<WhatIfNumber, QuantityKind>> = {
  hardness: 'hardness',
  iron: 'concentration',
  coldest: 'temperature',
  warmest: 'temperature',
  daily: 'volume',
  diameter: 'length',
  depth: 'length',
  free: 'length',
  backwash: 'flow',
  draw: 'flow',
  slow: 'flow',
  refill: 'flow',
  dose: 'salt-dose',
};

/** From the address, which holds the numbers so that a link shares them; what is not known there is left out. */
export const whatIfOf = (search: string): WhatIf => {
  const given = new URLSearchParams(search);
  return Object.fromEntries(
    whatIfNumbers.flatMap((name) => {
      const text = given.get(name)?.trim().slice(0, longest) ?? '';
      return text === '' ? [] : [[name, text] as const];
    }),
  );
};

const longest = 40;

export const searchOf = (numbers: WhatIf): string => {
  const kept = whatIfNumbers.flatMap((name) => {
    const text = numbers[name] ?? '';
    return text === '' ? [] : [[name, text]];
  });
  return new URLSearchParams(kept).toString();
};
