import {
  type Drawing,
  type DrawingOptions,
  openSheet,
  type Sheet,
  type Way,
  wayToFigure,
  written,
} from '@brinewright/papers';
import { type FigureId, sources } from '@brinewright/service';
import type { DrawingView } from '../../ui/parts/drawing.tsx';
import type { DerivationView } from '../../ui/parts/figure.tsx';
import type { Made } from '../made.ts';

/** A figure with its unit, and where it comes from. */
export type FigureView = { readonly text: string; readonly derivation?: DerivationView };

/** The sheet that papers and views both read, so that both name and explain things alike. */
export const sheetOf = ({
  visit,
  assessment,
  equipment,
  speech,
}: Pick<Made, 'visit' | 'assessment' | 'equipment' | 'speech'>): Sheet =>
  openSheet(visit, assessment, { ...speech.reader, equipment, sources });

export const derivationOf = (way: Way): DerivationView => ({
  title: way.title,
  formula: way.formula,
  inputs: way.inputs.map(({ label, value }) => ({ label, value })),
  result: { label: way.title, value: way.result },
  source: way.source,
  notes: [...(way.spread === undefined ? [] : [way.spread]), ...way.outside],
});

/** Nothing where it could not be computed. `name` is what it is called there, `text` how it is shown beside others. */
export const figureView = (
  sheet: Sheet,
  id: FigureId | undefined,
  more: { readonly name?: string; readonly text?: string | undefined } = {},
): FigureView | undefined => {
  const way = id === undefined ? undefined : wayToFigure(sheet, id, more.name);
  return way === undefined ? undefined : { text: more.text ?? way.result, derivation: derivationOf(way) };
};

/** Drawn for the column of the wide sheet and for a phone: words are never scaled down. */
export type Pictures = { readonly wide: DrawingView; readonly narrow: DrawingView };

export const drawnAt = (
  sheet: Sheet,
  id: string,
  width: number,
  draw: (options: DrawingOptions) => Drawing,
): DrawingView => {
  const { svg, twin } = draw({ ...sheet.reader, width, id });
  return { svg: inRem(written(svg)), twin: twin.map(sheet.say) };
};

/** Sizes in rem, so that a drawing grows with the text of the reader. */
const inRem = (svg: string): string =>
  svg.replace(/ width="([\d.]+)" height="([\d.]+)"/u, (_, width, height) => {
    const [across, down] = [Number(width) / 16, Number(height) / 16];
    return ` width="${across}rem" height="${down}rem"`;
  });

export const pictures = (
  sheet: Sheet,
  id: string,
  draw: (options: DrawingOptions) => Drawing,
  width: number = columnWidth,
): Pictures => ({
  wide: drawnAt(sheet, `${id}-w`, width, draw),
  narrow: drawnAt(sheet, `${id}-n`, phoneWidth, draw),
});

const columnWidth = 520;
const phoneWidth = 358;
