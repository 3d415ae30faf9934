import { customerNotes, dated, type Sheet } from '@brinewright/papers';
import { formatText } from '@brinewright/words';
import type { Made } from '../made.ts';
import { clockTime, dayHere } from './days.ts';
import { sheetOf } from './figure-view.ts';
import {
  doneLines,
  foundLines,
  type Line,
  type ProvedLine,
  provedLines,
  setLines,
} from './hand-over/done.ts';
import { gapsOf, type OpenLine, openLines } from './hand-over/open.ts';
import { type RemarksView, remarksView } from './hand-over/remarks.ts';
import { type KeptFigure, keptFigures, type Shown, shownNow } from './hand-over/shown.ts';

/** The visit at its end: what it came to, what is open, and how it goes out of hand. */
export type HandOverView = {
  readonly found: readonly Line[];
  readonly done: readonly Line[];
  readonly set: readonly Line[];
  readonly proved: readonly ProvedLine[];
  readonly open: readonly OpenLine[];
  readonly gaps: readonly string[];
  /** What the customer is told in any case. */
  readonly notes: readonly string[];
  readonly remarks: RemarksView;
  readonly shown: Shown;
  readonly signatures: readonly { readonly name: string; readonly at?: string | undefined }[];
  readonly handed?: HandedView | undefined;
};

/** A visit that was handed over keeps its figures. */
export type HandedView = {
  readonly when: string;
  readonly by: string;
  readonly to?: string | undefined;
  readonly said?: string | undefined;
  readonly made?: string | undefined;
  readonly figures: readonly KeptFigure[];
  /** A newer program, or other definitions, see it otherwise. */
  readonly isOtherNow: boolean;
};

export const handOverView = (made: Made): HandOverView => {
  const sheet = sheetOf(made);
  return {
    found: foundLines(sheet),
    done: doneLines(sheet),
    set: setLines(sheet),
    proved: provedLines(sheet),
    open: openLines(sheet),
    gaps: gapsOf(sheet),
    notes: customerNotes(sheet).map((key) => sheet.word(key)),
    remarks: remarksView(sheet, made),
    shown: shownNow(sheet),
    signatures: (made.visit.signatures ?? []).map(({ name, at }) => ({
      name,
      at: at === undefined ? undefined : clockTime(at),
    })),
    handed: handedView(sheet, made),
  };
};

const handedView = (sheet: Sheet, { folded, visit }: Made): HandedView | undefined => {
  const { handedOver } = folded;
  if (handedOver === undefined) return undefined;
  const { shown } = handedOver;
  const figures = shown === undefined ? [] : keptFigures(sheet, shown);
  const { to, said, at = handedOver.at } = visit.handOver ?? {};
  return {
    when: `${dated(sheet, dayHere(at))}, ${clockTime(at)}`,
    by: handedOver.author,
    to,
    said: said === undefined ? undefined : formatText(said, sheet.reader.language),
    made:
      shown === undefined
        ? undefined
        : sheet.word('app.hand-over.made-with', { engine: shown.engine.replace('/', ' ') }),
    figures,
    isOtherNow: figures.some(({ now }) => now !== undefined),
  };
};
