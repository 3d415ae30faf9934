import type { Entry, FoldedSite, FoldedVisit } from '@brinewright/journal';
import { isTombstone, saidOf } from '@brinewright/journal';
import { type Content, classed, html, type Markup } from '@brinewright/papers';
import { dayOf } from '../workshop/visit-line.ts';
import { kindWord } from './kind-word.ts';
import { unitMark } from './marks.ts';
import { page } from './page.ts';
import { button, column, facts, links } from './parts.ts';
import { baseOf, type Place, siteAddress, unitAddress, visitAddress, within } from './place.ts';
import { remarkCount } from './remarks.ts';
import { saidBy, shown } from './site-page.ts';
import type { View } from './view.ts';

export type VisitShown = {
  readonly place: Place;
  readonly stream: string;
  readonly site: FoldedSite;
  readonly folded: FoldedVisit;
  /** Its entries, in the order in which they were written. */
  readonly entries: readonly Entry[];
  /** The definitions it is looked at with now. */
  readonly digest: string;
};

/** One visit: its papers, what is in it, and who entered what. */
export const visitPage = (view: View, shown: VisitShown): string => {
  const { place, stream, site, folded, digest } = shown;
  const { visit } = folded;
  const unit = visit.conditioners.find(({ id }) => id === visit.subject);
  const to = visitAddress(place, stream, folded.id);
  const remarks = remarkCount(site);
  return page(
    view,
    { ...within(view, place, visit.site.name), columns: 'two' },
    column(
      classed('div', 'head', unitMark(unit?.kind), html('h1', {}, visit.site.name)),
      html('p', {}, unit?.name ?? visit.subject),
      visit.complaint === undefined
        ? undefined
        : html('q', { class: 'lead' }, view.text(visit.complaint.words)),
      classed(
        'div',
        'acts',
        button(`${to}/report`, view.word('server.paper.report'), true),
        button(`${to}/sheet`, view.word('server.paper.sheet')),
        button(`${to}/card`, view.word('server.paper.card')),
        button(`${to}/cutaway`, view.word('server.paper.cutaway')),
      ),
      pinnedNote(view, folded, digest),
      remarks === 0
        ? undefined
        : html(
            'p',
            { class: 'doubt' },
            html('a', { href: siteAddress(place, stream) }, view.word('server.remarks.count', { remarks })),
          ),
      html('h2', {}, view.word('server.visit.entries')),
      entryList(view, shown.entries),
    ),
    column(
      html('h2', {}, view.word('server.visit.facts')),
      factsOf(view, folded),
      html('h2', {}, view.word('server.visit.holds')),
      holds(view, folded),
      html('h2', {}, view.word('server.visit.more')),
      links([
        [unitAddress(place, stream, visit.subject), view.word('server.unit.history')],
        [`${apiOf(place)}/visits/${stream}/${folded.id}?format=yaml`, view.word('server.visit.yaml')],
        [`${apiOf(place)}/visits/${stream}/${folded.id}/assessment`, view.word('server.visit.assessment')],
      ]),
    ),
  );
};

const apiOf = (place: Place): string => `${baseOf(place)}/api`;

/** Papers are computed with the definitions of the visit; where those are not here, it is said (F5). */
const pinnedNote = (view: View, { visit, handedOver, gone }: FoldedVisit, digest: string): Content => [
  visit.definitions === undefined || visit.definitions === digest
    ? undefined
    : html('p', { class: 'doubt' }, view.word('server.visit.other-definitions')),
  gone.length === 0
    ? undefined
    : html('p', { class: 'doubt' }, view.word('server.visit.gone', { what: gone.join(', ') })),
  handedOver?.shown === undefined
    ? undefined
    : html('p', { class: 'told' }, view.word('server.visit.shown-then', { engine: handedOver.shown.engine })),
];

const factsOf = (view: View, folded: FoldedVisit): Markup => {
  const { visit, started, last, entries, handedOver } = folded;
  return facts([
    [view.word('server.visit.date'), view.day(dayOf(folded))],
    visit.by === undefined
      ? undefined
      : [
          view.word('server.visit.by'),
          [visit.by.name, visit.by.company].filter((one) => one !== undefined).join(', '),
        ],
    [
      view.word('server.visit.state'),
      handedOver === undefined
        ? view.word('server.visit.open')
        : `${view.word('server.visit.handed-over')}, ${view.moment(visit.handOver?.at ?? handedOver.at, handedOver.zone)}`,
    ],
    [view.word('server.visit.started'), saidBy(view, started)],
    [view.word('server.visit.last'), saidBy(view, last)],
    [view.word('server.visit.count'), String(entries)],
  ]);
};

const holds = (view: View, { visit }: FoldedVisit): Markup => {
  const counts = [
    ['server.holds.answers', visit.answers?.length],
    ['server.holds.readings', visit.readings?.length],
    ['server.holds.operations', visit.done?.length],
    ['server.holds.parts', visit.used?.length],
    ['server.holds.found', Object.keys(visit.settings?.found ?? {}).length],
    ['server.holds.set', Object.keys(visit.settings?.set ?? {}).length],
    ['server.holds.proofs', visit.proofs?.length],
    ['server.holds.photos', visit.photos?.length],
  ] as const;
  const present = counts.filter(([, count]) => (count ?? 0) > 0);
  return present.length === 0
    ? html('p', { class: 'lead' }, view.word('server.holds.nothing'))
    : facts(present.map(([key, count]) => [view.word(key), String(count)]));
};

const entryList = (view: View, entries: readonly Entry[]): Markup =>
  classed(
    'ol',
    'rows entries',
    entries.map((entry) => {
      const of = entry.about.conditioner;
      const unit = of === undefined ? '' : `, ${view.word('server.about.unit', { unit: of })}`;
      return html(
        'li',
        {},
        html(
          'div',
          {},
          html('p', {}, kindWord(view, entry.kind), unit),
          html('p', { class: 'note' }, short(contentOf(view, entry))),
        ),
        html('p', { class: 'note' }, saidBy(view, saidOf(entry))),
      );
    }),
  );

const contentOf = (view: View, entry: Entry): string =>
  isTombstone(entry) ? view.word('server.entry.redacted') : shown(view, entry.payload);

const longest = 120;

const short = (text: string): string => (text.length <= longest ? text : `${text.slice(0, longest - 1)}…`);
