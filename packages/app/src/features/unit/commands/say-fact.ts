import type { Draft, Json } from '@brinewright/journal';
import { parseQuantity, parseRange } from '@brinewright/units';
import type { FactForm, FactView } from '../../../engine/views/unit/fact.ts';

/** Where the unit stands, and the visit it is said in, where it is said in one. */
export type UnitPlace = { readonly stream: string; readonly conditioner: string };

/** What stands in the form of one fact. */
export type TypedFact = {
  readonly figure: string;
  readonly unit: string;
  readonly how: 'measured' | 'read' | 'told' | 'assumed';
};

/** The entry that says it; nothing where what was typed cannot be read. */
export const sayFact = (
  { stream, conditioner }: UnitPlace,
  { form, edit }: Pick<FactView, 'form' | 'edit'>,
  typed: TypedFact,
): readonly Draft[] => {
  const value = valueSaid(form, typed);
  if (value === undefined) return [];
  const base: Json = JSON.parse(edit.base);
  return [
    {
      stream,
      kind: `${edit.kind}/1`,
      payload: withValue(base, edit.path, value),
      about: edit.kind === 'conditioner-described' ? { conditioner } : {},
    },
  ];
};

const valueSaid = (form: FactForm, { figure, unit, how }: TypedFact): Json | undefined => {
  const text = figure.trim();
  if (text === '') return undefined;
  switch (form.kind) {
    case 'text':
      return text;
    case 'choice':
      return form.isList === true ? text.split(',') : text;
    case 'range':
      return parseRange(text, form.quantity).ok ? text : undefined;
    case 'quantity': {
      const value = `${text.replace(',', '.')} ${unit}`.trim();
      if (!parseQuantity(value, form.quantity).ok) return undefined;
      return form.asksHow ? { value, how } : value;
    }
  }
};

/** The same with a value at a place within it; lists are walked by number. */
const withValue = (base: Json, path: readonly string[], value: Json): Json => {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  if (Array.isArray(base)) {
    const place = Number(first);
    return base.map((held, at) => (at === place ? withValue(held, rest, value) : held));
  }
  const fields = typeof base === 'object' && base !== null ? base : {};
  return { ...fields, [first]: withValue(fields[first] ?? {}, rest, value) };
};
