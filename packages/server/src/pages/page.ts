import { type Content, classed, html, type Markup, raw, written } from '@brinewright/papers';
import { lookAddress } from './look.ts';
import { backMark, brandMark } from './marks.ts';
import type { View } from './view.ts';

/** What stands round the content of a page. */
export type Frame = {
  readonly title: string;
  /** What the sheet belongs to: the workshop, or that all of it is the demo. */
  readonly belongs: string;
  readonly home: string;
  readonly back?: { readonly to: string; readonly says: string };
  readonly cells?: readonly Cell[];
  readonly columns?: 'one' | 'two' | 'three';
};

export type Cell = readonly [label: string, value: Content];

export const page = (view: View, frame: Frame, ...content: readonly Content[]): string => {
  const { language } = view.reader;
  const head = html(
    'head',
    {},
    raw('<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">'),
    html('title', {}, `${frame.title} · Brinewright`),
    raw(`<link rel="stylesheet" href="${lookAddress}">`),
  );
  const body = html(
    'body',
    {},
    html('a', { class: 'skip', href: '#main' }, view.word('server.skip')),
    classed('div', 'sheet', top(frame), main(frame, content), bottom(view, frame)),
  );
  return `<!doctype html>\n${written(html('html', { lang: language }, head, body))}\n`;
};

const top = ({ belongs, home, back }: Frame): Markup =>
  classed(
    'header',
    'top',
    back === undefined ? undefined : classed('nav', 'way', html('a', { href: back.to }, backMark, back.says)),
    html(
      'a',
      { class: 'brand', href: home },
      brandMark,
      html('span', {}, html('b', {}, 'Brinewright'), html('span', {}, belongs)),
    ),
  );

const main = ({ columns = 'one' }: Frame, content: readonly Content[]): Markup =>
  html('main', { id: 'main', class: columns, tabindex: '-1' }, content);

const bottom = (view: View, { cells = [] }: Frame): Markup =>
  classed(
    'footer',
    'cells',
    html(
      'dl',
      {},
      cells.map(cellOf),
      cellOf([view.word('server.language'), languages(view)]),
      unitsCell(view),
    ),
  );

const cellOf = ([label, value]: Cell): Markup =>
  html('div', {}, html('dt', {}, label), html('dd', {}, value));

const unitsCell = (view: View): Markup =>
  cellOf([
    view.word('server.units'),
    choice(view, 'system', view.reader.system, [
      ['us', view.word('server.units.us')],
      ['metric', view.word('server.units.metric')],
    ]),
  ]);

/** Each language by its own name. */
const languages = (view: View): Markup =>
  choice(view, 'lang', view.reader.language, [
    ['en', 'English'],
    ['es', 'Español'],
  ]);

const choice = (
  { address }: View,
  name: string,
  chosen: string,
  offered: readonly (readonly [string, string])[],
): Markup =>
  classed(
    'span',
    'choice',
    offered.map(([value, says]) =>
      html(
        'a',
        {
          href: withParameter(address, name, value),
          'aria-current': value === chosen ? 'true' : undefined,
          lang: name === 'lang' ? value : undefined,
        },
        says,
      ),
    ),
  );

/** The same address with one thing chosen anew. */
export const withParameter = (address: string, name: string, value: string): string => {
  const [path = '/', query = ''] = address.split('?');
  const parameters = new URLSearchParams(query);
  parameters.set(name, value);
  return `${path}?${parameters.toString()}`;
};
