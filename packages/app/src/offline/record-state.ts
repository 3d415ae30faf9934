import { useEffect, useState } from 'react';
import { useChanges } from './changes.ts';
import type { AppDatabase } from './database.ts';
import { useDevice } from './device-context.ts';

export type RecordState = {
  readonly state: 'device' | 'sent' | 'refused';
  readonly counts: {
    readonly waiting: number;
    readonly sent: number;
    readonly files: number;
    readonly refused: number;
  };
};

/** How far the record is: what waits here, what the server has, and what it would not take. */
export const recordState = async (database: AppDatabase): Promise<RecordState> => {
  const { entries, files, device } = database;
  const epoch = (await device.get('state'))?.epoch;
  const [taken, sent, refused, waitingFiles, refusedFiles] = await Promise.all([
    entries.where('standing').equals('taken').count(),
    epoch === undefined ? 0 : entries.where('[standing+durableIn]').equals(['taken', epoch]).count(),
    entries.where('standing').equals('refused').count(),
    files.where('state').equals('waiting').count(),
    files.where('state').equals('refused').count(),
  ]);
  const counts = { waiting: taken - sent, sent, files: waitingFiles, refused: refused + refusedFiles };
  return { state: stateOf(counts), counts };
};

const stateOf = ({ waiting, sent, files, refused }: RecordState['counts']): RecordState['state'] => {
  if (refused > 0) return 'refused';
  return waiting === 0 && files === 0 && sent > 0 ? 'sent' : 'device';
};

const nothing: RecordState = { state: 'device', counts: { waiting: 0, sent: 0, files: 0, refused: 0 } };

export const useRecordState = (): RecordState => {
  const { database } = useDevice();
  const changes = useChanges();
  const [state, setState] = useState(nothing);
  useEffect(() => {
    void changes;
    let isWanted = true;
    void recordState(database).then((now) => {
      if (isWanted) setState(now);
    });
    return () => {
      isWanted = false;
    };
  }, [database, changes]);
  return state;
};
