import { describe, expect, it } from 'vitest';
import type { Sealed } from '../entry/entry.ts';
import type { Heads } from '../store/journal-store.ts';
import { aHand, anEntry, entriesOf, nextUuid } from './some-entries.ts';
import { batchOf, type Open, received } from './store-suite.ts';

/** J2, J4: the store's own device. */
export const writeRules = (open: Open): void => {
  describe('write', () => {
    it('composes from what the store holds and keeps what was composed', async () => {
      const phone = aHand();
      const { store, company } = await open(phone.company);
      await store.push(batchOf(company, [anEntry(phone, 1, { lamport: 40 })]));
      const seen: Heads[] = [];
      const { kept, last } = await store.write(fromWorkshop(company), [phone.stream], (heads) => {
        seen.push(heads);
        return [ownEntry(company, phone.stream)(heads)];
      });
      expect(seen).toHaveLength(1);
      expect(seen[0]?.lamport).toBe(40);
      expect(seen[0]?.vectors.get(phone.stream)).toEqual(new Map([[phone.device, 1]]));
      expect(kept.map(({ position, pusher, entry }) => [position, pusher, entry.lamport])).toEqual([
        [2, 'workshop', 41],
      ]);
      expect(last).toBe(2);
      expect(kept[0]).toEqual(await store.find(company, kept[0]?.entry.id ?? ''));
    });

    it('has one device of its own for each company', async () => {
      const { store, company } = await open(nextUuid());
      const other = nextUuid();
      await store.begin(other);
      const deviceOf = async (of: string): Promise<readonly string[]> => {
        const devices: string[] = [];
        await store.write(fromWorkshop(of), [of], (heads) => {
          devices.push(heads.device);
          return [ownEntry(of, of)(heads)];
        });
        return devices;
      };
      expect(await deviceOf(company)).toEqual(await deviceOf(company));
      expect(await deviceOf(company)).not.toEqual(await deviceOf(other));
    });

    it('never gives a number twice, whoever writes and pushes meanwhile', async () => {
      const phone = aHand();
      const { store, company } = await open(phone.company);
      const writes = Array.from({ length: 20 }, () =>
        store.write(fromWorkshop(company), [phone.stream], (heads) => [
          ownEntry(company, phone.stream)(heads),
        ]),
      );
      const pushes = entriesOf(phone, 20).map((entry) => store.push(batchOf(company, [entry])));
      const kept = (await Promise.all(writes)).flatMap((one) => one.kept);
      await Promise.all(pushes);
      expect(kept.map(({ entry }) => entry.seq).toSorted((a, b) => a - b)).toEqual(
        Array.from({ length: 20 }, (_, place) => place + 1),
      );
      const { entries } = await store.pull(company, { all: 0 }, 50);
      expect(entries.map(({ position }) => position)).toEqual(Array.from({ length: 40 }, (_, at) => at + 1));
    });

    it('changes nothing when composing throws or gives a number that is taken', async () => {
      const { store, company } = await open(nextUuid());
      await store.write(fromWorkshop(company), [company], (heads) => [ownEntry(company, company)(heads)]);
      const failing = store.write(fromWorkshop(company), [company], () => {
        throw new TypeError('cannot compose');
      });
      await expect(failing).rejects.toThrow(TypeError);
      const doubled = store.write(fromWorkshop(company), [company], (heads) => [
        ownEntry(company, company)(heads),
        ownEntry(company, company)(heads),
      ]);
      await expect(doubled).rejects.toThrow(RangeError);
      expect((await store.state(company)).last).toBe(1);
    });

    it('writes nothing when there is nothing to write', async () => {
      const { store, company } = await open(nextUuid());
      expect(await store.write(fromWorkshop(company), [], () => [])).toMatchObject({ kept: [], last: 0 });
    });

    it('goes on with the same device and number after it was opened again', async () => {
      const { store, company, reopen } = await open(nextUuid());
      const compose = ownEntry(company, company);
      const first = await store.write(fromWorkshop(company), [company], (heads) => [compose(heads)]);
      const again = await reopen();
      const second = await again.write(fromWorkshop(company), [company], (heads) => [compose(heads)]);
      const said = [...first.kept, ...second.kept].map(({ entry }) => entry);
      expect(said.map(({ seq }) => seq)).toEqual([1, 2]);
      expect(said[0]?.device).toBe(said[1]?.device);
    });
  });
};

export const fromWorkshop = (company: string) => ({ company, pusher: 'workshop', received });

/** The next entry of the own device in a stream. */
export const ownEntry =
  (company: string, stream: string) =>
  ({ device, lamport, vectors }: Heads): Sealed =>
    anEntry({ company, stream, device }, (vectors.get(stream)?.get(device) ?? 0) + 1, {
      lamport: lamport + 1,
    });
