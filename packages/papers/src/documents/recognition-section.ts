import type { Recognition } from '@brinewright/service';
import { oddsText } from '../drawings/odds-bars.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { nextTell } from './in-hand.ts';
import { featureName, tellName, valueName } from './naming.ts';
import { bullets, inHalves, type Row, section, sentences, staged } from './parts.ts';
import type { Sheet } from './sheet.ts';

/** Values below it are not worth a word. */
const leastShown = 0.005;

const featureRow = (sheet: Sheet, { feature, settled, odds }: Recognition['features'][number]): Row => {
  const open = odds
    .filter(({ p }) => p >= leastShown)
    .map(({ value, p }) => `${valueName(sheet, feature, value)} ${oddsText(p)} %`);
  return {
    of: settled === undefined ? 'still-open' : undefined,
    cells: [
      featureName(sheet, feature),
      settled === undefined ? open.join(', ') : valueName(sheet, feature, settled),
      sheet.word(settled === undefined ? 'cli.recognition.open' : 'cli.recognition.settled'),
    ],
  };
};

const features = (sheet: Sheet, { single, features: all }: Recognition): Markup | undefined =>
  single
    ? undefined
    : inHalves(
        [{ title: sheet.word('papers.feature') }, { title: sheet.word('papers.value') }, { title: '' }],
        all.map((one) => featureRow(sheet, one)),
        'features',
      );

/** Answers to look at again, where they disagree, and the conversions that would explain them. */
const disagreeing = (sheet: Sheet, { contradiction }: Recognition): Content => {
  if (contradiction === undefined) return undefined;
  const doubted = contradiction.doubt.map((doubt) =>
    doubt.from === 'tell'
      ? sheet.word('papers.doubted', { asked: tellName(sheet, doubt.tell), answer: answerTo(sheet, doubt) })
      : `${featureName(sheet, doubt.feature)}: ${valueName(sheet, doubt.feature, doubt.answer)}`,
  );
  const converted = contradiction.conversions.map(({ feature, from, to }) =>
    sheet.word('cli.recognition.converted', {
      feature: featureName(sheet, feature),
      from: valueName(sheet, feature, from),
      to: valueName(sheet, feature, to),
    }),
  );
  return classed(
    'div',
    'missing',
    html('p', { class: 'strong' }, sheet.word('cli.recognition.doubt')),
    bullets([...doubted, ...converted]),
  );
};

const answerTo = (
  sheet: Sheet,
  { tell: id, answer }: { readonly tell: string; readonly answer: string },
): string => {
  const tell = sheet.family?.tells.find((one) => one.id === id);
  const option = tell?.kind === 'seen' ? tell.answers.find((one) => one.id === answer) : undefined;
  return option === undefined ? answer : sheet.text(option.title);
};

const recognised = (sheet: Sheet, recognition: Recognition): Content => {
  const [next] = recognition.next;
  return [
    sentences(sheet, [recognition.why]),
    features(sheet, recognition),
    disagreeing(sheet, recognition),
    recognition.decided || next === undefined ? undefined : nextTell(sheet, next),
  ];
};

/** Which build of the valve it is: what is settled, what is open, and what would part the rest. */
export const recognitionSection = (sheet: Sheet): Markup =>
  section(
    sheet.word('papers.valve'),
    undefined,
    staged(sheet, sheet.assessment.stages.recognition, (value) => recognised(sheet, value)),
  );
