import { type Visit, visitSchema } from '@brinewright/service';
import { arbitraryVisit, shippedEquipment } from '@brinewright/service/testing';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fold, visitOf } from '../fold/fold.ts';
import { Desk, testStream } from '../testing/desk.ts';
import { plain, recorded } from '../testing/plain-visit.ts';
import { draftsOfVisit } from './drafts-of-visit.ts';

/** Names under which a later entry replaces an earlier one stand once. */
const named = (visit: Visit): Visit => {
  const once = <T>(list: readonly T[] | undefined, name: (one: T) => string): T[] => [
    ...new Map((list ?? []).map((one) => [name(one), one])).values(),
  ];
  return {
    ...visit,
    conditioners: once(visit.conditioners, ({ id }) => id),
    answers: once(visit.answers, ({ tell, conditioner }) => `${tell} ${conditioner}`),
    done: once(visit.done, ({ operation, instance }) => `${operation} ${instance}`),
    decided: once(
      visit.decided,
      ({ what, value }) => (what === 'convert' ? value.split(':')[0] : what) ?? '',
    ),
    acknowledged: once(visit.acknowledged, ({ caution }) => caution),
  };
};

const there = (visit: Visit): boolean => visit.conditioners.some(({ id }) => id === visit.subject);

it('gives entries that fold to the same visit', () => {
  fc.assert(
    fc.property(arbitraryVisit(shippedEquipment()), (document) => {
      const visit = named(visitSchema.parse(document));
      fc.pre(there(visit));
      const desk = new Desk(1);
      recorded(desk, draftsOfVisit(visit, { stream: testStream }));
      const site = fold(desk.entries);
      const back = visitOf(site, visit.id);
      expect({
        setAside: site.setAside,
        waiting: site.waiting,
        newer: site.newer,
        rivals: site.rivals,
      }).toEqual({
        setAside: [],
        waiting: [],
        newer: [],
        rivals: [],
      });
      expect(back === undefined ? undefined : plain(back)).toEqual(plain(visit));
    }),
    { numRuns: 300, seed: 20261125 },
  );
});
