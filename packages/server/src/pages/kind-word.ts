import { isKindName } from '@brinewright/journal';
import type { View } from './view.ts';

/** 'reading taken' for 'reading-taken/1'; a kind that is not known by its own name. */
export const kindWord = (view: View, kind: string): string => {
  const [name = ''] = kind.split('/');
  return isKindName(name) ? view.word(`record.kind.${name}`) : kind;
};
