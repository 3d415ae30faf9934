import type { WrittenFamily } from '../schema/documents.ts';

type Entries<T> = Readonly<Record<string, T>> | undefined;

/** Sections whose entries are merged key by key, and may be switched off. */
export const entrySections = [
  'tells',
  'bores',
  'injectors',
  'controllers',
  'meters',
  'parts',
  'tools',
  'operations',
  'faults',
  'tests',
  'complaints',
  'changes',
  'cautions',
] as const satisfies readonly (keyof WrittenFamily)[];

/**
 * A family over its stock: by id, one level; scalars, maps and lists replace, lists are never merged.
 *
 * Title and source are a file's own. Features, limits and controls are replaced by id as a whole. A family's odds are relative to the stock's.
 */
export const merge = (stock: WrittenFamily, family: WrittenFamily): WrittenFamily => ({
  ...stock,
  ...family,
  title: family.title,
  source: family.source,
  limits: { ...stock.limits, ...family.limits },
  controls: { ...stock.controls, ...family.controls },
  features: { ...stock.features, ...family.features },
  tells: byKey(stock.tells, family.tells),
  bores: byKey(stock.bores, family.bores),
  injectors: mergeEach(stock.injectors, family.injectors, (below, above) =>
    typeof below === 'string' || typeof above === 'string' ? above : { ...below, ...above },
  ),
  controllers: byKey(stock.controllers, family.controllers),
  meters: byKey(stock.meters, family.meters),
  parts: byKey(stock.parts, family.parts),
  tools: byKey(stock.tools, family.tools),
  operations: byKey(stock.operations, family.operations),
  faults: mergeEach(stock.faults, family.faults, (below, above) => ({
    ...below,
    ...above,
    odds: (below.odds ?? 1) * (above.odds ?? 1),
  })),
  tests: byKey(stock.tests, family.tests),
  complaints: byKey(stock.complaints, family.complaints),
  changes: byKey(stock.changes, family.changes),
  cautions: byKey(stock.cautions, family.cautions),
});

const byKey = <T extends object>(below: Entries<T>, above: Entries<T>): Record<string, T> =>
  mergeEach(below, above, (one, other) => ({ ...one, ...other }));

const mergeEach = <T>(
  below: Entries<T>,
  above: Entries<T>,
  join: (below: T, above: T) => T,
): Record<string, T> => {
  const merged = new Map(Object.entries(below ?? {}));
  for (const [id, entry] of Object.entries(above ?? {})) {
    const under = merged.get(id);
    merged.set(id, under === undefined ? entry : join(under, entry));
  }
  return Object.fromEntries(merged);
};

export type Section = (typeof entrySections)[number];

/** What a family switches off, by section. */
export type Removed = Readonly<Partial<Record<Section, readonly string[]>>>;

/** Without the entries that are switched off. */
export const withoutOff = (merged: WrittenFamily): WrittenFamily => ({
  ...merged,
  tells: on(merged.tells),
  bores: on(merged.bores),
  injectors: on(merged.injectors),
  controllers: on(merged.controllers),
  meters: on(merged.meters),
  parts: on(merged.parts),
  tools: on(merged.tools),
  operations: on(merged.operations),
  faults: on(merged.faults),
  tests: on(merged.tests),
  complaints: on(merged.complaints),
  changes: on(merged.changes),
  cautions: on(merged.cautions),
});

export const removedFrom = (merged: WrittenFamily): Removed =>
  Object.fromEntries(
    entrySections.map((section) => [
      section,
      Object.entries(merged[section] ?? {}).flatMap(([id, entry]) => (isOff(entry) ? [id] : [])),
    ]),
  );

const on = <T>(entries: Entries<T>): Record<string, T> =>
  Object.fromEntries(Object.entries(entries ?? {}).filter(([, entry]) => !isOff(entry)));

export const isOff = (entry: unknown): boolean =>
  typeof entry === 'object' && entry !== null && 'off' in entry && entry.off === true;
