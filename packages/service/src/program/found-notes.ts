import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import { rules } from './rules.ts';

/** What the found settings do, in sentences: too much or too little salt, a short rinse, brine that stays behind. */
export const foundNotes = (ledger: Ledger): readonly Message[] => {
  const found = ledger.value('program.found.dose');
  const dose = ledger.value('program.dose');
  if (found === undefined || dose === undefined) return [];
  const notes: Message[] = [];
  const values = { found: quantity('salt-dose', found), dose: quantity('salt-dose', dose) };
  if (found > dose * 1.1) notes.push(message('program.found-too-much', values));
  if (found < dose * 0.9) notes.push(message('program.found-too-little', values));
  return [...notes, ...shortRinse(ledger)];
};

const shortRinse = (ledger: Ledger): readonly Message[] => {
  const rinsed = ledger.value('program.found.slow-rinse.bed-volumes');
  const draw = ledger.value('program.found.draw.time');
  const step = ledger.value('program.found.brine');
  if (rinsed === undefined || draw === undefined || step === undefined) return [];
  const values = {
    draw: quantity('time', draw),
    step: quantity('time', step),
    rinsed: quantity('bed-volumes', rinsed),
  };
  if (draw > step * (1 + 1e-9)) return [message('program.found-no-rinse', values), ...brineLeft(ledger)];
  return rinsed < rules.slowRinse.least.si ? [message('program.found-short-rinse', values)] : [];
};

/** A draw that the step cuts short leaves brine behind every time: the level climbs until something overflows. */
const brineLeft = (ledger: Ledger): readonly Message[] => {
  const brine = ledger.value('program.found.brine.volume');
  const drawn = ledger.value('program.found.brine.drawn');
  if (brine === undefined || drawn === undefined || drawn >= brine) return [];
  return [message('program.found-brine-left', { left: quantity('volume', brine - drawn) })];
};
