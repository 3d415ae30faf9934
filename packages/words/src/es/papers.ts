import type { papersEn } from '../en/papers.ts';
import type { Translation } from '../translation.ts';
import { papersDocumentsEs } from './papers-documents.ts';
import { papersDrawingsEs } from './papers-drawings.ts';

export const papersEs = { ...papersDrawingsEs, ...papersDocumentsEs } as const satisfies Translation<
  typeof papersEn
>;
