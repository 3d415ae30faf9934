import { useEffect, useState } from 'react';
import { type StorageState, storageState } from './storage.ts';

export const useStorage = (asked = 0): StorageState | undefined => {
  const [state, setState] = useState<StorageState>();
  useEffect(() => {
    void asked;
    void storageState().then(setState);
  }, [asked]);
  return state;
};
