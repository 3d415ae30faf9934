import { type Message, message, type Text } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import type { Doubt, Recognition, Target } from './recognition.ts';
import { featureTitle, valueTitle } from './titles.ts';

type Found = Omit<Recognition, 'why'>;

/** One sentence on why it can stop, or what is still to be told apart. */
export const whyRecognised = (s: Situation, targets: readonly Target[], found: Found): Message => {
  if (!s.described) return message('recognition.why.undescribed');
  if (found.single) return message('recognition.why.single');
  const [doubt] = found.contradiction?.doubt ?? [];
  if (doubt !== undefined) return disagreeing(s, doubt, found);
  if (targets.length === 0) return message('recognition.why.no-target');
  return found.decided ? decidedOn(found) : stillOpen(found);
};

const disagreeing = (s: Situation, doubt: Doubt, { contradiction }: Found): Message => {
  const values = { doubt: nameOf(s, doubt), answer: answerOf(s, doubt) };
  const [conversion] = contradiction?.conversions ?? [];
  if (conversion === undefined) return message('recognition.why.disagree', values);
  const from = valueTitle(s.family, conversion.feature, conversion.from);
  const to = valueTitle(s.family, conversion.feature, conversion.to);
  return message('recognition.why.disagree-or-converted', { ...values, from, to });
};

const nameOf = ({ family }: Situation, doubt: Doubt): Text =>
  doubt.from === 'tell'
    ? (family.tells.find(({ id }) => id === doubt.tell)?.ask ?? doubt.tell)
    : featureTitle(family, doubt.feature);

/** What was answered, as it is put to the technician; a measured size as it was written. */
const answerOf = (s: Situation, doubt: Doubt): Text => {
  if (doubt.from === 'told') return valueTitle(s.family, doubt.feature, doubt.answer);
  const tell = s.family.tells.find(({ id }) => id === doubt.tell);
  const known = tell?.kind === 'seen' ? tell.answers.find(({ id }) => id === doubt.answer) : undefined;
  return known?.title ?? doubt.answer;
};

const decidedOn = ({ remaining, groups }: Found): Message => {
  if (remaining === 1 && groups.length === 1) return message('recognition.why.one-left');
  return groups.length === 1
    ? message('recognition.why.same-for-all', { count: remaining })
    : message('recognition.why.clear-enough', { count: groups.length - 1 });
};

const stillOpen = ({ groups, next }: Found): Message => {
  const [best] = next;
  return best === undefined
    ? message('recognition.why.no-tell-left', { count: groups.length })
    : message('recognition.why.open', { count: groups.length, tell: best.tell.ask });
};
