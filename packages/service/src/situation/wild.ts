import { type Issue, message, type Path, type Text } from '@brinewright/words';

/** Repeats that do not agree: which reading, and how many of them stand apart. */
export const wildIssue = (at: Path, what: Text, wild: number, repeats: number): Issue => ({
  code: 'reading-wild',
  severity: 'note',
  at,
  message: message('situation.reading.wild', { what, wild, repeats }),
  mend: message('situation.reading.wild-mend'),
});
