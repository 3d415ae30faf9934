import type { DiagnosisTest } from '@brinewright/equipment';
import type { Sheet } from '@brinewright/papers';
import type { QuantityKind } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import { alone, type Spread, spreadIn, unitsFor } from './names.ts';

/** A reading to be keyed in: in which units, how far off it may be, and what would be odd. */
export type QuantityAsk = {
  readonly kind: QuantityKind;
  /** Symbols of the table of units, the usual one first. */
  readonly units: readonly string[];
  /** One standard uncertainty of the usual instrument, unit by unit. */
  readonly spread: readonly Spread[];
  /** In SI; a figure outside is asked about, never refused. */
  readonly plausible?: { readonly min: number; readonly max: number; readonly text: string };
  /** A flow can be timed with a pail. */
  readonly byPail: boolean;
};

/** Something seen instead of measured, as one answer of a few. */
export type StateAnswer = {
  readonly id: string;
  readonly title: string;
  readonly leads?: string | undefined;
  readonly share?: string | undefined;
  /** In words: 'below 0.03 gpm'; only for bands of a reading. */
  readonly band?: string | undefined;
};

/** What a reading entry shows and writes, for a test and for a check alike. */
export type ReadingAsk = {
  readonly id: string;
  readonly title: string;
  readonly how: readonly string[];
  readonly quantity?: QuantityAsk;
  /** Answers where it is looked at; what each band would mean where it is measured. */
  readonly answers: readonly StateAnswer[];
  readonly taken: readonly TakenReading[];
  /** Readings of one test that do not agree: what, and what to do. */
  readonly wild?: { readonly says: string; readonly mend: string } | undefined;
};

/** One entry of a reading, to be edited or taken back. */
export type TakenReading = {
  readonly entry: string | undefined;
  readonly text: string;
  readonly isWild: boolean;
  /** As it was keyed in, to begin an edit with. */
  readonly figure?: string | undefined;
  readonly unit?: string | undefined;
  readonly state?: string | undefined;
};

export const quantityAsk = (
  sheet: Sheet,
  kind: QuantityKind,
  more: {
    readonly u?: number | undefined;
    readonly plausible?: { readonly min: number; readonly max: number } | undefined;
    /** About what is expected, so that the units suit its size. */
    readonly about?: number | undefined;
  } = {},
): QuantityAsk => {
  const units = unitsFor(sheet, kind, more.about);
  return {
    kind,
    units,
    spread: spreadIn(sheet, kind, more.u, units),
    ...(more.plausible === undefined
      ? {}
      : { plausible: plausibleIn(sheet, kind, more.plausible, units[0]) }),
    byPail: kind === 'flow',
  };
};

const plausibleIn = (
  sheet: Sheet,
  kind: QuantityKind,
  { min, max }: { readonly min: number; readonly max: number },
  unit: string | undefined,
) => {
  const [from, to] = [min, max].map((si) => formatQuantity({ kind, si }, { ...sheet.reader, unit }));
  return {
    min,
    max,
    text: sheet.word('cli.proof.within', { lower: from?.figure ?? '', upper: to?.text ?? '' }),
  };
};

/** The band of a measured outcome, in the unit the reading is keyed in; a share of an expected figure in percent. */
export const bandOf = (
  sheet: Sheet,
  test: DiagnosisTest,
  { from, to }: DiagnosisTest['outcomes'][number],
  unit: string | undefined,
): string | undefined => {
  if (test.reading === undefined) return undefined;
  const isShare = test.reading.of !== undefined;
  const kind = isShare ? 'share' : test.reading.kind;
  const [lower, upper] = [from, to].map((si) =>
    si === undefined
      ? undefined
      : formatQuantity({ kind, si }, { ...sheet.reader, unit: isShare ? undefined : unit }),
  );
  const said = rangeSaid(sheet, lower, upper);
  return isShare && said !== undefined ? sheet.word('app.readings.of-expected', { band: said }) : said;
};

type Shown = { readonly figure: string; readonly text: string } | undefined;

const rangeSaid = (sheet: Sheet, lower: Shown, upper: Shown): string | undefined => {
  if (lower !== undefined && upper !== undefined)
    return sheet.word('cli.proof.within', { lower: lower.figure, upper: upper.text });
  if (upper !== undefined) return sheet.word('app.readings.below', { upper: upper.text });
  return lower === undefined ? undefined : sheet.word('app.readings.above', { lower: lower.text });
};

export const outcomeTitle = (sheet: Sheet, { outcomes }: DiagnosisTest, id: string): string => {
  const found = outcomes.find((one) => one.id === id);
  return found === undefined ? id : alone(sheet.text(found.title));
};
