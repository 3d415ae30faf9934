import { type Content, classed, html, type Markup } from '@brinewright/papers';
import type { LanEntrance } from '../http/house.ts';
import type { PairedDevice } from '../store/index.ts';
import { unitMark } from './marks.ts';
import { page } from './page.ts';
import { button, column, empty, facts } from './parts.ts';
import type { View } from './view.ts';

export type Start = {
  /** The own workshop where it has been begun. */
  readonly own: { readonly title: string; readonly visits: number } | undefined;
  readonly demoVisits: number | undefined;
  readonly devices: readonly PairedDevice[];
  readonly lan: LanEntrance | undefined;
  readonly code: { readonly code: string; readonly until: string } | undefined;
  readonly dataPlace: string;
};

/** Two doors, and what only the owner sees: devices, the code that lets one in, and where the record lies. */
export const startPage = (view: View, start: Start): string =>
  page(
    view,
    { title: view.word('server.start'), belongs: view.word('server.start.at'), home: '/', columns: 'two' },
    column(
      html('h1', {}, view.word('server.start')),
      ownDoor(view, start.own),
      start.demoVisits === undefined ? undefined : demoDoor(view, start.demoVisits),
    ),
    column(deviceSection(view, start), recordSection(view, start.dataPlace)),
  );

const ownDoor = (view: View, own: Start['own']): Markup =>
  classed(
    'section',
    'door next',
    html('span', { class: 'hand' }, view.word('server.door.own')),
    unitMark('softener'),
    ...(own === undefined
      ? [
          html('h2', {}, view.word('server.door.begin')),
          html('p', {}, view.word('server.door.begin.what')),
          classed('div', 'acts', button('/own/begin', view.word('server.door.begin.do'), true)),
        ]
      : [
          html('h2', {}, own.title),
          html('p', {}, view.word('server.door.own.what', { visits: own.visits })),
          classed('div', 'acts', button('/own/', view.word('server.door.own.do'), true)),
        ]),
  );

const demoDoor = (view: View, visits: number): Markup =>
  classed(
    'section',
    'door',
    unitMark('filter'),
    html('h2', {}, view.word('server.door.demo')),
    html('p', {}, view.word('server.door.demo.what', { visits })),
    html('p', { class: 'note' }, view.word('server.demo.invented')),
    classed('div', 'acts', button('/demo/', view.word('server.door.demo.do'))),
  );

const deviceSection = (view: View, { devices, lan, code, own }: Start): Content => [
  html('h2', {}, view.word('server.devices')),
  devices.length === 0
    ? html('p', { class: 'lead' }, view.word('server.devices.none'))
    : html(
        'ul',
        { class: 'rows' },
        devices.map((device) => deviceRow(view, device)),
      ),
  lan === undefined
    ? empty(html('p', {}, view.word('server.lan.off')), html('p', {}, html('code', {}, lanCommand)))
    : joining(view, lan, code, own !== undefined),
];

const lanCommand = 'npm run brinewright -- serve --lan';
const backupCommand = 'npm run brinewright -- backup brinewright-backup.sqlite';

const deviceRow = (view: View, { id, name, pairedAt, seenAt, revokedAt }: PairedDevice): Markup =>
  html(
    'li',
    {},
    html('h3', {}, name),
    html(
      'p',
      { class: 'note' },
      view.word('server.device.paired', { when: view.moment(pairedAt) }),
      seenAt === undefined ? '' : ` ${view.word('server.device.seen', { when: view.moment(seenAt) })}`,
    ),
    revokedAt === undefined
      ? html(
          'form',
          { method: 'post', action: `/devices/${id}/revoke` },
          html('button', {}, view.word('server.device.revoke')),
        )
      : html('p', {}, html('b', {}, view.word('server.device.revoked', { when: view.moment(revokedAt) }))),
  );

const joining = (view: View, lan: LanEntrance, code: Start['code'], hasBegun: boolean): Content => {
  if (!hasBegun) return html('p', { class: 'told' }, view.word('server.lan.begin-first'));
  return [
    html('h2', {}, view.word('server.join')),
    html(
      'ol',
      { class: 'rows' },
      html(
        'li',
        {},
        html('p', {}, view.word('server.join.open')),
        lan.urls.map((url) => html('p', { class: 'print' }, `${url}/pair`)),
      ),
      lan.authority === undefined
        ? undefined
        : html(
            'li',
            {},
            html('p', {}, view.word('server.join.trust')),
            lan.urls.slice(0, 1).map((url) => html('p', { class: 'print' }, `${url}/ca.crt`)),
          ),
      lan.fingerprint === undefined
        ? undefined
        : html(
            'li',
            {},
            html('p', {}, view.word('server.join.compare')),
            html('p', { class: 'print' }, breakable(lan.fingerprint)),
          ),
      html('li', {}, html('p', {}, view.word('server.join.code')), codeNow(view, code)),
    ),
  ];
};

/** Pairs of digits, parted where a line may end. */
const breakable = (fingerprint: string): Content =>
  fingerprint.split(':').map((pair, place) => [place === 0 ? '' : [':', html('wbr')], pair]);

const codeNow = (view: View, code: Start['code']): Content => [
  code === undefined
    ? html('p', { class: 'note' }, view.word('server.join.no-code'))
    : [
        html('p', { class: 'big-code' }, code.code),
        html('p', { class: 'note' }, view.word('server.join.until', { when: view.moment(code.until) })),
      ],
  html('form', { method: 'post', action: '/code' }, html('button', {}, view.word('server.join.draw'))),
];

const recordSection = (view: View, dataPlace: string): Content => [
  html('h2', {}, view.word('server.record')),
  facts([
    [view.word('server.record.place'), html('code', {}, dataPlace)],
    [view.word('server.record.backup'), html('code', {}, backupCommand)],
  ]),
  html('p', { class: 'note' }, view.word('server.record.hint')),
];
