import type { Report } from '../issue/report.ts';
import { unknownWord } from '../issue/report.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import { entrySections, isOff, type Section } from './merge.ts';

/** A key that every new entry of a section has; one that only changes an entry of the stock leaves it out. */
const essential: Readonly<Partial<Record<Section, readonly string[]>>> = {
  operations: ['order'],
  faults: ['title', 'explains'],
  tests: ['ask', 'outcomes'],
  cautions: ['title', 'does'],
  tells: ['ask', 'measure'],
};

/**
 * Entries that change or remove what the stock does not have: misspelt ids, mostly.
 *
 * They are told here and left out, or every key they lack would be told as well.
 */
export const withoutStrays = (family: WrittenFamily, stock: WrittenFamily, report: Report): WrittenFamily => {
  const strays = entrySections.flatMap((section) => straysIn(section, family, stock, report));
  if (strays.length === 0) return family;
  const keep = <T>(section: Section, entries: Readonly<Record<string, T>> | undefined): Record<string, T> =>
    Object.fromEntries(
      Object.entries(entries ?? {}).filter(
        ([id]) => !strays.some((one) => one.section === section && one.id === id),
      ),
    );
  return {
    ...family,
    operations: keep('operations', family.operations),
    faults: keep('faults', family.faults),
    tests: keep('tests', family.tests),
    cautions: keep('cautions', family.cautions),
    tells: keep('tells', family.tells),
  };
};

type Stray = { readonly section: Section; readonly id: string };

const straysIn = (
  section: Section,
  family: WrittenFamily,
  stock: WrittenFamily,
  report: Report,
): readonly Stray[] => {
  const known = Object.keys(stock[section] ?? {});
  return Object.entries(family[section] ?? {}).flatMap(([id, entry]) => {
    if (known.includes(id)) return [];
    const lacks = essential[section]?.every((key) => !hasKey(entry, key)) ?? false;
    if (!isOff(entry) && !lacks) return [];
    const code = isOff(entry) ? 'reference.unknown' : 'reference.stray';
    report.error([section, id], unknownWord(code, id, known), 'key');
    return [{ section, id }];
  });
};

const hasKey = (entry: unknown, key: string): boolean =>
  typeof entry === 'object' && entry !== null && key in entry;
