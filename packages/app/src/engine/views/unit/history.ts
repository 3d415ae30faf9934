import { type HistoryLine, historyOf } from '@brinewright/journal';
import { dated, type Sheet } from '@brinewright/papers';
import type { Made } from '../../made.ts';
import { type Line, settingLines } from '../hand-over/done.ts';

/** One visit to the unit, as the next technician wants to see it. */
export type HistoryView = {
  readonly visit: string;
  readonly title: string;
  readonly complaint?: string | undefined;
  readonly parts: readonly string[];
  readonly set: readonly Line[];
  readonly isHandedOver: boolean;
};

export const historyViews = (sheet: Sheet, { site, subject }: Made): readonly HistoryView[] =>
  historyOf(site, subject.id).map((line) => historyView(sheet, line));

const historyView = (sheet: Sheet, line: HistoryLine): HistoryView => ({
  visit: line.visit,
  title: `${dated(sheet, line.date)}, ${line.by}`,
  complaint: line.complaint === undefined ? undefined : sheet.text(line.complaint.words),
  parts: line.used.map(({ part, count }) =>
    sheet.word('app.unit.part', { part: partName(sheet, part), count }),
  ),
  set: settingLines(sheet, line.set),
  isHandedOver: line.isHandedOver,
});

const partName = ({ family, text }: Sheet, id: string): string => {
  const title = family?.parts.find((part) => part.id === id)?.title;
  return title === undefined ? id : text(title);
};
