import { type Sheet, waterFields } from '@brinewright/papers';
import type { WaterAnalysis } from '@brinewright/service';
import type { QuantityKind } from '@brinewright/units';
import type { Made } from '../../made.ts';
import { dayHere } from '../days.ts';
import { type FactView, quantityFact } from './fact.ts';
import type { FactGroup } from './unit-facts.ts';
import type { Written } from './written.ts';

/** What holds for the site: its raw water, what it needs, what it gives, and its prices. */
export const siteFacts = (sheet: Sheet, made: Made, written: Written): readonly FactGroup[] => [
  { id: 'water', title: sheet.word('app.unit.group.water'), facts: waterFacts(sheet, made, written) },
  { id: 'demand', title: sheet.word('app.unit.group.demand'), facts: demandFacts(sheet, made) },
  { id: 'supply', title: sheet.word('app.unit.group.supply'), facts: supplyFacts(sheet, made) },
  { id: 'prices', title: sheet.word('app.unit.group.prices'), facts: priceFacts(sheet, made, written) },
];

const kinds: ReadonlyMap<string, QuantityKind> = new Map([
  ['hardness', 'hardness'],
  ['alkalinity', 'equivalent-concentration'],
  ['ph', 'ph'],
  ['conductivity', 'conductivity'],
  ['temperature', 'temperature'],
  ['coldest', 'temperature'],
  ['warmest', 'temperature'],
]);

/** What is reckoned with while nobody has said it. */
const figures: ReadonlyMap<string, string> = new Map([
  ['hardness', 'situation.hardness'],
  ['iron', 'situation.water.iron'],
  ['manganese', 'situation.water.manganese'],
  ['coldest', 'situation.temperature.coldest'],
  ['warmest', 'situation.temperature.warmest'],
]);

/** Those that settings hang on come first and are always there; the rest of a laboratory's sheet where it was read. */
const needed = ['hardness', 'iron', 'manganese', 'coldest', 'warmest', 'temperature', 'chlorine'];

/** A value said anew is a new analysis of today, with the rest as it was; the old one stays in the journal. */
const waterFacts = (sheet: Sheet, { visit, now }: Made, { water }: Written): readonly FactView[] => {
  const analysis = newest(visit.water ?? []);
  const base = JSON.stringify({ ...(typeof water === 'object' ? water : {}), date: dayHere(now) });
  const order = [...waterFields].toSorted((a, b) => rankOf(a[0]) - rankOf(b[0]));
  return order
    .filter(([field]) => needed.includes(field) || analysis?.[field] !== undefined)
    .map(([field, label]) =>
      quantityFact(sheet, {
        key: `water.${field}`,
        label: sheet.word(label),
        quantity: kinds.get(field) ?? 'concentration',
        known: analysis?.[field],
        edit: { kind: 'water-analysed', base, path: [field] },
        size: 0.001,
        figure: figures.get(field),
      }),
    );
};

const rankOf = (field: string): number => (needed.includes(field) ? needed.indexOf(field) : needed.length);

const newest = (water: readonly WaterAnalysis[]): WaterAnalysis | undefined =>
  water
    .filter(({ of }) => of === 'raw')
    .reduce<WaterAnalysis | undefined>(
      (before, one) => (before !== undefined && (one.date ?? '') < (before.date ?? '') ? before : one),
      undefined,
    );

const demandFacts = (sheet: Sheet, { visit: { demand } }: Made): readonly FactView[] =>
  (
    [
      ['daily', 'volume', demand?.daily],
      ['peak', 'flow', demand?.peak],
      ['usual', 'flow', demand?.usual],
    ] as const
  ).map(([name, quantity, known]) =>
    quantityFact(sheet, {
      key: `demand.${name}`,
      label: sheet.word(`figure.situation.demand.${name}`),
      quantity,
      known,
      edit: { kind: 'demand-described', base: '{}', path: [name] },
      size: 1,
    }),
  );

const supplyFacts = (sheet: Sheet, { visit: { supply } }: Made): readonly FactView[] =>
  (
    [
      ['pressure', 'figure.situation.supply.pressure', 'pressure', supply?.pressure],
      ['flow', 'figure.situation.supply.flow', 'flow', supply?.flow],
      ['drain', 'figure.situation.drain.carries', 'flow', supply?.drain],
      ['drainPipe', 'figure.situation.drain.pipe', 'length', supply?.drainPipe],
    ] as const
  ).map(([name, label, quantity, known]) =>
    quantityFact(sheet, {
      key: `supply.${name}`,
      label: sheet.word(label),
      quantity,
      known,
      edit: { kind: 'supply-described', base: '{}', path: [name] },
      size: 0.02,
      asksHow: name !== 'drainPipe',
    }),
  );

const priceFacts = (sheet: Sheet, { visit }: Made, { prices }: Written): readonly FactView[] =>
  (
    [
      ['salt', 'price-mass', visit.site.prices?.salt],
      ['water', 'price-volume', visit.site.prices?.water],
      ['sewer', 'price-volume', visit.site.prices?.sewer],
    ] as const
  ).map(([name, quantity, known]) =>
    quantityFact(sheet, {
      key: `prices.${name}`,
      label: sheet.word(`figure.situation.price.${name}`),
      quantity,
      known,
      edit: { kind: 'site-described', base: JSON.stringify({ prices }), path: ['prices', name] },
      asksHow: false,
    }),
  );
