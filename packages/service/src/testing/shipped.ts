import type { Equipment } from '@brinewright/equipment';
import { loadEquipment } from '@brinewright/equipment/load-files';

/** The definitions that come with the program, for tests. */
export const shippedEquipment = (): Equipment => {
  const loaded = loadEquipment();
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.issues));
  return loaded.value.equipment;
};
