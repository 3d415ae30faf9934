import { parseQuantity, type QuantityKind } from '@brinewright/units';
import { isRecord } from '../load/record.ts';
import { parseSeries } from '../quantity/written.ts';
import { controllers, controls, injectors } from '../schema/fitting.ts';

/** What a visit to an undescribed unit tells about its family. */
export type Draft = {
  readonly kinds: readonly string[];
  /** Sections of a definition. */
  readonly sections: Readonly<Record<string, unknown>>;
  /** What was found and has no place in a definition: tank and media. */
  readonly found: Readonly<Record<string, unknown>>;
};

type Entry = Readonly<Record<string, unknown>>;

/** Id of what was fitted on the unit, where nothing is written on it. */
const fitted = 'fitted';

/** Reads a visit leniently: what is missing or cannot be read is left out. */
export const draftFrom = (visit: unknown): Draft => {
  const unit = unitOf(visit);
  const measured = entryOf(unit.measured);
  const sections = {
    ...sectionOf('injectors', injectors, injectorFrom(measured)),
    ...sectionOf('controls', controls, controlsFrom(measured)),
    ...sectionOf('controllers', controllers, controllerFrom(entryOf(unit.controller))),
  };
  const found = Object.fromEntries(
    ['tank', 'media'].flatMap((key) => (unit[key] === undefined ? [] : [[key, unit[key]] as const])),
  );
  return { kinds: [unit.kind === 'filter' ? 'filter' : 'softener'], sections, found };
};

/** The unit that the visit is about, else the first one. */
const unitOf = (visit: unknown): Entry => {
  const { conditioners, subject } = entryOf(visit);
  const units = Array.isArray(conditioners) ? conditioners.map(entryOf) : [];
  return units.find((unit) => subject !== undefined && unit.id === subject) ?? units[0] ?? {};
};

const entryOf = (value: unknown): Entry => (isRecord(value) && !Array.isArray(value) ? value : {});

type Checker = { safeParse: (data: unknown) => { readonly success: boolean } };

/** A section that its own schema would not take is left to be entered by hand. */
const sectionOf = (name: string, schema: Checker, entries: Entry): Entry =>
  Object.keys(entries).length > 0 && schema.safeParse(entries).success ? { [name]: entries } : {};

/** A value is a text, or a map that says how it is known. */
const quantityIn = (entry: Entry, key: string, kind: QuantityKind): string | undefined => {
  const value = entry[key];
  const text = isRecord(value) ? value.value : value;
  return typeof text === 'string' && parseQuantity(text, kind).ok ? text : undefined;
};

const injectorFrom = (measured: Entry): Entry => {
  const draw = quantityIn(measured, 'draw', 'flow');
  const slow = quantityIn(measured, 'slow-rinse', 'flow');
  const at = quantityIn(measured, 'at', 'pressure');
  if (draw === undefined || slow === undefined || at === undefined) return {};
  return { [fitted]: { at: { [at]: { draw, 'slow-rinse': slow } } } };
};

const controlsFrom = (measured: Entry): Entry => {
  const drain = quantityIn(measured, 'backwash', 'flow');
  const refill = quantityIn(measured, 'refill', 'flow');
  return {
    ...(drain === undefined ? {} : { drain: { [fitted]: drain } }),
    ...(refill === undefined ? {} : { refill: { [fitted]: refill } }),
  };
};

const controllerFrom = (controller: Entry): Entry => {
  const { holds, starts } = controller;
  const times = seriesIn(controller, 'times', 'time');
  if (!Array.isArray(holds) || Object.keys(times).length === 0) return {};
  const days = seriesIn(controller, 'days', 'count');
  const volumes = seriesIn(controller, 'volumes', 'volume');
  return { [fitted]: { holds, ...times, ...(Array.isArray(starts) ? { starts } : {}), ...days, ...volumes } };
};

/** A range with its step, under its key; nothing where there is none or it cannot be read. */
const seriesIn = (controller: Entry, key: string, kind: QuantityKind): Entry => {
  const text = controller[key];
  return typeof text === 'string' && parseSeries(text, kind).ok ? { [key]: text } : {};
};
