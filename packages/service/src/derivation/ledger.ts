import type { Equation, SourceKey } from '@brinewright/physics';
import type { Quantity } from '@brinewright/units';
import { type Issue, type MessageKey, message } from '@brinewright/words';
import type { HowKnown, KnownQuantity } from '../visit/codec.ts';
import type { Figure, FigureId, FigureOrigin, Figures } from './figure.ts';

type Origin = {
  readonly by: FigureOrigin;
  readonly source: SourceKey;
  readonly u?: number;
  readonly inputs?: Readonly<Record<string, FigureId>>;
};

/**
 * The table of figures while a stage fills it: roots are given, assumed or defined; everything else is derived by an
 * equation, so that its range is judged, its inputs stay attached and its uncertainty follows to first order
 * (JCGM 100, with correlations through shared roots).
 */
export type Ledger = {
  readonly has: (id: FigureId) => boolean;
  readonly value: (id: FigureId) => number | undefined;
  /** Standard uncertainty; nothing where none is known. */
  readonly spread: (id: FigureId) => number;
  /** For figures that the caller has just put: a missing one is our mistake. */
  readonly need: (id: FigureId) => number;
  readonly given: (id: FigureId, known: KnownQuantity, source?: SourceKey) => void;
  readonly assume: (id: FigureId, quantity: Quantity, source: SourceKey, u?: number) => void;
  readonly define: (id: FigureId, quantity: Quantity, of: string, source?: SourceKey, u?: number) => void;
  /**
   * A value picked by a rule from others: a rounding, the lower of two. It is exact, as a keyed-in time is, unless it
   * is one of its inputs (`as`) and shares that one's spread, or has an uncertainty of its own.
   */
  readonly choose: (
    id: FigureId,
    quantity: Quantity,
    rule: string,
    inputs: Readonly<Record<string, FigureId>>,
    more?: { readonly as?: FigureId; readonly u?: number; readonly source?: SourceKey },
  ) => void;
  /** False when an input is missing or the equation cannot take it; then no figure is put. */
  readonly derive: <I extends string, O extends string>(
    equation: Equation<I, O>,
    inputs: Readonly<Record<I, FigureId>>,
    outputs: Readonly<Partial<Record<O, FigureId>>>,
  ) => boolean;
  /** Says that what these figures would give cannot be computed. */
  readonly refuse: (title: MessageKey, at: readonly FigureId[]) => void;
  readonly figures: () => Figures;
  readonly issues: () => readonly Issue[];
};

export const openLedger = (before: Figures = {}): Ledger => {
  const table = new Map<FigureId, Figure>(Object.entries(before));
  const own = new Map<FigureId, Figure>();
  const issues: Issue[] = [];

  const put = (figure: Figure): void => {
    table.set(figure.id, figure);
    own.set(figure.id, figure);
  };

  const root = (id: FigureId, quantity: Quantity, origin: Origin): void => {
    const spread =
      origin.u === undefined || origin.u === 0 ? {} : { u: origin.u, spread: { [id]: origin.u } };
    put({
      id,
      quantity,
      ...spread,
      by: origin.by,
      inputs: origin.inputs ?? {},
      source: origin.source,
      issues: [],
    });
  };

  const value = (id: FigureId): number | undefined => table.get(id)?.quantity.si;

  return {
    has: (id) => table.has(id),
    value,
    spread: (id) => table.get(id)?.u ?? 0,
    need: (id) => {
      const si = value(id);
      if (si === undefined) throw new Error(`no figure ${id}`);
      return si;
    },
    given: (id, known, source = givenSource(known.how)) =>
      root(id, known.value, {
        by: { kind: 'given', how: known.how },
        source,
        ...(known.u === undefined ? {} : { u: known.u.si }),
      }),
    assume: (id, quantity, source, u) =>
      root(id, quantity, {
        by: { kind: 'given', how: 'assumed' },
        source,
        ...(u === undefined ? {} : { u }),
      }),
    define: (id, quantity, of, source = 'definition', u) =>
      root(id, quantity, { by: { kind: 'definition', of }, source, ...(u === undefined ? {} : { u }) }),
    choose: (id, quantity, rule, inputs, { as, u, source = 'ours' } = {}) => {
      const from = as === undefined ? undefined : table.get(as);
      const shared =
        from?.spread === undefined
          ? {}
          : { u: Math.hypot(...Object.values(from.spread)), spread: from.spread };
      put({
        id,
        quantity,
        ...(u === undefined ? shared : { u, spread: { [id]: u } }),
        by: { kind: 'choice', rule },
        inputs,
        source,
        issues: [],
      });
    },
    derive: (equation, inputs, outputs) => {
      const derived = deriveFigures(equation, inputs, outputs, table);
      if ('missing' in derived) return false;
      if ('refused' in derived) {
        issues.push(derived.refused);
        return false;
      }
      for (const figure of derived.figures) {
        put(figure);
        issues.push(...figure.issues);
      }
      return true;
    },
    refuse: (title, at) => issues.push(refusal(title, at)),
    figures: () => Object.fromEntries(own),
    issues: () => issues,
  };
};

const givenSource = (how: HowKnown): SourceKey => (how === 'assumed' ? 'ours' : 'visit');

type Derived =
  | { readonly figures: readonly Figure[] }
  | { readonly missing: FigureId }
  | { readonly refused: Issue };

const deriveFigures = <I extends string, O extends string>(
  equation: Equation<I, O>,
  inputs: Readonly<Record<I, FigureId>>,
  outputs: Readonly<Partial<Record<O, FigureId>>>,
  table: ReadonlyMap<FigureId, Figure>,
): Derived => {
  const names = keysOf(equation.meta.inputs);
  const missing = names.find((name) => !table.has(inputs[name]));
  if (missing !== undefined) return { missing: inputs[missing] };
  const si = valuesOf(names, (name) => table.get(inputs[name])?.quantity.si ?? Number.NaN);
  const computed = attempt(equation, si);
  const refused = { refused: refusal(equation.meta.title, Object.values<FigureId>(inputs)) };
  if (computed === undefined || !groupsHold(equation, si, computed)) return refused;

  const slopes = names.map((name) => {
    const of = table.get(inputs[name]);
    return { of, d: slope(equation, si, computed, name, of?.u ?? 0) };
  });
  const figures = keysOf(equation.meta.outputs).flatMap((output): Figure[] => {
    const id = outputs[output];
    if (id === undefined) return [];
    const spread = combine(slopes.map(({ of, d }) => ({ of, d: d[output] })));
    const u = Math.sqrt(Object.values(spread).reduce((sum, du) => sum + du * du, 0));
    return [
      {
        id,
        quantity: { kind: equation.meta.outputs[output].kind, si: computed[output] },
        ...(u > 0 ? { u, spread } : {}),
        by: { kind: 'equation', key: equation.meta.key },
        inputs,
        source: equation.meta.source,
        issues: judgeRange(equation, si, computed, id),
      },
    ];
  });
  return figures.every(({ u }) => u === undefined || Number.isFinite(u)) ? { figures } : refused;
};

/** A named group that overflows says that the inputs are beyond all sense, even where the result is a number. */
const groupsHold = <I extends string, O extends string>(
  equation: Equation<I, O>,
  inputs: Readonly<Record<I, number>>,
  outputs: Readonly<Record<O, number>>,
): boolean =>
  equation.meta.range.every((rule) => Math.abs(rule.value(inputs, outputs)) !== Number.POSITIVE_INFINITY);

const attempt = <I extends string, O extends string>(
  equation: Equation<I, O>,
  si: Readonly<Record<I, number>>,
): Readonly<Record<O, number>> | undefined => {
  try {
    const computed = equation.compute(si);
    return keysOf(equation.meta.outputs).every((o) => Number.isFinite(computed[o])) ? computed : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};

/** d(output)/d(input) by a central difference over the input's own uncertainty; zero where it has none. */
const slope = <I extends string, O extends string>(
  equation: Equation<I, O>,
  si: Readonly<Record<I, number>>,
  at: Readonly<Record<O, number>>,
  name: I,
  u: number,
): Readonly<Record<O, number>> => {
  const outputs = keysOf(equation.meta.outputs);
  const h = si[name] === 0 ? u : Math.min(u, Math.abs(si[name]) / 2);
  if (h === 0) return valuesOf(outputs, () => 0);
  const up = attempt(equation, { ...si, [name]: si[name] + h });
  const down = attempt(equation, { ...si, [name]: si[name] - h });
  const span = (up === undefined ? 0 : h) + (down === undefined ? 0 : h);
  if (span === 0) return valuesOf(outputs, () => 0);
  return valuesOf(outputs, (o) => ((up ?? at)[o] - (down ?? at)[o]) / span);
};

const combine = (
  terms: readonly { readonly d: number; readonly of: Figure | undefined }[],
): Record<FigureId, number> => {
  const spread: Record<FigureId, number> = {};
  for (const { d, of } of terms) {
    for (const [rootId, du] of Object.entries(of?.spread ?? {})) {
      spread[rootId] = (spread[rootId] ?? 0) + d * du;
    }
  }
  return spread;
};

const judgeRange = <I extends string, O extends string>(
  equation: Equation<I, O>,
  inputs: Readonly<Record<I, number>>,
  outputs: Readonly<Record<O, number>>,
  id: FigureId,
): readonly Issue[] =>
  equation.meta.range.flatMap((rule): Issue[] => {
    const si = rule.value(inputs, outputs);
    const below = rule.min !== undefined && si < rule.min * (1 - 1e-9);
    const above = rule.max !== undefined && si > rule.max * (1 + 1e-9);
    if (!below && !above) return [];
    const limit = below ? rule.min : rule.max;
    return [
      {
        code: 'out-of-range',
        severity: 'warning',
        at: [id],
        message: message(below ? 'derivation.below-range' : 'derivation.above-range', {
          equation: message(equation.meta.title),
          what: message(rule.of),
          value: { kind: rule.kind, si },
          limit: { kind: rule.kind, si: limit ?? si },
        }),
      },
    ];
  });

const refusal = (title: MessageKey, at: readonly FigureId[]): Issue => ({
  code: 'cannot-compute',
  severity: 'warning',
  at,
  message: message('derivation.cannot-compute', { equation: message(title) }),
  mend: message('derivation.cannot-compute.mend'),
});

/** Object.keys with the type that the literal has. */
const keysOf = <K extends string>(of: Readonly<Record<K, unknown>>): readonly K[] => {
  const keys: K[] = [];
  for (const key in of) if (Object.hasOwn(of, key)) keys.push(key);
  return keys;
};

const valuesOf = <K extends string>(
  keys: readonly K[],
  value: (key: K) => number,
): Readonly<Record<K, number>> => {
  const out: Partial<Record<K, number>> = {};
  for (const key of keys) out[key] = value(key);
  return complete(keys, out);
};

const complete = <K extends string>(
  keys: readonly K[],
  partial: Readonly<Partial<Record<K, number>>>,
): Readonly<Record<K, number>> => {
  const isWhole = (x: Readonly<Partial<Record<K, number>>>): x is Readonly<Record<K, number>> =>
    keys.every((key) => x[key] !== undefined);
  if (!isWhole(partial)) throw new Error('a value is missing');
  return partial;
};

/** The root that most of a figure's spread comes from, when that root is an assumption and weighs more than half. */
export const leansOn = (figure: Figure, figures: Figures): FigureId | undefined => {
  const total = (figure.u ?? 0) ** 2;
  if (total === 0) return undefined;
  const assumed = Object.entries(figure.spread ?? {}).filter(([id]) => {
    const by = figures[id]?.by;
    return by?.kind === 'given' && by.how === 'assumed';
  });
  const share = assumed.reduce((sum, [, du]) => sum + du * du, 0) / total;
  if (share <= 0.5) return undefined;
  return assumed.toSorted((a, b) => b[1] ** 2 - a[1] ** 2 || (a[0] < b[0] ? -1 : 1))[0]?.[0];
};
