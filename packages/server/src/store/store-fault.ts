/** What can be wrong with a store itself, as apart from what is wrong with an entry. */
export type FaultCode =
  /** Another process has the file open for writing. */
  | 'locked'
  /** The file is damaged, or its main part is gone. */
  | 'wrecked'
  /** The file is no database. */
  | 'no-database'
  /** A database, but of another program. */
  | 'not-ours'
  /** Written by a newer version of this program. */
  | 'newer'
  /** The tables are older than this program, and the role may not change them. */
  | 'not-migrated'
  /** The database does not answer; nothing is lost, the caller tries again. */
  | 'store-away'
  | 'full'
  | 'not-allowed'
  /** A file is there that would be written over. */
  | 'exists'
  /** There is no workshop here. */
  | 'nothing-here'
  /** The workshop here is of another company. */
  | 'other-workshop'
  /** The disk refuses to read or write. */
  | 'disk';

/** Thrown by a store that cannot do its work; `cause` is what the database said. */
export class StoreFault extends Error {
  override readonly name = 'StoreFault';
  readonly code: FaultCode;
  /** The file, or the database without its password. */
  readonly where: string;

  constructor(code: FaultCode, where: string, cause?: unknown) {
    super(`${code}: ${where}${cause instanceof Error ? ` (${cause.message})` : ''}`, { cause });
    this.code = code;
    this.where = where;
  }
}

/** The error as a fault of the store where it is one; anything else as it is. */
export const asFault = (error: unknown, where: string): unknown => {
  if (error instanceof StoreFault) return error;
  const code = sqliteFault(error) ?? systemFault(error) ?? postgresFault(error);
  return code === undefined ? error : new StoreFault(code, where, error);
};

const sqliteFaults: Readonly<Record<number, FaultCode>> = {
  3: 'not-allowed',
  5: 'locked',
  6: 'locked',
  8: 'not-allowed',
  10: 'disk',
  11: 'wrecked',
  13: 'full',
  14: 'not-allowed',
  23: 'not-allowed',
  26: 'no-database',
};

/** The low byte is the primary result code of SQLite. */
const sqliteFault = (error: unknown): FaultCode | undefined =>
  isObject(error) && 'errcode' in error && typeof error.errcode === 'number'
    ? sqliteFaults[error.errcode & 0xff]
    : undefined;

const systemFaults: Readonly<Record<string, FaultCode>> = {
  EACCES: 'not-allowed',
  EPERM: 'not-allowed',
  EROFS: 'not-allowed',
  ENOSPC: 'full',
  EDQUOT: 'full',
  EIO: 'disk',
};

const systemFault = (error: unknown): FaultCode | undefined => systemFaults[codeOf(error)];

/** Connection exceptions, shutdowns, timeouts, and what sockets say. */
const away =
  /^(?:08...|57P0[1-5]|57014|55P03|25P03|53[134]00|40P01|40001|ECONN\w+|ENOENT|EPIPE|ETIMEDOUT|EHOSTUNREACH|ENETUNREACH|ENOTFOUND|EAI_\w+)$/u;
const awaySayings =
  /connection terminated|connection error|not queryable|timeout exceeded|connection ended|has been discarded|client was closed/iu;

const postgresFault = (error: unknown): FaultCode | undefined => {
  const code = codeOf(error);
  if (code === '53100') return 'full';
  if (code === '42501' || code.startsWith('28')) return 'not-allowed';
  if (code === 'XX001' || code === 'XX002') return 'wrecked';
  if (code === '58030') return 'disk';
  if (away.test(code)) return 'store-away';
  if (error instanceof AggregateError && error.errors.some((one) => away.test(codeOf(one))))
    return 'store-away';
  return error instanceof Error && awaySayings.test(error.message) ? 'store-away' : undefined;
};

const codeOf = (error: unknown): string =>
  isObject(error) && 'code' in error && typeof error.code === 'string' ? error.code : '';

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** An address as it may be shown: without password, wherever in it that stands. */
export const withoutPassword = (url: string): string =>
  url.replace(/(\/\/[^:@/?]*):[^@/?]*@/u, '$1@').replaceAll(/([?&])password=[^&]*&?/gu, '$1');
