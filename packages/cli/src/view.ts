import type { Equipment, Family } from '@brinewright/equipment';
import { symbolName } from '@brinewright/physics';
import type { Assessment, Conditioner, Figure, FigureId, Visit } from '@brinewright/service';
import { type Quantity, quantity, shownUnit, type UnitSystem } from '@brinewright/units';
import {
  english,
  type FormattedQuantity,
  formatMessage,
  formatQuantity,
  formatText,
  type Issue,
  type Message,
  type MessageKey,
  type MessageValue,
  message,
  type Path,
  type Place,
  type Reader,
  type Text,
} from '@brinewright/words';

/** Words for the reader at the terminal. */
export type Speech = {
  readonly reader: Reader;
  readonly say: (what: Message) => string;
  readonly word: (key: MessageKey, values?: Readonly<Record<string, MessageValue>>) => string;
  readonly text: (text: Text) => string;
  readonly quantity: (q: Quantity) => string;
};

export const speechFor = (reader: Reader): Speech => ({
  reader,
  say: (what) => formatMessage(what, reader),
  word: (key, values) => formatMessage(message(key, values), reader),
  text: (text) => formatText(text, reader.language),
  quantity: (q) => formatQuantity(q, reader).text,
});

/** A visit with its assessment, as every section of the text reads it. */
export type View = Speech & {
  readonly visit: Visit;
  readonly assessment: Assessment;
  readonly family: Family | undefined;
  /** What is wrong with the document; it was set aside. */
  readonly issues: readonly Issue[];
  readonly subject: Conditioner | undefined;
  readonly placeOf: (path: Path) => Place | undefined;
};

export type ViewParts = {
  readonly visit: Visit;
  readonly assessment: Assessment;
  readonly equipment: Equipment;
  readonly reader: Reader;
  readonly issues: readonly Issue[];
  readonly placeOf: View['placeOf'];
};

export const viewOf = ({ visit, assessment, equipment, reader, issues, placeOf }: ViewParts): View => {
  const subject = visit.conditioners.find(({ id }) => id === visit.subject);
  return {
    ...speechFor({ ...reader, currency: visit.site.prices?.currency }),
    visit,
    assessment,
    issues,
    subject,
    family: subject === undefined ? undefined : equipment.families.get(subject.family),
    placeOf,
  };
};

export const figureOf = ({ assessment }: View, id: FigureId | undefined): Figure | undefined =>
  id !== undefined && Object.hasOwn(assessment.figures, id) ? assessment.figures[id] : undefined;

/** Figures that the trade speaks of in another unit than their kind's usual one. */
const ownUnit: Readonly<Record<FigureId, Readonly<Record<UnitSystem, string>>>> = {
  'situation.bed.volume': { us: 'ft3', metric: 'L' },
  'situation.bed.grain': { us: 'mm', metric: 'mm' },
  'situation.bed.grain-density': { us: 'kg/m3', metric: 'kg/m3' },
};

/** A figure with its unit, or a dash where there is none. */
export const shown = (view: View, id: FigureId | undefined): string => {
  const figure = figureOf(view, id);
  return figure === undefined ? '–' : figureText(view, figure);
};

export const figureText = (speech: Speech, figure: Figure): string => formatted(speech, figure).text;

const formatted = ({ reader }: Speech, { id, quantity: q }: Figure): FormattedQuantity =>
  formatQuantity(q, { ...reader, unit: ownUnit[id]?.[reader.system] });

/** Figures that are compared with one another, all in the unit of the largest. */
export const shownAlike = (view: View, ids: readonly FigureId[]): readonly string[] =>
  alike(view, ids).map((one) => one?.text ?? '–');

/** '4.33 to 6.03 gpm': the unit once. */
export const rangeShown = (
  view: View,
  lower: FigureId,
  upper: FigureId,
): { readonly lower: string; readonly upper: string } => {
  const [from, to] = alike(view, [lower, upper]);
  return { lower: from?.figure ?? '–', upper: to?.text ?? '–' };
};

const alike = (view: View, ids: readonly FigureId[]): readonly (FormattedQuantity | undefined)[] => {
  const figures = ids.map((id) => figureOf(view, id));
  const [largest] = figures
    .filter((figure) => figure !== undefined)
    .toSorted((a, b) => Math.abs(b.quantity.si) - Math.abs(a.quantity.si));
  if (largest === undefined) return ids.map(() => undefined);
  const { system } = view.reader;
  const unit = ownUnit[largest.id]?.[system] ?? unitOf(largest.quantity, system);
  return figures.map((figure) =>
    figure === undefined ? undefined : formatQuantity(figure.quantity, { ...view.reader, unit }),
  );
};

const unitOf = ({ kind, si }: Quantity, system: UnitSystem): string => shownUnit(kind, system, si).symbol;

/**
 * The same with its uncertainty, '4.6 ± 0.23 gpm': two digits are all that can be known of it; of a temperature it is
 * left out.
 */
export const figureWithSpread = (speech: Speech, figure: Figure): string => {
  const { id, quantity: q, u } = figure;
  const value = formatted(speech, figure);
  if (u === undefined || u === 0 || q.kind === 'temperature') return value.text;
  const { reader } = speech;
  const spread = formatQuantity(
    { kind: q.kind, si: u },
    { ...reader, unit: ownUnit[id]?.[reader.system], digits: 2 },
  );
  const first = spread.unit === value.unit ? value.figure : value.text;
  return `${first}${noBreak}±${noBreak}${spread.text}`;
};

const noBreak = '\u00a0';

export const isMessageKey = (key: string): key is MessageKey => Object.hasOwn(english, key);

/** A word whose key is put together at run time; the fallback where the catalogue has none. */
export const wordOr = (speech: Speech, key: string, fallback: string): string =>
  isMessageKey(key) ? speech.word(key) : fallback;

/** What an equation calls one of its values. */
export const symbolOr = (speech: Speech, name: string, fallback: string): string =>
  wordOr(speech, symbolName(name), fallback);

/** Always in minutes, so that the work and the outage within it are compared at a glance. */
export const minutes = ({ reader }: Speech, count: number): string =>
  formatQuantity(quantity('time', Math.round(count) * 60), { ...reader, unit: 'min' }).text;

export const percent = (speech: Speech, p: number): string =>
  speech.quantity(quantity('share', Math.round(p * 100) / 100));

/** The chance that a true value lies within limits; nothing measured is certain. */
export const sureness = (speech: Speech, p: number): string => {
  if (p > 0.99) return `> ${percent(speech, 0.99)}`;
  return p < 0.01 ? `< ${percent(speech, 0.01)}` : percent(speech, p);
};

/** Odds that rest on stated odds are shown to the nearest 5 %, and never as certain. */
export const odds = (speech: Speech, p: number): string =>
  p < 0.025
    ? `< ${speech.quantity(quantity('share', 0.05))}`
    : speech.quantity(quantity('share', Math.min(0.95, Math.round(p * 20) / 20)));

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;

/** '2026-11-25' as people write it. */
export const dated = (speech: Speech, day: string): string => {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})/u.exec(day) ?? [];
  const name = months[Number(month) - 1];
  if (year === undefined || date === undefined || name === undefined) return day;
  return `${Number(date)} ${speech.word(`papers.month.${name}`)} ${year}`;
};

/** Whether an issue speaks of the document, where a line can be named. */
export const placeText = (view: View, { at, place }: Issue): string => {
  const found = place ?? (at.length === 0 || String(at[0]).includes('.') ? undefined : view.placeOf(at));
  return found === undefined ? '' : ` (${found.file}:${found.line})`;
};
