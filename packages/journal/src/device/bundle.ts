import { z } from 'zod';
import type { Sealed } from '../entry/entry.ts';
import { readEntry } from '../entry/read-entry.ts';
import type { Refusal } from '../entry/refusal.ts';
import type { DeviceStore } from './device-store.ts';
import { takeName } from './names.ts';
import { takeEntries } from './take-entries.ts';

/*
 * All that lies on a device in one JSON value, of the same form as a record exported by the server; also what was
 * refused or never sent.
 */

const wire = z.strictObject({ entry: z.unknown(), hash: z.string().length(64).optional() });
const bundleSchema = z.object({ schema: z.literal(1), company: z.uuid(), entries: z.array(wire) });

export type Bundle = z.output<typeof bundleSchema>;

export const bundleOf = (store: DeviceStore): Promise<Bundle> =>
  store.transact(async (tx) => {
    const { company } = await tx.state();
    const entries = [];
    for (const { stream } of await tx.streams())
      for (const { entry, hash } of await tx.entriesOf(stream)) entries.push({ entry, hash });
    return { schema: 1, company, entries };
  });

export type BundleRead =
  | { readonly state: 'no-bundle' }
  | {
      readonly state: 'read';
      readonly company: string;
      readonly entries: readonly Sealed[];
      /** Left out: unreadable, of another company, or changed since it was written out. */
      readonly refused: readonly { readonly id: string | undefined; readonly reason: Refusal }[];
    };

export const readBundle = (given: unknown): BundleRead => {
  const parsed = bundleSchema.safeParse(given);
  if (!parsed.success) return { state: 'no-bundle' };
  const { company } = parsed.data;
  const entries: Sealed[] = [];
  const refused: { readonly id: string | undefined; readonly reason: Refusal }[] = [];
  for (const one of parsed.data.entries) {
    const read = readEntry(one);
    const reason = read.ok ? faultOf(read.sealed, one.hash, company) : read.reason;
    if (read.ok && reason === undefined) entries.push(read.sealed);
    else if (reason !== undefined) refused.push({ id: read.ok ? read.sealed.entry.id : read.id, reason });
  }
  return { state: 'read', company, entries, refused };
};

const faultOf = ({ entry, hash }: Sealed, said: string | undefined, company: string): Refusal | undefined => {
  if (entry.company !== company) return 'other-company';
  return said === undefined || said === hash ? undefined : 'tampered';
};

/**
 * Takes a bundle in. Whoever does so is a new device (J2): the name in it may live on elsewhere, and what its server
 * had acknowledged is asked for again.
 * @returns how many entries were not here before
 */
export const importBundle = (
  store: DeviceStore,
  { company, entries }: Extract<BundleRead, { readonly state: 'read' }>,
  newId: () => string,
): Promise<number> =>
  store.transact(async (tx) => {
    const state = await tx.state();
    if (state.company !== company) throw new RangeError(`the bundle is of company ${company}`);
    const { fresh } = await takeEntries(tx, entries);
    await takeName(tx, newId());
    return fresh;
  });
