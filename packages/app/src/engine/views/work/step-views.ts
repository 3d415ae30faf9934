import {
  fitsName,
  howOf,
  lookOversOf,
  minutesName,
  orderOf,
  type Sheet,
  toolName,
  type WorkStep,
  wordOf,
} from '@brinewright/papers';
import type { PlanStep, StackCount, WorkPlan } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import { clockTime } from '../clock-time.ts';
import { alone } from '../names.ts';
import { cautionsOf, openFactBefore } from './caution-views.ts';
import { linePicture } from './line-picture.ts';
import { homePicture, stackView } from './stack-view.ts';
import type { BlockedView, CountView, StepView } from './work-types.ts';
import { lineOf, writtenAs } from './written-as.ts';

const isWork = (step: PlanStep): step is WorkStep => step.kind !== 'gate';

/** Every step in its order, each with what keeps it from being marked done. */
export const stepViews = (
  sheet: Sheet,
  { steps, stopped, building }: Pick<WorkPlan, 'steps' | 'stopped' | 'building'>,
  shown: string | undefined,
): readonly StepView[] => {
  const views: StepView[] = [];
  for (const step of steps.filter(isWork)) {
    const view = {
      ...stepView(sheet, steps, step, views.length + 1),
      ...(step.id === shown ? drawnFor(sheet, step, building) : {}),
    };
    const blocked = view.done ? undefined : blockedBy({ sheet, steps, stopped, before: views, view });
    views.push(blocked === undefined ? view : { ...view, blocked });
  }
  return views;
};

const stepView = (sheet: Sheet, steps: readonly PlanStep[], step: WorkStep, number: number): StepView => {
  const line = lineOf(step, sheet.visit);
  const view = {
    id: step.id,
    kind: step.kind,
    number,
    order: orderOf(sheet, step),
    done: step.done,
    ...(step.done && line?.at !== undefined ? { doneAt: clockTime(line.at) } : {}),
    ...(line?.entry === undefined ? {} : { entry: line.entry }),
    writes: writtenAs(step, sheet.visit),
    ...withWhat(sheet, step),
    how: howOf(step).map(sheet.text),
    lookOvers: lookOversOf(step).map(sheet.text),
    puts: putsOf(sheet, step),
    cautions: cautionsOf(sheet, steps, step),
    counts: countsOf(sheet, countOf(step)),
  };
  return { ...view, aloud: aloudOf(view) };
};

const countOf = (step: WorkStep): StackCount | undefined => (step.kind === 'sweep' ? undefined : step.count);

/** The drawing of a step: the stack where it is counted, the bore where the piston comes home, the valves of the line. */
const drawnFor = (
  sheet: Sheet,
  step: WorkStep,
  building: WorkPlan['building'],
): Pick<StepView, 'stack' | 'picture'> => {
  const stack = stackView(sheet, countOf(step), step.kind === 'back' ? 'in' : 'out');
  if (stack !== undefined) return { stack };
  if (step.kind !== 'operation') return {};
  const isHoming = step.operation.makes.piston === 'home';
  const picture = isHoming ? homePicture(sheet) : linePicture(sheet, step.operation, building);
  return picture === undefined ? {} : { picture };
};

const withWhat = (sheet: Sheet, step: WorkStep) => {
  const operation = step.kind === 'operation' ? step.operation : undefined;
  const side = step.kind === 'back' ? step.of.side : operation?.side;
  const waiting = operation?.minutes.waiting ?? 0;
  const when = step.kind === 'sweep' ? undefined : step.when;
  return {
    tools: step.kind === 'operation' ? alone(step.tools.map((id) => toolName(sheet, id)).join(', ')) : '',
    side: side === undefined ? '' : alone(wordOf(sheet, 'side', side)),
    minutes: step.kind === 'sweep' ? '' : minutesName(sheet, step.minutes),
    ...(waiting === 0 ? {} : { waiting: { minutes: waiting, text: minutesName(sheet, waiting) } }),
    ...(when === undefined
      ? {}
      : { onlyWith: sheet.word('papers.sheet.only-with', { when: fitsName(sheet, when) }) }),
    consumables: (operation?.consumables ?? []).map(sheet.text),
  };
};

const putsOf = (sheet: Sheet, step: WorkStep): readonly string[] => {
  if (step.kind !== 'back') return [];
  return (['new', 'old'] as const).flatMap((as) => {
    const roles = step.puts.filter((one) => one.as === as).map(({ role }) => wordOf(sheet, 'role', role));
    return roles.length === 0 ? [] : [sheet.word(`cli.plan.puts-${as}`, { roles: roles.join(', ') })];
  });
};

const pieces: Readonly<Record<string, readonly [one: MessageKey, many: MessageKey]>> = {
  seal: ['papers.stack.seal', 'plan.piece.seal'],
  spacer: ['papers.stack.spacer', 'plan.piece.spacer'],
  ring: ['papers.stack.ring', 'plan.piece.ring'],
  plug: ['papers.stack.plug', 'plan.piece.plug'],
};

const countsOf = (sheet: Sheet, count: StackCount | undefined): readonly CountView[] =>
  Object.entries(count?.totals ?? {})
    .toSorted(([, a], [, b]) => b - a)
    .map(([is, of]) => {
      const counted = count?.counted === undefined ? undefined : (count.counted[is] ?? 0);
      const [one, many] = (pieces[is] ?? []).map((key) => sheet.word(key));
      return {
        is,
        one: one ?? is,
        name: alone(many ?? is),
        of,
        ...(counted === undefined ? {} : { counted }),
      };
    });

type Blocking = {
  readonly sheet: Sheet;
  readonly steps: readonly PlanStep[];
  readonly stopped: WorkPlan['stopped'];
  readonly before: readonly StepView[];
  readonly view: StepView;
};

/** A miscount stops everything else; then the gate; then facts that nobody has seen yet, its own among them. */
const blockedBy = ({ sheet, steps, stopped, before, view }: Blocking): BlockedView | undefined => {
  if (stopped !== undefined && stopped.at !== view.id && stopped.at !== 'gate')
    return { why: sheet.say(stopped.why), at: stopped.at };
  const place = steps.findIndex(({ id }) => id === view.id);
  const gate = steps.slice(0, place).find((step) => step.kind === 'gate');
  if (gate?.kind === 'gate' && !gate.passed) return { why: sheet.word('plan.stopped.gate'), at: 'gate' };
  const open = openFactBefore([...before, view]);
  return open === undefined
    ? undefined
    : { why: sheet.word('papers.fact.open', { fact: open.fact }), at: open.at };
};

type Spoken = Pick<StepView, 'order' | 'tools' | 'side' | 'cautions' | 'how' | 'counts'>;

/** What is read aloud: the order, with what, the cautions by name, how, and what is counted. */
const aloudOf = ({ order, tools, side, cautions, how, counts }: Spoken): string =>
  [
    order,
    tools,
    side,
    ...cautions.map(({ signal }) => signal.replace(/\.$/u, '')),
    ...how,
    ...counts.map(({ name, of }) => `${name} ${of}`),
  ]
    .filter((words) => words !== '')
    .map((words) => `${words}.`)
    .join(' ');
