import { type Assessment, assess, type Effort } from '@brinewright/service';
import { message } from '@brinewright/words';
import { type Call, misused, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { assessmentJson } from '../json/assessment-json.ts';
import { assessmentText, type ShownStage, stageText } from '../report/assessment-text.ts';
import { viewOf } from '../view.ts';
import { paperOnto } from './paper-onto.ts';
import { type Made, writePapers } from './papers.ts';
import { readEquipment, readVisit } from './reading.ts';
import { whyCommand } from './why.ts';

export const assessCommand = (call: Call): number => {
  const onto = paperOnto(call);
  return onto === undefined ? assessAndWrite(call) : misused(call, onto, message('cli.onto-mend'));
};

const assessAndWrite = (call: Call): number =>
  assessed(call, (made) => {
    const written = writePapers(call, made);
    if (written === 'failed') return exit.faulty;
    if (call.json) printJson(call, assessmentJson(made.view));
    else if (written === 'none-asked') print(call, assessmentText(made.view));
    return verdict(call, made.view.assessment);
  });

export const stageCommand = (call: Call, stage: ShownStage): number =>
  assessed(call, ({ view }) => {
    if (call.json) printJson(call, assessmentJson(view, stage));
    else print(call, stageText(view, stage));
    return verdict(call, view.assessment);
  });

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
