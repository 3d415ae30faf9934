/** How full the device is for this app, and whether it may clear it by itself. */
export type StorageState = {
  readonly used: number;
  readonly quota: number;
  readonly isKept: boolean;
};

export const storageState = async (): Promise<StorageState | undefined> => {
  if (navigator.storage?.estimate === undefined) return undefined;
  const { usage = 0, quota = 0 } = await navigator.storage.estimate();
  const isKept = (await navigator.storage.persisted?.()) ?? false;
  return { used: usage, quota, isKept };
};

/** Asks that nothing is cleared when the device runs full. */
export const askToKeep = async (): Promise<boolean> => (await navigator.storage?.persist?.()) ?? false;

export const isNearlyFull = ({ used, quota }: StorageState): boolean => quota > 0 && used / quota >= 0.8;

/** '340 MB', '1.2 GB'. */
export const sizeText = (bytes: number): string => {
  const megabytes = bytes / 1e6;
  if (megabytes >= 1000) return `${(megabytes / 1000).toFixed(1)}\u00a0GB`;
  return megabytes < 1 ? '1\u00a0MB' : `${Math.round(megabytes)}\u00a0MB`;
};
