import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { putDraw } from './chain.ts';
import { neighboursOf, upward } from './rounding.ts';
import { anyController } from './timed-settings.ts';

/** The dose that restores an exhausted bed at once: common practice. */
const heavy = 'program.dose-15';

/**
 * What is done once, before the new settings can work: the brine that stands in the tank was made by the old refill,
 * and an exhausted bed is not restored by one usual dose.
 */
export const onceNotes = (s: Situation, ledger: Ledger): readonly Message[] => {
  const standing = standingBrine(ledger);
  if (s.subject.bedNow !== 'exhausted') return standing === undefined ? [] : drawItAll(s, ledger, standing);
  if (standing?.state === 'much')
    return [...drawItAll(s, ledger, standing), message('program.once.then-usual')];
  return [twice(standing), ...heavyInstead(s, ledger)];
};

type Standing = {
  readonly state: 'much' | 'little';
  /** Salt that stands dissolved, and that is wanted; water that is missing. */
  readonly standing: number;
  readonly wanted: number;
  readonly more: number;
};

const standingBrine = (ledger: Ledger): Standing | undefined => {
  const standing = ledger.value('program.found.salt');
  const wanted = ledger.value('program.as-set.salt');
  const water = ledger.value('program.found.refill.water');
  const wantedWater = ledger.value('program.as-set.refill.water');
  if (standing === undefined || wanted === undefined || water === undefined || wantedWater === undefined)
    return undefined;
  const brine = { standing, wanted, more: Math.max(0, wantedWater - water) };
  if (standing < wanted * 0.95) return { state: 'little', ...brine };
  return standing > wanted * 1.05 ? { state: 'much', ...brine } : undefined;
};

/** Too little: water and a wait. Too much: a brine step that draws and rinses it all, where the controller holds one. */
const drawItAll = (
  s: Situation,
  ledger: Ledger,
  { state, standing, wanted, more }: Standing,
): readonly Message[] => {
  const values = { standing: quantity('mass', standing), wanted: quantity('mass', wanted) };
  if (state === 'little')
    return [message('program.once.add-water', { ...values, more: quantity('volume', more) })];
  const brine = ledger.value('program.found.brine.volume');
  const draw = ledger.value('program.found.draw.time');
  const rinse = ledger.value('program.slow-rinse.time');
  if (brine === undefined || draw === undefined || rinse === undefined) return [];
  const all = { ...values, brine: quantity('volume', brine) };
  const step = heldBrineStep(s, draw, rinse);
  if (step === undefined) return [message('program.once.pump-out', all)];
  return [message(`program.once.much-brine-${step.of}`, { ...all, step: quantity('time', step.time) })];
};

/** The time to key in, in the step that this controller holds; nothing where it is longer than any. */
const heldBrineStep = (
  s: Situation,
  draw: number,
  rinse: number,
): { readonly of: 'brine' | 'draw'; readonly time: number } | undefined => {
  const { holds, times } = s.controller ?? anyController;
  const of = holds.includes('brine') ? 'brine' : 'draw';
  const exact = of === 'brine' ? draw + rinse : draw;
  const neighbours = neighboursOf(exact, times);
  return neighbours.beyond ? undefined : { of, time: upward(exact, neighbours) };
};

/** Two regenerations, each with brine that had time to become strong. */
const twice = (standing: Standing | undefined): Message =>
  standing === undefined
    ? message('program.once.exhausted-twice')
    : message('program.once.exhausted-twice-water', { more: quantity('volume', standing.more) });

/** One heavy regeneration, where tank, draw and controller allow it; its salt is counted as common salt. */
const heavyInstead = (s: Situation, ledger: Ledger): readonly Message[] => {
  const salt = ledger.value(`${heavy}.salt`);
  const water = ledger.value(`${heavy}.refill.water`);
  const rinse = ledger.value('program.slow-rinse.time');
  if (s.subject.salt === 'potassium' || salt === undefined || water === undefined || rinse === undefined)
    return [];
  putDraw(ledger, heavy);
  const draw = ledger.value(`${heavy}.draw.time`);
  const step = draw === undefined ? undefined : heldBrineStep(s, draw, rinse);
  if (step === undefined) return [];
  const more = Math.max(0, water - (ledger.value('program.found.refill.water') ?? 0));
  return [
    message(`program.once.exhausted-heavy-${step.of}`, {
      salt: quantity('mass', salt),
      more: quantity('volume', more),
      step: quantity('time', step.time),
    }),
  ];
};
