import { formatMessage, type Issue, message, type Reader } from '@brinewright/words';
import { z } from 'zod';
import { type Problem, problemStatus } from './problems.ts';

export const issueBody = z.strictObject({
  code: z.string(),
  severity: z.enum(['error', 'warning', 'note']),
  at: z.string(),
  file: z.string().optional(),
  line: z.number().optional(),
  column: z.number().optional(),
  message: z.string(),
  mend: z.string().optional(),
});

/** Problem details (RFC 9457), with the issues found in what was sent, where there are some. */
export const problemBody = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: z.number(),
    detail: z.string(),
    instance: z.string(),
    issues: z.array(issueBody).optional(),
  })
  .meta({ id: 'Problem' });

export type ProblemBody = z.output<typeof problemBody>;
export type IssueBody = z.output<typeof issueBody>;

export const issueBodyOf = (
  { code, severity, at, place, message: what, mend }: Issue,
  reader: Reader,
): IssueBody => ({
  code,
  severity,
  at: at.join('.'),
  ...(place ?? {}),
  message: formatMessage(what, reader),
  ...(mend === undefined ? {} : { mend: formatMessage(mend, reader) }),
});

export const problemBodyOf = (
  { code, values = {}, issues }: Problem,
  reader: Reader,
  instance: string,
): ProblemBody => ({
  type: `/problems/${code}`,
  title: formatMessage(message(`server.problem.${code}`), reader),
  status: problemStatus[code],
  detail: formatMessage(message(`server.problem.${code}.detail`, values), reader),
  instance,
  ...(issues === undefined || issues.length === 0
    ? {}
    : { issues: issues.map((issue) => issueBodyOf(issue, reader)) }),
});
