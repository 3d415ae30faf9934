/** Width of the text, set for a terminal of 80 to 100 columns. */
export const columns = 88;

const noBreak = '\u00a0';

/** Columns a text takes: what is written is counted, not its bytes. */
export const widthOf = (text: string): number => [...text].length;

export type Wrapped = {
  readonly width?: number;
  /** Before the first line, and before the others. */
  readonly first?: string;
  readonly rest?: string;
};

/** Lines no wider than asked, broken between words; a figure and its unit stay together. */
export const wrap = (text: string, { width = columns, first = '', rest = first }: Wrapped = {}): string[] => {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/ +|\n/u).filter((part) => part !== '')) {
    if (!empty && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].map(plainSpaces);
};

/** Spaces that may not break have done their work. */
export const plainSpaces = (text: string): string => text.replaceAll(noBreak, ' ').trimEnd();
