import type { Draft } from '@brinewright/journal';
import { EngineClient } from '../engine/client.ts';
import { openDatabase } from '../offline/database.ts';
import type { Device } from '../offline/device-context.ts';
import { settleDevice } from '../offline/device-name.ts';
import { Drafts } from '../offline/drafts.ts';
import { placeOf } from '../offline/place.ts';
import { type SessionAnswer, sessionOf } from '../offline/session.ts';
import { Settings } from '../offline/settings.ts';
import { startSync } from '../offline/sync.ts';

export type Opened = {
  readonly settings: Settings;
  readonly answer: SessionAnswer;
  /** None while this device does not know its workshop. */
  readonly device: Device | undefined;
};

/** Opens what is on this device; waits for the server only where the device does not know its workshop yet. */
export const openDevice = async (address: string): Promise<Opened> => {
  const place = placeOf(address);
  const database = openDatabase(place.database);
  const [settings, drafts, answer] = await Promise.all([
    Settings.open(database, navigator.languages),
    Drafts.open(database),
    sessionOf(database, place.api),
  ]);
  if (answer.state === 'unknown') return { settings, answer, device: undefined };
  const { session } = answer;
  await settleDevice(database, session.company);
  const worker = new Worker(new URL('../engine/worker.ts', import.meta.url), { type: 'module' });
  const engine = new EngineClient(worker, place.database, session.company);
  const record = async (drafted: readonly Draft[]): Promise<readonly string[]> => {
    const { recordEntries } = await import('../offline/record-entries.ts');
    const ids = await recordEntries(database, session.author, drafted);
    sync.nudge();
    return ids;
  };
  const sync = startSync({ database, place, company: session.company });
  return { settings, answer, device: { place, database, session, drafts, settings, engine, record, sync } };
};
