import { type Equipment, undescribed } from '@brinewright/equipment';
import { assessProgram, type KnownQuantity, type Visit } from '@brinewright/service';
import { parseQuantity, type QuantityKind } from '@brinewright/units';
import { formatMessage, quantityProblemMessages } from '@brinewright/words';
import type { Speech } from '../speech.ts';
import { sheetOf } from './figure-view.ts';
import { unitsFor } from './names.ts';
import { type ProgramView, programOf } from './program-view.ts';
import { kindOfNumber, type WhatIf, type WhatIfNumber, whatIfNumbers } from './what-if/numbers.ts';

/** Numbers in, program out, without a visit. */
export type WhatIfView = {
  readonly fields: readonly WhatIfField[];
  readonly program: ProgramView;
};

export type WhatIfField = {
  readonly name: WhatIfNumber;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly units: readonly string[];
  readonly figure: string;
  readonly unit: string;
  /** What is wrong with the text of a link, and how to mend it. */
  readonly wrong?: string | undefined;
};

export const whatIfView = (
  numbers: WhatIf,
  equipment: Equipment,
  speech: Speech,
  now: string,
): WhatIfView => {
  const visit = visitOf(numbers);
  const assessment = assessProgram(visit, equipment, { now });
  const sheet = sheetOf({ visit, assessment, equipment, speech });
  return {
    fields: whatIfNumbers.map((name) => fieldOf(sheet, speech, name, numbers[name])),
    program: programOf(sheet),
  };
};

const labels = {
  hardness: 'papers.ion.hardness',
  iron: 'papers.ion.iron',
  coldest: 'papers.ion.coldest',
  warmest: 'papers.ion.warmest',
  daily: 'figure.situation.demand.daily',
  diameter: 'figure.situation.tank.diameter',
  depth: 'figure.situation.bed.depth',
  free: 'figure.situation.bed.free',
  backwash: 'figure.situation.rate.backwash',
  draw: 'figure.situation.rate.draw',
  slow: 'figure.situation.rate.slow-rinse',
  refill: 'figure.situation.rate.refill',
  dose: 'figure.program.dose',
} as const;

const sizes: Readonly<Partial<Record<WhatIfNumber, number>>> = {
  iron: 0.001,
  diameter: 0.4,
  depth: 0.9,
  free: 0.5,
  daily: 1,
};

const fieldOf = (
  sheet: ReturnType<typeof sheetOf>,
  speech: Speech,
  name: WhatIfNumber,
  text: string | undefined,
): WhatIfField => {
  const kind = kindOfNumber[name];
  const units = unitsFor(sheet, kind, sizes[name]);
  const parsed = text === undefined ? undefined : parseQuantity(text, kind);
  return {
    name,
    label: sheet.word(labels[name]),
    kind,
    ...typed(text ?? '', units),
    wrong:
      parsed === undefined || parsed.ok
        ? undefined
        : Object.values(quantityProblemMessages(parsed.problem))
            .map((said) => formatMessage(said, speech.reader))
            .join(' '),
  };
};

/** Figure and unit apart, as the form holds them; a unit of the link is among those offered. */
const typed = (text: string, units: readonly string[]): Pick<WhatIfField, 'figure' | 'unit' | 'units'> => {
  const [, figure = '', unit = ''] = /^([\d.,/\s-]*)(.*)$/u.exec(text) ?? [];
  const own = unit.trim() === '' ? (units[0] ?? '') : unit.trim();
  return { figure: figure.trim(), unit: own, units: [...new Set([...units, own])] };
};

const known = <K extends QuantityKind>(text: string | undefined, kind: K): KnownQuantity<K> | undefined => {
  const parsed = text === undefined ? undefined : parseQuantity(text, kind);
  return parsed?.ok === true ? { value: parsed.quantity, how: 'told' } : undefined;
};

/** The least of a visit that these numbers make: an undescribed softener with a controller of whole minutes. */
const visitOf = (numbers: WhatIf): Visit => {
  const minutes = { kind: 'time', si: 60 } as const;
  return {
    schema: 1,
    id: 'what-if',
    site: { name: '' },
    water: [
      {
        of: 'raw',
        hardness: known(numbers.hardness, 'hardness'),
        iron: known(numbers.iron, 'concentration'),
        coldest: known(numbers.coldest, 'temperature'),
        warmest: known(numbers.warmest, 'temperature'),
      },
    ],
    demand: { daily: known(numbers.daily, 'volume') },
    conditioners: [
      {
        id: 'u1',
        family: undescribed,
        kind: 'softener',
        tank: { diameter: known(numbers.diameter, 'length') },
        media: [
          {
            medium: 'gel-cation',
            depth: known(numbers.depth, 'length'),
            free: known(numbers.free, 'length'),
          },
        ],
        measured: {
          backwash: known(numbers.backwash, 'flow'),
          draw: known(numbers.draw, 'flow'),
          'slow-rinse': known(numbers.slow, 'flow'),
          refill: known(numbers.refill, 'flow'),
        },
        controller: {
          holds: ['backwash', 'brine', 'fast-rinse', 'refill'],
          times: {
            min: minutes,
            max: { kind: 'time', si: 99 * 60 },
            by: minutes,
            as: '1 min to 99 min by 1 min',
          },
          starts: ['metered'],
        },
      },
    ],
    subject: 'u1',
    ...(numbers.dose === undefined ? {} : { decided: [{ what: 'dose', value: numbers.dose }] }),
  };
};

/** The numbers of a unit, to begin from. */
export const numbersOf = (visit: Visit): WhatIf => {
  const unit = visit.conditioners.find(({ id }) => id === visit.subject);
  const raw = visit.water?.findLast(({ of }) => of === 'raw');
  const layer = unit?.media?.[0];
  const all: Readonly<Record<WhatIfNumber, KnownQuantity | undefined>> = {
    hardness: raw?.hardness,
    iron: raw?.iron,
    coldest: raw?.coldest,
    warmest: raw?.warmest,
    daily: visit.demand?.daily,
    diameter: unit?.tank?.diameter,
    depth: layer?.depth,
    free: layer?.free,
    backwash: unit?.measured?.backwash,
    draw: unit?.measured?.draw,
    slow: unit?.measured?.['slow-rinse'],
    refill: unit?.measured?.refill,
    dose: undefined,
  };
  return Object.fromEntries(
    whatIfNumbers.flatMap((name) => {
      const text = all[name]?.value.as;
      return text === undefined ? [] : [[name, text] as const];
    }),
  );
};
