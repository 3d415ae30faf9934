import type { Control, Medium } from '@brinewright/equipment';
import {
  ergunConstants,
  expansionAtFreeHeight,
  expansionErgun,
  expansionRichardsonZaki,
  flowForUpflow,
  upflowErgun,
  upflowRate,
  upflowRichardsonZaki,
  waterDensity,
  waterViscosity,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import { byThenId } from '../stage/rank.ts';
import type { BackwashWindow } from './program-advice.ts';
import { rules } from './rules.ts';

type Season = 'coldest' | 'mean' | 'warmest';
const seasons: readonly Season[] = ['coldest', 'mean', 'warmest'];

/**
 * The window of backwash flows: the coldest water must not lift the bed past its free height, the warmest must still
 * lift it enough, supply and drain must carry it. Richardson-Zaki for round beads, Ergun where grains have corners;
 * the other method is shown as the spread.
 */
export const backwashWindow = (
  ledger: Ledger,
  medium: Medium,
  controls: readonly Control[],
): { readonly window?: BackwashWindow; readonly notes: readonly Message[] } => {
  putWaterOfSeasons(ledger);
  if (medium.sphericity < 1) putCornered(ledger, medium);
  else putRound(ledger, medium);
  const ceiling = carried(ledger);
  if (!ledger.has('program.window.floor') || ceiling === undefined) return { notes: [] };
  const notes = spreadNote(ledger);
  return { window: judgeWindow(ledger, ceiling, controls), notes };
};

const putWaterOfSeasons = (ledger: Ledger): void => {
  for (const season of seasons) {
    const temperature = `situation.temperature.${season}`;
    ledger.derive(waterDensity, { temperature }, { density: `program.water.${season}.density` });
    ledger.derive(waterViscosity, { temperature }, { dynamicViscosity: `program.water.${season}.viscosity` });
  }
};

const grains = {
  diameter: 'situation.bed.grain',
  particleDensity: 'situation.bed.grain-density',
  voidage: 'situation.bed.voidage',
} as const;

const water = (season: Season) => ({
  density: `program.water.${season}.density`,
  viscosity: `program.water.${season}.viscosity`,
});

const putRound = (ledger: Ledger, medium: Medium): void => {
  putExpansions(ledger, medium);
  const lifts = [
    ['ceiling', 'coldest', 'program.window.expansion.most'],
    ['floor', 'warmest', 'program.window.expansion.least'],
    ['aim', 'mean', 'program.window.expansion.aim'],
  ] as const;
  for (const [edge, season, expansion] of lifts) {
    ledger.derive(
      upflowRichardsonZaki,
      { ...grains, expansion, ...water(season) },
      { superficialVelocity: `program.window.${edge}.upflow` },
    );
    putFlow(ledger, edge);
  }
};

/** Corners defeat Richardson-Zaki: Ergun with the sphericity for the ceiling, the trade's usual upflow for the rest. */
const putCornered = (ledger: Ledger, medium: Medium): void => {
  putExpansions(ledger, medium);
  ledger.assume('program.window.sphericity', quantity('ratio', medium.sphericity), 'ours', 0.05);
  ledger.derive(
    ergunConstants,
    { sphericity: 'program.window.sphericity' },
    { viscousConstant: 'program.window.k-viscous', inertialConstant: 'program.window.k-inertial' },
  );
  const constants = {
    viscousConstant: 'program.window.k-viscous',
    inertialConstant: 'program.window.k-inertial',
  };
  const lifts = [
    ['ceiling', 'coldest', 'program.window.expansion.most'],
    ['floor', 'warmest', 'program.window.expansion.least'],
    ['aim', 'mean', 'program.window.expansion.aim'],
  ] as const;
  for (const [edge, season, expansion] of lifts) {
    ledger.derive(
      upflowErgun,
      { ...grains, ...constants, expansion, ...water(season) },
      { superficialVelocity: `program.window.${edge}.upflow` },
    );
    putFlow(ledger, edge);
  }
};

const putExpansions = (ledger: Ledger, medium: Medium): void => {
  ledger.assume('program.rule.margin', rules.margin, 'ours');
  ledger.assume('program.window.expansion.least', quantity('share', medium.expansion.least), 'ours');
  ledger.assume('program.window.expansion.aim', quantity('share', medium.expansion.aim), 'common-practice');
  ledger.derive(
    expansionAtFreeHeight,
    { freeHeight: 'situation.bed.free', margin: 'program.rule.margin', bedDepth: 'situation.bed.depth' },
    { expansion: 'program.window.expansion.most' },
  );
};

const putFlow = (ledger: Ledger, edge: string): void => {
  ledger.derive(
    flowForUpflow,
    { superficialVelocity: `program.window.${edge}.upflow`, area: 'situation.tank.area' },
    { flow: `program.window.${edge}` },
  );
};

/** The ceiling, lowered to what supply and drain carry; the id of the figure that limits. */
const carried = (ledger: Ledger): FigureId | undefined => {
  const limits = ['program.window.ceiling', 'situation.supply.flow', 'situation.drain.carries'].filter(
    ledger.has,
  );
  return limits.toSorted((a, b) => byThenId(ledger.need, (id: FigureId) => id)(b, a))[0];
};

const judgeWindow = (ledger: Ledger, ceiling: FigureId, controls: readonly Control[]): BackwashWindow => {
  const floor = ledger.need('program.window.floor');
  const most = ledger.need(ceiling);
  if (floor > most)
    return { state: 'empty', ...emptyBecause(ceiling), floor: 'program.window.floor', ceiling };
  const wanted = Math.min(most, Math.max(floor, ledger.value('program.window.aim') ?? floor));
  ledger.choose('program.backwash.aim', quantity('flow', wanted), 'inside-window', {
    ...(ledger.has('program.window.aim') ? { aim: 'program.window.aim' } : {}),
    floor: 'program.window.floor',
    ceiling,
  });
  const fitted = ledger.value('situation.rate.backwash');
  const choice = bestControl(controls, wanted, floor, most);
  return {
    state: 'open',
    floor: 'program.window.floor',
    ceiling,
    aim: 'program.backwash.aim',
    ...(fitted === undefined ? {} : { fitted: 'situation.rate.backwash' }),
    fits: fitted === undefined ? 'unknown' : fitted < floor ? 'below' : fitted > most ? 'above' : 'inside',
    ...(choice === undefined ? {} : { choice: choice.id }),
  };
};

const bestControl = (
  controls: readonly Control[],
  wanted: number,
  floor: number,
  ceiling: number,
): Control | undefined =>
  controls
    .filter(({ rate }) => rate.si >= floor && rate.si <= ceiling)
    .toSorted(
      byThenId(
        ({ rate }) => -Math.abs(rate.si - wanted),
        ({ id }) => id,
      ),
    )[0];

const emptyBecause = (ceiling: FigureId): { readonly why: Message; readonly choices: readonly Message[] } => {
  switch (ceiling) {
    case 'situation.supply.flow':
      return {
        why: message('program.window.empty.supply'),
        choices: [message('program.window.choice.pump'), message('program.window.choice.smaller-tank')],
      };
    case 'situation.drain.carries':
      return {
        why: message('program.window.empty.drain'),
        choices: [message('program.window.choice.drain'), message('program.window.choice.smaller-tank')],
      };
    default:
      return {
        why: message('program.window.empty.height'),
        choices: [message('program.window.choice.less-bed'), message('program.window.choice.two-controls')],
      };
  }
};

/** The other method at the fitted rate in the coldest water: one quiet line where it passes the free height. */
const spreadNote = (ledger: Ledger): readonly Message[] => {
  const rate = ledger.has('situation.rate.backwash') ? 'situation.rate.backwash' : 'program.window.aim';
  const put = ledger.derive(
    upflowRate,
    { flow: rate, diameter: 'situation.tank.diameter' },
    { superficialVelocity: 'program.backwash.upflow' },
  );
  if (!put) return [];
  const at = { ...grains, superficialVelocity: 'program.backwash.upflow' };
  for (const season of ['coldest', 'warmest'] as const) {
    ledger.derive(
      expansionRichardsonZaki,
      { ...at, ...water(season) },
      { expansion: `program.backwash.expansion.${season}` },
    );
  }
  ledger.assume('program.rule.sphere.viscous', quantity('ratio', 150), 'ergun-1952');
  ledger.assume('program.rule.sphere.inertial', quantity('ratio', 1.75), 'ergun-1952');
  ledger.derive(
    expansionErgun,
    {
      ...at,
      ...water('coldest'),
      viscousConstant: ledger.has('program.window.k-viscous')
        ? 'program.window.k-viscous'
        : 'program.rule.sphere.viscous',
      inertialConstant: ledger.has('program.window.k-inertial')
        ? 'program.window.k-inertial'
        : 'program.rule.sphere.inertial',
    },
    { expansion: 'program.backwash.expansion.ergun' },
  );
  const ergun = ledger.value('program.backwash.expansion.ergun');
  const most = ledger.value('program.window.expansion.most');
  if (ergun === undefined || most === undefined || ergun <= most) return [];
  return [
    message('program.window.spread', { ergun: quantity('share', ergun), most: quantity('share', most) }),
  ];
};
