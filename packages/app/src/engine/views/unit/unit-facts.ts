import type { Family } from '@brinewright/equipment';
import { type Sheet, stepWords } from '@brinewright/papers';
import type { Conditioner } from '@brinewright/service';
import type { QuantityKind } from '@brinewright/units';
import type { MessageKey, Text } from '@brinewright/words';
import type { Made } from '../../made.ts';
import {
  choiceFact,
  type FactEdit,
  type FactView,
  type Known,
  quantityFact,
  rangeFact,
  textFact,
} from './fact.ts';
import type { Written } from './written.ts';

/** A heading with what stands under it. */
export type FactGroup = { readonly id: string; readonly title: string; readonly facts: readonly FactView[] };

const said = (path: readonly string[], base = '{}'): FactEdit => ({
  kind: 'conditioner-described',
  base,
  path,
});

/** What the unit is, what is fitted, its bed, its rates and its brine tank. */
export const unitFacts = (sheet: Sheet, made: Made, written: Written): readonly FactGroup[] => [
  { id: 'is', title: sheet.word('app.unit.group.is'), facts: whatItIs(sheet, made) },
  {
    id: 'fitted',
    title: sheet.word('app.unit.group.fitted'),
    facts: [...fittedFacts(sheet, made), ...ownController(sheet, made, written)],
  },
  { id: 'bed', title: sheet.word('app.unit.group.bed'), facts: bedFacts(sheet, made, written) },
  { id: 'rates', title: sheet.word('app.unit.group.rates'), facts: rateFacts(sheet, made) },
];

const whatItIs = (sheet: Sheet, { subject, equipment }: Made): readonly FactView[] => [
  textFact({ key: 'name', label: sheet.word('app.unit.name'), text: subject.name, edit: said(['name']) }),
  choiceFact({
    key: 'family',
    label: sheet.word('app.unit.family'),
    chosen: subject.family,
    options: [...equipment.families.values()].map(({ id, title }) => ({
      value: id,
      label: id === 'undescribed' ? sheet.word('app.unit.undescribed') : sheet.text(title),
    })),
    edit: said(['family']),
  }),
  choiceFact({
    key: 'kind',
    label: sheet.word('app.unit.kind'),
    chosen: subject.kind,
    options: (['softener', 'filter'] as const).map((value) => ({
      value,
      label: sheet.word(`app.unit.kind.${value}`),
    })),
    edit: said(['kind']),
  }),
  ...(subject.kind === 'filter' ? [] : softenerFacts(sheet, subject)),
];

const softenerFacts = (sheet: Sheet, { salt }: Conditioner): readonly FactView[] => [
  choiceFact({
    key: 'salt',
    label: sheet.word('app.unit.salt'),
    chosen: salt,
    options: (['sodium', 'potassium'] as const).map((value) => ({
      value,
      label: sheet.word(`app.unit.salt.${value}`),
    })),
    edit: said(['salt']),
  }),
];

type Listed = { readonly id: string; readonly title: Text };

/** Controls of the family, by what is written on them. */
const fittedFacts = (sheet: Sheet, { subject, family }: Made): readonly FactView[] =>
  fittedLists(family).flatMap(([name, list]) =>
    list.length === 0
      ? []
      : [
          choiceFact({
            key: `fitted.${name}`,
            label: sheet.word(`app.unit.fitted.${name}`),
            chosen: subject.fitted?.[name],
            options: list.map(({ id, title }) => ({ value: id, label: sheet.text(title) })),
            edit: said(['fitted', name]),
          }),
        ],
  );

const fittedLists = (family: Family | undefined) =>
  [
    ['controller', family?.controllers ?? []],
    ['injector', family?.injectors ?? []],
    ['drain', family?.controls.drain ?? []],
    ['refill', family?.controls.refill ?? []],
    ['meter', family?.meters ?? []],
  ] as const satisfies readonly (readonly [keyof NonNullable<Conditioner['fitted']>, readonly Listed[]])[];

/** A controller that no definition names, as it is found on the wall. */
const ownController = (
  sheet: Sheet,
  { subject, family }: Made,
  { controller }: Written,
): readonly FactView[] => {
  if ((family?.controllers ?? []).length > 0) return [];
  const own = subject.controller;
  const base = JSON.stringify({ controller });
  const list = (
    name: 'holds' | 'starts',
    chosen: readonly string[] | undefined,
    options: readonly string[],
  ) =>
    choiceFact({
      key: `controller.${name}`,
      label: sheet.word(`app.unit.controller.${name}`),
      chosen: chosen?.join(','),
      options: [...new Set([...options, ...(chosen === undefined ? [] : [chosen.join(',')])])].map(
        (value) => ({
          value,
          label: value
            .split(',')
            .map((one) => partOfController(sheet, one))
            .join(', '),
        }),
      ),
      isList: true,
      edit: said(['controller', name], base),
    });
  return [
    list('holds', own?.holds, subject.kind === 'filter' ? filterHolds : softenerHolds),
    list('starts', own?.starts, ['metered', 'clock']),
    rangeFact({
      key: 'controller.times',
      label: sheet.word('app.unit.controller.times'),
      quantity: 'time',
      text: own?.times?.as,
      example: '1 min to 99 min by 1 min',
      edit: said(['controller', 'times'], base),
    }),
    rangeFact({
      key: 'controller.volumes',
      label: sheet.word('app.unit.controller.volumes'),
      quantity: 'volume',
      text: own?.volumes?.as,
      example: '10 gal to 9990 gal by 10 gal',
      edit: said(['controller', 'volumes'], base),
    }),
  ];
};

const softenerHolds = [
  'backwash,brine,fast-rinse,refill',
  'backwash,draw,slow-rinse,fast-rinse,refill',
  'refill,backwash,brine,fast-rinse',
];
const filterHolds = ['backwash,fast-rinse', 'backwash'];

const partOfController = (sheet: Sheet, id: string): string => {
  const step = timedSteps.find((one) => one === id);
  if (step !== undefined) return sheet.word(stepWords[step]);
  return id === 'clock' || id === 'metered' ? sheet.word(`app.unit.starts.${id}`) : id;
};

const timedSteps = ['backwash', 'brine', 'draw', 'slow-rinse', 'fast-rinse', 'refill'] as const;

type Line = {
  readonly key: string;
  readonly label: MessageKey;
  readonly quantity: QuantityKind;
  readonly known: Known;
  readonly path: readonly string[];
  readonly size?: number;
  readonly figure?: string;
};

const lines = (sheet: Sheet, of: readonly Line[], base?: string): readonly FactView[] =>
  of.map(({ path, label, ...line }) =>
    quantityFact(sheet, { ...line, label: sheet.word(label), edit: said(path, base) }),
  );

const bedFacts = (sheet: Sheet, { subject, equipment }: Made, { media }: Written): readonly FactView[] => {
  const layer = subject.media?.[0];
  const base = JSON.stringify({ media });
  return [
    ...lines(sheet, [
      tank('girth', 'figure.situation.tank.girth', subject.tank?.girth, 1),
      tank('wall', 'figure.situation.tank.wall', subject.tank?.wall, 0.01),
      tank('diameter', 'figure.situation.tank.diameter', subject.tank?.diameter, 0.4),
      tank('height', 'figure.situation.tank.height', subject.tank?.height, 1.5),
    ]),
    choiceFact({
      key: 'media.medium',
      label: sheet.word('app.unit.medium'),
      chosen: layer?.medium,
      options: [...equipment.media.values()].map(({ id, title }) => ({
        value: id,
        label: sheet.text(title),
      })),
      edit: said(['media', '0', 'medium'], base),
    }),
    ...lines(
      sheet,
      [
        bed('depth', 'figure.situation.bed.depth', 'length', layer?.depth, 0.9),
        bed('volume', 'figure.situation.bed.volume', 'volume', layer?.volume, 0.08),
        bed('free', 'figure.situation.bed.free', 'length', layer?.free, 0.5),
        bed('age', 'figure.situation.bed.age', 'time', layer?.age, 1e8),
      ],
      base,
    ),
  ];
};

const tank = (name: string, label: MessageKey, known: Known, size: number): Line => ({
  key: `tank.${name}`,
  label,
  quantity: 'length',
  known,
  path: ['tank', name],
  size,
  figure: `situation.tank.${name}`,
});

const bed = (name: string, label: MessageKey, quantity: QuantityKind, known: Known, size: number): Line => ({
  key: `media.${name}`,
  label,
  quantity,
  known,
  path: ['media', '0', name],
  size,
  figure: `situation.bed.${name}`,
});

const rateFacts = (sheet: Sheet, { subject: { measured, brineTank, kind } }: Made): readonly FactView[] =>
  lines(sheet, [
    rate('backwash', 'figure.situation.rate.backwash', measured?.backwash),
    ...(kind === 'filter'
      ? []
      : [
          rate('draw', 'figure.situation.rate.draw', measured?.draw),
          rate('slow-rinse', 'figure.situation.rate.slow-rinse', measured?.['slow-rinse']),
        ]),
    rate('fast-rinse', 'figure.situation.rate.fast-rinse', measured?.['fast-rinse']),
    ...(kind === 'filter' ? [] : [rate('refill', 'figure.situation.rate.refill', measured?.refill)]),
    {
      key: 'measured.at',
      label: 'app.unit.measured-at',
      quantity: 'pressure',
      known: measured?.at,
      path: ['measured', 'at'],
    },
    ...(kind === 'filter'
      ? []
      : [
          brine('temperature', 'figure.situation.brine.temperature', 'temperature', brineTank?.temperature),
          brine('diameter', 'figure.situation.brine.diameter', 'length', brineTank?.diameter),
          brine('level', 'figure.situation.brine.level', 'length', brineTank?.level),
        ]),
  ]);

const rate = (name: string, label: MessageKey, known: Known): Line => ({
  key: `measured.${name}`,
  label,
  quantity: 'flow',
  known,
  path: ['measured', name],
  figure: `situation.rate.${name}`,
});

const brine = (name: string, label: MessageKey, quantity: QuantityKind, known: Known): Line => ({
  key: `brine.${name}`,
  label,
  quantity,
  known,
  path: ['brineTank', name],
  size: 0.5,
  figure: `situation.brine.${name}`,
});
