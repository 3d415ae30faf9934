import type { Entry } from '../entry/entry.ts';
import type { DeviceTransaction, StreamState } from './device-store.ts';

/** A stream of which nothing is known yet; who holds entries of it follows it (S3). */
export const newStream = (stream: string): StreamState => ({
  stream,
  follows: true,
  after: 0,
  vector: {},
  beyond: {},
});

export const streamIn = async (tx: DeviceTransaction, stream: string): Promise<StreamState> =>
  (await tx.stream(stream)) ?? newStream(stream);

/** With one more number held; the run of numbers without a gap goes on as far as it can (J3). */
export const withNumber = (
  state: StreamState,
  { device, seq }: Pick<Entry, 'device' | 'seq'>,
): StreamState => {
  const before = state.vector[device] ?? 0;
  const numbers = new Set([...(state.beyond[device] ?? []), seq].filter((number) => number > before));
  let end = before;
  while (numbers.delete(end + 1)) end += 1;
  const beyond = [...numbers].toSorted((a, b) => a - b);
  return {
    ...state,
    vector: end > 0 ? { ...state.vector, [device]: end } : state.vector,
    beyond: withOrWithout(state.beyond, device, beyond),
  };
};

const withOrWithout = (
  all: StreamState['beyond'],
  device: string,
  numbers: readonly number[],
): StreamState['beyond'] => {
  const { [device]: _, ...others } = all;
  return numbers.length === 0 ? others : { ...others, [device]: numbers };
};

/** The highest number held of a device, beyond a gap too. */
export const highestOf = ({ vector, beyond }: StreamState, device: string): number =>
  Math.max(vector[device] ?? 0, ...(beyond[device] ?? []));

/** What an entry written now has seen of the other devices (J3). */
export const seenIn = ({ vector }: StreamState, device: string): Readonly<Record<string, number>> => {
  const { [device]: _, ...others } = vector;
  return others;
};
