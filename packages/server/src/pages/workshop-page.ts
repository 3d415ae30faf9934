import { type Content, classed, html, type Markup } from '@brinewright/papers';
import type { InUse } from '../workshop/definitions.ts';
import type { SiteOf } from '../workshop/log-follower.ts';
import { tableNames } from '../workshop/tables.ts';
import { newestFirst, type VisitLine, visitLines } from '../workshop/visit-line.ts';
import { unitMark } from './marks.ts';
import { page } from './page.ts';
import { button, column, empty, issueList, links } from './parts.ts';
import { appAddress, baseOf, type Place, siteAddress, unitAddress, visitAddress } from './place.ts';
import { remarkCount } from './remarks.ts';
import type { View } from './view.ts';

export type Shown = {
  readonly place: Place;
  readonly sites: readonly SiteOf[];
  readonly uploaded: readonly { readonly name: string }[];
  readonly inUse: InUse;
  /** What disagrees or waits in the workshop's own stream. */
  readonly ownRemarks: number;
};

/** Every visit under its site, and what can be brought in and taken away. */
export const workshopPage = (view: View, shown: Shown): string => {
  const { place, sites } = shown;
  return page(
    view,
    {
      title: view.word('server.visits'),
      belongs: place.title,
      home: '/',
      back: { to: '/', says: view.word('server.start') },
      cells: place.cells,
      columns: 'two',
    },
    column(
      html('h1', {}, view.word('server.visits')),
      place.hasApp ? openApp(view, place) : undefined,
      place.name === 'demo' ? html('p', { class: 'lead' }, view.word('server.demo.invented')) : undefined,
      sites.length === 0 ? nothingYet(view) : bySite(sites).map((site) => siteSection(view, place, site)),
    ),
    column(remarksOf(view, shown), bringing(view, shown), takingAway(view, place)),
  );
};

/** To the app, which leads through a visit; these pages only show. */
const openApp = (view: View, place: Place): Markup =>
  html(
    'div',
    { class: 'acts' },
    button(appAddress(place), view.word('server.app.open'), true),
    html('span', { class: 'note' }, view.word('server.app.open.what')),
  );

/** The site with the newest visit first. */
const bySite = (sites: readonly SiteOf[]): readonly (SiteOf & { readonly lines: readonly VisitLine[] })[] =>
  sites
    .map((site) => ({ ...site, lines: visitLines(site) }))
    .toSorted((a, b) => newestFirst({ day: a.lines[0]?.day ?? '' }, { day: b.lines[0]?.day ?? '' }));

const nothingYet = (view: View): Markup =>
  empty(html('h2', {}, view.word('server.visits.none')), html('p', {}, view.word('server.visits.none.do')));

const siteSection = (
  view: View,
  place: Place,
  { stream, folded, lines }: SiteOf & { readonly lines: readonly VisitLine[] },
): Markup => {
  const { name, address } = folded.site ?? {};
  const remarks = remarkCount(folded);
  return classed(
    'section',
    'site',
    html('h2', {}, name ?? view.word('server.site.unknown')),
    address === undefined ? undefined : html('p', { class: 'note' }, address),
    remarks === 0
      ? undefined
      : html(
          'p',
          {},
          html('a', { href: siteAddress(place, stream) }, view.word('server.remarks.count', { remarks })),
        ),
    html(
      'ul',
      { class: 'rows' },
      lines.map((line) => visitRow(view, place, line)),
    ),
  );
};

const visitRow = (view: View, place: Place, { stream, folded, day, unit }: VisitLine): Markup => {
  const { visit, id, handedOver } = folded;
  const to = visitAddress(place, stream, id);
  return html(
    'li',
    { class: 'visit' },
    unitMark(unit?.kind),
    html(
      'div',
      {},
      classed(
        'p',
        'when',
        html('span', {}, view.day(day)),
        handedOver === undefined
          ? html('span', { class: 'open' }, view.word('server.visit.open'))
          : html('span', { class: 'done' }, view.word('server.visit.handed-over')),
      ),
      html('h3', {}, html('a', { href: to }, unit?.name ?? visit.subject)),
      visit.complaint === undefined ? undefined : html('q', {}, view.text(visit.complaint.words)),
    ),
    classed('div', 'papers', paperLinks(view, to), unitLink(view, place, stream, visit.subject)),
  );
};

export const paperLinks = (view: View, visit: string): Content => [
  html('a', { href: `${visit}/report` }, view.word('server.paper.report')),
  html('a', { href: `${visit}/sheet` }, view.word('server.paper.sheet')),
  html('a', { href: `${visit}/card` }, view.word('server.paper.card')),
  html('a', { href: `${visit}/cutaway` }, view.word('server.paper.cutaway')),
];

const unitLink = (view: View, place: Place, stream: string, unit: string): Markup =>
  html('a', { href: unitAddress(place, stream, unit) }, view.word('server.unit.history'));

const remarksOf = (view: View, { place, sites, inUse, ownRemarks }: Shown): Content => {
  const remarks = sites
    .map((one) => ({ ...one, count: remarkCount(one.folded) }))
    .filter(({ count }) => count > 0);
  const own: readonly (readonly [string, string])[] =
    ownRemarks === 0
      ? []
      : [[`${baseOf(place)}/remarks`, view.word('server.remarks.own', { remarks: ownRemarks })]];
  const all = [
    ...own,
    ...remarks.map(
      ({ stream, folded, count }) =>
        [
          siteAddress(place, stream),
          view.word('server.remarks.at', {
            site: folded.site?.name ?? view.word('server.site.unknown'),
            remarks: count,
          }),
        ] as const,
    ),
  ];
  const { missing, leftOut } = inUse;
  return [
    all.length === 0 ? undefined : [html('h2', {}, view.word('server.remarks')), links(all)],
    missing.length === 0
      ? undefined
      : html('p', { class: 'doubt' }, view.word('server.definitions.missing', { names: missing.join(', ') })),
    leftOut.length === 0
      ? undefined
      : classed(
          'div',
          'doubt',
          html('p', {}, view.word('server.definitions.left-out')),
          issueList(view, leftOut),
        ),
  ];
};

const bringing = (view: View, { place, uploaded }: Shown): Content => [
  html('h2', {}, view.word('server.bring')),
  upload(view, `${baseOf(place)}/visits`, 'server.bring.visit', 'server.bring.visit.do'),
  upload(view, `${baseOf(place)}/definitions`, 'server.bring.definition', 'server.bring.definition.do'),
  uploaded.length === 0
    ? undefined
    : html(
        'p',
        { class: 'note' },
        view.word('server.definitions.own', { names: uploaded.map(({ name }) => name).join(', ') }),
      ),
];

const upload = (
  view: View,
  to: string,
  says: 'server.bring.visit' | 'server.bring.definition',
  act: 'server.bring.visit.do' | 'server.bring.definition.do',
): Markup =>
  html(
    'form',
    { method: 'post', action: to, enctype: 'multipart/form-data' },
    html(
      'label',
      {},
      view.word(says),
      html('input', { type: 'file', name: 'file', accept: '.yaml,.yml', required: '' }),
    ),
    html('button', {}, view.word(act)),
  );

const takingAway = (view: View, place: Place): Content => [
  html('h2', {}, view.word('server.take')),
  links([[`${baseOf(place)}/api/export.json`, view.word('server.take.all')]]),
  html(
    'details',
    {},
    html('summary', {}, view.word('server.take.tables')),
    links(
      tableNames.map((name) => [
        `${baseOf(place)}/api/export/${name}.csv`,
        view.word(`server.table.${name}`),
      ]),
    ),
  ),
];
