import { type Quantity, quantity } from '@brinewright/units';
import { type Message, type MessageKey, message } from '@brinewright/words';
import type { Figures } from '../derivation/figure.ts';
import type { Situation } from '../situation/situation.ts';
import type { ProgramSettings } from '../visit/schema.ts';

const settingKeys: Readonly<Record<keyof ProgramSettings, MessageKey>> = {
  backwash: 'plan.setting.backwash',
  brine: 'plan.setting.brine',
  draw: 'plan.setting.draw',
  'slow-rinse': 'plan.setting.slow-rinse',
  'fast-rinse': 'plan.setting.fast-rinse',
  refill: 'plan.setting.refill',
  volume: 'plan.setting.volume',
  days: 'plan.setting.days',
  at: 'plan.setting.at',
};

const settingIds = [
  'backwash',
  'brine',
  'draw',
  'slow-rinse',
  'fast-rinse',
  'refill',
  'volume',
  'days',
  'at',
] as const;

type SettingId = (typeof settingIds)[number];

/** Figures of the program that the card is written from. */
export const figuresOfCard = (figures: Figures) =>
  ['program.leak.day', 'program.leak.cost-day', 'program.found.volume.full', 'situation.demand.daily'].map(
    (id) => figures[id],
  );

/** The old values of everything that was set anew; a program that was not touched stays as it is. */
export const settingsBack = (s: Situation): readonly Message[] =>
  settingIds
    .filter((id) => isSetAnew(s, id))
    .flatMap((id) => {
      const old = settingValue(s.found, id);
      const now = settingValue(s.visit.settings?.set ?? {}, id);
      if (old === undefined || now === undefined) return [];
      return [message('plan.leave.setting', { setting: message(settingKeys[id]), value: old, now })];
    });

/** What the unit runs with until the next visit: as found, but no volume that the found salt does not soften. */
export const settingsToRun = (s: Situation): readonly Message[] =>
  settingIds.flatMap((id) => {
    const value = settingValue(s.found, id);
    if (value === undefined || isSetAnew(s, id)) return [];
    const safe = id === 'volume' ? safeVolume(s) : undefined;
    const setting = message(settingKeys[id]);
    if (safe === undefined) return [message('plan.leave.run', { setting, value })];
    return [message('plan.leave.run-safe', { setting, value: safe, found: value })];
  });

/** The found salt softens so much, less the water of one day; only where that is less than what is set. */
const safeVolume = ({ figures, found, controller }: Situation): Quantity<'volume'> | undefined => {
  const full = figures['program.found.volume.full']?.quantity.si;
  const day = figures['situation.demand.daily']?.quantity.si;
  if (full === undefined || day === undefined || found.volume === undefined) return undefined;
  const by = controller?.volumes?.by?.si;
  const safe = by === undefined ? full - day : Math.floor((full - day) / by) * by;
  return safe > 0 && safe < found.volume.si ? quantity('volume', safe) : undefined;
};

const isSetAnew = (s: Situation, id: SettingId): boolean => {
  const old = settingValue(s.found, id);
  const now = settingValue(s.visit.settings?.set ?? {}, id);
  return old !== undefined && now !== undefined && !isSame(old, now);
};

const settingValue = (settings: ProgramSettings, id: SettingId) => {
  const value = settings[id];
  return typeof value === 'number' ? quantity('count', value) : value;
};

type SettingValue = NonNullable<ReturnType<typeof settingValue>>;

const isSame = (a: SettingValue, b: SettingValue): boolean =>
  typeof a === 'string' || typeof b === 'string' ? a === b : a.si === b.si;
