import type { StageName } from '@brinewright/service';
import type { Issue } from '@brinewright/words';
import type { View } from '../view.ts';

/** The parts of the visit that each stage stands on. */
const standsOn: Readonly<Record<StageName, readonly string[]>> = {
  situation: [],
  recognition: ['conditioners', 'answers'],
  diagnosis: ['conditioners', 'complaint', 'history', 'answers', 'readings', 'supply', 'decided'],
  repair: ['conditioners', 'answers', 'readings', 'decided'],
  plan: ['conditioners', 'answers', 'readings', 'done', 'decided'],
  program: ['conditioners', 'readings', 'supply', 'water', 'settings', 'decided'],
  proof: ['conditioners', 'readings', 'supply', 'water', 'proofs'],
};

/** Answers that recognition could not use. */
const notUsed = new Set(['unknown-answer', 'no-such-size', 'unknown-feature-value', 'quantity']);

/** What is odd or not used in those parts; the whole assessment says it where it is met. */
export const issuesBefore = ({ assessment }: View, stage: StageName): readonly Issue[] => {
  const { situation, recognition } = assessment.stages;
  const unheard = stage === 'recognition' ? [] : recognition.issues.filter(({ code }) => notUsed.has(code));
  return [...situation.issues, ...unheard].filter(({ at: [part] }) =>
    standsOn[stage].some((one) => one === part),
  );
};
