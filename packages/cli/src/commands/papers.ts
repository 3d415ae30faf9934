import { resolve } from 'node:path';
import type { Equipment } from '@brinewright/equipment';
import { leaveSafeCard, type PaperOptions, report, workSheet } from '@brinewright/papers';
import { sources } from '@brinewright/physics';
import type { Assessment, Visit } from '@brinewright/service';
import { message } from '@brinewright/words';
import { type Call, complain } from '../call.ts';
import { type OptionName, optionValue } from '../command-line/options.ts';
import type { View } from '../view.ts';
import { fontUri } from './font.ts';
import { isSystemError } from './reading.ts';

type Paper = (visit: Visit, assessment: Assessment, options: PaperOptions) => string;

const papers = [
  { option: 'html', written: 'cli.written.html', paper: report },
  { option: 'sheet', written: 'cli.written.sheet', paper: workSheet },
  { option: 'card', written: 'cli.written.card', paper: leaveSafeCard },
] as const satisfies readonly {
  readonly option: OptionName;
  readonly paper: Paper;
  readonly written: string;
}[];

export type Made = { readonly view: View; readonly visit: Visit; readonly equipment: Equipment };

/** How the papers asked for were written; with none asked for, the text is what is wanted. */
export type Written = 'none-asked' | 'all' | 'failed';

export const writePapers = (call: Call, made: Made): Written => {
  const asked = papersAsked(call);
  if (asked.length === 0) return 'none-asked';
  const options = paperOptions(call, made);
  for (const { file, paper, written } of asked) {
    if (!write(call, file, paper(made.visit, made.view.assessment, options))) return 'failed';
    complain(call, message(written, { file }));
  }
  return 'all';
};

export const papersAsked = ({ given }: Call) =>
  papers.flatMap((one) => {
    const file = optionValue(given, one.option);
    return file === undefined ? [] : [{ ...one, file }];
  });

const paperOptions = (call: Call, { equipment }: Made): PaperOptions => {
  const { language, system } = call.speech.reader;
  const font = fontUri(call.io);
  return { language, system, equipment, sources, ...(font === undefined ? {} : { fontUri: font }) };
};

const write = (call: Call, file: string, text: string): boolean => {
  try {
    call.io.writeText(resolve(call.io.cwd, file), text);
    return true;
  } catch (error) {
    if (!isSystemError(error)) throw error;
    complain(call, message('cli.not-written', { file }));
    return false;
  }
};
