import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { rules } from './rules.ts';

/** What hangs on the water and the salt rather than on the valve. */
export const siteNotes = (s: Situation, ledger: Ledger): readonly Message[] => {
  const notes: Message[] = [];
  const sodium = ledger.value('program.sodium');
  if (s.subject.salt === 'potassium') notes.push(message('program.potassium'));
  else if (sodium !== undefined)
    notes.push(message('program.sodium', { sodium: quantity('concentration', sodium) }));
  const iron = ledger.value('situation.water.iron') ?? 0;
  if (iron > 2e-3) notes.push(message('program.iron-much', { iron: quantity('concentration', iron) }));
  else if (iron >= rules.calendar.ironFrom.si)
    notes.push(message('program.iron-some', { iron: quantity('concentration', iron) }));
  return notes;
};
