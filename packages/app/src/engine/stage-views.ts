import type { Made } from './made.ts';
import type { VisitPlaceId } from './stage-props.ts';
import { cutawayView } from './views/cutaway-view.ts';
import { findView } from './views/find-view.ts';
import { handOverView } from './views/hand-over-view.ts';
import { leaveSafeView } from './views/leave-safe-view.ts';
import { programView } from './views/program-view.ts';
import { proveView } from './views/prove-view.ts';
import { recogniseView } from './views/recognise-view.ts';
import { repairView } from './views/repair-view.ts';
import { workView } from './views/work-view.ts';

type StageView = (made: Made, part?: string) => unknown;

/** What each place of a visit shows; the part is what its address names. */
export const stageViews: Readonly<Record<VisitPlaceId, StageView>> = {
  recognise: recogniseView,
  find: findView,
  repair: repairView,
  work: workView,
  program: programView,
  prove: proveView,
  'hand-over': handOverView,
  'leave-safe': leaveSafeView,
  cutaway: cutawayView,
};
