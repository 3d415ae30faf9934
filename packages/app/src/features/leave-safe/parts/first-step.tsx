import type { StageProps } from '../../../engine/stage-props.ts';
import type { StepView } from '../../../engine/views/work/work-types.ts';
import { StepCautions } from '../../../steps/parts/cautions.tsx';
import { Counters } from '../../../steps/parts/counters.tsx';
import { MainAction } from '../../../steps/parts/main-action.tsx';
import { StepHow } from '../../../steps/parts/step-how.tsx';
import { StepPicture } from '../../../steps/parts/step-picture.tsx';
import { useStepInHand } from '../../../steps/parts/use-step-in-hand.ts';
import { InHand } from '../../../ui/index.ts';

type Props = Pick<StageProps<unknown>, 'about' | 'record' | 'isStale'> & {
  readonly step: StepView;
  readonly tag: string;
};

/** The step that comes first, with its cautions and counts, to be marked done here. */
export const FirstStep = ({ step, tag, ...props }: Props) => {
  const hand = useStepInHand(props, step, () => undefined);
  return (
    <InHand tag={tag}>
      <h2>{step.order}</h2>
      {step.tools === '' ? null : <p className="note">{step.tools}</p>}
      <StepCautions cautions={step.cautions} />
      <StepPicture step={step} counts={hand.counts} />
      <Counters hand={hand} />
      <StepHow step={step} />
      <div className="buttons">
        <MainAction hand={hand} onGo={() => undefined} />
      </div>
    </InHand>
  );
};
