import { papersDocumentsEn } from './papers-documents.ts';
import { papersDrawingsEn } from './papers-drawings.ts';

export const papersEn = { ...papersDrawingsEn, ...papersDocumentsEn } as const satisfies Record<
  string,
  string
>;
