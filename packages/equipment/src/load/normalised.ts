import type { Path } from '@brinewright/words';
import type { PlaceOf } from '../issue/report.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type { WrittenOperation } from '../schema/operation.ts';

/** Short forms written out: `bore` is one of `bores`, `meter` one of `meters`, `tool` one of `tools`. */
export const normalised = (written: WrittenFamily): WrittenFamily => {
  const { bore, meter, bores, meters, operations, ...rest } = written;
  return {
    ...rest,
    ...(bore === undefined && bores === undefined ? {} : { bores: { ...one('main', bore), ...bores } }),
    ...(meter === undefined && meters === undefined ? {} : { meters: { ...one('meter', meter), ...meters } }),
    ...(operations === undefined ? {} : { operations: mapValues(operations, oneTool) }),
  };
};

const one = <T>(id: string, entry: T | undefined): Readonly<Record<string, T>> =>
  entry === undefined ? {} : { [id]: entry };

const oneTool = (operation: WrittenOperation): WrittenOperation => {
  const { tool, ...rest } = operation;
  return tool === undefined ? rest : { ...rest, tools: [tool, ...(rest.tools ?? [])] };
};

export const mapValues = <T, U>(
  entries: Readonly<Record<string, T>>,
  to: (entry: T, id: string) => U,
): Record<string, U> => Object.fromEntries(Object.entries(entries).map(([id, entry]) => [id, to(entry, id)]));

/** What was written out stands where its short form stands. */
export const normalisedPlaces =
  (placeOf: PlaceOf): PlaceOf =>
  (path, part) =>
    placeOf(path, part) ?? placeOf(shortForm(path), part);

const shortForm = (path: Path): Path => {
  const [section, id, key, ...rest] = path;
  if (section === 'bores' && id === 'main') return ['bore', ...path.slice(2)];
  if (section === 'meters' && id === 'meter') return ['meter', ...path.slice(2)];
  if (section === 'operations' && id !== undefined && key === 'tools')
    return [section, id, 'tool', ...rest.slice(1)];
  return path;
};
