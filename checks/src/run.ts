import { type Family, families } from './families.ts';
import { type CheckRow, isCounted, judge } from './row.ts';
import { workOf } from './works.ts';

export type CheckReport = {
  readonly passed: number;
  readonly failed: number;
  readonly shown: number;
  /** How many published works stand behind the counted rows, each once. */
  readonly sources: number;
  readonly sourceList: readonly string[];
  readonly rows: readonly CheckRow[];
};

const matches = (family: Family, row: CheckRow, wanted: string): boolean =>
  [family.name, row.id, row.title, row.source].some((text) => text.toLowerCase().includes(wanted));

const byCode = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const summed = (rows: readonly CheckRow[]): CheckReport => {
  const count = (verdict: CheckRow['verdict']): number =>
    rows.filter((row) => row.verdict === verdict).length;
  const named = rows.filter(isCounted).flatMap((row) => workOf(row.source) ?? []);
  const sourceList = [...new Set(named)].sort(byCode);
  return {
    passed: count('pass'),
    failed: count('fail'),
    shown: count('shown'),
    sources: sourceList.length,
    sourceList,
    rows,
  };
};

/**
 * Computes every published value again and compares. `only` keeps the rows whose family, id, title or source holds the text.
 * Rows marked memory are shown and never counted.
 */
export const runChecks = (only = ''): CheckReport => {
  const wanted = only.toLowerCase();
  return summed(
    families.flatMap((family) =>
      family
        .rows()
        .map(judge)
        .filter((row) => matches(family, row, wanted)),
    ),
  );
};
