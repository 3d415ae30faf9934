import type { Issue, Place, Result } from '@brinewright/words';
import { createReport, distinct, hasErrors, issueAt } from '../issue/report.ts';
import { type Resolved, resolveLike, type Stocks } from '../like/resolve.ts';
import type { Parsed, ParsedFamily, ParsedMedia } from '../load/parse-definition.ts';
import { type Equipment, type Family, undescribed } from '../model/family.ts';
import type { Medium } from '../model/fitting.ts';
import { type CompiledFamily, compileFamily } from './compile-family.ts';
import { digestOf } from './digest.ts';
import { compileMedium } from './fittings.ts';

/** Equipment, and the definitions behind it. */
export type Compiled = {
  readonly equipment: Equipment;
  /** What each family was compiled from: its own lines over those of its stock. */
  readonly sources: ReadonlyMap<string, Resolved>;
};

/**
 * Definition files joined into equipment: stocks under the families like them, references checked, text to SI.
 *
 * Pure: no file is read. All issues of all files come back together, errors, warnings and notes.
 */
export const compileDefinitions = (parsed: readonly Parsed[]): Result<Compiled> => {
  const doubles = checkDoubles(parsed);
  const stocks = stocksOf(parsed);
  const families = familiesOf(parsed);
  const built = [...families, ...undescribedFrom(families, stocks)].map((family) => build(family, stocks));
  const media = compileMedia(parsed);
  const issues = distinct([
    ...parsed.flatMap((one) => one.issues),
    ...doubles,
    ...built.flatMap((one) => one.issues),
    ...unusedStocks(parsed, stocks),
    ...media.issues,
  ]);
  if (hasErrors(issues)) return { ok: false, issues };
  const compiled = new Map(built.flatMap((one) => ('family' in one ? [[one.family.id, one.family]] : [])));
  if (!compiled.has(undescribed)) compiled.set(undescribed, bareFamily);
  const sources = new Map(built.flatMap((one) => ('family' in one ? [[one.family.id, one.resolved]] : [])));
  const equipment = { digest: digestOf(compiled, media.all), families: compiled, media: media.all };
  return { ok: true, value: { equipment, sources }, issues };
};

type Built = (CompiledFamily & { readonly resolved: Resolved }) | { readonly issues: readonly Issue[] };

const build = (family: ParsedFamily, stocks: Stocks): Built => {
  const resolved = resolveLike(family, stocks);
  return 'written' in resolved ? { ...compileFamily(resolved), resolved } : resolved;
};

const familiesOf = (parsed: readonly Parsed[]): readonly ParsedFamily[] =>
  parsed.flatMap((one) => (one.state === 'family' ? [one] : []));

const stocksOf = (parsed: readonly Parsed[]): Stocks => ({
  whole: new Map(parsed.flatMap((one) => (one.state === 'stock' ? [[`stock/${one.id}`, one]] : []))),
  broken: new Set(parsed.flatMap((one) => (one.state === 'broken' && one.id !== undefined ? [one.id] : []))),
});

/** Where no file defines it, the stock of that name is a family by itself: a unit that nobody has described. */
const undescribedFrom = (families: readonly ParsedFamily[], stocks: Stocks): readonly ParsedFamily[] => {
  const stock = stocks.whole.get(`stock/${undescribed}`);
  return stock === undefined || families.some(({ id }) => id === undescribed)
    ? []
    : [{ ...stock, state: 'family', id: undescribed }];
};

/** A stock that no family is like is still looked at, so that its author sees what is wrong with it. */
const unusedStocks = (parsed: readonly Parsed[], stocks: Stocks): readonly Issue[] => {
  const used = new Set(familiesOf(parsed).map((one) => one.written.like));
  const unused = [...stocks.whole].filter(([name]) => !used.has(name) && name !== `stock/${undescribed}`);
  return unused.flatMap(([, stock]) => build(stock, stocks).issues);
};

/** An id that two files define, with both places. */
const checkDoubles = (parsed: readonly Parsed[]): readonly Issue[] => {
  const first = new Map<string, ParsedFamily>();
  return parsed.flatMap((one) => {
    if (one.state !== 'family' && one.state !== 'stock') return [];
    const name = `${one.state}/${one.id}`;
    const before = first.get(name);
    first.set(name, before ?? one);
    if (before === undefined) return [];
    const { file, line } = placeOfKind(before);
    const finding = { code: 'definition.id-twice', values: { id: one.id, file, line } } as const;
    return [issueAt('error', [one.state], placeOfKind(one), finding)];
  });
};

const placeOfKind = ({ file, placeOf, state }: ParsedFamily): Place =>
  placeOf([state]) ?? { file, line: 1, column: 1 };

const compileMedia = (parsed: readonly Parsed[]) => {
  const all = new Map<string, Medium>();
  const issues: Issue[] = [];
  const from = new Map<string, ParsedMedia>();
  for (const one of parsed) if (one.state === 'media') issues.push(...addMedia(one, all, from));
  return { all, issues };
};

const addMedia = (
  one: ParsedMedia,
  all: Map<string, Medium>,
  from: Map<string, ParsedMedia>,
): readonly Issue[] => {
  const report = createReport(one.locate);
  for (const [id, medium] of Object.entries(one.written.media)) {
    const before = from.get(id);
    const at = ['media', id];
    if (before === undefined) from.set(id, one);
    else {
      const { file, line } = before.locate(at, 'key');
      report.error(at, { code: 'definition.id-twice', values: { id, file, line } }, 'key');
    }
    all.set(id, compileMedium(medium, id));
  }
  return report.issues;
};

/** What is left where not even the stock of undescribed units was loaded. */
const bareFamily: Family = {
  id: undescribed,
  title: undescribed,
  source: undescribed,
  kinds: ['softener', 'filter'],
  limits: { temperature: {} },
  features: [],
  never: [],
  tells: [],
  bores: [],
  stack: [],
  looksWrong: [],
  injectors: [],
  controls: { drain: [], refill: [] },
  controllers: [],
  meters: [],
  parts: [],
  conversions: [],
  tools: [],
  operations: [],
  faults: [],
  tests: [],
  complaints: [],
  changes: [],
  cautions: [],
};
