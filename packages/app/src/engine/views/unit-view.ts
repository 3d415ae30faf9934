import { undescribed } from '@brinewright/equipment';
import { dated, featureName, type Sheet, valueName } from '@brinewright/papers';
import type { Made } from '../made.ts';
import { sheetOf } from './figure-view.ts';
import { type Line, setLines } from './hand-over/done.ts';
import { openLines } from './hand-over/open.ts';
import { percentName } from './names.ts';
import { unitName } from './places-view.ts';
import { shortCode } from './short-code.ts';
import { type HistoryView, historyViews } from './unit/history.ts';
import { siteFacts } from './unit/site-facts.ts';
import { type FactGroup, unitFacts } from './unit/unit-facts.ts';
import { writtenOf } from './unit/written.ts';
import { searchOf } from './what-if/numbers.ts';
import { numbersOf } from './what-if-view.ts';

/** A unit between visits: what is fitted and how sure, water, program as set, history, what is due. */
export type UnitView = {
  readonly site: string;
  readonly unit: string;
  readonly code: string;
  readonly family: string;
  /** Of the visit looked at; nothing where the unit was never visited. */
  readonly visit?: string | undefined;
  readonly build: readonly BuildRow[];
  readonly groups: readonly FactGroup[];
  readonly set: readonly Line[];
  readonly history: readonly HistoryView[];
  readonly due: readonly string[];
  /** The numbers of this unit as a what-if link holds them. */
  readonly whatIf: string;
  readonly gaps: readonly string[];
};

/** A feature of the build: the value that leads, and how sure that is. */
export type BuildRow = { readonly name: string; readonly value: string; readonly sure: string };

export const unitView = (made: Made): UnitView => {
  const sheet = sheetOf(made);
  const written = writtenOf(made);
  const groups = [...unitFacts(sheet, made, written), ...siteFacts(sheet, made, written)];
  return {
    site: made.visit.site.name,
    unit: unitName(made.subject, made.speech),
    code: shortCode(made.stream, made.subject.id),
    family: familyName(sheet, made),
    visit: made.site.visits.some(({ id }) => id === made.visit.id) ? made.visit.id : undefined,
    build: buildRows(sheet),
    groups: groups.filter(({ facts }) => facts.length > 0),
    set: setLines(sheet),
    history: historyViews(sheet, made),
    due: dueOf(sheet, made),
    whatIf: searchOf(numbersOf(made.visit)),
    gaps: gapsOf(sheet),
  };
};

/** What the settings still need, and how it is found. */
const gapsOf = (sheet: Sheet): readonly string[] => [
  ...new Set(
    sheet.assessment.stages.situation.gaps
      .filter(({ settles }) => settles.includes('program'))
      .map(({ message }) => sheet.say(message)),
  ),
];

const familyName = (sheet: Sheet, { family, subject }: Made): string => {
  if (family === undefined) return sheet.word('app.unit.not-here', { family: subject.family });
  return family.id === undescribed ? sheet.word('app.unit.undescribed') : sheet.text(family.title);
};

const buildRows = (sheet: Sheet): readonly BuildRow[] => {
  const { recognition } = sheet.assessment.stages;
  if (recognition.state !== 'done') return [];
  return recognition.value.features.flatMap(({ feature, odds }) => {
    const leader = odds.toSorted((a, b) => b.p - a.p)[0];
    return leader === undefined
      ? []
      : [
          {
            name: featureName(sheet, feature),
            value: valueName(sheet, feature, leader.value),
            sure: percentName(sheet, leader.p),
          },
        ];
  });
};

/** A visit left open, an analysis older than a year, a bed exhausted when it was last seen. */
const dueOf = (sheet: Sheet, { folded, visit, now }: Made): readonly string[] => {
  const isOpen = folded.handedOver === undefined && folded.entries > 0;
  const raw = (visit.water ?? []).filter(({ of }) => of === 'raw');
  const newest = raw
    .map(({ date }) => date ?? '')
    .toSorted()
    .at(-1);
  const isOld = newest !== undefined && newest !== '' && Date.parse(now) - Date.parse(newest) > year;
  return [
    ...(isOpen ? [sheet.word('app.unit.due.visit')] : []),
    ...(folded.entries > 0 ? openLines(sheet).map(({ says }) => says) : []),
    ...(isOld ? [sheet.word('app.unit.due.water', { date: dated(sheet, newest) })] : []),
  ];
};

const year = 366 * 86_400_000;
