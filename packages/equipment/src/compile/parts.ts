import type { Path } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import type { Conversion, Part, Tool } from '../model/part.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type { WrittenConversion, WrittenPart, WrittenTool } from '../schema/part.ts';
import { compileEach, fitsOf, needed, titleOr } from './compiling.ts';

export const compileParts = (written: WrittenFamily, report: Report): readonly Part[] =>
  compileEach(written.parts, 'parts', (part, id, at) => partOf(part, id, at, report));

const partOf = (written: WrittenPart, id: string, at: Path, report: Report): Part | undefined => {
  const is = needed(written.is, at, 'is', report);
  if (is === undefined) return undefined;
  const { number, of, price } = written;
  return {
    id,
    is,
    title: titleOr(written.title, id),
    ...(number === undefined ? {} : { number }),
    fits: fitsOf(written.fits),
    ...(of === undefined ? {} : { of }),
    ...(price === undefined ? {} : { price }),
    holds: written.holds ?? {},
    count: written.count ?? 1,
  };
};

export const compileConversions = (written: WrittenFamily, report: Report): readonly Conversion[] =>
  (written.conversions ?? []).flatMap((one, index) => conversionOf(one, ['conversions', index], report));

const conversionOf = (written: WrittenConversion, at: Path, report: Report): readonly Conversion[] => {
  const [change, ...others] = Object.entries(written.change);
  if (change === undefined || others.length > 0) {
    report.error([...at, 'change'], { code: 'conversion.one-feature' });
    return [];
  }
  const [feature, [from, to]] = change;
  const { check } = written;
  return [{ feature, from, to, also: written.also ?? [], ...(check === undefined ? {} : { check }) }];
};

/** Tools listed, and those that operations and tests name in plain words: 'driver T20'. */
export const compileTools = (written: WrittenFamily): readonly Tool[] => {
  const listed = compileEach(written.tools, 'tools', toolOf);
  const named = new Set([...namedTools(written)].filter(isPlainWords));
  return [
    ...listed,
    ...[...named].map((name) => ({ id: toolId(name), title: name, fits: {}, special: false })),
  ];
};

const toolOf = (written: WrittenTool, id: string): Tool => ({
  id,
  title: titleOr(written.title, id),
  fits: fitsOf(written.fits),
  special: written.special ?? written.fits !== undefined,
});

const namedTools = (written: WrittenFamily): readonly string[] =>
  [...Object.values(written.operations ?? {}), ...Object.values(written.tests ?? {})].flatMap(
    ({ tools }) => tools ?? [],
  );

/** An id names a tool of the list; anything else is the tool's own name. */
const isPlainWords = (tool: string): boolean => !/^[a-z0-9-]+$/u.test(tool);

export const toolId = (tool: string): string =>
  isPlainWords(tool) ? tool.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-') : tool;
