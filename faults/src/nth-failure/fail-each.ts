import type { NthFailure, serverOn } from '@brinewright/server/testing';
import { ask, isClearError } from './answers.ts';
import type { Step } from './steps.ts';

export type Tried = {
  /** How many calls there were to fail: each failed once. */
  readonly calls: number;
  readonly faults: readonly string[];
};

const mostCalls = 500;

/**
 * Lets the first call of a step fail, then the second of another, and so on until a step makes no more calls. After
 * each: a clear error, nothing half done, and the same request succeeds.
 */
export const failEach = async (
  server: Awaited<ReturnType<typeof serverOn>>,
  nth: NthFailure,
  newStep: () => Promise<Step> | Step,
  title: string,
): Promise<Tried> => {
  const faults: string[] = [];
  for (let n = 1; n <= mostCalls; n += 1) {
    const step = await newStep();
    nth.arm(n);
    const answer = await ask(server, step.request);
    const { hasFailed } = nth;
    nth.arm();
    const complain = (what: string): void => void faults.push(`${title}, call ${n}: ${what}`);
    if (!step.isRight(answer) && !isClearError(answer)) complain(`no clear error: ${answer.status}`);
    const seen = step.seen(await ask(server, step.look));
    if (seen === 'half') complain('half a state was left');
    if (step.isRight(answer) && seen !== 'all') complain('it was called done and is not there');
    const again = await ask(server, step.request);
    if (!step.isRight(again)) complain(`the same request again: ${again.status}`);
    if (step.seen(await ask(server, step.look)) !== 'all') complain('not there after the same request again');
    if (!hasFailed) return { calls: n - 1, faults };
  }
  throw new RangeError(`${title}: more than ${mostCalls} calls`);
};
