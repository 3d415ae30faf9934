import type { PartLine, RepairPlan } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { bullets, hanging, paragraph, stacked } from '../text/lines.ts';
import { type Column, type Row, table } from '../text/table.ts';
import { percent, type View } from '../view.ts';
import { askOfTell, featureTitle, sentences, staged, valueTitle } from './common.ts';

export const repair = (view: View): string[] =>
  staged(view, view.assessment.stages.repair, (value) =>
    stacked(
      sentences(view, value.advice),
      bullets([
        ...value.wrong.map(({ says }) => view.say(says)),
        ...value.refused.map((one) => view.say(one)),
      ]),
      parts(view, value.parts),
      ...value.differs.map((one) => differing(view, one)),
      sentences(
        view,
        value.substitutes.map(({ says }) => says),
      ),
    ),
  );

const parts = (view: View, lines: readonly PartLine[]): string[] => {
  if (lines.length === 0) return [];
  const columns: readonly Column[] = [
    { title: view.word('papers.part.count'), align: 'right' },
    { title: view.word('papers.part'), gives: true },
    { title: view.word('papers.part.number') },
    { title: view.word('papers.part.price'), align: 'right' },
    { title: view.word('cli.parts.stock') },
  ];
  return table(
    columns,
    lines.map((line) => partRow(view, line)),
  );
};

const partRow = (view: View, { part, count, price, have, p }: PartLine): Row => {
  const found = view.family?.parts.find(({ id }) => id === part);
  const title = found === undefined ? part : view.text(found.title);
  return {
    cells: [
      view.quantity(quantity('count', count)),
      p > 0.995 ? title : `${title} (${percent(view, p)})`,
      found?.number ?? '–',
      price === undefined ? '–' : view.quantity(quantity('money', price)),
      stock(view, have, count),
    ],
  };
};

const stock = (view: View, have: number | undefined, count: number): string => {
  if (have === undefined) return view.word('cli.parts.stock-not-written');
  return have >= count
    ? view.word('cli.parts.at-hand')
    : view.word('cli.parts.order', { count: count - have });
};

/** What one of the variants takes that others do not, and the tell that parts them. */
const differing = (view: View, { when, parts: lines, tell }: RepairPlan['differs'][number]): string[] => {
  const build = Object.entries(when)
    .map(([feature, value]) => `${featureTitle(view, feature)} ${valueTitle(view, feature, value)}`)
    .join(', ');
  return [
    ...paragraph(view.word('cli.parts.only', { when: build })),
    ...parts(view, lines),
    ...(tell === undefined ? [] : hanging('', view.word('cli.parts.tell', { tell: askOfTell(view, tell) }))),
  ];
};
