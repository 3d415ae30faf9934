import { message } from '@brinewright/words';
import { element, type Markup } from '../../markup/element.ts';
import { polyline } from '../../markup/path.ts';
import { fillOf } from '../../markup/patterns.ts';
import { textWidth } from '../../markup/text-width.ts';
import { capital, type Reader, say } from '../../say.ts';
import { drawingText, text } from '../drawing.ts';
import { arrow } from './flows.ts';
import { waterWords } from './sayings.ts';
import type { Standing, Water } from './waters.ts';

const swatch = { width: 32, height: 18 } as const;
const row = 28;

type Key = { readonly words: string; readonly draw: (x: number, y: number) => readonly Markup[] };

const waterKey = (reader: Reader, id: string, water: Water, present: boolean): Key => {
  const name = message(waterWords[water]);
  return {
    words: capital(say(reader, present ? name : message('papers.key.absent', { water: name }))),
    draw: (x, y) => [
      element('rect', {
        x,
        y,
        ...swatch,
        class: present ? 'edge' : 'hidden',
        style: `fill:${present ? fillOf(id, water) : 'none'}`,
      }),
    ],
  };
};

const leakKey = (reader: Reader, seal: number): Key => ({
  words: capital(say(reader, message('papers.key.leak', { seal }))),
  draw: (x, y) => [
    element('path', {
      d: polyline([
        [x, y + 9],
        [x + 28, y + 9],
      ]),
      class: 'leak',
    }),
    arrow([x + 32, y + 9], [x, y + 9], 12, 'fail-fill'),
  ],
});

const waters = ['raw', 'treated', 'brine', 'drain'] as const;

export type Legend = { readonly height: number; readonly draw: (top: number) => readonly Markup[] };

/** Keys in rows, wrapped to the width. A water that does not occur keeps its place, dashed. */
export const legend = (
  reader: Reader,
  id: string,
  standing: ReadonlyMap<string, Standing>,
  leakingSeal: number | undefined,
  width: number,
): Legend => {
  const present = new Set([...standing.values()].map(({ water }) => water));
  const keys = [
    ...waters.map((water) => waterKey(reader, id, water, present.has(water))),
    ...(leakingSeal === undefined ? [] : [leakKey(reader, leakingSeal)]),
  ];
  const places = keyPlaces(keys, width);
  const rows = (places.at(-1)?.row ?? 0) + 1;
  return {
    height: rows * row,
    draw: (top) =>
      keys.flatMap((key, index) => {
        const { x, row: at } = places[index] ?? { x: 0, row: 0 };
        const y = top + at * row;
        return [...key.draw(x + 1, y), text(x + swatch.width + 9, y + 14.5, key.words)];
      }),
  };
};

const keyPlaces = (
  keys: readonly Key[],
  width: number,
): readonly { readonly x: number; readonly row: number }[] => {
  let [x, at] = [0, 0];
  return keys.map((key) => {
    const size = swatch.width + 9 + textWidth(key.words, drawingText);
    if (x > 0 && x + size > width) [x, at] = [0, at + 1];
    const place = { x, row: at };
    x += size + 20;
    return place;
  });
};
