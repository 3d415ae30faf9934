import type { Result } from '@brinewright/words';
import canonicalize from 'canonicalize';
import { z } from 'zod';
import { type Compiled, compileDefinitions } from '../compile/compile-definitions.ts';
import { issueAt } from '../issue/report.ts';
import { parseDefinition } from './parse-definition.ts';

/** A definition as it is written, with the name of its file. */
export type DefinitionText = { readonly file: string; readonly text: string };

const bundle = z.strictObject({
  schema: z.literal(1),
  files: z.array(z.strictObject({ file: z.string(), text: z.string() })),
});

/**
 * All definitions behind some equipment as one text, so that they travel with a visit that was made with them. The same
 * definitions give the same text, whatever order they come in.
 */
export const bundleOf = (files: readonly DefinitionText[]): string => {
  const sorted = files
    .map(({ file, text }) => ({ file, text }))
    .toSorted((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
  return canonicalize({ schema: 1, files: sorted }) ?? '';
};

/** The equipment of such a text; its digest is that which the visit pins, where the program reads them as then. */
export const compileBundle = (text: string): Result<Compiled> => {
  const read = bundle.safeParse(jsonOf(text));
  if (!read.success) {
    const place = { file: 'definitions', line: 1, column: 1 };
    return { ok: false, issues: [issueAt('error', [], place, { code: 'yaml.unreadable' })] };
  }
  return compileDefinitions(read.data.files.map(({ file, text: one }) => parseDefinition(file, one)));
};

const jsonOf = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};
