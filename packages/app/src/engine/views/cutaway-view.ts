import { type BoreHarm, boreOf, type FittedBore, type Stop, stops } from '@brinewright/equipment';
import {
  type BrineStep,
  boreDrawing,
  cutaway,
  leakPast,
  likeliest,
  type Sheet,
  stepWords,
  stopThatShows,
  stopWords,
  tornSeal,
} from '@brinewright/papers';
import type { DrawingView } from '../../ui/parts/drawing.tsx';
import type { Made } from '../made.ts';
import { type CutChoice, type CutStop, cutChoiceOf, cutStops } from './cutaway/address.ts';
import { type PistonChoice, pistonChoices } from './cutaway/pistons.ts';
import { type StepFact, stepFacts, stepTimelines } from './cutaway/step-facts.ts';
import { drawnAt, sheetOf } from './figure-view.ts';
import { alone } from './names.ts';

export type CutawayView = {
  readonly state: 'drawn';
  readonly title: string;
  /** Which build is drawn, and that it is the likeliest of several. */
  readonly build: string;
  readonly isSettled: boolean;
  readonly stop: CutStop;
  readonly torn?: number | undefined;
  readonly stops: readonly { readonly id: CutStop; readonly name: string }[];
  readonly next: { readonly id: CutStop; readonly name: string };
  /** The same at several widths, the narrowest first: the one that fits is shown, and its words are never scaled. */
  readonly drawings: readonly { readonly width: number; readonly svg: string }[];
  readonly twin: readonly string[];
  /** What passes and what leaks, in sentences, without the name of the stop. */
  readonly says: readonly string[];
  readonly seals: readonly SealChoice[];
  readonly pistons: readonly PistonChoice[];
  readonly isSchematic: boolean;
  /** How long the step takes, what flows and how much, as programmed. */
  readonly facts: readonly StepFact[];
  readonly timeline?: ReturnType<typeof stepTimelines>;
};

/** A seal to tear: what its tear does at this stop, and where it shows first. */
export type SealChoice = {
  readonly number: number;
  readonly isTorn: boolean;
  readonly leaksHere: boolean;
  readonly showsAt: string | undefined;
  /** Diagnosis holds it for torn. */
  readonly isSuspected: boolean;
};

/** No bore: the family is not described, or its definition names none. */
export type NoCutaway = { readonly state: 'none'; readonly why: string };

/** The valve cut open along its bore, at any stop, sound or harmed. */
export const cutawayView = (made: Made, part?: string): CutawayView | NoCutaway =>
  cutOf(made, cutChoiceOf(part));

const cutOf = (made: Made, choice: CutChoice): CutawayView | NoCutaway => {
  const sheet = sheetOf(made);
  const variant = likeliest(sheet);
  const bore = made.family === undefined || variant === undefined ? undefined : boreOf(made.family, variant);
  if (made.family === undefined || bore === undefined) return { state: 'none', why: whyNone(sheet) };
  const suspected = tornSeal(sheet);
  const seals = bore.lengths.lengths.seals.map(({ id }) => id);
  const torn = seals.find((seal) => seal === choice.torn);
  const stop = choice.stop ?? (torn === undefined ? 'service' : stopThatShows(bore, torn));
  const pistons = pistonChoices(sheet, made.family, bore, choice.piston);
  const harm = pistons.find(({ isFitted }) => isFitted)?.harm ?? {};
  const drawings = widths.map((width) => ({ width, ...drawn(sheet, bore, { stop, torn, harm, width }) }));
  const twin = drawings[0]?.twin ?? [];
  return {
    state: 'drawn',
    title: nameOf(sheet, stop),
    ...buildOf(sheet),
    stop,
    torn,
    stops: cutStops.map((id) => ({ id, name: nameOf(sheet, id) })),
    next: nextOf(sheet, stop),
    drawings: drawings.map(({ width, svg }) => ({ width, svg })),
    twin,
    says: twin.slice(1),
    seals: seals.map((seal) => sealChoice(sheet, bore, { seal, stop, torn, harm, suspected })),
    pistons: pistons.map(({ harm: _, ...shown }) => shown),
    isSchematic: bore.lengths.schematic,
    facts: stepFacts(sheet, stop),
    timeline: stepTimelines(sheet, stop, widths),
  };
};

/** Small phones, phones, columns, wide sheets. */
const widths = [296, 356, 620, 900] as const;

const whyNone = (sheet: Sheet): string =>
  sheet.word(sheet.family === undefined ? 'app.cutaway.no-family' : 'app.cutaway.no-bore');

type Harm = Pick<BoreHarm, 'piston' | 'sleeve'>;
type Standing = { readonly stop: CutStop; readonly torn: number | undefined; readonly harm: Harm };

const standsAt = (stop: CutStop): { readonly at: Stop; readonly step: BrineStep } =>
  stop === 'slow-rinse' ? { at: 'brine', step: 'slow-rinse' } : { at: stop, step: 'draw' };

const drawn = (
  sheet: Sheet,
  bore: FittedBore,
  { stop, torn, harm, width }: Standing & { readonly width: number },
): DrawingView => {
  const { at, step } = standsAt(stop);
  return drawnAt(sheet, `cut-${width}`, width, (options) =>
    cutaway(boreDrawing(bore, at, harm), { ...options, step, ...(torn === undefined ? {} : { torn }) }),
  );
};

const nameOf = (sheet: Sheet, stop: CutStop): string => {
  if (stop === 'slow-rinse') return sheet.word(stepWords['slow-rinse']);
  return stop === 'brine' ? sheet.word(stepWords.draw) : alone(sheet.word(stopWords[stop]));
};

const nextOf = (sheet: Sheet, stop: CutStop): CutawayView['next'] => {
  const id = cutStops[(cutStops.indexOf(stop) + 1) % cutStops.length] ?? 'service';
  return { id, name: nameOf(sheet, id) };
};

const sealChoice = (
  sheet: Sheet,
  bore: FittedBore,
  {
    seal,
    stop,
    torn,
    harm,
    suspected,
  }: Standing & { readonly seal: number; readonly suspected: number | undefined },
): SealChoice => {
  const { at, step } = standsAt(stop);
  const shows = stops.find((one) => leakPast(boreDrawing(bore, one, harm), seal, 'draw') !== undefined);
  return {
    number: seal,
    isTorn: seal === torn,
    leaksHere: leakPast(boreDrawing(bore, at, harm), seal, step) !== undefined,
    showsAt: shows === undefined ? undefined : nameOf(sheet, shows),
    isSuspected: seal === suspected,
  };
};

/** 'Osier, slim, raw-pass': the features that decide how the bore is joined, by their words. */
const buildOf = (sheet: Sheet): Pick<CutawayView, 'build' | 'isSettled'> => {
  const { recognition } = sheet.assessment.stages;
  const family = sheet.family === undefined ? '' : sheet.text(sheet.family.title);
  if (recognition.state !== 'done') return { build: family, isSettled: false };
  const features = recognition.value.features;
  const names = features.flatMap(({ feature, settled }) => valueSaid(sheet, feature, settled));
  return {
    build: [family, ...names].join(', '),
    isSettled: features.every(({ settled }) => settled !== undefined),
  };
};

const valueSaid = (sheet: Sheet, feature: string, value: string | undefined): readonly string[] => {
  const values = sheet.family?.features.find(({ id }) => id === feature)?.values;
  const title = values?.find(({ id }) => id === value)?.title;
  return title === undefined ? [] : [sheet.text(title)];
};
