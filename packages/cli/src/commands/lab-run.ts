import { nearest } from '@brinewright/equipment';
import { type Equation, equations, sources } from '@brinewright/physics';
import { type Evaluated, evaluate, type Figure } from '@brinewright/service';
import {
  enteredAs,
  findUnit,
  inUnit,
  parseQuantity,
  type Quantity,
  shownUnit,
  type UnitRow,
} from '@brinewright/units';
import { type Issue, type Message, message, quantityProblemMessages } from '@brinewright/words';
import { type Call, complain, misused, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { capital, stacked } from '../text/lines.ts';
import { table } from '../text/table.ts';
import { symbolOr } from '../view.ts';
import { described } from './lab-list.ts';
import { issueParagraph } from './reading.ts';

/** One equation with the values given on the command line. */
export const labRun = (call: Call): number => {
  const [name = '', ...pairs] = call.args;
  const equation = equations.find(({ meta }) => meta.key === name);
  if (equation === undefined) return noEquation(call, name);
  const read = readInputs(call, equation, pairs);
  if (!read.ok) {
    for (const problem of read.problems) complain(call, ...problem);
    return exit.usage;
  }
  const as = optionValue(call.given, 'as');
  if (as !== undefined && !canBeIn(equation, as))
    return misused(call, message('cli.lab.no-such-output', { unit: as, units: unitsText(call, equation) }));
  const evaluated = evaluate(equation, read.inputs);
  show(call, equation, read.inputs, evaluated);
  return Object.keys(evaluated.outputs).length === 0 ? exit.numerical : exit.fine;
};

const noEquation = (call: Call, name: string): number => {
  const near = nearest(
    name,
    equations.map(({ meta }) => meta.key),
  );
  return near === undefined
    ? misused(call, message('cli.lab.unknown', { name }))
    : misused(call, message('cli.lab.unknown-near', { name, near }));
};

type Inputs = Readonly<Record<string, Quantity>>;
type InputsRead =
  | { readonly ok: true; readonly inputs: Inputs }
  | { readonly ok: false; readonly problems: readonly (readonly Message[])[] };

const kebab = (name: string): string => name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);

/** `key="5 gpm"` by the names of the equation, in either spelling: refillFlow or refill-flow. */
const readInputs = (call: Call, { meta }: Equation, pairs: readonly string[]): InputsRead => {
  const inputs: Record<string, Quantity> = {};
  const problems: Message[][] = [];
  const names = Object.keys(meta.inputs);
  for (const pair of pairs) {
    const [written = '', ...rest] = pair.split('=');
    const text = rest.join('=');
    const name = names.find((one) => one === written || kebab(one) === written);
    const kind = name === undefined ? undefined : meta.inputs[name]?.kind;
    if (rest.length === 0) problems.push([message('cli.lab.no-pair', { text: pair })]);
    else if (name === undefined || kind === undefined)
      problems.push([
        message('cli.lab.unknown-input', { key: written, name: meta.key, known: names.join(', ') }),
      ]);
    else {
      const parsed = parseQuantity(text, kind);
      if (parsed.ok) inputs[name] = parsed.quantity;
      else {
        const { message: wrong, mend } = quantityProblemMessages(parsed.problem);
        problems.push([message('cli.lab.input', { key: name }), wrong, mend]);
      }
    }
  }
  const missing = names.filter((name) => inputs[name] === undefined);
  if (problems.length === 0 && missing.length > 0)
    problems.push([
      message('cli.lab.missing', { name: meta.key, missing: missing.map(asked(call, meta)).join(', ') }),
    ]);
  return problems.length === 0 ? { ok: true, inputs } : { ok: false, problems };
};

/** 'refillFlow="1 gpm"': how a missing input would be written. */
const asked =
  ({ speech }: Call, meta: Equation['meta']) =>
  (name: string): string => {
    const kind = meta.inputs[name]?.kind;
    const unit = kind === undefined ? '' : shownUnit(kind, speech.reader.system).symbol;
    return `${name}="${`1 ${unit}`.trim()}"`;
  };

const canBeIn = ({ meta }: Equation, unit: string): boolean =>
  Object.values(meta.outputs).some(({ kind }) => findUnit(kind, unit) !== undefined);

const unitsText = ({ speech }: Call, equation: Equation): string =>
  described(speech, equation)
    .outputs.map(({ key, unit }) => `${key} [${unit}]`)
    .join(', ');

const show = (call: Call, equation: Equation, inputs: Inputs, evaluated: Evaluated): void => {
  const { outputs, issues } = evaluated;
  if (call.json) {
    printJson(call, runJson(call, equation, inputs, evaluated));
    return;
  }
  const { speech } = call;
  const rows = Object.entries(outputs).map(([key, { quantity: q }]) => ({
    cells: [key, capital(symbolOr(speech, key, key)), numberText(call, q), rowFor(call, q).shown],
  }));
  const columns = [{ title: '' }, { title: '' }, { title: '', align: 'right' as const }, { title: '' }];
  if (rows.length > 0) print(call, stacked(table(columns, rows), [citation(equation)]));
  for (const issue of issues) call.io.err(`${issueParagraph(call, issue).join('\n')}\n`);
};

const citation = ({ meta }: Equation): string => sources[meta.source].cite;

/** Six digits: more than any source gives, few enough to read. */
const numberText = (call: Call, q: Quantity): string => String(Number(valueIn(call, q).toPrecision(6)));

/** The unit asked for with --as where the kind has it, else the reader's usual one. */
const rowFor = ({ given, speech }: Call, { kind, si }: Quantity): UnitRow => {
  const as = optionValue(given, 'as');
  return (as === undefined ? undefined : findUnit(kind, as)) ?? shownUnit(kind, speech.reader.system, si);
};

const valueIn = (call: Call, q: Quantity): number => inUnit(q.si, rowFor(call, q));

const runJson = (call: Call, equation: Equation, inputs: Inputs, { outputs, issues }: Evaluated): object => ({
  name: equation.meta.key,
  inputs: mapped(inputs, (q) => enteredJson(call, q)),
  outputs: mapped(outputs, ({ quantity: q }: Figure) => ({
    value: valueIn(call, q),
    unit: rowFor(call, q).symbol,
  })),
  issues: issues.map((issue) => issueJson(call, issue)),
  source: citation(equation),
});

const mapped = <A, B>(of: Readonly<Record<string, A>>, to: (one: A) => B): Readonly<Record<string, B>> =>
  Object.fromEntries(Object.entries(of).map(([key, one]) => [key, to(one)]));

/** As entered: what the way to SI and back adds in the last digits is no news. */
const enteredJson = (call: Call, q: Quantity): object => {
  const row = enteredAs(q)?.row ?? shownUnit(q.kind, call.speech.reader.system, q.si);
  return { value: Number(inUnit(q.si, row).toPrecision(12)), unit: row.symbol };
};

const issueJson = ({ speech }: Call, { code, severity, message: what, mend }: Issue): object => ({
  code,
  severity,
  says: speech.say(what),
  ...(mend === undefined ? {} : { mend: speech.say(mend) }),
});
