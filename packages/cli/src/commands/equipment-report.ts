import type { DefinitionFile } from '@brinewright/equipment/load-files';
import type { Issue } from '@brinewright/words';
import { type EquipmentIo, say, writeJson } from './equipment-io.ts';
import { countIssues, formatIssue, plainIssue } from './format-issue.ts';

/** What is wrong in definition files, with the counts; as data where data were asked for. */
export const reportIssues = (
  issues: readonly Issue[],
  files: readonly DefinitionFile[],
  count: number,
  io: EquipmentIo,
): void => {
  const counts = { files: count, ...countIssues(issues) };
  if (io.json) {
    writeJson(io, { ...counts, issues: issues.map((issue) => plainIssue(issue, io.language)) });
    return;
  }
  const sources = new Map(files.map(({ file, text }) => [file, text]));
  for (const issue of issues) io.write(`${formatIssue(issue, sources, io.language)}\n\n`);
  io.write(`${say(io, 'equipment.cli.counts', counts)}\n`);
};
