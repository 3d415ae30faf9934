import type { Equipment, Family } from '@brinewright/equipment';
import { type Issue, type Message, message, type Path } from '@brinewright/words';
import type { Conditioner, Visit } from '../visit/schema.ts';
import { spokenOf, sweepId } from '../work-plan/operation-kinds.ts';
import { didYouMean } from './did-you-mean.ts';

type Known = readonly { readonly id: string }[];

/** Ids in the document that nothing has: nothing is lost, but somebody is told. */
export const unknownIds = (
  visit: Visit,
  subject: Conditioner,
  family: Family,
  equipment: Equipment,
): readonly Issue[] => [
  ...unknownFittings(visit, subject, family),
  ...unknownMedia(visit, subject, equipment),
  ...unknownUnits(visit, 'answers'),
  ...unknownUnits(visit, 'readings'),
  ...unknownTells(visit, family),
  ...unknownAmong(['complaint', 'kinds'], visit.complaint?.kinds, family.complaints),
  ...unknownAmong(['history', 'changes'], visit.history?.changes, family.changes),
  ...unknownFaults(visit, family),
  ...unknownOperations(visit, family),
];

const has = (list: Known, id: string): boolean => list.some((item) => item.id === id);

const idsOf = (list: Known): readonly string[] => list.map(({ id }) => id);

const unknownFittings = (visit: Visit, subject: Conditioner, family: Family): readonly Issue[] => {
  const place = visit.conditioners.indexOf(subject);
  const { fitted } = subject;
  const fittings = [
    ['controller', fitted?.controller, family.controllers],
    ['injector', fitted?.injector, family.injectors],
    ['drain', fitted?.drain, family.controls.drain],
    ['refill', fitted?.refill, family.controls.refill],
    ['meter', fitted?.meter, family.meters],
  ] as const;
  return fittings.flatMap(([field, id, list]) =>
    id === undefined || has(list, id)
      ? []
      : [unknownId(['conditioners', place, 'fitted', field], id, idsOf(list))],
  );
};

const unknownMedia = (visit: Visit, subject: Conditioner, { media }: Equipment): readonly Issue[] => {
  const place = visit.conditioners.indexOf(subject);
  return (subject.media ?? []).flatMap(({ medium }, at) =>
    media.has(medium)
      ? []
      : [unknownId(['conditioners', place, 'media', at, 'medium'], medium, [...media.keys()])],
  );
};

/** An answer or reading of a unit that the visit does not have would else be of no unit at all. */
const unknownUnits = (visit: Visit, list: 'answers' | 'readings'): readonly Issue[] =>
  (visit[list] ?? []).flatMap(({ conditioner }, at) =>
    conditioner === undefined || has(visit.conditioners, conditioner)
      ? []
      : [
          {
            ...unknownId([list, at, 'conditioner'], conditioner, idsOf(visit.conditioners)),
            message: message('situation.unknown-unit', { id: conditioner }),
          },
        ],
  );

const unknownTells = (visit: Visit, family: Family): readonly Issue[] =>
  (visit.answers ?? []).flatMap(({ conditioner = visit.subject, tell }, at) =>
    conditioner !== visit.subject || has(family.tells, tell)
      ? []
      : [unknownId(['answers', at, 'tell'], tell, idsOf(family.tells))],
  );

const unknownAmong = (at: Path, written: readonly string[] | undefined, known: Known): readonly Issue[] =>
  (written ?? []).flatMap((id, place) =>
    has(known, id) ? [] : [unknownId([...at, place], id, idsOf(known))],
  );

const unknownFaults = (visit: Visit, { faults }: Family): readonly Issue[] =>
  (visit.decided ?? []).flatMap(({ what, value }, at) =>
    what !== 'fault' || has(faults, value)
      ? []
      : [oneOfMany(['decided', at, 'value'], value, value, idsOf(faults))],
  );

const unknownOperations = (visit: Visit, { operations }: Family): readonly Issue[] =>
  (visit.done ?? []).flatMap(({ operation }, at) => {
    const spoken = spokenOf(operation).operation;
    return spoken === sweepId || has(operations, spoken)
      ? []
      : [oneOfMany(['done', at, 'operation'], operation, spoken, idsOf(operations))];
  });

const unknownId = (at: Path, id: string, known: readonly string[]): Issue =>
  unknown(at, id, didYouMean(id, known, message('situation.unknown-id-mend', { known: known.join(', ') })));

/** Of many only the nearest is offered, never the list. */
const oneOfMany = (at: Path, written: string, spoken: string, known: readonly string[]): Issue =>
  unknown(at, written, didYouMean(spoken, known, message('situation.unknown-id-none')));

const unknown = (at: Path, id: string, mend: Message): Issue => ({
  code: 'unknown-id',
  severity: 'warning',
  at,
  message: message('situation.unknown-id', { id }),
  mend,
});
