import { formatMessage, type Issue, type Language, type Severity } from '@brinewright/words';

/** Text of the files that issues point into, by the name that issues use. */
export type Sources = ReadonlyMap<string, string>;

const longestLine = 100;

/** An issue as people read it: place, severity and code; the line with a mark under the spot; why; how to mend it. */
export const formatIssue = (issue: Issue, sources: Sources, language: Language): string => {
  const say = (message: Issue['message']): string =>
    `  ${formatMessage(message, { language, system: 'us' })}`;
  const mend = issue.mend === undefined ? [] : [say(issue.mend)];
  return [heading(issue, language), ...excerpt(issue, sources), say(issue.message), ...mend].join('\n');
};

const heading = ({ place, severity, code }: Issue, language: Language): string => {
  const at = place === undefined ? '' : `${place.file}:${place.line}:${place.column}  `;
  return `${at}${severityName(severity, language)}  ${code}`;
};

const severityName = (severity: Severity, language: Language): string =>
  formatMessage({ key: `equipment.severity.${severity}` }, { language, system: 'us' });

/** The line and a mark under the column; a long line is cut to the part round the mark. */
const excerpt = ({ place }: Issue, sources: Sources): readonly string[] => {
  const line = place === undefined ? undefined : sources.get(place.file)?.split(/\r?\n/)[place.line - 1];
  if (place === undefined || line === undefined || line.trim() === '') return [];
  const start = Math.max(0, place.column - 1 - longestLine / 2);
  const shown = line.slice(start, start + longestLine).replaceAll('\t', ' ');
  const number = String(place.line).padStart(6);
  const mark = `${' '.repeat(place.column - 1 - start)}^`;
  return [`${number} | ${shown}`, `${' '.repeat(number.length)} | ${mark}`];
};

export type IssueCounts = { readonly errors: number; readonly warnings: number; readonly notes: number };

export const countIssues = (issues: readonly Issue[]): IssueCounts => {
  const count = (severity: Severity): number => issues.filter((issue) => issue.severity === severity).length;
  return { errors: count('error'), warnings: count('warning'), notes: count('note') };
};

/** An issue for another program: words in the language asked for, place apart. */
export const plainIssue = (issue: Issue, language: Language) => ({
  code: issue.code,
  severity: issue.severity,
  ...(issue.place ?? {}),
  path: issue.at.join('.'),
  message: formatMessage(issue.message, { language, system: 'us' }),
  mend: issue.mend === undefined ? null : formatMessage(issue.mend, { language, system: 'us' }),
});
