import { boreOf, type Equipment, type Family, type Stop, stops } from '@brinewright/equipment';
import type { FoldedVisit } from '@brinewright/journal';
import {
  boreDrawing,
  classed,
  cutaway,
  type DrawingOptions,
  html,
  likeliest,
  type Markup,
  tornSeal,
} from '@brinewright/papers';
import type { Assessment } from '@brinewright/service';
import { formatMessage } from '@brinewright/words';
import { page, withParameter } from './page.ts';
import { column, empty } from './parts.ts';
import { type Place, visitAddress, within } from './place.ts';
import type { View } from './view.ts';

/** What the reader chose to see, out of the address. */
export type Cut = { readonly stop?: Stop | undefined; readonly torn?: number | 'none' | undefined };

export type CutShown = {
  readonly place: Place;
  readonly stream: string;
  readonly folded: FoldedVisit;
  readonly assessment: Assessment;
  readonly equipment: Equipment;
  readonly cut: Cut;
};

/** Drawn for each kind of screen, so that words in it are never scaled. */
const widths = { tiny: 316, narrow: 342, wide: 880 } as const;

/** The valve cut open, stop by stop, sound or with a seal torn. */
export const cutawayPage = (view: View, shown: CutShown): string => {
  const { place, stream, folded, equipment, assessment } = shown;
  const { visit } = folded;
  const unit = visit.conditioners.find(({ id }) => id === visit.subject);
  const family = unit === undefined ? undefined : equipment.families.get(unit.family);
  const title = view.word('server.paper.cutaway');
  const frame = within(view, place, title);
  const variant = likeliest({ assessment });
  const bore = family === undefined || variant === undefined ? undefined : boreOf(family, variant);
  if (family === undefined || bore === undefined)
    return page(
      view,
      frame,
      column(html('h1', {}, title), empty(html('p', {}, view.word('server.cut.none')))),
    );

  const chosen = shown.cut.stop ?? 'service';
  const likely = tornSeal({ assessment });
  const torn = shown.cut.torn === 'none' ? undefined : (shown.cut.torn ?? likely);
  const drawing = boreDrawing(bore, chosen);
  const draw = (options: DrawingOptions) =>
    cutaway(drawing, torn === undefined ? options : { ...options, torn });
  const made = (width: number, id: string) => draw({ ...view.reader, width, id });
  const wide = made(widths.wide, 'w');
  return page(
    view,
    {
      ...frame,
      columns: 'two',
      cells: [[view.word('server.cut.valve'), buildWords(view, family, variant ?? {})], ...place.cells],
    },
    column(
      html('h1', {}, view.word(`server.cut.at.${chosen}`)),
      html(
        'p',
        { class: 'lead' },
        html('a', { href: visitAddress(place, stream, folded.id) }, visit.site.name),
        `, ${unit?.name ?? visit.subject}`,
      ),
      html('h2', {}, view.word('server.cut.stop')),
      stopLinks(view, chosen),
      html(
        'figure',
        {},
        classed('div', 'tiny', made(widths.tiny, 't').svg),
        classed('div', 'narrow', made(widths.narrow, 'n').svg),
        classed('div', 'wide', wide.svg),
      ),
    ),
    column(
      html('h2', {}, view.word('server.cut.shows')),
      classed(
        'ul',
        'rows',
        wide.twin.map((one) => html('li', {}, formatMessage(one, view.reader))),
      ),
      html('h2', {}, view.word('server.cut.torn')),
      sealLinks(
        view,
        drawing.seals.map(({ number }) => number),
        torn,
      ),
      likely === undefined
        ? undefined
        : html('p', { class: 'told' }, view.word('server.cut.likely', { seal: likely })),
    ),
  );
};

const stopLinks = (view: View, chosen: Stop): Markup =>
  classed(
    'div',
    'pick',
    stops.map((stop) =>
      html(
        'a',
        {
          href: withParameter(view.address, 'stop', stop),
          'aria-current': stop === chosen ? 'true' : undefined,
        },
        view.word(`papers.stop.${stop}`),
      ),
    ),
  );

const sealLinks = (view: View, seals: readonly number[], torn: number | undefined): Markup =>
  classed(
    'div',
    'pick numbers',
    html(
      'a',
      {
        href: withParameter(view.address, 'torn', 'none'),
        'aria-current': torn === undefined ? 'true' : undefined,
      },
      view.word('server.cut.sound'),
    ),
    seals.map((seal) =>
      html(
        'a',
        {
          href: withParameter(view.address, 'torn', String(seal)),
          'aria-current': seal === torn ? 'true' : undefined,
          'aria-label': view.word('server.cut.seal', { seal }),
        },
        String(seal),
      ),
    ),
  );

const buildWords = (view: View, family: Family, variant: Readonly<Record<string, string>>): string => {
  const names = family.features.flatMap(({ id, values }) => {
    const value = values.find((one) => one.id === variant[id]);
    return value === undefined ? [] : [view.text(value.title)];
  });
  return [view.text(family.title), ...names].join(', ');
};
