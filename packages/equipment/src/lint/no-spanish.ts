import type { Path } from '@brinewright/words';
import { isRecord } from '../load/record.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** Keys whose values are sentences or names for people. */
const textKeys: ReadonlySet<string> = new Set([
  'title',
  'ask',
  'how',
  'measure',
  'order',
  'explains',
  'mend',
  'does',
  'act',
  'fact',
  'check',
  'look-overs',
  'looks-wrong',
  'consumables',
]);

/** Texts of the family's own file that a Spanish reader would see in English. */
export const noSpanish: LintRule = {
  code: 'lint.no-spanish',
  check: (subject) => {
    const { placeOf, file, written } = subject.resolved;
    const found: Path[] = [];
    const look = (value: unknown, path: Path, isText: boolean): void => {
      if (typeof value === 'string' ? isText : isText && isRecord(value) && 'en' in value && !('es' in value))
        found.push(path);
      else if (isRecord(value) && !('en' in value && isText)) {
        for (const [key, inner] of Object.entries(value)) {
          look(inner, [...path, key], Array.isArray(value) ? isText : textKeys.has(key));
        }
      }
    };
    look(written, [], false);
    const own = found.filter((path) => placeOf(path)?.file === file);
    const [first] = own;
    if (first === undefined) return [];
    return [lintIssue(subject, 'note', first, { code: 'lint.no-spanish', values: { count: own.length } })];
  },
};
