import type { Call } from '../call.ts';

/** Work on a store, whose troubles are said as such. */
export const withStore = async (call: Call, work: () => Promise<number>): Promise<number> => {
  try {
    return await work();
  } catch (error) {
    const { tellStoreTrouble } = await import('./store-troubles.ts');
    const told = tellStoreTrouble(call, error);
    if (told === undefined) throw error;
    return told;
  }
};
