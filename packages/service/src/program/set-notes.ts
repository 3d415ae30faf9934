import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import { rules } from './rules.ts';

/** A dose whose brine the controller has no time for would bring the very fault that is to be mended. */
export const setNotes = (ledger: Ledger): readonly Message[] => {
  const draw = ledger.value('program.as-set.draw.time');
  const step = ledger.value('program.set.brine') ?? ledger.value('program.set.draw');
  if (draw === undefined || step === undefined) return [];
  if (draw > step * (1 + 1e-9))
    return [message('program.set-draw-cut', { draw: quantity('time', draw), step: quantity('time', step) })];
  const rinsed = ledger.value('program.as-set.slow-rinse.bed-volumes');
  return rinsed === undefined || rinsed >= rules.slowRinse.least.si * (1 - 1e-9)
    ? []
    : [message('program.set-short-rinse', { rinsed: quantity('bed-volumes', rinsed) })];
};
