import type { About, Remarks, Rival, Said } from '@brinewright/journal';
import { type Content, classed, html, type Markup } from '@brinewright/papers';
import type { Issue } from '@brinewright/words';
import { canSettle } from '../workshop/settle.ts';
import { kindWord } from './kind-word.ts';
import { page } from './page.ts';
import { column, empty, issueList } from './parts.ts';
import { type Place, within } from './place.ts';
import type { View } from './view.ts';

export type Looked = {
  readonly place: Place;
  readonly title: string;
  readonly remarks: Remarks;
  /** Where a choice between rivals goes. */
  readonly settleAt: string;
};

/** What wants to be looked at: values that disagree, and entries that could not be taken in yet. */
export const remarksPage = (view: View, { place, title, remarks, settleAt }: Looked): string => {
  const { rivals, setAside, waiting, newer } = remarks;
  const isQuiet = rivals.length + setAside.length + waiting.length + newer.length === 0;
  return page(
    view,
    within(view, place, title),
    column(
      html('h1', {}, title),
      isQuiet ? empty(html('p', {}, view.word('server.remarks.none'))) : undefined,
      rivals.length === 0
        ? undefined
        : [
            html('h2', {}, view.word('server.rivals')),
            html('p', { class: 'lead' }, view.word('server.rivals.what')),
            rivals.map((rival, index) => rivalForm(view, rival, index, settleAt)),
          ],
      remarkList(view, 'server.set-aside', setAside, (one) => issueList(view, one.issues.map(whatIsWrong))),
      remarkList(view, 'server.waiting', waiting, (one) =>
        html('p', { class: 'note' }, view.word('server.waiting.for', { what: one.for })),
      ),
      remarkList(view, 'server.newer', newer, () => undefined),
    ),
  );
};

/** Nobody mends an entry where it is written; what is wrong with it is enough. */
const whatIsWrong = ({ code, severity, at, message }: Issue): Issue => ({ code, severity, at, message });

const rivalForm = (view: View, rival: Rival, index: number, settleAt: string): Markup => {
  const { about, kind, what, values } = rival;
  const title = [kindWord(view, kind), what, ...aboutWords(view, about)]
    .filter((one) => one !== '')
    .join(', ');
  const choices = values.map((one, place) =>
    html(
      'label',
      { class: 'choose' },
      canSettle(rival)
        ? html('input', {
            type: 'radio',
            name: 'entry',
            value: one.entry,
            id: `r${index}-${place}`,
            required: '',
          })
        : html('span', {}),
      html(
        'span',
        {},
        html('b', {}, shown(view, one.value)),
        html('span', { class: 'note' }, saidBy(view, one)),
        place === 0
          ? html('span', { class: 'in-force' }, ` ${view.word('server.rivals.in-force')}`)
          : undefined,
      ),
    ),
  );
  const hidden = { kind, what, visit: about.visit ?? '', conditioner: about.conditioner ?? '' };
  return canSettle(rival)
    ? html(
        'form',
        { method: 'post', action: settleAt, class: 'settle' },
        html('fieldset', {}, html('legend', {}, title), choices),
        Object.entries(hidden).map(([name, value]) => html('input', { type: 'hidden', name, value })),
        html('button', { class: 'main' }, view.word('server.rivals.do')),
      )
    : classed(
        'div',
        'doubt',
        html('h3', {}, title),
        choices,
        html('p', {}, view.word('server.rivals.elsewhere')),
      );
};

const aboutWords = (view: View, { visit, conditioner }: About): readonly string[] => [
  ...(conditioner === undefined ? [] : [view.word('server.about.unit', { unit: conditioner })]),
  ...(visit === undefined ? [] : [view.word('server.about.visit', { visit })]),
];

/** A value as it was entered; what has parts, part by part. */
export const shown = (view: View, value: unknown): string => {
  if (value === null || value === undefined) return view.word('server.withdrawn');
  if (typeof value !== 'object') return String(value);
  if (Array.isArray(value)) return value.map((one) => shown(view, one)).join(', ');
  return Object.entries(value)
    .map(([key, held]) => `${key} ${shown(view, held)}`)
    .join(', ');
};

export const saidBy = (view: View, { author, at, zone, clockOff }: Said): string => {
  const said = view.word('server.said', { author, when: view.moment(at, zone) });
  return clockOff === undefined
    ? said
    : `${said} ${view.word('server.said.clock', { minutes: Math.round(Math.abs(clockOff) / 60_000) })}`;
};

type Remark = Said & { readonly kind: string; readonly about: About };

const remarkList = <T extends Remark>(
  view: View,
  key: 'server.set-aside' | 'server.waiting' | 'server.newer',
  remarks: readonly T[],
  more: (remark: T) => Content,
): Content =>
  remarks.length === 0
    ? undefined
    : [
        html('h2', {}, view.word(key)),
        html('p', { class: 'lead' }, view.word(`${key}.what`)),
        html(
          'ul',
          { class: 'rows' },
          remarks.map((one) =>
            html(
              'li',
              {},
              html('h3', {}, [kindWord(view, one.kind), ...aboutWords(view, one.about)].join(', ')),
              html('p', { class: 'note' }, saidBy(view, one)),
              more(one),
            ),
          ),
        ),
      ];
