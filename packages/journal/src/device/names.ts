import type { DeviceTransaction } from './device-store.ts';

/** This device goes on under another name. */
export const takeName = async (tx: DeviceTransaction, device: string): Promise<void> => {
  const state = await tx.state();
  await tx.setState({ ...state, device, formerly: [...state.formerly, state.device] });
};

/** The name it has and those it had. */
export const namesOf = async (tx: DeviceTransaction): Promise<ReadonlySet<string>> => {
  const { device, formerly } = await tx.state();
  return new Set([device, ...formerly]);
};
