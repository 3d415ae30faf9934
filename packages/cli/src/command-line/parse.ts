import { parseArgs } from 'node:util';
import { nearest } from '@brinewright/equipment';
import { type Message, message } from '@brinewright/words';
import {
  commonOptions,
  type Given,
  isOptionName,
  type OptionName,
  optionOf,
  optionTable,
} from './options.ts';
import { type Verb, verbNames, verbs, verbsUnder } from './verbs.ts';

export type CommandLine = {
  readonly verb: Verb | undefined;
  /** The first word of several verbs, given alone. */
  readonly group?: string;
  readonly args: readonly string[];
  readonly given: Given;
};

export type Parsed =
  | { readonly ok: true; readonly line: CommandLine }
  /** What is wrong with the command, and the language it asked for. */
  | { readonly ok: false; readonly given: Given; readonly problem: Message };

type Token = ReturnType<typeof tokensOf>[number];

const tokensOf = (argv: readonly string[]) =>
  parseArgs({
    args: [...argv],
    options: Object.fromEntries(
      Object.keys(optionTable)
        .filter(isOptionName)
        .map((name) => [
          name,
          optionOf(name).value === undefined
            ? { type: 'boolean' as const }
            : { type: 'string' as const, multiple: true },
        ]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  }).tokens;

/** Reads a command line: the verb, its arguments, its options. Nothing is done yet. */
export const parseCommandLine = (argv: readonly string[]): Parsed => {
  const tokens = tokensOf(argv);
  const [first] = tokens.filter(({ kind }) => kind === 'positional');
  return first !== undefined && argv[first.index] === 'help'
    ? parseWords(tokensOf(['--help', ...argv.toSpliced(first.index, 1)]))
    : parseWords(tokens);
};

const parseWords = (tokens: readonly Token[]): Parsed => {
  const given = givenIn(tokens);
  const words = tokens.flatMap((token) => (token.kind === 'positional' ? [token] : []));
  const named = words.map(({ value }) => value);
  const problem = optionProblem(tokens, undefined);
  if (problem !== undefined) return { ok: false, given, problem };
  if (named.length === 0) return { ok: true, line: { verb: undefined, args: [], given } };
  const verb = verbFor(named);
  const [first = '', second] = named;
  if (verb === undefined && second === undefined && verbsUnder(first).length > 0)
    return { ok: true, line: { verb, group: first, args: [], given } };
  if (verb === undefined)
    return given.flags.has('help')
      ? { ok: true, line: { verb: undefined, args: [], given } }
      : { ok: false, given, problem: unknownVerb(named) };
  const misplaced = optionProblem(tokens, verb);
  if (misplaced !== undefined) return { ok: false, given, problem: misplaced };
  return { ok: true, line: shared(verb, tokens, given) };
};

/** The verb with the most words that the line begins with. */
const verbFor = (named: readonly string[]): Verb | undefined =>
  verbs
    .filter(({ words }) => words.every((word, place) => named[place] === word))
    .toSorted((a, b) => b.words.length - a.words.length)[0];

const unknownVerb = (named: readonly string[]): Message => {
  const [first = '', second] = named;
  const below = verbsUnder(first);
  const known = below.length > 0 ? below.map(({ words }) => words.join(' ')) : verbNames;
  const word = below.length > 0 ? `${first} ${second ?? ''}`.trim() : first;
  const near = nearest(word, known);
  return near === undefined
    ? message('cli.unknown-verb', { word, known: known.join(', ') })
    : message('cli.unknown-verb-near', { word, near });
};

/** Without a verb: options that nobody knows or that lack a value. With one: those that it does not take. */
const optionProblem = (tokens: readonly Token[], verb: Verb | undefined): Message | undefined => {
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    if (!isOptionName(name)) return unknownOption(rawName);
    const { value: wanted, oneOf } = optionOf(name);
    if (wanted !== undefined && value === undefined)
      return message('cli.option-value', { option: rawName, value: wanted });
    if (wanted !== undefined && value?.startsWith('--') === true)
      return message('cli.option-as-value', { option: rawName, value: wanted, found: value });
    if (wanted === undefined && value !== undefined)
      return message('cli.option-no-value', { option: rawName });
    if (oneOf !== undefined && value !== undefined && !oneOf.includes(value))
      return message('cli.option-one-of', { option: rawName, value, known: oneOf.join(', ') });
    if (verb !== undefined && !takes(verb, name))
      return message('cli.option-not-here', { option: rawName, verb: verb.words.join(' ') });
  }
  return undefined;
};

const takes = ({ options }: Verb, name: OptionName): boolean =>
  commonOptions.includes(name) || options.includes(name);

const unknownOption = (option: string): Message => {
  const near = nearest(option.replace(/^-+/u, ''), Object.keys(optionTable));
  return near === undefined
    ? message('cli.unknown-option', { option })
    : message('cli.unknown-option-near', { option, near: `--${near}` });
};

const givenIn = (tokens: readonly Token[]): Given => {
  const flags = new Set<OptionName>();
  const values = new Map<OptionName, string[]>();
  for (const token of tokens) {
    if (token.kind !== 'option' || !isOptionName(token.name)) continue;
    flags.add(token.name);
    if (token.value !== undefined) values.set(token.name, [...(values.get(token.name) ?? []), token.value]);
  }
  return { flags, values };
};

/**
 * What is left after the verb. `--equipment` may be followed by several paths: where there are more arguments than
 * the verb takes, those that follow it are paths.
 */
const shared = (verb: Verb, tokens: readonly Token[], given: Given): CommandLine => {
  const args: string[] = [];
  const paths: string[] = [];
  const words = tokens.filter((token) => token.kind === 'positional').length - verb.words.length;
  let surplus = words - verb.most;
  let afterEquipment = false;
  let skipped = 0;
  for (const token of tokens) {
    if (token.kind === 'option') {
      afterEquipment = token.name === 'equipment';
      if (afterEquipment && token.value !== undefined) paths.push(token.value);
    } else if (token.kind === 'positional') {
      if (skipped < verb.words.length) skipped += 1;
      else if (afterEquipment && surplus > 0) {
        paths.push(token.value);
        surplus -= 1;
      } else args.push(token.value);
    }
  }
  const values = new Map(given.values);
  if (paths.length > 0) values.set('equipment', paths);
  return { verb, args, given: { ...given, values } };
};
