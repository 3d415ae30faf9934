import { type CheckReport, type CheckRow, runChecks, type Tolerance } from '@brinewright/checks';
import { formatNumber, message } from '@brinewright/words';
import { type Call, misused, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { heading, paragraph, stacked } from '../text/lines.ts';
import { type Row, table } from '../text/table.ts';

/** Every published value the engine is held to, computed again. */
export const checkCommand = (call: Call): number => {
  const only = optionValue(call.given, 'only');
  const report = runChecks(only);
  if (only !== undefined && report.rows.length === 0)
    return misused(call, message('cli.check.none', { text: only }));
  if (call.json) printJson(call, report);
  else print(call, reportText(call, report));
  return report.failed === 0 ? exit.fine : exit.faulty;
};

const reportText = (call: Call, report: CheckReport): string[] =>
  stacked(
    ...bySource(report.rows).map(([source, rows]) => [...heading(source), ...rowTable(call, rows)]),
    paragraph(
      call.speech.word('cli.check.summary', {
        passed: report.passed,
        failed: report.failed,
        shown: report.shown,
        sources: report.sources,
      }),
    ),
  );

const bySource = (rows: readonly CheckRow[]): readonly (readonly [string, readonly CheckRow[]])[] => {
  const groups = new Map<string, CheckRow[]>();
  for (const row of rows) groups.set(row.source, [...(groups.get(row.source) ?? []), row]);
  return [...groups];
};

const rowTable = ({ speech }: Call, rows: readonly CheckRow[]): string[] =>
  table(
    [
      { title: speech.word('cli.check.title') },
      { title: speech.word('cli.check.computed'), align: 'right' },
      { title: speech.word('cli.check.expected'), align: 'right' },
      { title: speech.word('cli.check.tolerance'), align: 'right' },
      { title: speech.word('cli.check.verdict') },
    ],
    rows.map(
      (row): Row => ({
        cells: [
          row.title,
          valueText(row.computed),
          valueText(row.expected),
          toleranceText(row.tolerance),
          speech.word(`cli.check.verdict.${row.verdict}`),
        ],
      }),
    ),
  );

const valueText = (value: number | string): string =>
  typeof value === 'string' ? value : formatNumber(value, 5);

const toleranceText = (tolerance: Tolerance): string =>
  'rel' in tolerance ? `${formatNumber(tolerance.rel * 100, 3)} %` : formatNumber(tolerance.abs, 3);
