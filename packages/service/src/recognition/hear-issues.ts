import type { Tell } from '@brinewright/equipment';
import type { Quantity } from '@brinewright/units';
import { type Issue, message, type Path, quantityProblemMessages } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import type { TellAnswer } from '../visit/schema.ts';
import { featureTitle } from './titles.ts';

const placeOf = (s: Situation, answer: TellAnswer): Path => {
  const place = s.visit.answers?.indexOf(answer) ?? -1;
  return ['answers', place < 0 ? answer.tell : place, 'answer'];
};

export const unknownAnswer = (
  s: Situation,
  tell: Tell,
  answer: TellAnswer,
  known: readonly string[],
): Issue => ({
  code: 'unknown-answer',
  severity: 'warning',
  at: placeOf(s, answer),
  message: message('recognition.unknown-answer', { tell: tell.ask, answer: answer.answer }),
  mend: message('recognition.unknown-answer-mend', { answers: known.join(', ') }),
});

export const notASize = (
  s: Situation,
  answer: TellAnswer,
  problem: Parameters<typeof quantityProblemMessages>[0],
): Issue => ({
  code: 'quantity',
  severity: 'warning',
  at: placeOf(s, answer),
  ...quantityProblemMessages(problem),
});

export const noSuchSize = (s: Situation, tell: Tell, answer: TellAnswer, value: Quantity): Issue => ({
  code: 'no-such-size',
  severity: 'warning',
  at: placeOf(s, answer),
  message: message('recognition.no-such-size', { tell: tell.ask, value }),
  mend: message('recognition.no-such-size-mend'),
});

export const unknownValue = (
  s: Situation,
  feature: string,
  value: string,
  field: 'believed' | 'fitted' | 'kind',
  known: readonly string[],
): Issue => ({
  code: 'unknown-feature-value',
  severity: 'warning',
  at: ['conditioners', s.visit.conditioners.findIndex(({ id }) => id === s.subject.id), field, feature],
  message: message('recognition.unknown-value', {
    feature: featureTitle(s.family, feature),
    value,
  }),
  mend:
    known.length === 0
      ? message('recognition.unknown-value-none')
      : message('recognition.unknown-value-mend', { known: known.join(', ') }),
});
