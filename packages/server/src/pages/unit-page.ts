import type { Family } from '@brinewright/equipment';
import { type FoldedSite, type HistoryLine, historyOf } from '@brinewright/journal';
import { classed, html, type Markup } from '@brinewright/papers';
import type { Conditioner } from '@brinewright/service';
import { formatQuantity } from '@brinewright/words';
import { unitMark } from './marks.ts';
import { page } from './page.ts';
import { column, empty, facts } from './parts.ts';
import { type Place, visitAddress, within } from './place.ts';
import type { View } from './view.ts';

/** What was done at a unit so far, newest first. */
export const unitPage = (
  view: View,
  {
    place,
    stream,
    site,
    unit,
    family,
  }: {
    readonly place: Place;
    readonly stream: string;
    readonly site: FoldedSite;
    readonly unit: Conditioner;
    readonly family: Family | undefined;
  },
): string => {
  const lines = historyOf(site, unit.id);
  const partName = (id: string): string => {
    const part = family?.parts.find((one) => one.id === id);
    return part === undefined ? id : view.text(part.title);
  };
  return page(
    view,
    within(view, place, unit.name ?? unit.id),
    column(
      classed('div', 'head', unitMark(unit.kind), html('h1', {}, unit.name ?? unit.id)),
      html('p', {}, site.site?.name ?? ''),
      html('h2', {}, view.word('server.unit.history')),
      lines.length === 0
        ? empty(html('p', {}, view.word('server.unit.no-visits')))
        : html(
            'ol',
            { class: 'rows' },
            lines.map((line) => historyRow(view, line, visitAddress(place, stream, line.visit), partName)),
          ),
    ),
  );
};

const historyRow = (view: View, line: HistoryLine, to: string, partName: (id: string) => string): Markup => {
  const { date, by, complaint, used, set, readings, proofs, isHandedOver } = line;
  const counted = (count: number): string | undefined => (count === 0 ? undefined : String(count));
  const cells = [
    [view.word('server.visit.by'), by],
    [
      view.word('server.holds.parts'),
      used.map(({ part, count }) => `${count} × ${partName(part)}`).join(', '),
    ],
    [view.word('server.holds.set'), settingsText(view, set)],
    [view.word('server.holds.readings'), counted(readings.length)],
    [view.word('server.holds.proofs'), counted(proofs.length)],
  ] as const;
  return html(
    'li',
    {},
    classed(
      'p',
      'when',
      html('span', {}, view.day(date)),
      isHandedOver
        ? html('span', { class: 'done' }, view.word('server.visit.handed-over'))
        : html('span', { class: 'open' }, view.word('server.visit.open')),
    ),
    html(
      'h3',
      {},
      html(
        'a',
        { href: to },
        complaint === undefined ? view.word('server.visit.one') : view.text(complaint.words),
      ),
    ),
    facts(
      cells.flatMap(([label, value]) =>
        value === undefined || value === '' ? [] : [[label, value] as const],
      ),
    ),
  );
};

const settingsText = (view: View, set: HistoryLine['set']): string =>
  Object.entries(set ?? {})
    .flatMap(([setting, value]) => (value === undefined ? [] : [`${setting} ${valueText(view, value)}`]))
    .join(', ');

const valueText = (
  { reader }: View,
  value: NonNullable<NonNullable<HistoryLine['set']>[keyof NonNullable<HistoryLine['set']>]>,
): string => (typeof value === 'object' ? formatQuantity(value, reader).text : String(value));
