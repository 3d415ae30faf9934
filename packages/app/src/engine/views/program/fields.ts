import { steps, type TimedStep } from '@brinewright/equipment';
import { type Sheet, stepWords } from '@brinewright/papers';
import type { ProgramSettings } from '@brinewright/service';
import { enteredAs, type Quantity, type QuantityKind, toUnit } from '@brinewright/units';
import type { Setting, SettingName } from './written-setting.ts';
import { writtenSetting } from './written-setting.ts';

type Typed = { readonly figure: string; readonly unit: string };

/** One field of the form in which settings are written down, as found or as really set. */
export type SettingField = {
  readonly name: SettingName;
  readonly label: string;
  readonly kind: QuantityKind | 'hour';
  readonly units: readonly string[];
  readonly found?: Typed | undefined;
  readonly set?: Typed | undefined;
  readonly advised?: Typed | undefined;
};

/** What this controller holds, else what most of them do; and whatever was written down already. */
export const settingFields = (
  sheet: Sheet,
  advised: ReadonlyMap<SettingName, Setting | undefined>,
): readonly SettingField[] =>
  namesOf(sheet, advised).map((name) => ({
    name,
    ...shapeOf(sheet, name),
    found: typedIn(sheet, name, sheet.visit.settings?.found),
    set: typedIn(sheet, name, sheet.visit.settings?.set),
    advised: typed(advised.get(name)),
  }));

const order: readonly SettingName[] = [
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

const namesOf = (
  sheet: Sheet,
  advised: ReadonlyMap<SettingName, Setting | undefined>,
): readonly SettingName[] => {
  const { found, set } = sheet.visit.settings ?? {};
  const written = new Set([...Object.keys(found ?? {}), ...Object.keys(set ?? {})]);
  const usual = new Set<SettingName>([...heldSteps(sheet), 'volume', 'days', 'at', ...advised.keys()]);
  return order.filter((name) => usual.has(name) || written.has(name));
};

const heldSteps = ({ family, subject }: Sheet): readonly TimedStep[] => {
  const fitted = family?.controllers.find(({ id }) => id === subject?.fitted?.controller);
  if (fitted !== undefined) return fitted.holds;
  if (subject?.controller !== undefined) return subject.controller.holds;
  return subject?.kind === 'filter' ? ['backwash', 'fast-rinse'] : ['backwash', 'brine', ...steps.slice(3)];
};

const shapeOf = (sheet: Sheet, name: SettingName): Pick<SettingField, 'label' | 'kind' | 'units'> => {
  switch (name) {
    case 'volume':
      return { label: sheet.word('papers.setting.volume'), kind: 'volume', units: volumeUnits(sheet) };
    case 'days':
      return { label: sheet.word('app.program.days'), kind: 'count', units: [''] };
    case 'at':
      return { label: sheet.word('app.program.start'), kind: 'hour', units: [] };
    default:
      return { label: sheet.word(stepWords[name]), kind: 'time', units: ['min', 's'] };
  }
};

const volumeUnits = ({ reader }: Sheet): readonly string[] =>
  reader.system === 'us' ? ['gal', 'L'] : ['L', 'm3', 'gal'];

const typedIn = (
  sheet: Sheet,
  name: SettingName,
  settings: ProgramSettings | undefined,
): Typed | undefined => {
  const value = settings?.[name];
  if (value === undefined) return undefined;
  return typeof value === 'object' ? entered(name, value, shapeOf(sheet, name).units) : typed(value);
};

/** As it was entered, where the form has that unit; else as it would be written. */
const entered = (name: SettingName, value: Quantity, units: readonly string[]): Typed | undefined => {
  const as = enteredAs(value);
  if (as !== undefined && units.includes(as.row.symbol)) return { figure: as.figure, unit: as.row.symbol };
  const even = typed(writtenSetting(name, value));
  const [unit = ''] = units;
  return even !== undefined && units.includes(even.unit)
    ? even
    : { figure: String(Number(toUnit(value, unit).toPrecision(6))), unit };
};

const typed = (setting: Setting | undefined): Typed | undefined => {
  if (setting === undefined) return undefined;
  const [figure = '', unit = ''] = String(setting).split(' ');
  return { figure, unit };
};
