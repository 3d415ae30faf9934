import {
  figureText,
  isFinding,
  operationName,
  type Sheet,
  stepWords,
  verdictWords,
} from '@brinewright/papers';
import type { ProgramSettings, ProofCheck } from '@brinewright/service';
import { formatQuantity } from '@brinewright/words';
import { alone, faultTitle } from '../names.ts';

/** One heading of the record, with its lines. */
export type Told = { readonly lines: readonly Line[] };
export type Line = { readonly says: string; readonly value?: string | undefined };

/** The complaint, the fault that stands out, and what the found settings did. */
export const foundLines = (sheet: Sheet): readonly Line[] => {
  const { diagnosis, program } = sheet.assessment.stages;
  const { complaint } = sheet.visit;
  const leader = diagnosis.state === 'done' ? diagnosis.value.odds[0] : undefined;
  const findings = program.state === 'done' ? program.value.notes.filter(isFinding) : [];
  return [
    ...(complaint === undefined
      ? []
      : [{ says: sheet.word('papers.complaint', { words: sheet.text(complaint.words) }) }]),
    ...(leader === undefined || leader.word === 'unlikely'
      ? []
      : [
          {
            says: faultTitle(sheet, leader),
            value: sheet.word(leader.word === 'likely' ? 'papers.odds.likely' : 'papers.odds.possible'),
          },
          ...(leader.definition === undefined ? [] : [{ says: sheet.text(leader.definition.explains) }]),
        ]),
    ...findings.map((note) => ({ says: sheet.say(note) })),
  ];
};

/** Operations done, each once, and the parts that went in. */
export const doneLines = (sheet: Sheet): readonly Line[] => {
  const operations = [...new Set((sheet.visit.done ?? []).map(({ operation }) => plainId(operation)))];
  return [
    ...operations.map((id) => ({ says: orderOf(sheet, id) })),
    ...(sheet.visit.used ?? []).map(({ part, count }) => ({
      says: partName(sheet, part),
      value: sheet.word('app.hand-over.pieces', { count }),
    })),
  ];
};

/** 'piston-out.back' is the reverse of 'piston-out'; 'piston-out#2' its second time. */
const plainId = (operation: string): string => operation.replace(/#\d+/u, '');

const orderOf = (sheet: Sheet, id: string): string => {
  if (id === 'sweep') return sheet.word('papers.sheet.sweep');
  const [operation = id, back] = id.split('.');
  const order = operationName(sheet, operation);
  return back === 'back' ? sheet.word('papers.sheet.back', { order }) : order;
};

const partName = ({ family, text }: Sheet, id: string): string => {
  const title = family?.parts.find((part) => part.id === id)?.title;
  return title === undefined ? id : text(title);
};

/** The program as it stands now, in the order of the controller. */
export const setLines = (sheet: Sheet): readonly Line[] => settingLines(sheet, sheet.visit.settings?.set);

export const settingLines = (sheet: Sheet, set: ProgramSettings | undefined): readonly Line[] =>
  settingOrder.flatMap((name) => {
    const value = set?.[name];
    return value === undefined ? [] : [{ says: settingName(sheet, name), value: settingSaid(sheet, value) }];
  });

export const settingOrder: readonly (keyof ProgramSettings)[] = [
  'backwash',
  'brine',
  'draw',
  'slow-rinse',
  'fast-rinse',
  'refill',
  'volume',
  'days',
  'at',
];

export const settingName = (sheet: Sheet, name: keyof ProgramSettings): string => {
  if (name === 'volume') return sheet.word('papers.setting.volume');
  if (name === 'days') return sheet.word('papers.setting.days');
  return name === 'at' ? sheet.word('app.program.start') : sheet.word(stepWords[name]);
};

const settingSaid = (sheet: Sheet, value: NonNullable<ProgramSettings[keyof ProgramSettings]>): string => {
  if (typeof value === 'string') return value;
  return formatQuantity(
    typeof value === 'number' ? { kind: 'time', si: value * 86_400 } : value,
    sheet.reader,
  ).text;
};

/** A check with its verdict; the sign and the word say the same. */
export type ProvedLine = {
  readonly title: string;
  readonly read?: string | undefined;
  readonly verdict: ProofCheck['verdict'];
  readonly word: string;
  readonly decide?: string | undefined;
};

export const provedLines = (sheet: Sheet): readonly ProvedLine[] => {
  const { proof } = sheet.assessment.stages;
  return proof.state === 'done' ? proof.value.checks.map((check) => provedLine(sheet, check)) : [];
};

const provedLine = (sheet: Sheet, { title, reading, verdict, decide }: ProofCheck): ProvedLine => ({
  title: alone(sheet.say(title)),
  read: reading === undefined ? undefined : figureText(sheet, reading),
  verdict,
  word: sheet.word(verdictWords[verdict]),
  decide: decide === undefined ? undefined : sheet.say(decide),
});
