import { message } from '@brinewright/words';
import { element, type Markup } from '../../markup/element.ts';
import { polyline } from '../../markup/path.ts';
import { textWidth, wrapped } from '../../markup/text-width.ts';
import { capital, type Reader, say, sayText } from '../../say.ts';
import { drawingText, text } from '../drawing.ts';
import { rowsOf, spreadDown } from '../stagger.ts';
import { type BoreDrawing, neckOf, partings, portsOf } from './bore-drawing.ts';
import type { Section } from './casting.ts';
import { type Frame, sideOf } from './frame.ts';
import { portWord, waterWords } from './sayings.ts';
import type { Passage, Standing } from './waters.ts';

const line = 18;
const labelHeight = 2 * line + 4;

export type PortLabel = {
  readonly port: string;
  readonly side: -1 | 1;
  /** In metres along the bore. */
  readonly at: number;
  readonly name: string;
  readonly water: string;
};

const waterOf = (reader: Reader, port: string, standing: Standing, leak: Passage | undefined): string => {
  if (leak?.to === port && !(port === 'OUTSIDE' && standing.moves))
    return say(reader, message('papers.water.leaking', { water: message(waterWords[leak.water]) }));
  if (standing.water === 'none')
    return say(reader, message(port === 'OUTSIDE' ? 'papers.water.dry' : 'papers.water.no-flow'));
  if (!standing.moves && port === 'OUT') return say(reader, message('papers.water.shut'));
  return say(reader, message(waterWords[standing.water]));
};

const shownPort = (reader: Reader, port: string): string => {
  const word = portWord(port);
  return typeof word === 'string' ? sayText(reader, word) : say(reader, word);
};

export const portLabels = (
  bore: BoreDrawing,
  reader: Reader,
  standing: ReadonlyMap<string, Standing>,
  leak: Passage | undefined,
): readonly PortLabel[] =>
  portsOf(bore).flatMap((port) => {
    const neck = neckOf(bore, port);
    const stands = standing.get(port);
    if (neck === undefined || stands === undefined) return [];
    const name = capital(shownPort(reader, port));
    return [
      {
        port,
        side: sideOf(port),
        at: (neck.from + neck.to) / 2,
        name,
        water: waterOf(reader, port, stands, leak),
      },
    ];
  });

const sizeOf = (label: PortLabel): number =>
  Math.max(textWidth(label.name, drawingText, true), textWidth(label.water, drawingText));

/** Rows of labels above or below a lying section, and how high they stand together. */
const rowsFor = (labels: readonly PortLabel[], frame: Frame, width: number) =>
  rowsOf(
    labels.map((label) => ({ at: frame.place(frame.along(label.at), 0)[0], size: sizeOf(label) })),
    width,
  );

export const labelRoom = (
  labels: readonly PortLabel[],
  side: -1 | 1,
  frame: Frame,
  width: number,
): number => {
  const rows = rowsFor(
    labels.filter((label) => label.side === side),
    frame,
    width,
  );
  return rows.reduce((most, { row }) => Math.max(most, row + 1), 0) * labelHeight;
};

const lyingLabels = (
  section: Section,
  labels: readonly PortLabel[],
  side: -1 | 1,
  width: number,
): readonly Markup[] => {
  const { frame } = section;
  const own = labels.filter((label) => label.side === side);
  const rows = rowsFor(own, frame, width);
  return own.flatMap((label, index) => {
    const { at, row } = rows[index] ?? { at: 0, row: 0 };
    const [x, edge] = frame.place(frame.along(label.at), side * frame.radii.neck);
    const away = row * labelHeight;
    const top = side < 0 ? edge - away - labelHeight + 14 : edge + away + 22;
    const from = label.port === 'OUTSIDE' ? frame.place(0, side * frame.radii.wall * 0.7)[1] : edge;
    const to = side < 0 ? edge - away - 4 : edge + away + 6;
    const leader =
      label.port === 'OUTSIDE' || row > 0
        ? [
            element('path', {
              d: polyline([
                [x, from],
                [x, to],
              ]),
              class: 'fine',
            }),
          ]
        : [];
    return [
      ...leader,
      text(at, top, label.name, { of: 'strong', anchor: 'middle' }),
      text(at, top + line, label.water, { of: 'second', anchor: 'middle' }),
    ];
  });
};

/** Beyond the pipes, and on the other side beyond the item numbers too. */
const gapOn = (side: -1 | 1): number => (side < 0 ? 7 : 17);

/** Lines of a label beside a standing section: the name may wrap. */
const linesOf = (
  label: PortLabel,
  room: number,
): readonly { readonly words: string; readonly of: string }[] => [
  ...wrapped(label.name, drawingText, room, true).map((words) => ({ words, of: 'strong' })),
  ...wrapped(label.water, drawingText, room).map((words) => ({ words, of: 'second' })),
];

const standingLabels = (
  section: Section,
  labels: readonly PortLabel[],
  side: -1 | 1,
  width: number,
): readonly Markup[] => {
  const { frame } = section;
  const own = labels.filter((label) => label.side === side);
  const edge = frame.place(0, side * frame.radii.neck)[0];
  const room = side < 0 ? edge - gapOn(side) : width - edge - gapOn(side);
  const stacks = own.map((label) => linesOf(label, room));
  const tops = spreadDown(
    own.map((label, index) => ({
      at: frame.place(frame.along(label.at), 0)[1],
      size: (stacks[index]?.length ?? 0) * line,
    })),
  );
  return own.flatMap((label, index) => {
    const leader =
      label.port === 'OUTSIDE'
        ? [
            element('path', {
              d: polyline([
                [edge, frame.place(frame.along(label.at), 0)[1]],
                frame.place(frame.along(label.at), side * frame.radii.wall * 0.7),
              ]),
              class: 'fine',
            }),
          ]
        : [];
    const words = (stacks[index] ?? []).map(({ words, of }, row) =>
      text(
        edge + side * gapOn(side),
        (tops[index] ?? 0) + 14 + row * line,
        words,
        side < 0 ? { of, anchor: 'end' } : { of },
      ),
    );
    return [...leader, ...words];
  });
};

export const portWords = (section: Section, labels: readonly PortLabel[], width: number): readonly Markup[] =>
  ([-1, 1] as const).flatMap((side) =>
    section.frame.lying
      ? lyingLabels(section, labels, side, width)
      : standingLabels(section, labels, side, width),
  );

const balloonRadius = 11.5;

/** Item numbers on a thin leader, as on an assembly drawing. */
export const balloons = (section: Section, torn: number | undefined): readonly Markup[] => {
  const { bore, frame } = section;
  return partings(bore).flatMap(({ number, at }) => {
    const u = frame.along(at);
    const [x, y] = frame.place(u, frame.radii.outer + balloonRadius + 3);
    const leader = polyline([frame.place(u, frame.radii.wall - 4), frame.place(u, frame.radii.outer + 3)]);
    return [
      element('path', { d: leader, class: 'fine' }),
      element('circle', {
        cx: x,
        cy: y,
        r: balloonRadius,
        class: number === torn ? 'balloon torn' : 'balloon',
      }),
      text(x, y + 5.2, String(number), { of: 'number' }),
    ];
  });
};
