/*
 * Advance widths of Atkinson Hyperlegible Next at weight 420 with tabular figures, in hundredths of the size, for the
 * characters from space to tilde. Measured in Chromium from the font file; drawings use them to keep labels apart.
 */
const widths = [
  28, 29, 31, 66, 59, 92, 73, 16, 30, 30, 49, 61, 22, 36, 22, 39, 63, 63, 63, 63, 63, 63, 63, 63, 63, 63, 22,
  22, 55, 63, 55, 49, 78, 63, 62, 65, 67, 57, 55, 70, 70, 40, 52, 63, 54, 83, 70, 72, 60, 73, 62, 59, 56, 69,
  60, 86, 63, 58, 61, 32, 39, 34, 55, 37, 25, 53, 57, 49, 57, 54, 32, 56, 55, 26, 25, 50, 27, 85, 55, 55, 57,
  58, 35, 47, 33, 54, 47, 69, 49, 46, 46, 35, 24, 35, 55,
];

/** A strong face is wider, and the fallback font a little wider again. */
const strongFactor = 1.06;
const allowance = 1.03;

const widthOf = (character: string): number => {
  const code = character.codePointAt(0) ?? 0;
  if (code >= 0x300 && code <= 0x36f) return 0;
  return widths[code - 32] ?? 63;
};

/** How wide a text stands, in px. Accents are taken off first: they add no width. */
export const textWidth = (text: string, size: number, strong = false): number => {
  const hundredths = [...text.normalize('NFD')].reduce((sum, character) => sum + widthOf(character), 0);
  return (hundredths / 100) * size * (strong ? strongFactor : 1) * allowance;
};

/** Lines no wider than `width`, broken between words. A single word is never broken. */
export const wrapped = (text: string, size: number, width: number, strong = false): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer, size, strong) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};
