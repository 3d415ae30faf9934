import { type ComponentType, lazy } from 'react';
import { besideIds, type StageProps, stageIds, type VisitPlaceId } from '../engine/stage-props.ts';

/** A view comes from the worker for this very screen; nothing in between looks into it. */
export type Screen = ComponentType<StageProps<never>>;

/** The places of a visit, each loaded when it is first gone to. */
export const screens: Readonly<Record<VisitPlaceId, Screen>> = {
  recognise: lazy(async () => ({
    default: (await import('../features/recognise/screens/recognise-screen.tsx')).RecogniseScreen,
  })),
  find: lazy(async () => ({
    default: (await import('../features/find/screens/find-screen.tsx')).FindScreen,
  })),
  repair: lazy(async () => ({
    default: (await import('../features/repair/screens/repair-screen.tsx')).RepairScreen,
  })),
  work: lazy(async () => ({
    default: (await import('../features/work/screens/work-screen.tsx')).WorkScreen,
  })),
  program: lazy(async () => ({
    default: (await import('../features/program/screens/program-screen.tsx')).ProgramScreen,
  })),
  prove: lazy(async () => ({
    default: (await import('../features/prove/screens/prove-screen.tsx')).ProveScreen,
  })),
  'hand-over': lazy(async () => ({
    default: (await import('../features/hand-over/screens/hand-over-screen.tsx')).HandOverScreen,
  })),
  'leave-safe': lazy(async () => ({
    default: (await import('../features/leave-safe/screens/leave-safe-screen.tsx')).LeaveSafeScreen,
  })),
  cutaway: lazy(async () => ({
    default: (await import('../features/cutaway/screens/cutaway-screen.tsx')).CutawayScreen,
  })),
};

export const isPlaceId = (text: string): text is VisitPlaceId =>
  [...stageIds, ...besideIds].some((id) => id === text);
