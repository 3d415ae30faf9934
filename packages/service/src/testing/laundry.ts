import { toUnit } from '@brinewright/units';
import type { FigureId, Figures } from '../derivation/figure.ts';
import { program } from '../program/program.ts';
import type { ProgramAdvice } from '../program/program-advice.ts';
import { situate } from '../situation/situate.ts';
import type { Situation } from '../situation/situation.ts';
import type { Stage } from '../stage/stage.ts';
import { type VisitDocument, visitSchema } from '../visit/schema.ts';
import { shippedEquipment } from './shipped.ts';

const equipment = shippedEquipment();

type Unit = VisitDocument['conditioners'][number];

const softener: Unit = {
  id: 's1',
  family: 'osier',
  kind: 'softener',
  tank: { diameter: '14 in' },
  media: [{ medium: 'gel-cation', volume: '3 ft3', free: '20 in' }],
  fitted: { controller: 'tally', injector: 'middle', drain: 'd4', refill: 'r2' },
  measured: { backwash: '5 gpm', draw: '0.45 gpm', 'slow-rinse': '0.85 gpm', refill: '0.5 gpm' },
  brineTank: { temperature: '60 degF' },
};

/** An invented laundry: 3 ft³ of resin in 14 in, 18 gpg with a little iron, 700 gal a day; nothing is found set. */
export const laundry = (change: Partial<VisitDocument> = {}, unit: Partial<Unit> = {}): VisitDocument => ({
  schema: 1,
  id: 'laundry',
  date: '2026-11-25',
  site: { name: 'Laundry' },
  water: [
    {
      of: 'raw',
      hardness: '18 gpg',
      iron: '0.25 mg/L',
      temperature: '54 degF',
      coldest: '50 degF',
      warmest: '60 degF',
    },
  ],
  demand: { daily: '700 gal' },
  supply: { pressure: '60 psi', flow: '16 gpm', drain: '12 gpm' },
  conditioners: [{ ...softener, ...unit }],
  subject: 's1',
  ...change,
});

export const situationFor = (document: VisitDocument): Stage<Situation> =>
  situate(visitSchema.parse(document), equipment, '2026-11-25T10:00:00Z');

export type Programmed = {
  readonly stage: Stage<ProgramAdvice>;
  readonly advice: ProgramAdvice;
  readonly figures: Figures;
  /** A figure in the unit named. */
  readonly read: (id: FigureId, unit: string) => number;
  /** What the controller is set to, in minutes. */
  readonly minutes: (step: string) => number;
  readonly notes: readonly string[];
};

export const programmed = (document: VisitDocument): Programmed => {
  const situation = situationFor(document);
  if (situation.state === 'blocked') throw new Error('no situation');
  const stage = program(situation.value);
  if (stage.state === 'blocked') throw new Error('no program');
  const figures = { ...situation.figures, ...stage.figures };
  const read = (id: FigureId, unit: string): number => {
    const figure = figures[id];
    if (figure === undefined) throw new Error(`no figure ${id}`);
    return toUnit(figure.quantity, unit);
  };
  return {
    stage,
    advice: stage.value,
    figures,
    read,
    minutes: (step) => read(`program.set.${step}`, 'min'),
    notes: stage.value.notes.map(({ key }) => key),
  };
};
