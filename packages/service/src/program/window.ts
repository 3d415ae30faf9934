import type { Control, Medium } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import { byThenId } from '../stage/rank.ts';
import { putLift, putLiftAtCeiling, putLiftAtRate } from './lift.ts';
import type { BackwashWindow } from './program-advice.ts';

/**
 * The window of backwash flows: the coldest water must not lift the bed past its free height, the warmest must still
 * lift it enough, supply and drain must carry it. Once a pail was held under the drain, it says more than a second method.
 */
export const backwashWindow = (
  ledger: Ledger,
  medium: Medium,
  controls: readonly Control[],
  heldPail: boolean,
): { readonly window?: BackwashWindow; readonly notes: readonly Message[] } => {
  putLift(ledger, medium);
  putLiftAtRate(ledger, medium);
  const ceiling = carried(ledger);
  if (!ledger.has('program.window.floor') || !ledger.has('program.window.ceiling') || ceiling === undefined)
    return { notes: [] };
  const window = judgeWindow(ledger, ceiling, controls, putLiftAtCeiling(ledger, medium));
  return { window, notes: heldPail ? [] : spreadNote(ledger) };
};

/** The ceiling, lowered to what supply and drain carry; the id of the figure that limits. */
const carried = (ledger: Ledger): FigureId => {
  const ceiling = 'program.window.ceiling';
  const limits = [ceiling, 'situation.supply.flow', 'situation.drain.carries'].filter(ledger.has);
  return limits.toSorted((a, b) => byThenId(ledger.need, (id: FigureId) => id)(b, a))[0] ?? ceiling;
};

const judgeWindow = (
  ledger: Ledger,
  ceiling: FigureId,
  controls: readonly Control[],
  liftAtCeiling: number | undefined,
): BackwashWindow => {
  const floor = ledger.need('program.window.floor');
  const most = ledger.need(ceiling);
  if (floor > most)
    return {
      state: 'empty',
      ...emptyBecause(ceiling, most, liftAtCeiling),
      floor: 'program.window.floor',
      ceiling,
    };
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
    clearly:
      fitted !== undefined &&
      Math.max(floor - fitted, fitted - most) > ledger.spread('situation.rate.backwash'),
    ...(choice === undefined ? {} : { choice: choice.id }),
  };
};

/** Less lift than this cleans nothing worth the water; ours. */
const usefulLift = 0.15;

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

const emptyBecause = (
  ceiling: FigureId,
  most: number,
  lift: number | undefined,
): { readonly why: Message; readonly choices: readonly Message[] } => {
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
        choices: [
          ...(lift === undefined || lift < usefulLift
            ? []
            : [
                message('program.window.choice.compromise', {
                  flow: quantity('flow', most),
                  lift: quantity('share', lift),
                }),
              ]),
          message('program.window.choice.less-bed'),
          message('program.window.choice.two-controls'),
        ],
      };
  }
};

/** One quiet line where the other method passes the free height. */
const spreadNote = (ledger: Ledger): readonly Message[] => {
  const ergun = ledger.value('program.backwash.expansion.ergun');
  const most = ledger.value('program.window.expansion.most');
  if (ergun === undefined || most === undefined || ergun <= most) return [];
  return [
    message('program.window.spread', { ergun: quantity('share', ergun), most: quantity('share', most) }),
  ];
};
