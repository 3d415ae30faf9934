import type { TimedStep } from '@brinewright/equipment';
import type { ProgramAdvice } from '@brinewright/service';
import type { Quantity } from '@brinewright/units';
import { type TimelineStep, timeline } from '../drawings/timeline.ts';
import type { Markup } from '../markup/element.ts';
import { isFlow, isTime, quantityAt } from './figure-values.ts';
import { pictured, section } from './parts.ts';
import type { Sheet } from './sheet.ts';

/** What leaves by the drain while a step runs: in the draw, the brine and what drives it. */
const drained = (sheet: Sheet, step: TimedStep): Quantity<'flow'> | undefined => {
  const rate = (name: string): number | undefined => quantityAt(sheet, `situation.rate.${name}`)?.si;
  if (step === 'refill') return undefined;
  if (step !== 'draw' && step !== 'brine') {
    const own = quantityAt(sheet, `situation.rate.${step}`);
    return isFlow(own) ? own : undefined;
  }
  const [draw, drive] = [rate('draw'), rate('slow-rinse')];
  return draw === undefined || drive === undefined ? undefined : { kind: 'flow', si: draw + drive };
};

/** A controller that holds draw and slow rinse as one time still runs them one after the other. */
const parted = (
  sheet: Sheet,
  step: TimedStep,
  time: Quantity<'time'>,
): readonly (readonly [TimedStep, Quantity<'time'>])[] => {
  const draw = quantityAt(sheet, 'program.as-set.draw.really');
  if (step !== 'brine' || draw === undefined || draw.si >= time.si) return [[step, time]];
  return [
    ['draw', { kind: 'time', si: draw.si }],
    ['slow-rinse', { kind: 'time', si: time.si - draw.si }],
  ];
};

export const regenerationSteps = (sheet: Sheet, advice: ProgramAdvice): readonly TimelineStep[] =>
  advice.settings.flatMap(({ step, set }) => {
    const held = quantityAt(sheet, set);
    return isTime(held) && held.si > 0
      ? parted(sheet, step, held).map(([name, time]) => {
          const toDrain = drained(sheet, name);
          return { step: name, time, ...(toDrain === undefined ? {} : { toDrain }) };
        })
      : [];
  });

export const timelineSection = (sheet: Sheet): Markup | undefined => {
  const { program } = sheet.assessment.stages;
  const steps = program.state === 'done' ? regenerationSteps(sheet, program.value) : [];
  if (steps.length === 0) return undefined;
  return section(
    sheet.word('papers.regeneration'),
    undefined,
    pictured(sheet, 'time', (options) => timeline(steps, options)),
  );
};
