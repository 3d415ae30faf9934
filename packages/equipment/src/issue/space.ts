/** Between words that are data: ids, units, quantities. Sentences stand in the catalogue. */
export const space = '\u0020';

export const spaced = (...words: readonly (string | undefined)[]): string =>
  words.filter((word) => word !== undefined).join(space);
