import type { Issue, MessageValue } from '@brinewright/words';

/** Everything that can go wrong for who asks, with its HTTP status. Words: `server.problem.<code>` and `….detail`. */
export const problemStatus = {
  'malformed-json': 400,
  'malformed-request': 400,
  invalid: 400,
  'bad-address': 400,
  'not-paired': 401,
  'owner-only': 403,
  'wrong-host': 403,
  'other-origin': 403,
  'wrong-code': 403,
  'no-code': 403,
  'not-found': 404,
  'no-such-site': 404,
  'no-such-visit': 404,
  'no-such-unit': 404,
  'no-such-file': 404,
  'no-such-table': 404,
  'no-demo': 404,
  'wrong-method': 405,
  'not-begun': 409,
  'begun-already': 409,
  'visit-there': 409,
  'not-settled': 409,
  'too-large': 413,
  'wrong-type': 415,
  'visit-faulty': 422,
  'is-definition': 422,
  'definition-faulty': 422,
  'wrong-hash': 422,
  'nothing-sent': 422,
  'too-many': 429,
  'our-mistake': 500,
  away: 503,
  full: 507,
} as const;

export type ProblemCode = keyof typeof problemStatus;

export type Problem = {
  readonly code: ProblemCode;
  readonly values?: Readonly<Record<string, MessageValue>>;
  readonly issues?: readonly Issue[];
  readonly headers?: Readonly<Record<string, string>>;
};

/** Thrown by a route to end in this problem; expected, never logged as a fault. */
export class ProblemError extends Error {
  readonly problem: Problem;

  constructor(code: ProblemCode, more: Omit<Problem, 'code'> = {}) {
    super(code);
    this.name = 'ProblemError';
    this.problem = { code, ...more };
  }
}

export const isProblemCode = (code: string): code is ProblemCode => Object.hasOwn(problemStatus, code);
