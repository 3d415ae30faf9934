import type { PlanStep, StackCount } from '@brinewright/service';
import type { MessageKey, Text } from '@brinewright/words';
import { pieceWords } from '../drawings/stack-list.ts';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { capital } from '../say.ts';
import { cautionName } from './cautions-section.ts';
import { fitsName, minutesName, toolName, wordOf } from './naming.ts';
import { bullets, tick, ticks } from './parts.ts';
import type { Sheet } from './sheet.ts';

export type WorkStep = Exclude<PlanStep, { kind: 'gate' }>;
type GateStep = Extract<PlanStep, { kind: 'gate' }>;

/** What a step orders to be done, in the words of the definition. */
export const orderOf = (sheet: Sheet, step: WorkStep): string => {
  if (step.kind === 'sweep') return sheet.word('papers.sheet.sweep');
  if (step.kind === 'operation') return sheet.text(step.operation.order);
  const back = step.of.back?.order;
  return back === undefined
    ? sheet.word('papers.sheet.back', { order: sheet.text(step.of.order) })
    : sheet.text(back);
};

/** How a step is done, line by line. */
export const howOf = (step: WorkStep): readonly Text[] => {
  if (step.kind === 'sweep') return [];
  return step.kind === 'operation' ? step.operation.how : (step.of.back?.how ?? []);
};

/** What is looked over before a step counts as done. */
export const lookOversOf = (step: WorkStep): readonly Text[] => {
  if (step.kind === 'sweep') return [];
  return step.kind === 'operation' ? step.operation.lookOvers : step.lookOvers;
};

/** The cautions a step names, by id. */
export const hazardsOf = (step: WorkStep): readonly string[] => {
  if (step.kind === 'sweep') return [];
  return step.kind === 'operation' ? step.operation.hazards : (step.of.back?.hazards ?? []);
};

/** Tools and side in one line: what is fetched before hands go on. */
const withOf = (sheet: Sheet, step: WorkStep): string => {
  if (step.kind !== 'operation') return '';
  const { side } = step.operation;
  const tools = step.tools.map((id) => toolName(sheet, id)).join(', ');
  return [tools, side === undefined ? '' : capital(wordOf(sheet, 'side', side))]
    .filter((part) => part !== '')
    .join('; ');
};

const onlyWith = (sheet: Sheet, step: WorkStep): string =>
  step.kind === 'sweep' || step.when === undefined
    ? ''
    : sheet.word('papers.sheet.only-with', { when: fitsName(sheet, step.when) });

const paragraph = (words: string, of: string): Markup | undefined =>
  words === '' ? undefined : html('p', { class: of }, words);

/** The cautions that a step calls for and this visit meets, by name: in full they stand above. */
const hazards = (sheet: Sheet, step: WorkStep): Content => {
  const applying = new Set(sheet.assessment.cautions.map(({ caution }) => caution));
  const named = hazardsOf(step)
    .filter((id) => applying.has(id))
    .map((id) => classed('span', 'hazard', cautionName(sheet, id)));
  return named.length === 0 ? undefined : html('p', { class: 'hazards' }, named);
};

const isDescribed = ({ assessment }: Sheet): boolean => {
  const { situation } = assessment.stages;
  return situation.state !== 'done' || situation.value.described;
};

/** What goes back, new or as it was; of an undescribed unit nobody can name the pieces. */
const puts = (sheet: Sheet, step: WorkStep): readonly (Markup | undefined)[] => {
  if (step.kind !== 'back' || step.puts.length === 0) return [];
  if (!isDescribed(sheet)) return [paragraph(sheet.word('cli.plan.puts-unnamed'), 'puts')];
  return (['new', 'old'] as const).map((as) => {
    const roles = step.puts.filter((one) => one.as === as).map(({ role }) => wordOf(sheet, 'role', role));
    return paragraph(
      roles.length === 0 ? '' : sheet.word(`cli.plan.puts-${as}`, { roles: roles.join(', ') }),
      `puts ${as}`,
    );
  });
};

const pieceName = (sheet: Sheet, is: string): string => {
  const known: Readonly<Record<string, MessageKey>> = pieceWords;
  const key = Object.hasOwn(known, is) ? known[is] : undefined;
  return key === undefined ? is : sheet.word(key);
};

/** A box to strike for every piece, kind by kind: counting is done by hand, never by the paper. */
const tally = (sheet: Sheet, count: StackCount): Markup =>
  classed(
    'div',
    'tally',
    Object.entries(count.totals).map(([is, total]) => {
      const counted = count.counted?.[is] ?? 0;
      const squares = Array.from({ length: total }, (_none, index) =>
        html('i', { class: index < counted ? 'box counted' : 'box' }),
      );
      return html('span', {}, `${capital(pieceName(sheet, is))} ${total}`, squares);
    }),
  );

const counted = (sheet: Sheet, step: WorkStep): Content =>
  step.kind === 'sweep' || step.count === undefined ? undefined : tally(sheet, step.count);

/** Each look-over is a box of its own: it is ticked once it was seen. */
const lookOvers = (sheet: Sheet, step: WorkStep): Content => {
  const looks = lookOversOf(step);
  return looks.length === 0
    ? undefined
    : ticks(
        looks.map((words) => ({ met: step.done, says: sheet.text(words) })),
        'looks',
      );
};

const operationLine = (sheet: Sheet, number: number, step: WorkStep): Markup =>
  html(
    'li',
    {},
    html('b', { class: 'number' }, String(number)),
    tick(step.done),
    html(
      'div',
      {},
      html('p', { class: 'order' }, orderOf(sheet, step)),
      paragraph(onlyWith(sheet, step), 'only-with'),
      paragraph(withOf(sheet, step), 'second'),
      hazards(sheet, step),
      bullets(howOf(step).map(sheet.text)),
      puts(sheet, step),
      counted(sheet, step),
      lookOvers(sheet, step),
    ),
    html('span', { class: 'second' }, step.kind === 'sweep' ? '' : minutesName(sheet, step.minutes)),
  );

const gateBox = (sheet: Sheet, step: GateStep): Markup =>
  html(
    'li',
    { class: 'gate' },
    html('p', { class: 'order' }, sheet.word('papers.gate')),
    gateAsks(sheet, step),
  );

export const gateAsks = (sheet: Sheet, { asks }: Pick<GateStep, 'asks'>): Markup =>
  ticks(asks.map(({ met, says }) => ({ met, says: sheet.say(says) })));

/** Every step with its number, box, cautions, how, count and look-overs; the gate where it stands. */
export const operationLines = (sheet: Sheet, steps: readonly PlanStep[]): Markup => {
  let number = 0;
  const lines = steps.map((step) => {
    if (step.kind === 'gate') return gateBox(sheet, step);
    number += 1;
    return operationLine(sheet, number, step);
  });
  return html('ol', { class: 'steps' }, lines);
};
