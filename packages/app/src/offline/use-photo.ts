import { useEffect, useState } from 'react';
import { useDevice } from './device-context.ts';

/** An address for a photo that is on this device; none where it is not. */
export const usePhoto = (file: string): string | undefined => {
  const { database } = useDevice();
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let isWanted = true;
    void database.files.get(file).then((row) => {
      if (row === undefined || !isWanted) return;
      made = URL.createObjectURL(new Blob([row.bytes], { type: row.type }));
      setAddress(made);
    });
    return () => {
      isWanted = false;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [database, file]);
  return address;
};
