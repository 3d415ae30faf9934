import type { Family } from '@brinewright/equipment';
import type { Text } from '@brinewright/words';
import type { Visit } from '../visit/schema.ts';

type Worded = {
  readonly id: string;
  readonly words: { readonly en: readonly string[]; readonly es: readonly string[] };
};

const saidIn = (text: Text | undefined): string => {
  if (text === undefined) return '';
  return (typeof text === 'string' ? text : `${text.en}\n${text.es ?? ''}`).toLowerCase();
};

/** Words are looked for at their beginning, so that 'salt' hears 'salty' but not 'asphalt'. */
const hears = (text: string, word: string): boolean => {
  const looked = word.toLowerCase();
  for (let start = text.indexOf(looked); start >= 0; start = text.indexOf(looked, start + 1))
    if (start === 0 || !/\p{L}/u.test(text.charAt(start - 1))) return true;
  return false;
};

const heardIn = (
  text: Text | undefined,
  chosen: readonly string[] | undefined,
  known: readonly Worded[],
): string[] => {
  const said = saidIn(text);
  return known
    .filter(
      ({ id, words }) =>
        chosen?.includes(id) === true || [...words.en, ...words.es].some((word) => hears(said, word)),
    )
    .map(({ id }) => id);
};

/** Complaints of the definitions that the customer's own words or the technician's choice name. */
export const complaintsOf = (visit: Visit, family: Family): readonly string[] =>
  heardIn(visit.complaint?.words, visit.complaint?.kinds, family.complaints);

/** What changed since it last worked, from the words or the choice. */
export const changesOf = (visit: Visit, family: Family): readonly string[] =>
  heardIn(visit.history?.changed, visit.history?.changes, family.changes);

const dayMs = 86_400_000;
/** After-service faults are raised for about two months; common practice. */
const recentDays = 62;

export const servicedRecently = (visit: Visit, now: string): boolean => {
  const when = visit.history?.lastWork?.when;
  if (when === undefined) return false;
  const days = (Date.parse(visit.date ?? now) - Date.parse(when)) / dayMs;
  return days >= 0 && days <= recentDays;
};
