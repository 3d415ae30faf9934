import { afterEach, describe } from 'vitest';
import type { Batch, JournalStore } from '../store/journal-store.ts';
import { pullRules } from './pull-rules.ts';
import { pushRules } from './push-rules.ts';
import { redactionRules } from './redaction-rules.ts';
import { writeRules } from './write-rules.ts';

/** A store opened for one test; `reopen` closes it and opens what it kept. */
export type Opened = {
  readonly store: JournalStore;
  readonly reopen: () => Promise<JournalStore>;
  readonly close: () => Promise<void>;
};

/** A store with a company of its own in it. */
export type Given = {
  readonly store: JournalStore;
  readonly company: string;
  readonly reopen: () => Promise<JournalStore>;
};

export type Open = (company: string) => Promise<Given>;

/** What every store of entries must do (SPEC S1–S4, R1 as far as a store decides it). */
export const storeSuite = (name: string, open: () => Promise<Opened>): void => {
  describe(`the store of entries: ${name}`, () => {
    const opened: Opened[] = [];
    const given: Open = async (company) => {
      const one = await open();
      opened.push(one);
      await one.store.begin(company);
      return { ...one, company };
    };
    afterEach(async () => {
      for (const one of opened.splice(0)) await one.close();
    });
    pushRules(given);
    pullRules(given);
    writeRules(given);
    redactionRules(given);
  });
};

export const received = '2026-11-25T12:00:00.000Z';

/** A push as a paired device without special rights makes it. */
export const batchOf = (
  company: string,
  entries: Batch['entries'],
  more: Partial<Pick<Batch, 'isOwner' | 'pusher'>> = {},
): Batch => ({ company, entries, pusher: 'phone', isOwner: false, received, ...more });
