import type { Figure, FigureId } from '@brinewright/service';
import { shownUnit, type UnitSystem } from '@brinewright/units';
import { formatQuantity, type MessageKey } from '@brinewright/words';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { capital, wordFor } from '../say.ts';
import type { Sheet } from './sheet.ts';

const kebab = (name: string): string => name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);

const anchor = (id: FigureId): string => `f-${id.replace(/[^a-z0-9.-]/giu, '_')}`;

const find = ({ assessment }: Sheet, id: FigureId): Figure | undefined =>
  Object.hasOwn(assessment.figures, id) ? assessment.figures[id] : undefined;

/** Figures that the trade speaks of in another unit than their kind's usual one. */
const ownUnit: Readonly<Record<FigureId, Readonly<Record<UnitSystem, string>>>> = {
  'situation.bed.volume': { us: 'ft3', metric: 'L' },
  'situation.bed.grain': { us: 'mm', metric: 'mm' },
  'situation.bed.grain-density': { us: 'kg/m3', metric: 'kg/m3' },
};

export const unitFor = ({ reader }: Sheet, id: FigureId): string | undefined =>
  Object.hasOwn(ownUnit, id) ? ownUnit[id]?.[reader.system] : undefined;

const shownValue = (sheet: Sheet, figure: Figure): string =>
  formatQuantity(figure.quantity, { ...sheet.reader, unit: unitFor(sheet, figure.id) }).text;

/** A figure as plain text, or a dash where it could not be computed. */
export const figureText = (sheet: Sheet, id: FigureId | undefined): string => {
  const figure = id === undefined ? undefined : find(sheet, id);
  return figure === undefined ? '–' : shownValue(sheet, figure);
};

/** What a figure is called: by its own word, by where it is shown, by the equation that gives it, else by its id. */
const nameOf = (sheet: Sheet, figure: Figure): string => {
  const own = wordFor(`figure.${figure.id}`);
  if (own !== undefined) return sheet.say(own);
  if (figure.by.kind === 'definition' && figure.by.title !== undefined) return sheet.text(figure.by.title);
  const equation = figure.by.kind === 'equation' ? wordFor(`equation.${figure.by.key}`) : undefined;
  return sheet.labels.get(figure.id) ?? (equation === undefined ? figure.id : sheet.say(equation));
};

export const nameOfFigure = (sheet: Sheet, id: FigureId): string => {
  const figure = find(sheet, id);
  return figure === undefined ? id : nameOf(sheet, figure);
};

const how: Readonly<Record<'measured' | 'read' | 'told' | 'assumed', MessageKey>> = {
  measured: 'papers.how.measured',
  read: 'papers.how.read',
  told: 'papers.how.told',
  assumed: 'papers.how.assumed',
};

/** How it was come by: the formula in words, the rule of a choice, or how it is known. */
const formulaOf = (sheet: Sheet, { by }: Figure): string => {
  switch (by.kind) {
    case 'given':
      return sheet.word(how[by.how]);
    case 'definition':
      return sheet.word('papers.how.definition', { of: by.of });
    case 'choice': {
      const rule = wordFor(`derivation.rule.${by.rule}`);
      return rule === undefined ? by.rule : capital(sheet.say(rule));
    }
    case 'equation': {
      const formula = wordFor(`formula.${by.key}`);
      return formula === undefined ? by.key : capital(sheet.say(formula));
    }
  }
};

const byName = (a: readonly [string, string], b: readonly [string, string]): number =>
  a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : 0;

const inputLabel = (sheet: Sheet, name: string, input: Figure): string => {
  const symbol = wordFor(`symbol.${kebab(name)}`);
  return capital(symbol === undefined ? nameOf(sheet, input) : sheet.say(symbol));
};

/** The way to one figure as plain words: what the paper and the app both show. */
export type Way = {
  readonly title: string;
  /** The formula in words, the rule of a choice, or how it is known. */
  readonly formula: string;
  readonly inputs: readonly { readonly id: FigureId; readonly label: string; readonly value: string }[];
  readonly result: string;
  readonly spread?: string;
  readonly source: string;
  /** Where it leaves the range of its equation. */
  readonly outside: readonly string[];
};

const inputsOf = (sheet: Sheet, { inputs }: Figure): Way['inputs'] =>
  Object.entries(inputs)
    .toSorted(byName)
    .flatMap(([name, id]) => {
      const input = find(sheet, id);
      return input === undefined
        ? []
        : [{ id, label: inputLabel(sheet, name, input), value: shownValue(sheet, input) }];
    });

const inputRow = ({ id, label, value }: Way['inputs'][number]): Markup =>
  html(
    'tr',
    {},
    html('td', {}, html('a', { href: `#${anchor(id)}` }, label)),
    html('td', { class: 'num' }, value),
  );

/** What is no publication is said in the reader's language; a citation stays in its own. */
const plainSource = (sheet: Sheet, source: Figure['source']): string | undefined => {
  const word = wordFor(`cli.source.${source}`);
  return word === undefined ? undefined : capital(sheet.say(word));
};

const cited = ({ sources }: Sheet, source: Figure['source']): string =>
  (Object.hasOwn(sources, source) ? sources[source]?.cite : undefined) ?? source;

export const sourceName = (sheet: Sheet, source: Figure['source']): string =>
  plainSource(sheet, source) ?? cited(sheet, source);

const sourceOf = (sheet: Sheet, { source }: Figure): string =>
  plainSource(sheet, source) ?? sheet.word('papers.source.named', { source: cited(sheet, source) });

/** One standard uncertainty in the unit of its figure; a temperature has another scale for differences. */
export const doubtText = (sheet: Sheet, { id, quantity, u }: Figure): string | undefined => {
  if (u === undefined || u === 0 || quantity.kind === 'temperature') return undefined;
  const { system } = sheet.reader;
  const unit = unitFor(sheet, id) ?? shownUnit(quantity.kind, system, quantity.si).symbol;
  return formatQuantity({ kind: quantity.kind, si: u }, { ...sheet.reader, unit, digits: 2 }).text;
};

const spread = (sheet: Sheet, figure: Figure): string | undefined => {
  const u = doubtText(sheet, figure);
  return u === undefined ? undefined : sheet.word('papers.derivation.uncertainty', { u });
};

const paragraph = (words: string | undefined, of?: string): Markup | undefined =>
  words === undefined ? undefined : html('p', { class: of }, words);

const wayOf = (sheet: Sheet, figure: Figure): Way => {
  const doubt = spread(sheet, figure);
  return {
    title: nameOf(sheet, figure),
    formula: formulaOf(sheet, figure),
    inputs: inputsOf(sheet, figure),
    result: shownValue(sheet, figure),
    ...(doubt === undefined ? {} : { spread: doubt }),
    source: sourceOf(sheet, figure),
    outside: figure.issues.map((issue) => sheet.say(issue.message)),
  };
};

/** The way to one figure: formula in words, inputs with units, result, source, and where it leaves its range. */
const wayTo = (sheet: Sheet, figure: Figure): Content => {
  const way = wayOf(sheet, figure);
  return [
    paragraph(way.title, 'strong'),
    paragraph(way.formula),
    way.inputs.length === 0 ? undefined : html('table', {}, html('tbody', {}, way.inputs.map(inputRow))),
    paragraph(`= ${way.result}`, 'result'),
    paragraph(way.spread, 'second'),
    paragraph(way.source, 'second'),
    way.outside.map((words) => paragraph(words, 'out-of-range')),
  ];
};

const label = (sheet: Sheet, id: FigureId, name: string | undefined): void => {
  if (name !== undefined && !sheet.labels.has(id)) sheet.labels.set(id, name);
};

/** The same, for a figure by its id; nothing where it could not be computed. `name` is what it is called there. */
export const wayToFigure = (sheet: Sheet, id: FigureId, name?: string): Way | undefined => {
  const found = find(sheet, id);
  if (found === undefined) return undefined;
  sheet.shown.push(id);
  label(sheet, id, name);
  return wayOf(sheet, found);
};

/**
 * A shown figure that opens in place, one at a time, to where it comes from. `name` is what it is called there;
 * `text` shows it otherwise than by itself, beside those it is compared with.
 */
export const figure = (
  sheet: Sheet,
  id: FigureId | undefined,
  name?: string,
  of?: string,
  text?: string,
): Markup => {
  const found = id === undefined ? undefined : find(sheet, id);
  if (found === undefined) return html('span', { class: of }, '–');
  sheet.shown.push(found.id);
  label(sheet, found.id, name);
  return html(
    'details',
    { class: of === undefined ? 'figure' : `figure ${of}`, name: 'figure' },
    html('summary', {}, text ?? shownValue(sheet, found)),
    classed('div', 'why', wayTo(sheet, found)),
  );
};

/** The derivation of one figure by itself. */
export const derivation = (sheet: Sheet, id: FigureId): Markup => {
  const found = find(sheet, id);
  return classed('div', 'why', found === undefined ? undefined : wayTo(sheet, found));
};

/** Everything the shown figures rest on, each once, in the order met. */
const reachable = (sheet: Sheet): readonly Figure[] => {
  const ids = [...new Set(sheet.shown)];
  for (const id of ids)
    for (const [, input] of Object.entries(find(sheet, id)?.inputs ?? {}).toSorted(byName))
      if (!ids.includes(input)) ids.push(input);
  return ids.map((id) => find(sheet, id)).filter((one) => one !== undefined);
};

/** Inputs without a word of their own are called what the equation that takes them calls them. */
const nameInputs = (sheet: Sheet, figures: readonly Figure[]): void => {
  for (const { inputs } of figures)
    for (const [name, id] of Object.entries(inputs).toSorted(byName)) {
      const symbol = wordFor(`symbol.${kebab(name)}`);
      label(sheet, id, symbol === undefined ? undefined : capital(sheet.say(symbol)));
    }
};

/** All that the figures shown so far rest on, each once. */
export const waysShown = (sheet: Sheet): readonly (Way & { readonly id: FigureId })[] => {
  const figures = reachable(sheet);
  nameInputs(sheet, figures);
  return figures.map((one) => ({ id: one.id, ...wayOf(sheet, one) }));
};

export const derivations = (sheet: Sheet): Markup => {
  const figures = reachable(sheet);
  nameInputs(sheet, figures);
  return classed(
    'section',
    'derivations',
    html('h2', {}, sheet.word('papers.derivations')),
    html('p', { class: 'second' }, sheet.word('papers.derivations.how')),
    figures.map((one) =>
      html(
        'details',
        { class: 'entry' },
        html('summary', { id: anchor(one.id) }, nameOf(sheet, one), html('b', {}, shownValue(sheet, one))),
        classed('div', 'why', wayTo(sheet, one)),
      ),
    ),
  );
};

/** The sources that the shown figures rest on, each once; those without one are named as such. */
export const sourceList = (sheet: Sheet): Markup => {
  const used = [...new Set(reachable(sheet).map(({ source }) => sourceName(sheet, source)))].toSorted(
    (a, b) => (a < b ? -1 : 1),
  );
  return classed(
    'section',
    'sources',
    html('h2', {}, sheet.word('papers.sources')),
    html(
      'ul',
      {},
      used.map((source) => html('li', {}, source)),
    ),
  );
};
