import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** A row of a data file, with the errors of a hand-copied table told by file and column. */
export type DataRow = {
  readonly line: number;
  readonly text: (column: string) => string;
  readonly isEmpty: (column: string) => boolean;
  readonly number: (column: string) => number;
};

/** A file of checks/data with plain line ends. */
export const readText = (file: string): string =>
  readFileSync(new URL(`../data/${file}`, import.meta.url), 'utf8').replaceAll('\r', '');

const asNumber = (text: string, where: string): number => {
  const value = Number(text);
  if (text === '' || !Number.isFinite(value))
    throw new Error(`${where}: ${JSON.stringify(text)} is no number`);
  return value;
};

const isRecords = (value: unknown): value is readonly Readonly<Record<string, string>>[] =>
  Array.isArray(value) && value.every((row) => typeof row === 'object' && row !== null);

/** Rows of a CSV file in checks/data; lines beginning with # are notes, line ends may be mixed. */
export const readTable = (file: string): readonly DataRow[] => {
  const content = readText(file)
    .split('\n')
    .filter((line) => !line.startsWith('#'))
    .join('\n');
  const records: unknown = parse(content, {
    columns: true,
    skip_empty_lines: true,
    relax_column_count_less: true,
  });
  if (!isRecords(records)) throw new Error(`${file}: no table`);
  return records.map((record, index) => {
    const text = (column: string): string => record[column]?.trim() ?? '';
    return {
      line: index + 1,
      text,
      isEmpty: (column) => text(column) === '',
      number: (column) => asNumber(text(column), `${file} row ${index + 1} ${column}`),
    };
  });
};

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Any JSON file in checks/data. */
export const readJson = (file: string): unknown => JSON.parse(readText(file));
