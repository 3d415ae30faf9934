import type { Controller, Family, TimedStep } from '@brinewright/equipment';
import { formatMessage, type MessageKey, message } from '@brinewright/words';
import type { Made } from '../made.ts';

/** A field of the settings as found. */
export type FoundSetting = {
  readonly id: TimedStep | 'volume' | 'days' | 'at';
  readonly label: string;
  readonly kind: 'time' | 'volume' | 'days' | 'clock';
  /** As recorded, in the reader's words. */
  readonly recorded: string | undefined;
};

export type ShotView = {
  readonly id: string;
  readonly title: string;
  /** For the entry, in both languages. */
  readonly of: { readonly en: string; readonly es: string };
  readonly taken: number;
};

export type Chip = { readonly id: string; readonly title: string };

export type FirstMinuteView = {
  readonly complaints: readonly Chip[];
  readonly changes: readonly Chip[];
  readonly complaint: { readonly words: string; readonly kinds: readonly string[] } | undefined;
  readonly history:
    | {
        readonly changed: string;
        readonly changes: readonly string[];
        readonly by: string;
        readonly what: string;
      }
    | undefined;
  readonly shots: readonly ShotView[];
  readonly settings: readonly FoundSetting[];
  readonly timeUnits: readonly string[];
  readonly volumeUnits: readonly string[];
  readonly isWaterOff: boolean;
  readonly isPowerOff: boolean;
};

export const firstMinuteView = (made: Made): FirstMinuteView => {
  const { family, speech, visit } = made;
  return {
    complaints: chips(family?.complaints ?? [], made),
    changes: chips(family?.changes ?? [], made),
    complaint:
      visit.complaint === undefined
        ? undefined
        : { words: speech.text(visit.complaint.words), kinds: visit.complaint.kinds ?? [] },
    history: historyOf(made),
    shots: shots.map((shot) => shotView(shot, made)),
    settings: settingsOf(made),
    timeUnits: ['min', 's'],
    volumeUnits: speech.reader.system === 'us' ? ['gal', 'L'] : ['L', 'm3'],
    isWaterOff: visit.apart?.water === 'off',
    isPowerOff: visit.apart?.power === 'off',
  };
};

const chips = (all: Family['complaints'] | Family['changes'], { speech }: Made): readonly Chip[] =>
  all.map(({ id, title }) => ({ id, title: speech.text(title) }));

const historyOf = ({ visit: { history }, speech }: Made): FirstMinuteView['history'] => {
  if (history === undefined) return undefined;
  return {
    changed: history.changed === undefined ? '' : speech.text(history.changed),
    changes: history.changes ?? [],
    by: history.lastWork?.by ?? '',
    what: history.lastWork?.what === undefined ? '' : speech.text(history.lastWork.what),
  };
};

/** The fixed set, before anything is touched. */
const shots = ['label', 'front', 'display', 'plumbing', 'drain', 'brine-tank'] as const;

const shotView = (id: (typeof shots)[number], { visit, speech }: Made): ShotView => {
  const key: MessageKey = `app.first.shot.${id}`;
  const inLanguage = (language: 'en' | 'es') => formatMessage(message(key), { ...speech.reader, language });
  const of = { en: inLanguage('en'), es: inLanguage('es') };
  const taken = (visit.photos ?? []).filter(
    (photo) => typeof photo.of === 'object' && photo.of.en === of.en,
  ).length;
  return { id, title: speech.word(key), of, taken };
};

const settingsOf = (made: Made): readonly FoundSetting[] => {
  const { visit, speech, subject } = made;
  const found = visit.settings?.found;
  const steps = heldSteps(made).map((id): FoundSetting => {
    const value = found?.[id];
    return {
      id,
      label: speech.word(`program.step.${id}`),
      kind: 'time',
      recorded: value === undefined ? undefined : speech.quantity(value),
    };
  });
  const volume: FoundSetting = {
    id: 'volume',
    label: speech.word('papers.setting.volume'),
    kind: 'volume',
    recorded: found?.volume === undefined ? undefined : speech.quantity(found.volume),
  };
  const days: FoundSetting = {
    id: 'days',
    label: speech.word('papers.setting.days'),
    kind: 'days',
    recorded: found?.days === undefined ? undefined : String(found.days),
  };
  const at: FoundSetting = {
    id: 'at',
    label: speech.word('app.first.setting.at'),
    kind: 'clock',
    recorded: found?.at,
  };
  return [...steps, ...(subject.kind === 'softener' ? [volume] : []), days, at];
};

/** The steps the controller holds times for: the one fitted, the one described on the wall, else all there are. */
const heldSteps = ({ subject, family }: Made): readonly TimedStep[] => {
  const own = subject.controller?.holds;
  if (own !== undefined) return own;
  const fitted = controllerOf(subject.fitted?.controller, family?.controllers ?? []);
  if (fitted !== undefined) return fitted.holds;
  return subject.kind === 'filter'
    ? ['backwash', 'fast-rinse']
    : ['backwash', 'brine', 'fast-rinse', 'refill'];
};

const controllerOf = (id: string | undefined, all: readonly Controller[]): Controller | undefined =>
  all.find((one) => one.id === id) ?? (all.length === 1 ? all[0] : undefined);
