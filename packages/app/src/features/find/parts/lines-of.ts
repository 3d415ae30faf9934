import type { Say } from '../../../app/words/say.ts';
import type { TestView } from '../../../engine/views/find-tests.ts';

/** What stands above a reading: what comes off first, what is expected, what a sound unit shows. */
export const linesOf = ({ opens, expected, normal }: TestView, word: Say): readonly string[] => [
  ...(opens === undefined ? [] : [word('app.readings.first', { what: opens })]),
  ...(expected === undefined ? [] : [word('app.readings.expected', { figure: expected })]),
  word('app.readings.normal', { normal }),
];
