import { classed, html } from '@brinewright/papers';
import type { Reader } from '@brinewright/words';
import type { ProblemBody } from '../http/problem/problem-body.ts';
import { type ProblemCode, problemStatus } from '../http/problem/problems.ts';
import { page } from './page.ts';
import { button, column, issueList } from './parts.ts';
import { viewFor } from './view.ts';

/** An error as a page: what happened, why, and the way on. */
export const problemPage = (reader: Reader, problem: ProblemBody): string => {
  const view = viewFor(reader, '/');
  const { title, detail, issues = [] } = problem;
  return page(
    view,
    { title, belongs: view.word('server.problem.number', { status: String(problem.status) }), home: '/' },
    column(
      classed(
        'div',
        'fault',
        html('h1', {}, title),
        html('p', {}, detail),
        issues.length === 0 ? undefined : issueList(view, issues),
      ),
      classed('div', 'acts', button('/', view.word('server.to-start'), true)),
    ),
  );
};

/** What a kind of problem means, at the address its type names. */
export const problemInfoPage = (reader: Reader, code: ProblemCode): string => {
  const view = viewFor(reader, `/problems/${code}`);
  const title = view.word(`server.problem.${code}`);
  return page(
    view,
    {
      title,
      belongs: view.word('server.problem.number', { status: String(problemStatus[code]) }),
      home: '/',
    },
    column(html('h1', {}, title), html('p', {}, html('code', {}, `/problems/${code}`))),
  );
};
