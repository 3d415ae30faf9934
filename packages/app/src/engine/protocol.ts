import type { ReaderChoice } from './speech.ts';
import type { VisitPlaceId } from './stage-props.ts';
import type { DefinitionsView } from './views/definitions-view.ts';
import type { FirstMinuteView } from './views/first-minute-view.ts';
import type { FrameView } from './views/frame-view.ts';
import type { PailRun, PailView } from './views/pail-view.ts';
import type { PaperKind, PaperView } from './views/paper-view.ts';
import type { PlacesView } from './views/places-view.ts';
import type { UnitChoicesView } from './views/unit-choices-view.ts';
import type { UnitView } from './views/unit-view.ts';
import type { WhatIf } from './views/what-if/numbers.ts';
import type { WhatIfView } from './views/what-if-view.ts';

/** What may be asked of the worker: its input, and the view that comes back. */
export type Views = {
  places: { readonly input: { readonly query: string }; readonly view: PlacesView };
  /** Sites and units for a new visit, and the complaints of a kind of unit. */
  'unit-choices': {
    readonly input: { readonly stream?: string | undefined };
    readonly view: UnitChoicesView;
  };
  /** A unit between visits. */
  unit: { readonly input: UnitInput; readonly view: UnitView };
  /** The families on this device; `family` is the one that is open. */
  definitions: { readonly input: { readonly family?: string | undefined }; readonly view: DefinitionsView };
  /** A program from numbers, without a visit. */
  'what-if': { readonly input: { readonly numbers: WhatIf }; readonly view: WhatIfView };
  frame: { readonly input: VisitInput; readonly view: FrameView };
  /** Pails timed so far; of no visit, so that it is there at once. */
  pail: { readonly input: { readonly runs: readonly PailRun[] }; readonly view: PailView };
  'first-minute': { readonly input: VisitInput; readonly view: FirstMinuteView };
  /** A paper as one file, in the language and units of whoever gets it. */
  paper: {
    readonly input: VisitInput & ReaderChoice & { readonly paper: PaperKind };
    readonly view: PaperView;
  };
  /** A stage's view is known to its own screen; the shell only hands it on. */
  stage: {
    readonly input: VisitInput & { readonly stage: VisitPlaceId; readonly part?: string | undefined };
    readonly view: never;
  };
};

export type VisitInput = { readonly stream: string; readonly visit: string };
export type UnitInput = { readonly stream: string; readonly conditioner: string };
export type ViewKind = keyof Views;

export type QuestionOf<K extends ViewKind> = {
  readonly number: number;
  readonly kind: K;
  readonly input: Views[K]['input'];
  readonly reader: ReaderChoice;
};

export type Question = { [K in ViewKind]: QuestionOf<K> }[ViewKind];

/** To the worker: a question, or that nobody waits for one any more. */
export type ToWorker =
  | { readonly type: 'open'; readonly database: string; readonly company: string }
  | { readonly type: 'ask'; readonly question: Question }
  | { readonly type: 'drop'; readonly number: number };

export type Answer<View = unknown> = {
  readonly number: number;
} & (
  | { readonly state: 'view'; readonly view: View }
  | { readonly state: 'progress'; readonly done: number; readonly of: number }
  /** The visit, or what the view needs, is not on this device. */
  | { readonly state: 'missing' }
  | { readonly state: 'settled' }
  | { readonly state: 'failed'; readonly why: string }
);
