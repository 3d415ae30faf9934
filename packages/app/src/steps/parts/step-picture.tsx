import type { StepView } from '../../engine/views/work/work-types.ts';
import { Drawing, useWide } from '../../ui/index.ts';
import type { Counts } from '../commands/done.ts';
import { movedOf } from './counting.ts';
import { stackPicture } from './stack-picture.ts';

/** The drawing of a step: the stack as far as it is counted, or what the view has of it. */
export const StepPicture = ({ step, counts }: { readonly step: StepView; readonly counts: Counts }) => {
  const isWide = useWide();
  const { stack, picture } = step;
  if (stack !== undefined) {
    const drawn = stackPicture(isWide ? stack.wide : stack.narrow, movedOf(stack.order, counts));
    return <Drawing svg={drawn.svg} twin={drawn.twin} />;
  }
  const shown = isWide ? picture?.wide : picture?.narrow;
  return shown === undefined ? null : <Drawing svg={shown.svg} twin={shown.twin} />;
};
