import { oddsText, operationName, type Sheet } from '@brinewright/papers';
import type { FaultOdds } from '@brinewright/service';
import { noneOfThese } from '@brinewright/service';
import { type QuantityKind, quantity, shownUnit, type UnitSystem } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';

/** To whole percent: odds over variants are computed. */
export const percentName = (sheet: Sheet, p: number): string => {
  if (p > 0 && p < 0.005) return `< ${share(sheet, 0.01)}`;
  return share(sheet, Math.round(p * 100) / 100);
};

const share = (sheet: Sheet, p: number): string => formatQuantity(quantity('share', p), sheet.reader).text;

/** To the nearest 5 %: odds over faults rest on stated odds. */
export const oddsName = (p: number): string => `${oddsText(p)}\u00a0%`;

/** A name that stands alone: first letter large. */
export const alone = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);

/** A fault with the seals that carry it. */
export const faultTitle = (
  sheet: Sheet,
  { fault, definition, seals }: Pick<FaultOdds, 'fault' | 'definition' | 'seals'>,
): string => {
  if (fault === noneOfThese) return sheet.word('diagnosis.none-of-these');
  const title = definition === undefined ? fault : sheet.text(definition.title);
  if (seals.length === 0) return title;
  return `${title} (${sheet.word('cli.diagnosis.seals', { seals: seals.join(', ') })})`;
};

/** What must come off first; nothing where it can be done as it stands. */
export const opensName = (sheet: Sheet, operations: readonly string[]): string | undefined =>
  operations.length === 0 ? undefined : operations.map((id) => operationName(sheet, id)).join('; ');

/** Units that a quantity may be keyed in, the reader's own first; those that suit the size where one is expected. */
export const unitsFor = (sheet: Sheet, kind: QuantityKind, si?: number): readonly string[] => {
  const { system } = sheet.reader;
  const other: UnitSystem = system === 'us' ? 'metric' : 'us';
  return [...new Set([system, other].map((one) => shownUnit(kind, one, si).symbol))];
};

export type Spread = { readonly unit: string; readonly text: string };

/** One standard uncertainty in every unit it may be keyed in; a temperature has another scale for differences. */
export const spreadIn = (
  sheet: Sheet,
  kind: QuantityKind,
  u: number | undefined,
  units: readonly string[],
): readonly Spread[] =>
  u === undefined || u === 0 || kind === 'temperature'
    ? []
    : units.map((unit) => ({
        unit,
        text: `±\u00a0${formatQuantity(quantity(kind, u), { ...sheet.reader, unit, digits: 2 }).text}`,
      }));

/** A value and its uncertainty in one unit: '0.2 gpm' and '± 0.01'. */
export const withSpread = (
  sheet: Sheet,
  kind: QuantityKind,
  si: number,
  u: number | undefined,
): { readonly text: string; readonly spread?: string } => {
  const unit = shownUnit(kind, sheet.reader.system, si).symbol;
  const { text } = formatQuantity(quantity(kind, si), { ...sheet.reader, unit });
  if (u === undefined || u === 0 || kind === 'temperature') return { text };
  const spread = formatQuantity(quantity(kind, u), { ...sheet.reader, unit, digits: 2 });
  return { text, spread: `±\u00a0${spread.figure}` };
};
