import { columns, widthOf, wrap } from './wrap.ts';

/** A heading with a rule to the edge. */
export const heading = (text: string): string[] => [
  `${text} ${'─'.repeat(Math.max(4, columns - widthOf(text) - 1))}`,
];

export const paragraph = (text: string): string[] => wrap(text);

/** A line that hangs from its mark: '- ', '3. ', 'To settle this: '. */
export const hanging = (mark: string, text: string, indent = 0): string[] => {
  const first = `${' '.repeat(indent)}${mark}`;
  return wrap(text, { first, rest: ' '.repeat(widthOf(first)) });
};

export const bullets = (texts: readonly string[], indent = 0): string[] =>
  texts.flatMap((text) => hanging('- ', text, indent));

/** The same lines further in. */
export const indented = (lines: readonly string[], by = 2): string[] =>
  lines.map((line) => `${' '.repeat(by)}${line}`);

/** Blocks with one empty line between; those without content leave no trace. */
export const stacked = (...blocks: readonly (readonly string[])[]): string[] =>
  blocks
    .filter((block) => block.length > 0)
    .flatMap((block, place) => (place === 0 ? block : ['', ...block]));

/** First letter large, where a word stands alone. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
