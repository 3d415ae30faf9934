import { analyseIons, type IonReport } from '@brinewright/physics';
import { findUnit, inUnit, type Quantity, quantity, shownUnit } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import { type Call, complain, misused, print, printJson } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { hanging, stacked } from '../text/lines.ts';
import { table } from '../text/table.ts';
import type { Speech } from '../view.ts';
import { readWaters, type WaterRow, type Waters } from '../water/read-waters.ts';
import { readFile } from './reading.ts';

/** Every water of a file held against itself: hardness, charge balance, conductivity. */
export const labWater = (call: Call): number => {
  const [file = ''] = call.args;
  const unit = optionValue(call.given, 'unit');
  if (unit !== undefined && !isIonUnit(unit)) return misused(call, message('cli.water.unit', { unit }));
  const text = readFile(call, file);
  if (text === undefined) return exit.faulty;
  const waters = readWaters(text, unit);
  if (waters === undefined || waters.columns.length === 0) {
    complain(call, message('cli.water.no-columns', { file }), message('cli.water.no-columns-mend'));
    return exit.faulty;
  }
  const rows = waters.rows.map(judged);
  const notes = notesOn(waters);
  if (call.json)
    printJson(call, {
      file,
      notes: notes.map(call.speech.say),
      rows: rows.map((row) => rowJson(call.speech, row)),
    });
  else print(call, waterText(call.speech, notes, rows));
  return exit.fine;
};

const isIonUnit = (unit: string): boolean =>
  findUnit('concentration', unit) !== undefined || findUnit('equivalent-concentration', unit) !== undefined;

type Verdict = IonReport['verdict'] | 'not-judged';
type Judged = {
  readonly water: WaterRow;
  readonly report: IonReport | undefined;
  readonly verdict: Verdict;
  readonly doubts: IonReport['doubts'];
};

/** Charges say nothing while a main ion was not measured; hardness can still be compared. */
const judged = (water: WaterRow): Judged => {
  if (Object.keys(water.ions).length === 0)
    return { water, report: undefined, verdict: 'not-judged', doubts: [] };
  const report = analyseIons(water.ions, water.laboratory);
  if (report.missing.length === 0) return { water, report, verdict: report.verdict, doubts: report.doubts };
  const doubts = report.doubts.filter(({ about }) => about === 'hardness');
  return { water, report, verdict: doubts.length > 0 ? 'questionable' : 'not-judged', doubts };
};

/** What was taken for granted, and what could not be read. */
const notesOn = ({ columns, rows }: Waters): readonly Message[] => {
  const byUnit = Map.groupBy(
    columns.filter(({ assumed }) => assumed !== undefined),
    ({ assumed }) => assumed ?? '',
  );
  const assumed = [...byUnit].map(([unit, of]) =>
    message('cli.water.assumed', { unit, columns: of.map(({ header }) => header).join(', ') }),
  );
  const unread = rows.flatMap(({ row, unread: cells }) =>
    cells.map(({ header, text }) => message('cli.water.unread', { row, header, text })),
  );
  return [...assumed, ...unread];
};

const waterText = (speech: Speech, notes: readonly Message[], rows: readonly Judged[]): string[] =>
  stacked(
    notes.flatMap((note) => hanging('', speech.say(note))),
    table(
      [
        { title: speech.word('cli.water.row') },
        { title: speech.word('cli.water.hardness'), align: 'right' },
        { title: speech.word('cli.water.balance'), align: 'right' },
        { title: speech.word('cli.water.conductivity'), align: 'right' },
        { title: speech.word('cli.water.measured'), align: 'right' },
        { title: speech.word('cli.water.verdict') },
      ],
      rows.map((row) => ({ cells: cellsOf(speech, row) })),
    ),
    hanging('', speech.word('cli.water.limits')),
  );

const cellsOf = (speech: Speech, { water, report, verdict, doubts }: Judged): string[] => {
  const name = water.id === '' ? String(water.row) : water.id;
  if (report === undefined) return [name, '–', '–', '–', '–', speech.word('cli.water.no-ions')];
  const { conductivity } = water.laboratory;
  return [
    name,
    speech.quantity(quantity('hardness', report.hardness)),
    speech.quantity(quantity('share', Math.round(report.chargeBalance * 1e4) / 1e4)),
    speech.quantity(quantity('conductivity', report.conductivity)),
    conductivity === undefined ? '–' : speech.quantity(quantity('conductivity', conductivity)),
    verdictText(speech, report, verdict, doubts),
  ];
};

const verdictText = (
  speech: Speech,
  { missing }: IonReport,
  verdict: Verdict,
  doubts: Judged['doubts'],
): string => {
  const word = speech.word(`cli.water.verdict.${verdict}`);
  const because = doubts.map(({ about }) => speech.word(`cli.water.doubt.${about}`));
  if (verdict === 'not-judged')
    because.push(
      speech.word('cli.water.missing', {
        ions: missing.map((ion) => speech.word(`symbol.${ion}`)).join(', '),
      }),
    );
  return because.length === 0 ? word : `${word}: ${because.join(', ')}`;
};

const rowJson = (speech: Speech, { water, report, verdict, doubts }: Judged): object => {
  const { row, id, laboratory } = water;
  if (report === undefined) return { row, id, verdict };
  const { conductivity, hardness } = laboratory;
  return {
    row,
    id,
    hardness: valueJson(speech, quantity('hardness', report.hardness)),
    ...(hardness === undefined
      ? {}
      : { hardnessReported: valueJson(speech, quantity('hardness', hardness)) }),
    ...(report.hardnessDifference === undefined ? {} : { hardnessDifference: report.hardnessDifference }),
    chargeBalance: report.chargeBalance,
    conductivity: valueJson(speech, quantity('conductivity', report.conductivity)),
    ...(conductivity === undefined
      ? {}
      : { conductivityMeasured: valueJson(speech, quantity('conductivity', conductivity)) }),
    ...(report.conductivityDifference === undefined
      ? {}
      : { conductivityDifference: report.conductivityDifference }),
    verdict,
    doubts,
    missing: report.missing,
  };
};

const valueJson = ({ reader }: Speech, { kind, si }: Quantity): object => {
  const unit = shownUnit(kind, reader.system);
  return { value: inUnit(si, unit), unit: unit.symbol };
};
