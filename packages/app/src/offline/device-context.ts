import { createContext, useContext } from 'react';
import type { EngineClient } from '../engine/client.ts';
import type { RecordEntries } from '../engine/stage-props.ts';
import type { AppDatabase } from './database.ts';
import type { Drafts } from './drafts.ts';
import type { Place } from './place.ts';
import type { Session } from './session.ts';
import type { Settings } from './settings.ts';
import type { Sync } from './sync.ts';

/** All that is open on this device; made once, before the first screen. */
export type Device = {
  readonly place: Place;
  readonly database: AppDatabase;
  readonly session: Session;
  readonly drafts: Drafts;
  readonly settings: Settings;
  readonly engine: EngineClient;
  readonly record: RecordEntries;
  readonly sync: Sync;
};

export const DeviceContext = createContext<Device | undefined>(undefined);

export const useDevice = (): Device => {
  const device = useContext(DeviceContext);
  if (device === undefined) throw new Error('outside of an open device');
  return device;
};
