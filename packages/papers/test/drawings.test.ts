import { formatMessage, missingValues, type Reader } from '@brinewright/words';
import { describe, expect, test } from 'vitest';
import { type DrawingOptions, drawingText } from '../src/drawings/drawing.ts';
import { oddsBars } from '../src/drawings/odds-bars.ts';
import { textWidth } from '../src/markup/text-width.ts';
import { drawingCss } from '../src/theme/drawing-css.ts';
import { english, pictures, spanish } from './pictures.ts';
import { xmlProblems } from './well-formed.ts';

const options = (reader: Reader, width: number): DrawingOptions => ({ ...reader, width, id: 'p' });

const cases = pictures.flatMap(({ name, draw }) =>
  [
    { reader: english, width: 720 },
    { reader: spanish, width: 340 },
  ].map(({ reader, width }) => ({ name: `${name}-${reader.language}-${width}`, draw, reader, width })),
);

type Label = { readonly words: string; readonly y: number; readonly from: number; readonly to: number };

const attributeOf = (tag: string, name: string): string =>
  new RegExp(`${name}="([^"]*)"`, 'u').exec(tag)?.[1] ?? '';

/** Every word of a drawing with the room it takes. */
const labels = (svg: string): readonly Label[] =>
  [...svg.matchAll(/<text([^>]*)>([^<]*)</gu)].map(([, tag = '', words = '']) => {
    const [x, y, of] = [
      Number(attributeOf(tag, 'x')),
      Number(attributeOf(tag, 'y')),
      attributeOf(tag, 'class'),
    ];
    const size = textWidth(words, drawingText, /strong|-ink/u.test(of));
    const anchor = of.startsWith('number') ? 'middle' : attributeOf(tag, 'text-anchor');
    const from = anchor === 'middle' ? x - size / 2 : anchor === 'end' ? x - size : x;
    return { words, y, from, to: from + size };
  });

const height = 13;

const overlapping = (all: readonly Label[]): readonly string[] =>
  all.flatMap((one, index) =>
    all
      .slice(index + 1)
      .filter((other) => Math.abs(one.y - other.y) < height && one.from < other.to && other.from < one.to)
      .map((other) => `${one.words} / ${other.words}`),
  );

describe.each(cases)('the drawing $name', ({ name, draw, reader, width }) => {
  const drawing = draw(options(reader, width));

  test('looks as it did when it was last looked at', async () => {
    const standalone = draw({ ...options(reader, width), standalone: true });
    await expect(`${standalone.svg.markup}\n`).toMatchFileSnapshot(`./output/${name}.svg`);
  });

  test('is well-formed and is the same text each time', () => {
    expect(xmlProblems(drawing.svg.markup)).toEqual([]);
    expect(draw(options(reader, width)).svg.markup).toBe(drawing.svg.markup);
  });

  test('has a name that says its finding, and the same in sentences', () => {
    const first = drawing.twin[0];
    expect(drawing.twin.flatMap(missingValues)).toEqual([]);
    expect(first).toBeDefined();
    if (first === undefined) return;
    expect(drawing.svg.markup).toContain('role="img"');
    expect(/aria-label="([^"]*)"/u.exec(drawing.svg.markup)?.[1]).toContain(formatMessage(first, reader));
  });

  test('keeps every word inside it and off the others', () => {
    const all = labels(drawing.svg.markup);
    expect(all.length).toBeGreaterThan(0);
    const outside = all.filter(
      ({ from, to, y }) => from < -1 || to > width + 1 || y < 10 || y > drawing.height,
    );
    expect(outside).toEqual([]);
    expect(overlapping(all)).toEqual([]);
  });

  test('sets no text smaller than 15 px', () => {
    expect(drawing.svg.markup).not.toMatch(/font-size/u);
  });

  test('refers only to patterns that it holds', () => {
    const used = [...drawing.svg.markup.matchAll(/url\(#([\w-]+)\)/gu)].map(([, id]) => id);
    expect(used.filter((id) => !drawing.svg.markup.includes(`id="${id}"`))).toEqual([]);
  });
});

test('words in drawings stand at 15 px and nothing in their style is smaller', () => {
  const sizes = [...drawingCss.matchAll(/font-size:([\d.]+)px/gu)].map(([, size]) => Number(size));
  expect(sizes.length).toBeGreaterThan(0);
  expect(Math.min(...sizes)).toBe(15);
});

test('a name that tries to break out of the drawing stays a name', () => {
  const name = '</text><script>alert(1)</script>"&';
  const { markup } = oddsBars([{ name, p: 0.5 }], options(english, 340)).svg;
  expect(markup).not.toContain('<script');
  expect(xmlProblems(markup)).toEqual([]);
});
