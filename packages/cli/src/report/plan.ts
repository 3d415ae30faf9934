import type { LeaveSafe, PlanStep, StackCount, WorkPlan } from '@brinewright/service';
import { bullets, hanging, paragraph, stacked } from '../text/lines.ts';
import { minutes, type View, wordOr } from '../view.ts';
import { fitsText, sentences, staged } from './common.ts';

export const plan = (view: View): string[] =>
  staged(view, view.assessment.stages.plan, (value) =>
    stacked(
      sentences(view, value.says),
      stopped(view, value),
      summary(view, value),
      value.steps.flatMap((step, place) => stepLines(view, step, place + 1, value.steps.length)),
      ...ifOpened(view, value),
      leaveSafe(view, value.leaveSafe),
    ),
  );

const stopped = (view: View, { stopped: at }: WorkPlan): string[] =>
  at === undefined
    ? []
    : paragraph(`${view.word('cli.plan.stopped')} ${view.say(at.why)} ${view.say(at.mend)}`);

const summary = (view: View, { steps, minutes: all, outageMinutes, changes }: WorkPlan): string[] => {
  if (steps.length === 0) return [];
  return paragraph(
    view.word(outageMinutes === 0 ? 'cli.plan.summary-water-on' : 'cli.plan.summary', {
      count: steps.filter((step) => step.kind !== 'gate' && !step.done).length,
      time: minutes(view, all),
      outage: minutes(view, outageMinutes),
      tools: changes.tools,
      sides: changes.sides,
    }),
  );
};

const stepLines = (view: View, step: PlanStep, number: number, of: number): string[] => {
  const mark = `${String(number).padStart(String(of).length)}. `;
  const indent = mark.length;
  switch (step.kind) {
    case 'gate':
      return [
        ...hanging(mark, view.word(step.passed ? 'cli.plan.gate-passed' : 'cli.plan.gate')),
        ...step.asks.flatMap(({ met, says }) => hanging(met ? '[x] ' : '[ ] ', view.say(says), indent)),
      ];
    case 'sweep':
      return hanging(mark, withMarks(view, view.word('cli.plan.sweep'), [doneMark(view, step.done)]));
    case 'operation': {
      const { operation, tools } = step;
      return [
        ...hanging(
          mark,
          withMarks(view, view.text(operation.order), [
            minutes(view, step.minutes),
            tools.map((tool) => toolTitle(view, tool)).join(', '),
            operation.side === undefined ? '' : wordOr(view, `cli.side.${operation.side}`, operation.side),
            onlyWhen(view, step.when),
            doneMark(view, step.done),
          ]),
        ),
        ...(step.done ? [] : bullets(operation.how.map(view.text), indent)),
        ...countLines(view, step.count, indent),
        ...(step.done ? [] : lookOvers(view, operation.lookOvers.map(view.text), indent)),
      ];
    }
    case 'back': {
      const back = step.of.back;
      return [
        ...hanging(
          mark,
          withMarks(view, back === undefined ? step.id : view.text(back.order), [
            minutes(view, step.minutes),
            onlyWhen(view, step.when),
            doneMark(view, step.done),
          ]),
        ),
        ...(step.done ? [] : bullets((back?.how ?? []).map(view.text), indent)),
        ...putsLines(view, step.puts, indent),
        ...countLines(view, step.count, indent),
        ...(step.done ? [] : lookOvers(view, step.lookOvers.map(view.text), indent)),
      ];
    }
  }
};

const withMarks = (_view: View, text: string, marks: readonly string[]): string => {
  const said = marks.filter((mark) => mark !== '');
  return said.length === 0 ? text : `${text} (${said.join('; ')})`;
};

const doneMark = (view: View, done: boolean): string => (done ? view.word('cli.plan.done') : '');

const onlyWhen = (view: View, when: Parameters<typeof fitsText>[1] | undefined): string =>
  when === undefined ? '' : view.word('cli.plan.only-when', { when: fitsText(view, when) });

const toolTitle = (view: View, id: string): string => {
  const found = view.family?.tools.find((tool) => tool.id === id);
  return found === undefined ? id : view.text(found.title);
};

/** Pieces to count, by what they are; what was counted, where it was. */
const countLines = (view: View, count: StackCount | undefined, indent: number): string[] => {
  if (count === undefined) return [];
  const listed = (totals: Readonly<Record<string, number>>): string =>
    Object.entries(totals)
      .map(([is, many]) => `${wordOr(view, `plan.piece.${is}`, is)} ${many}`)
      .join(', ');
  const asked = view.word('cli.plan.count', { pieces: listed(count.totals) });
  const counted =
    count.counted === undefined
      ? ''
      : ` ${view.word(count.agrees === true ? 'cli.plan.counted' : 'cli.plan.miscounted', { pieces: listed(count.counted) })}`;
  return hanging('', asked + counted, indent);
};

const lookOvers = (view: View, texts: readonly string[], indent: number): string[] =>
  texts.length === 0 ? [] : hanging('', `${view.word('cli.plan.look')} ${texts.join('. ')}.`, indent);

type Put = Extract<PlanStep, { kind: 'back' }>['puts'][number];

/** What goes back, new or as it was; of an undescribed unit nobody can name the pieces. */
const putsLines = (view: View, puts: readonly Put[], indent: number): string[] => {
  if (puts.length === 0) return [];
  const { situation } = view.assessment.stages;
  const unnamed = situation.state === 'done' && !situation.value.described;
  const texts = unnamed
    ? [view.word('cli.plan.puts-unnamed')]
    : (['new', 'old'] as const).flatMap((as) => putText(view, as, puts));
  return hanging('', texts.join(' '), indent);
};

const putText = (view: View, as: Put['as'], puts: readonly Put[]): readonly string[] => {
  const roles = puts.filter((one) => one.as === as).map(({ role }) => roleName(view, role));
  return roles.length === 0 ? [] : [view.word(`cli.plan.puts-${as}`, { roles: roles.join(', ') })];
};

const roleName = (view: View, role: string): string => wordOr(view, `cli.role.${role}`, role);

/** A make nobody has described: the safe way in, should it have to be opened. */
const ifOpened = (view: View, { ifOpened: way }: WorkPlan): readonly string[][] => {
  if (way === undefined) return [];
  const heading = view.word('cli.plan.if-opened', {
    time: minutes(view, way.minutes),
    outage: minutes(view, way.outageMinutes),
  });
  return [
    paragraph(heading),
    way.steps.flatMap((step, place) => stepLines(view, step, place + 1, way.steps.length)),
  ];
};

/** The way out at any moment, with what it costs. */
const leaveSafe = (view: View, { into, steps, minutes: cost, settings, card }: LeaveSafe): string[] => {
  if (steps.length === 0) return [];
  return [
    ...paragraph(
      view.word(`cli.plan.leave-${into}`, {
        time: minutes(view, cost),
        count: steps.filter((step) => step.kind !== 'gate' && !step.done).length,
      }),
    ),
    ...bullets([...settings, ...card].map(view.say)),
  ];
};
