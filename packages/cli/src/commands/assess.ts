import { resolve } from 'node:path';
import type { Equipment } from '@brinewright/equipment';
import { report } from '@brinewright/papers';
import { sources } from '@brinewright/physics';
import { type Assessment, assess, type Effort, type Visit } from '@brinewright/service';
import { message, type Reader } from '@brinewright/words';
import { type Call, complain, misused, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { assessmentJson } from '../json/assessment-json.ts';
import { assessmentText, type ShownStage, stageText } from '../report/assessment-text.ts';
import { type View, viewOf } from '../view.ts';
import { fontUri } from './font.ts';
import { isSystemError, readEquipment, readVisit } from './reading.ts';
import { whyCommand } from './why.ts';

export const assessCommand = (call: Call): number =>
  assessed(call, (made) => {
    const file = optionValue(call.given, 'html');
    if (file !== undefined && !writeReport(call, file, made)) return exit.faulty;
    if (call.json) printJson(call, assessmentJson(made.view));
    else if (file === undefined) print(call, assessmentText(made.view));
    else complain(call, message('cli.html-written', { file }));
    return verdict(call, made.view.assessment);
  });

export const stageCommand = (call: Call, stage: ShownStage): number =>
  assessed(call, ({ view }) => {
    if (call.json) printJson(call, assessmentJson(view, stage));
    else print(call, stageText(view, stage));
    return verdict(call, view.assessment);
  });

export type Made = { readonly view: View; readonly visit: Visit; readonly equipment: Equipment };

/** Reads, assesses and shows; nothing is shown of a visit that cannot be read at all. */
const assessed = (call: Call, show: (made: Made) => number): number => {
  const [path = ''] = call.args;
  const now = instant(call);
  if (now === undefined)
    return misused(call, message('cli.now', { value: optionValue(call.given, 'now') ?? '' }));
  const equipment = readEquipment(call);
  const read = equipment === undefined ? undefined : readVisit(call, path);
  if (equipment === undefined || read === undefined) return exit.faulty;
  const { visit, placeOf, issues } = read;
  const assessment = assess(visit, equipment, { now, effort: effortOf(call) });
  const view = viewOf({ visit, assessment, equipment, placeOf, issues, reader: call.speech.reader });
  const figure = optionValue(call.given, 'why');
  const code = figure === undefined ? show({ view, visit, equipment }) : whyCommand(call, view, figure);
  return code === exit.fine && issues.length > 0 ? exit.faulty : code;
};

/** The moment of the assessment: as given, else the clock of the caller. */
export const instant = ({ io, given }: Call): string | undefined => {
  const text = optionValue(given, 'now');
  if (text === undefined) return io.now();
  const time = Date.parse(text);
  return Number.isNaN(time) ? undefined : new Date(time).toISOString();
};

export const effortOf = ({ given }: Call): Effort =>
  optionValue(given, 'effort') === 'quick' ? 'quick' : 'full';

/** Assessing worked unless nobody knows what unit is meant; --strict also asks the proof. */
const verdict = ({ given }: Call, { stages }: Assessment): number => {
  if (stages.situation.state === 'blocked') return exit.faulty;
  const failed =
    stages.proof.state === 'done' && stages.proof.value.checks.some((check) => check.verdict === 'fail');
  return given.flags.has('strict') && failed ? exit.faulty : exit.fine;
};

const writeReport = (call: Call, file: string, { visit, view, equipment }: Made): boolean => {
  const { language, system }: Reader = call.speech.reader;
  const font = fontUri(call.io);
  const html = report(visit, view.assessment, {
    language,
    system,
    equipment,
    sources,
    ...(font === undefined ? {} : { fontUri: font }),
  });
  try {
    call.io.writeText(resolve(call.io.cwd, file), html);
    return true;
  } catch (error) {
    if (!isSystemError(error)) throw error;
    complain(call, message('cli.not-written', { file }));
    return false;
  }
};
