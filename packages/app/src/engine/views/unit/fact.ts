import { figureText, howWords, type Sheet } from '@brinewright/papers';
import type { Figure, FigureId, HowKnown, KnownQuantity } from '@brinewright/service';
import { enteredAs, type Quantity, type QuantityKind, toUnit } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import { unitsFor } from '../names.ts';

/** One thing that is known of a unit or its site, or might be; and how it is said anew. */
export type FactView = {
  readonly key: string;
  readonly label: string;
  /** Nothing while nobody has said it. */
  readonly value?: string | undefined;
  /** What is reckoned with while nobody has said it, and where that comes from. */
  readonly meanwhile?: { readonly value: string; readonly from: string } | undefined;
  /** '± 0.3 gpg', where it was given. */
  readonly u?: string | undefined;
  readonly how?: { readonly id: HowKnown; readonly word: string } | undefined;
  readonly form: FactForm;
  readonly edit: FactEdit;
};

export type FactForm =
  | {
      readonly kind: 'quantity';
      readonly quantity: QuantityKind;
      readonly units: readonly string[];
      readonly figure: string;
      readonly unit: string;
      /** Whether it is asked how the value is known. */
      readonly asksHow: boolean;
    }
  | { readonly kind: 'text'; readonly text: string }
  /** A span such as '1 min to 99 min by 1 min'. */
  | {
      readonly kind: 'range';
      readonly quantity: QuantityKind;
      readonly text: string;
      readonly example: string;
    }
  | {
      readonly kind: 'choice';
      readonly options: readonly { readonly value: string; readonly label: string }[];
      readonly chosen?: string | undefined;
      /** The value is a list, written with commas between. */
      readonly isList?: boolean;
    };

/** The entry that says it: kind, what is said with it (JSON), and where in that the value stands. */
export type FactEdit = {
  readonly kind:
    | 'conditioner-described'
    | 'water-analysed'
    | 'demand-described'
    | 'supply-described'
    | 'site-described';
  readonly base: string;
  readonly path: readonly string[];
};

export type Known = KnownQuantity | Quantity | undefined;

export const quantityFact = (
  sheet: Sheet,
  of: {
    readonly key: string;
    readonly label: string;
    readonly quantity: QuantityKind;
    readonly known: Known;
    readonly edit: FactEdit;
    /** About how large it is, in SI: decides the unit that is asked for first. */
    readonly size?: number | undefined;
    readonly asksHow?: boolean;
    /** The figure that is reckoned with where it is not known. */
    readonly figure?: FigureId | undefined;
  },
): FactView => {
  const { known, quantity: kind } = of;
  const value = known === undefined || 'kind' in known ? known : known.value;
  const units = unitsFor(sheet, kind, value?.si ?? of.size);
  return {
    key: of.key,
    label: of.label,
    value: value === undefined ? undefined : formatQuantity(value, sheet.reader).text,
    meanwhile: value === undefined ? meanwhile(sheet, of.figure) : undefined,
    ...(known === undefined || 'kind' in known ? {} : howOf(sheet, known)),
    form: { kind: 'quantity', quantity: kind, ...typed(value, units), asksHow: of.asksHow ?? true },
    edit: of.edit,
  };
};

const meanwhile = (sheet: Sheet, id: FigureId | undefined): FactView['meanwhile'] => {
  const figure = id === undefined ? undefined : sheet.assessment.figures[id];
  if (figure === undefined) return undefined;
  return { value: figureText(sheet, figure.id), from: sheet.word(`app.unit.from.${originOf(figure)}`) };
};

const originOf = ({ by }: Figure): 'assumed' | 'definition' | 'computed' => {
  if (by.kind === 'given') return 'assumed';
  return by.kind === 'definition' ? 'definition' : 'computed';
};

const howOf = (sheet: Sheet, { how, u }: KnownQuantity): Pick<FactView, 'how' | 'u'> => ({
  how: { id: how, word: sheet.word(howWords[how]) },
  u:
    u === undefined || u.kind === 'temperature'
      ? undefined
      : `±\u00a0${formatQuantity(u, { ...sheet.reader, digits: 2 }).text}`,
});

/** As it was entered, with its unit among those offered. */
const typed = (value: Quantity | undefined, units: readonly string[]) => {
  const [first = ''] = units;
  if (value === undefined) return { units, figure: '', unit: first };
  const entered = enteredAs(value);
  if (entered === undefined) return { units, figure: shortened(toUnit(value, first)), unit: first };
  const { symbol } = entered.row;
  return { units: [...new Set([...units, symbol])], figure: entered.figure, unit: symbol };
};

const shortened = (figure: number): string => String(Number(figure.toPrecision(4)));

export const choiceFact = (
  of: Pick<FactView, 'key' | 'label' | 'edit'> & {
    readonly options: readonly { readonly value: string; readonly label: string }[];
    readonly chosen: string | undefined;
    readonly isList?: boolean;
  },
): FactView => ({
  key: of.key,
  label: of.label,
  value: of.options.find(({ value }) => value === of.chosen)?.label ?? of.chosen,
  form: { kind: 'choice', options: of.options, chosen: of.chosen, isList: of.isList ?? false },
  edit: of.edit,
});

export const textFact = (
  of: Pick<FactView, 'key' | 'label' | 'edit'> & { readonly text: string | undefined },
): FactView => ({
  key: of.key,
  label: of.label,
  value: of.text,
  form: { kind: 'text', text: of.text ?? '' },
  edit: of.edit,
});

export const rangeFact = (
  of: Pick<FactView, 'key' | 'label' | 'edit'> & {
    readonly quantity: QuantityKind;
    readonly text: string | undefined;
    readonly example: string;
  },
): FactView => ({
  key: of.key,
  label: of.label,
  value: of.text,
  form: { kind: 'range', quantity: of.quantity, text: of.text ?? '', example: of.example },
  edit: of.edit,
});
