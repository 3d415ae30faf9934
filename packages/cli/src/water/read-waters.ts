import { isIonName, type LaboratoryFigures, type WaterIons } from '@brinewright/physics';
import { CsvError, parse } from 'csv-parse/sync';
import { type WaterColumn, waterColumn } from './water-columns.ts';

export type WaterRow = {
  /** Of the data, from 1. */
  readonly row: number;
  readonly id: string;
  readonly ions: WaterIons;
  readonly laboratory: LaboratoryFigures;
  /** Cells that are no figure; they are left out. */
  readonly unread: readonly { readonly header: string; readonly text: string }[];
};

export type Waters = {
  readonly columns: readonly WaterColumn[];
  readonly rows: readonly WaterRow[];
};

/** A table of water analyses: a header line, then one water a line; lines that begin with # are notes. */
export const readWaters = (text: string, unitWithout?: string): Waters | undefined => {
  const [header, ...body] = cellsOf(text) ?? [];
  if (header === undefined) return undefined;
  const columns = firstOfEach(header.map((name) => waterColumn(name, unitWithout)));
  return {
    columns: columns.filter((column) => column !== undefined),
    rows: body.map((cells, place) => waterRow(columns, cells, place + 1)),
  };
};

const cellsOf = (text: string): readonly (readonly string[])[] | undefined => {
  const lines = text.split(/\r?\n/u).filter((line) => !/^\s*(?:#|$)/u.test(line));
  const delimiter = lines[0]?.includes(';') === true && !lines[0].includes(',') ? ';' : ',';
  try {
    const cells: string[][] = parse(lines.join('\n'), {
      bom: true,
      trim: true,
      delimiter,
      relax_column_count: true,
    });
    return cells;
  } catch (error) {
    if (error instanceof CsvError) return undefined;
    throw error;
  }
};

/** Of two columns for one thing the first counts. */
const firstOfEach = (columns: readonly (WaterColumn | undefined)[]): readonly (WaterColumn | undefined)[] =>
  columns.map((column, place) =>
    columns.findIndex((other) => other?.field === column?.field) === place ? column : undefined,
  );

const waterRow = (
  columns: readonly (WaterColumn | undefined)[],
  cells: readonly string[],
  row: number,
): WaterRow => {
  const ions: Partial<Record<keyof WaterIons, number>> = {};
  const laboratory: { -readonly [Key in keyof LaboratoryFigures]: LaboratoryFigures[Key] } = {};
  const unread: { header: string; text: string }[] = [];
  for (const [place, column] of columns.entries()) {
    const text = cells[place] ?? '';
    if (column === undefined || text === '') continue;
    const value = figureOf(text);
    if (value === undefined) {
      unread.push({ header: column.header, text });
      continue;
    }
    const { field } = column;
    if (isIonName(field)) ions[field] = column.toSi(value);
    else laboratory[field] = column.toSi(value);
    if (column.temperature !== undefined) laboratory.temperature = column.temperature;
  }
  return { row, id: columns[0] === undefined ? (cells[0] ?? '') : String(row), ions, laboratory, unread };
};

/** '<0.01' and 'nd' are looked for and not found: none. */
const figureOf = (text: string): number | undefined => {
  if (/^(?:<.*|n\.?d\.?)$/iu.test(text)) return 0;
  const value = Number(text.replaceAll(/(?<=\d),(?=\d{3})/gu, ''));
  return Number.isFinite(value) && value >= 0 ? value : undefined;
};
