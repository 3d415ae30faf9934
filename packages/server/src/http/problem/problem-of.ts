import { formatNumber } from '@brinewright/words';
import { sizes } from '../limits.ts';
import { type Problem, type ProblemCode, ProblemError } from './problems.ts';
import { storeTrouble } from './store-trouble.ts';

const frameworkProblems: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'too-large',
  FST_REQ_FILE_TOO_LARGE: 'too-large',
  FST_FILES_LIMIT: 'too-large',
  FST_FIELDS_LIMIT: 'too-large',
  FST_PARTS_LIMIT: 'too-large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'wrong-type',
  FST_INVALID_MULTIPART_CONTENT_TYPE: 'wrong-type',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'malformed-json',
  FST_ERR_CTP_INVALID_JSON_BODY: 'malformed-json',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'malformed-request',
  FST_PROTO_VIOLATION: 'malformed-request',
  FST_ERR_BAD_URL: 'bad-address',
  FST_ERR_MAX_PARAM_LENGTH: 'bad-address',
  FST_ERR_ASYNC_CONSTRAINT: 'bad-address',
  ERR_STREAM_PREMATURE_CLOSE: 'malformed-request',
};

/** Which problem an error comes to, and whether it is our mistake, to be logged as one. */
export const problemOf = (error: unknown, limit: number = sizes.message): Problem => {
  if (error instanceof ProblemError) return error.problem;
  const trouble = storeTrouble(error);
  if (trouble !== undefined) return trouble;
  const code = frameworkProblems[codeOf(error) ?? ''] ?? byStatus(error);
  return code === 'too-large' ? { code, values: { limit: megabytes(limit) } } : { code };
};

export const megabytes = (bytes: number): string => `${formatNumber(bytes / 1024 / 1024, 3)} MB`;

const byStatus = (error: unknown): ProblemCode => {
  switch (statusOf(error)) {
    case 429:
      return 'too-many';
    case 415:
      return 'wrong-type';
    case 413:
      return 'too-large';
    case 404:
      return 'not-found';
    case 400:
      return error instanceof SyntaxError ? 'malformed-json' : 'malformed-request';
    default:
      return 'our-mistake';
  }
};

const codeOf = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;

const statusOf = (error: unknown): number | undefined =>
  error instanceof Error && 'statusCode' in error && typeof error.statusCode === 'number'
    ? error.statusCode
    : undefined;
