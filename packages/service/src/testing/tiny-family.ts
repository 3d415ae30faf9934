import type {
  DiagnosisTest,
  Equipment,
  Family,
  Fault,
  Feature,
  Fits,
  Operation,
  Part,
  Tell,
  Tool,
} from '@brinewright/equipment';
import { type Quantity, type QuantityKind, quantity } from '@brinewright/units';
import type { Situation } from '../situation/situation.ts';

/* An invented valve with as little as the stages need, for tests. Nothing here is a product. */

const feature = (id: string, weights: Readonly<Record<string, number>>): Feature => ({
  id,
  title: id,
  values: Object.entries(weights).map(([value, weight]) => ({ id: value, title: value, weight })),
});

const seen = (
  id: string,
  answers: Readonly<Record<string, Fits>>,
  more: { trust?: number; minutes?: number; after?: readonly string[] } = {},
): Tell => ({
  kind: 'seen',
  id,
  ask: id,
  trust: more.trust ?? 0.97,
  minutes: more.minutes ?? 1,
  after: more.after ?? [],
  answers: Object.entries(answers).map(([answer, allows]) => ({ id: answer, title: answer, allows })),
});

const si = <K extends QuantityKind>(kind: K, value: number): Quantity<K> => quantity(kind, value);

const sealSize: Tell = {
  kind: 'measured',
  id: 'seal-size',
  ask: 'seal-size',
  trust: 0.95,
  minutes: 1,
  after: ['piston-out'],
  feature: 'size',
  u: si('length', 2e-4),
  expected: { slim: si('length', 0.041), broad: si('length', 0.0485) },
};

const tells: readonly Tell[] = [
  seen('rib-count', { '3': { size: ['slim'] }, '4': { size: ['broad'] } }),
  seen('sleeve', { yes: { regeneration: ['shut-outlet'] }, no: { regeneration: ['raw-pass'] } }),
  seen(
    'plate',
    { red: { water: ['hot'] }, plain: { water: ['cold'] }, 'cold-raw': { water: ['cold'] } },
    { trust: 0.9 },
  ),
  seen(
    'injector-mark',
    { a: { injector: ['a'] }, b: { injector: ['b'] }, c: { injector: ['c'] } },
    { after: ['injector-out'] },
  ),
  sealSize,
];

const operation = (id: string, more: Partial<Operation> = {}): Operation => ({
  id,
  order: id,
  how: [],
  phase: 'open',
  after: [[]],
  needs: {},
  makes: {},
  tools: [],
  minutes: { hands: 2, waiting: 0 },
  takesOut: [],
  hazards: [],
  lookOvers: [],
  consumables: [],
  fits: {},
  always: false,
  ...more,
});

const back = { order: 'back', how: [], minutes: 2, lookOvers: [], hazards: [] };
const safe = { water: 'off', pressure: 'none', power: 'off' } as const;

const operations: readonly Operation[] = [
  operation('photograph', { phase: 'record', always: true, minutes: { hands: 1, waiting: 0 } }),
  operation('shut-water', { phase: 'isolate', always: true, makes: { water: 'off' }, back }),
  operation('vent', {
    phase: 'isolate',
    always: true,
    after: [['shut-water']],
    needs: { water: 'off', power: 'on' },
    makes: { pressure: 'none' },
    hazards: ['isolate-and-vent'],
  }),
  operation('to-removal', {
    phase: 'isolate',
    after: [['vent']],
    needs: { power: 'on' },
    makes: { piston: 'removal' },
  }),
  operation('unplug', { phase: 'isolate', always: true, makes: { power: 'off' }, back }),
  operation('cover-off', { needs: safe, back }),
  operation('piston-out', {
    after: [['cover-off']],
    needs: { ...safe, piston: 'removal' },
    tools: ['driver-t20'],
    takesOut: ['piston'],
    back,
  }),
  operation('draw-stack', {
    after: [['piston-out']],
    needs: safe,
    tools: ['hook', 'stuffer-slim', 'stuffer-broad'],
    minutes: { hands: 9, waiting: 0 },
    takesOut: ['seal', 'spacer'],
    counts: 'stack',
    back,
  }),
  operation('injector-out', { needs: safe, tools: ['driver-t20'], takesOut: ['injector'], back }),
  operation('clean-injector', { phase: 'work', after: [['injector-out']], needs: safe }),
];

const part = (id: string, is: string, fits: Fits, more: Partial<Part> = {}): Part => ({
  id,
  is,
  title: id,
  fits,
  holds: {},
  count: 1,
  ...more,
});

const parts: readonly Part[] = [
  part('piston-r', 'piston', { regeneration: ['raw-pass'] }, { price: 84 }),
  part('piston-s', 'piston', { regeneration: ['shut-outlet'] }, { price: 90 }),
  part('sleeve', 'sleeve', { regeneration: ['shut-outlet'] }),
  part('seal-slim', 'seal', { size: ['slim'] }),
  part('seal-broad', 'seal', { size: ['broad'] }),
  part('spacer-slim', 'spacer', { size: ['slim'] }),
  part('spacer-broad', 'spacer', { size: ['broad'] }),
  part('kit-slim', 'kit', { size: ['slim'] }, { holds: { 'seal-slim': 'all', 'spacer-slim': 'all' } }),
  part('kit-broad', 'kit', { size: ['broad'] }, { holds: { 'seal-broad': 'all', 'spacer-broad': 'all' } }),
  part('injector-a', 'injector', { injector: ['a'] }),
  part('injector-b', 'injector', { injector: ['b'] }),
  part('injector-c', 'injector', { injector: ['c'] }),
];

const tool = (id: string, fits: Fits = {}, special = false): Tool => ({ id, title: id, fits, special });

const tools: readonly Tool[] = [
  tool('driver-t20'),
  tool('hook', {}, true),
  tool('stuffer-slim', { size: ['slim'] }, true),
  tool('stuffer-broad', { size: ['broad'] }, true),
];

const fault = (id: string, odds: number, more: Partial<Fault> = {}): Fault => ({
  id,
  title: id,
  explains: id,
  mend: id,
  where: 'valve',
  odds,
  kinds: ['softener'],
  fits: {},
  afterService: false,
  repair: { replace: [], do: [], settings: false },
  ...more,
});

const restack = { replace: ['seal', 'spacer'], do: ['draw-stack'], settings: false };
const cleanInjector = { replace: [], do: ['clean-injector'], settings: false };

const faults: readonly Fault[] = [
  fault('leak-raw-to-drain', 2, { path: ['TOP', 'DR'], repair: restack }),
  fault('leak-soft-to-drain', 2, { path: ['DR', 'BOT'], repair: restack }),
  fault('leak-raw-to-treated', 2, { path: ['IN', 'OUT'], repair: restack }),
  fault('leak-top-to-outside', 1, { path: ['TOP', 'OUTSIDE'], repair: restack }),
  fault('injector-plugged', 3, { where: 'brine', repair: cleanInjector }),
  fault('refill-time-wrong', 1, {
    where: 'control',
    repair: { replace: [], do: [], settings: true },
  }),
  fault('no-salt', 3, { where: 'brine', kinds: ['softener'] }),
  fault('pin-not-in', 1, { where: 'after-service', afterService: true, kinds: ['softener', 'filter'] }),
  fault('sleeve-lost', 1, { fits: { regeneration: ['shut-outlet'] }, afterService: true }),
];

const test = (
  id: string,
  outcomes: DiagnosisTest['outcomes'],
  more: Partial<DiagnosisTest> = {},
): DiagnosisTest => ({
  id,
  ask: id,
  how: [],
  outcomes,
  normal: outcomes[0]?.id ?? '',
  minutes: { hands: 2, waiting: 0 },
  needs: {},
  after: [],
  tools: [],
  hazards: [],
  kinds: ['softener', 'filter'],
  fits: {},
  ...more,
});

const flow = (u: number): NonNullable<DiagnosisTest['reading']> => ({
  kind: 'flow',
  u: si('flow', u),
  plausible: { min: si('flow', 0), max: si('flow', 2e-3) },
});

const tests: readonly DiagnosisTest[] = [
  test(
    'drain-in-service',
    [
      { id: 'none', title: 'none', to: 2e-6, faults: {} },
      {
        id: 'some',
        title: 'some',
        from: 2e-6,
        faults: { 'leak-raw-to-drain': 'sure', 'leak-soft-to-drain': 'sure', 'pin-not-in': 'possible' },
      },
    ],
    { reading: flow(6e-7) },
  ),
  test('trickle', [
    { id: 'none', title: 'none', faults: {} },
    { id: 'raw', title: 'raw', faults: { 'leak-raw-to-drain': 'sure' } },
    { id: 'soft', title: 'soft', faults: { 'leak-soft-to-drain': 'sure' } },
  ]),
  test('salt-level', [
    { id: 'fine', title: 'fine', faults: {} },
    { id: 'low', title: 'low', faults: { 'no-salt': 'sure' } },
    { id: 'full', title: 'full', faults: { 'injector-plugged': 'likely' } },
  ]),
  test(
    'draw',
    [
      { id: 'right', title: 'right', from: 0.8, to: 1.2, faults: {} },
      { id: 'weak', title: 'weak', to: 0.8, faults: { 'injector-plugged': 'sure' } },
      { id: 'strong', title: 'strong', from: 1.2, faults: {} },
    ],
    {
      reading: { ...flow(3e-6), of: 'program.draw.rate' },
      minutes: { hands: 2, waiting: 6 },
    },
  ),
  test(
    'seal-look',
    [
      { id: 'whole', title: 'whole', faults: {} },
      { id: 'torn', title: 'torn', faults: { 'leak-raw-to-treated': 'sure', 'leak-raw-to-drain': 'sure' } },
    ],
    { after: ['draw-stack'] },
  ),
];

const bore = {
  id: 'main',
  ports: ['OUTSIDE', 'IN', 'TOP', 'DR', 'BOT', 'OUT', 'IN', 'BOT'],
  rows: [],
} as const;

const stack: Family['stack'] = Array.from({ length: 13 }, (_, place) => ({
  is: place % 2 === 0 ? ('seal' as const) : ('spacer' as const),
}));

/** An invented family with four features, 18 variants, five tells, a bore of seven seals, nine faults, five tests. */
export const tinyFamily = (more: Partial<Family> = {}): Family => ({
  id: 'tiny',
  title: 'Tiny',
  source: 'invented',
  kinds: ['softener'],
  limits: { temperature: { cold: si('temperature', 316.5), hot: si('temperature', 338.7) } },
  features: [
    feature('size', { slim: 0.5, broad: 0.5 }),
    feature('regeneration', { 'raw-pass': 0.8, 'shut-outlet': 0.2 }),
    feature('water', { cold: 0.9, hot: 0.1 }),
    feature('injector', { a: 1 / 3, b: 1 / 3, c: 1 / 3 }),
  ],
  never: [{ water: ['hot'], regeneration: ['shut-outlet'] }],
  tells,
  bores: [bore],
  stack,
  looksWrong: [],
  injectors: [],
  controls: { drain: [], refill: [] },
  controllers: [],
  meters: [],
  parts,
  conversions: [{ feature: 'regeneration', from: 'raw-pass', to: 'shut-outlet', also: ['link-pin-long'] }],
  tools,
  operations,
  faults,
  tests,
  complaints: [
    {
      id: 'hard-water',
      title: 'hard-water',
      words: { en: ['hard'], es: ['dura'] },
      faults: { 'no-salt': 'likely', 'injector-plugged': 'likely', 'leak-raw-to-treated': 'likely' },
    },
  ],
  changes: [
    {
      id: 'refill-changed',
      title: 'refill-changed',
      words: { en: ['refill'], es: ['relleno'] },
      raises: { 'refill-time-wrong': 12 },
    },
  ],
  cautions: [],
  ...more,
});

/** A situation about one conditioner of that family; what is not given is empty or unknown. */
export const situationOf = (given: Partial<Situation> = {}): Situation => {
  const family = given.family ?? tinyFamily();
  const equipment: Equipment = { digest: 'test', families: new Map([[family.id, family]]), media: new Map() };
  const subject = given.subject ?? { id: 's1', family: family.id, kind: given.kind ?? 'softener' };
  return {
    visit: { schema: 1, id: 'v1', site: { name: 'Site' }, conditioners: [subject], subject: subject.id },
    equipment,
    subject,
    family,
    kind: subject.kind,
    described: true,
    medium: undefined,
    controller: undefined,
    found: {},
    answers: [],
    readings: [],
    changes: [],
    complaints: [],
    recentlyServiced: false,
    figures: {},
    ...given,
  };
};
