import { type Equation, equations, type RangeRule, sources, symbolName } from '@brinewright/physics';
import { inUnit, shownUnit, type UnitRow } from '@brinewright/units';
import { formatNumber } from '@brinewright/words';
import { type Call, print, printJson } from '../call.ts';
import { exit } from '../exit.ts';
import { capital, hanging } from '../text/lines.ts';
import { type Speech, symbolOr, wordOr } from '../view.ts';

/** Every public equation with inputs, outputs, range and source. */
export const labList = (call: Call): number => {
  const all = equations.map((equation) => described(call.speech, equation));
  if (call.json) printJson(call, all);
  else
    print(
      call,
      all.flatMap((one, place) => [...(place === 0 ? [] : ['']), ...entryText(call.speech, one)]),
    );
  return exit.fine;
};

type Limits = { readonly min?: number; readonly max?: number };
type Value = { readonly key: string; readonly called: string; readonly unit: string };
type Described = {
  readonly name: string;
  readonly title: string;
  readonly formula: string;
  readonly inputs: readonly (Value & { readonly range: Limits | null })[];
  readonly outputs: readonly Value[];
  /** Limits on named groups and outputs, beside those on inputs. */
  readonly limits: readonly (Limits & { readonly of: string; readonly unit: string })[];
  readonly source: string;
  readonly status: string;
};

export const described = (speech: Speech, { meta }: Equation): Described => ({
  name: meta.key,
  title: speech.word(meta.title),
  formula: speech.word(meta.words),
  inputs: Object.entries(meta.inputs).map(([key, { kind }]) => ({
    key,
    called: symbolOr(speech, key, key),
    unit: unitOf(speech, kind).symbol,
    range: rangeOf(speech, meta.range, key),
  })),
  outputs: Object.entries(meta.outputs).map(([key, { kind }]) => ({
    key,
    called: symbolOr(speech, key, key),
    unit: unitOf(speech, kind).symbol,
  })),
  limits: meta.range
    .filter(({ of }) => !Object.keys(meta.inputs).some((key) => symbolName(key) === of))
    .map((rule) => ({
      of: speech.word(rule.of),
      ...limitsOf(speech, rule),
      unit: unitOf(speech, rule.kind).symbol,
    })),
  source: sources[meta.source].cite,
  status: meta.status,
});

const unitOf = ({ reader }: Speech, kind: RangeRule['kind']): UnitRow => shownUnit(kind, reader.system);

const rangeOf = (speech: Speech, rules: readonly RangeRule[], key: string): Limits | null => {
  const rule = rules.find(({ of }) => of === symbolName(key));
  return rule === undefined ? null : limitsOf(speech, rule);
};

const limitsOf = (speech: Speech, { kind, min, max }: RangeRule): Limits => {
  const row = unitOf(speech, kind);
  return {
    ...(min === undefined ? {} : { min: inUnit(min, row) }),
    ...(max === undefined ? {} : { max: inUnit(max, row) }),
  };
};

const entryText = (speech: Speech, one: Described): string[] => [
  ...hanging('', `${one.name}: ${one.title}`),
  ...hanging('', `${one.formula}.`, 2),
  ...hanging(
    `${speech.word('cli.lab.takes')} `,
    one.inputs.map((input) => valueText(input) + rangeText(speech, input.range)).join('; '),
    2,
  ),
  ...hanging(`${speech.word('cli.lab.gives')} `, one.outputs.map(valueText).join('; '), 2),
  ...one.limits.flatMap((limit) => hanging('', capital(limit.of) + rangeText(speech, limit), 2)),
  ...hanging('', `${one.source} (${wordOr(speech, `cli.status.${one.status}`, one.status)})`, 2),
];

const valueText = ({ key, unit }: Value): string => (unit === '' ? key : `${key} [${unit}]`);

const rangeText = (speech: Speech, range: Limits | null): string => {
  if (range === null) return '';
  const [least, most] = [range.min, range.max].map((one) =>
    one === undefined ? undefined : formatNumber(one, 4),
  );
  if (least !== undefined && most !== undefined) return ` ${speech.word('cli.lab.between', { least, most })}`;
  if (least !== undefined) return ` ${speech.word('cli.lab.from', { least })}`;
  return most === undefined ? '' : ` ${speech.word('cli.lab.up-to', { most })}`;
};
