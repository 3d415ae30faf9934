import type { JournalStore } from '@brinewright/journal';
import type { Language } from '@brinewright/words';
import { v7 } from 'uuid';
import type { AppFiles } from '../http/app-files.ts';
import type { House, LanEntrance } from '../http/house.ts';
import { Devices } from '../http/pairing/devices.ts';
import { PairingCode } from '../http/pairing/pairing-code.ts';
import type { BegunWorkshop, WorkshopStore } from '../store/index.ts';
import type { ContentFiles } from './content-files.ts';
import type { BaseDefinitions } from './definitions.ts';
import { fillWithDemo } from './demo.ts';
import { Workshop } from './workshop.ts';

/** Where one company's record lies. */
export type Kept = { readonly store: JournalStore & WorkshopStore; readonly files: ContentFiles };

export type HouseParts = {
  readonly own: Kept;
  readonly demo: Kept | undefined;
  readonly base: BaseDefinitions;
  readonly lan: () => LanEntrance | undefined;
  readonly dataPlace: string;
  readonly app: AppFiles | undefined;
  readonly usualLanguage: Language;
  /** What the demo's company is called. */
  readonly demoName: string;
  readonly now: () => Date;
};

/** The own workshop as it was left, or room for one; and the demo, made anew. */
export const openHouse = async (parts: HouseParts): Promise<House> => {
  const { lan, dataPlace, app, usualLanguage, now } = parts;
  const begun = await parts.own.store.workshop();
  let own = begun === undefined ? undefined : workshopOf(parts, parts.own, begun, false);
  let beginning: Promise<Workshop> | undefined;
  const begin = async (author: string, name: string): Promise<Workshop> => {
    own = await newWorkshop(parts, parts.own, { author, name, isDemo: false });
    return own;
  };
  return {
    own: () => own,
    begin: async (author, name) => {
      if (own !== undefined) return own;
      beginning ??= begin(author, name).finally(() => {
        beginning = undefined;
      });
      return beginning;
    },
    demo: parts.demo === undefined ? undefined : await demoIn(parts, parts.demo),
    isReady: async () => {
      await parts.own.store.companies();
    },
    devices: new Devices(parts.own.store, () => own?.company, now),
    code: new PairingCode(now),
    lan,
    dataPlace,
    app,
    usualLanguage,
    now,
  };
};

const demoIn = async (parts: HouseParts, kept: Kept): Promise<Workshop> => {
  const { demoName: name } = parts;
  const demo = await newWorkshop(parts, kept, { author: name, name, isDemo: true });
  await fillWithDemo(demo);
  return demo;
};

/** Its name is its first entry. */
const newWorkshop = async (
  parts: HouseParts,
  kept: Kept,
  { author, name, isDemo }: { readonly author: string; readonly name: string; readonly isDemo: boolean },
): Promise<Workshop> => {
  const made = workshopOf(parts, kept, await kept.store.beginWorkshop(v7(), author), isDemo);
  await made.record(author, [
    { stream: made.company, kind: 'workshop-named/1', about: {}, payload: { name } },
  ]);
  return made;
};

const workshopOf = (
  { base, now }: HouseParts,
  { store, files }: Kept,
  { company, author }: Pick<BegunWorkshop, 'company' | 'author'>,
  isDemo: boolean,
): Workshop => new Workshop({ company, owner: author, store, files, base, isDemo, now });
