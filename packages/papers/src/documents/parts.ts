import type { Gap, Stage } from '@brinewright/service';
import type { Message } from '@brinewright/words';
import type { Drawing, DrawingOptions } from '../drawings/drawing.ts';
import { type Content, type Markup, written } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { drawingOptions, type Sheet, widths } from './sheet.ts';

export const section = (title: string, of: string | undefined, ...content: readonly Content[]): Markup =>
  html('section', { class: of }, html('h2', {}, title), content);

export const sentences = (sheet: Sheet, messages: readonly Message[], of?: string): Markup | undefined =>
  messages.length === 0
    ? undefined
    : html(
        'div',
        { class: of },
        messages.map((one) => html('p', {}, sheet.say(one))),
      );

/** A square with a tick or an empty one: the word beside it says the same. */
export const tick = (done: boolean): Markup =>
  html('span', { class: done ? 'mark done' : 'mark', 'aria-hidden': 'true' }, done ? '✓' : '');

export const ticks = (lines: readonly { readonly met: boolean; readonly says: string }[], of = ''): Markup =>
  html(
    'ul',
    { class: `ticks ${of}`.trim() },
    lines.map(({ met, says }) => html('li', {}, tick(met), html('span', {}, says))),
  );

export const bullets = (lines: readonly Content[], of?: string): Markup | undefined =>
  lines.length === 0
    ? undefined
    : html(
        'ul',
        { class: of },
        lines.map((line) => html('li', {}, line)),
      );

export type Column = {
  readonly title: string;
  readonly num?: boolean;
  /** Where the head of the table is left out, the cell says its own title. */
  readonly labelled?: boolean;
};

const cell = (name: 'td' | 'th', column: Column | undefined, content: Content): Markup =>
  html(
    name,
    {
      class: column?.num === true ? 'num' : undefined,
      scope: name === 'th' ? 'col' : undefined,
      'data-label': name === 'td' && column?.labelled === true ? column.title : undefined,
    },
    content,
  );

export type Row = {
  readonly cells: readonly Content[];
  readonly of?: string | undefined /** A line beneath, across the table. */;
  readonly under?: Content;
};

/** A ruled table; its first cell in a row names the row. */
export const table = (columns: readonly Column[], rows: readonly Row[], of?: string): Markup =>
  html(
    'table',
    { class: of },
    html(
      'thead',
      {},
      html(
        'tr',
        {},
        columns.map((column) => cell('th', column, column.title)),
      ),
    ),
    html(
      'tbody',
      {},
      rows.map(({ cells, of: kind, under }) => [
        html(
          'tr',
          { class: under === undefined ? kind : `${kind ?? ''} with-under`.trim() },
          cells.map((content, index) => cell('td', columns[index], content)),
        ),
        under === undefined
          ? undefined
          : html('tr', { class: 'under' }, html('td', { colspan: columns.length }, under)),
      ]),
    ),
  );

/** A long narrow table in two halves beside each other, where there is room. */
export const inHalves = (columns: readonly Column[], rows: readonly Row[], of?: string): Markup => {
  const half = Math.ceil(rows.length / 2);
  const parts = [rows.slice(0, half), rows.slice(half)].filter((part) => part.length > 0);
  return classed(
    'div',
    'two halves',
    parts.map((part) => html('div', {}, table(columns, part, of))),
  );
};

/** A stage that lacks something says what, and never shows a blank. */
export const missing = (sheet: Sheet, gaps: readonly Gap[]): Markup =>
  classed(
    'div',
    'missing',
    html('p', { class: 'strong' }, sheet.word('papers.missing')),
    bullets(
      gaps.length === 0 ? [sheet.word('papers.missing.unknown')] : gaps.map((gap) => sheet.say(gap.message)),
    ),
  );

/** The section of a stage: its content once it is done, what it lacks while it is blocked or has nothing to say. */
export const staged = <T>(sheet: Sheet, stage: Stage<T>, show: (value: T) => Content): Content => {
  const shown = stage.state === 'done' ? show(stage.value) : undefined;
  return written(shown) === '' ? missing(sheet, stage.gaps) : shown;
};

const inWords = (sheet: Sheet, twin: readonly Message[]): Markup =>
  html(
    'details',
    { class: 'twin' },
    html('summary', {}, sheet.word('papers.in-words')),
    bullets(twin.map((one) => sheet.say(one))),
  );

/** A drawing at both widths, with what it shows in words beneath. */
export const pictured = (
  sheet: Sheet,
  id: string,
  draw: (options: DrawingOptions) => Drawing,
  wide: number = widths.wide,
): Markup => {
  const large = draw(drawingOptions(sheet, wide, `${id}-w`));
  const small = draw(drawingOptions(sheet, widths.narrow, `${id}-n`));
  return html(
    'figure',
    {},
    classed('div', 'wide', large.svg),
    classed('div', 'narrow', small.svg),
    inWords(sheet, large.twin),
  );
};
