import { StoreFault } from '../../store/index.ts';
import type { Problem } from './problems.ts';

const retryAfter = { 'retry-after': '5' };

/** What a store cannot help: a database that is away, a disk that is full. Nothing was half-written. */
export const storeTrouble = (error: unknown): Problem | undefined => {
  switch (error instanceof StoreFault ? error.code : systemTrouble(error)) {
    case 'store-away':
    case 'locked':
      return { code: 'away', headers: retryAfter };
    case 'full':
      return { code: 'full' };
    default:
      return undefined;
  }
};

/** The file system under the files of content. */
const systemTrouble = (error: unknown): 'full' | undefined => {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return code === 'ENOSPC' || code === 'EDQUOT' ? 'full' : undefined;
};
