import type { NextTell, Recognition } from '@brinewright/service';
import { bullets, hanging, indented, paragraph, stacked } from '../text/lines.ts';
import { table } from '../text/table.ts';
import { columns } from '../text/wrap.ts';
import { minutes, percent, type View } from '../view.ts';
import { askOfTell, featureTitle, orderOf, staged, valueTitle } from './common.ts';

export const recognition = (view: View): string[] =>
  staged(view, view.assessment.stages.recognition, (value) =>
    stacked(
      paragraph(view.say(value.why)),
      doubts(view, value),
      features(view, value),
      value.decided ? [] : value.next.slice(0, 1).flatMap((next) => inHand(view, next)),
    ),
  );

/** Answers to look at again, where they disagree, and the conversions that would explain them. */
const doubts = (view: View, { contradiction }: Recognition): string[] => {
  if (contradiction === undefined || contradiction.doubt.length + contradiction.conversions.length < 2)
    return [];
  const doubted = contradiction.doubt.map((doubt) =>
    doubt.from === 'tell'
      ? `${askOfTell(view, doubt.tell)} (${answerOf(view, doubt.tell, doubt.answer)})`
      : `${featureTitle(view, doubt.feature)}: ${valueTitle(view, doubt.feature, doubt.answer)}`,
  );
  const converted = contradiction.conversions.map(({ feature, from, to }) =>
    view.word('cli.recognition.converted', {
      feature: featureTitle(view, feature),
      from: valueTitle(view, feature, from),
      to: valueTitle(view, feature, to),
    }),
  );
  return [...paragraph(view.word('cli.recognition.doubt')), ...bullets([...doubted, ...converted])];
};

const answerOf = (view: View, id: string, answer: string): string => {
  const tell = view.family?.tells.find((one) => one.id === id);
  return tell === undefined ? answer : answerTitle(view, tell, answer);
};

const features = (view: View, { features: all, single }: Recognition): string[] => {
  if (single) return [];
  const rows = all.map(({ feature, settled, odds }) => ({
    cells: [
      featureTitle(view, feature),
      settled === undefined
        ? odds
            .filter(({ p }) => p >= 0.005)
            .map(({ value, p }) => `${valueTitle(view, feature, value)} ${percent(view, p)}`)
            .join(', ')
        : valueTitle(view, feature, settled),
      view.word(settled === undefined ? 'cli.recognition.open' : 'cli.recognition.settled'),
    ],
  }));
  return table([{ title: '' }, { title: '' }, { title: '' }], rows);
};

/** The tell worth most per minute, with what each answer leaves. */
const inHand = (view: View, { tell, minutes: cost, leaves }: NextTell): string[] => [
  ...hanging(`${view.word('cli.next')} `, `${view.text(tell.ask)} (${minutes(view, cost)})`),
  ...(tell.how === undefined ? [] : hanging('', view.text(tell.how), 2)),
  ...opens(view, tell.after),
  ...indented(
    table(
      [{ title: '' }, { title: '', align: 'right' }, { title: '' }],
      leaves.map(({ answer, p, groups }) => ({
        cells: [
          answerTitle(view, tell, answer),
          percent(view, p),
          view.word('cli.recognition.leaves', { count: groups }),
        ],
      })),
      columns - 2,
    ),
  ),
];

export const opens = (view: View, operations: readonly string[]): string[] =>
  operations.length === 0
    ? []
    : hanging('', view.word('cli.first', { what: operations.map((id) => orderOf(view, id)).join('; ') }), 2);

const answerTitle = (view: View, tell: NextTell['tell'], answer: string): string => {
  if (tell.kind === 'measured') return valueTitle(view, tell.feature, answer);
  const found = tell.answers.find(({ id }) => id === answer);
  return found === undefined ? answer : view.text(found.title);
};
