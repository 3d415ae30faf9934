import { type Content, classed, html, type Markup } from '@brinewright/papers';
import type { Issue } from '@brinewright/words';
import { type IssueBody, issueBodyOf } from '../http/problem/problem-body.ts';
import type { Cell } from './page.ts';
import type { View } from './view.ts';

export const column = (...content: readonly Content[]): Markup => classed('section', 'col', content);

export const button = (to: string, says: string, isMain = false): Markup =>
  html('a', { class: isMain ? 'btn main' : 'btn', href: to }, says);

export const facts = (cells: readonly (Cell | undefined)[]): Markup =>
  classed(
    'dl',
    'facts',
    cells.flatMap((cell) => (cell === undefined ? [] : [html('dt', {}, cell[0]), html('dd', {}, cell[1])])),
  );

export const links = (items: readonly (readonly [to: string, says: string])[]): Markup =>
  classed(
    'ul',
    'links',
    items.map(([to, says]) => html('li', {}, html('a', { href: to }, says))),
  );

export const empty = (...content: readonly Content[]): Markup => classed('div', 'empty', content);

/** What was wrong with something: where, why, how to mend it. */
export const issueList = (view: View, issues: readonly (Issue | IssueBody)[]): Markup =>
  classed(
    'ul',
    'issues',
    issues.map((issue) => issueLine(view, isBody(issue) ? issue : issueBodyOf(issue, view.reader))),
  );

const isBody = (issue: Issue | IssueBody): issue is IssueBody => typeof issue.message === 'string';

const issueLine = (view: View, { file, line, at, message, mend }: IssueBody): Markup => {
  const where = file === undefined ? at : view.word('server.issue.place', { file, line: line ?? 1 });
  return html(
    'li',
    {},
    where === '' ? undefined : html('p', { class: 'note' }, where),
    html('p', {}, html('b', {}, message)),
    mend === undefined ? undefined : html('p', {}, mend),
  );
};
