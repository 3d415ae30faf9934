import { type Content, classed, html, type Markup } from '@brinewright/papers';
import { page } from './page.ts';
import { button, column } from './parts.ts';
import type { View } from './view.ts';

type Field = { readonly name: string; readonly says: string; readonly note?: string; readonly of?: string };

export const textField = ({ name, says, note, of }: Field, isNeeded: boolean): Markup =>
  html(
    'label',
    { class: 'field' },
    says,
    note === undefined ? undefined : html('span', { class: 'note' }, ` ${note}`),
    html('input', {
      type: 'text',
      name,
      maxlength: 200,
      autocomplete: 'off',
      class: of,
      ...(isNeeded ? { required: '' } : {}),
    }),
  );

/** Your name, and what the workshop is called. */
export const beginPage = (view: View): string =>
  page(
    view,
    {
      title: view.word('server.begin'),
      belongs: view.word('server.start.at'),
      home: '/',
      back: { to: '/', says: view.word('server.start') },
    },
    column(
      html('h1', {}, view.word('server.begin')),
      html('p', { class: 'lead' }, view.word('server.begin.what')),
      html(
        'form',
        { method: 'post', action: '/own/begin' },
        textField({ name: 'author', says: view.word('server.begin.author') }, true),
        textField(
          {
            name: 'name',
            says: view.word('server.begin.name'),
            note: view.word('server.begin.name.note'),
          },
          false,
        ),
        html('button', { class: 'main' }, view.word('server.begin.do')),
      ),
    ),
  );

/** Where a device enters the code it was given, once. */
export const pairPage = (view: View, fault?: string): string =>
  page(
    view,
    { title: view.word('server.pair'), belongs: view.word('server.pair.at'), home: '/pair' },
    column(
      html('h1', {}, view.word('server.pair')),
      html('p', { class: 'lead' }, view.word('server.pair.what')),
      fault === undefined ? undefined : classed('div', 'fault', html('p', {}, fault)),
      html(
        'form',
        { method: 'post', action: '/pair' },
        textField({ name: 'code', says: view.word('server.pair.code'), of: 'code-in' }, true),
        textField(
          {
            name: 'name',
            says: view.word('server.pair.name'),
            note: view.word('server.pair.name.note'),
          },
          true,
        ),
        html('button', { class: 'main' }, view.word('server.pair.do')),
      ),
    ),
  );

/** Something was done; what it was, and the way on. */
export const donePage = (view: View, title: string, to: string, ...more: readonly Content[]): string =>
  page(
    view,
    { title, belongs: view.word('server.start.at'), home: '/' },
    column(
      html('h1', {}, title),
      classed('div', 'told', more),
      classed('div', 'acts', button(to, view.word('server.go-on'), true)),
    ),
  );
