import { type Issue, type Message, message, type Path } from '@brinewright/words';
import { type CheckDefinition, checkDefinitions } from '../proof/checks.ts';
import type { Conditioner, Visit } from '../visit/schema.ts';
import { didYouMean } from './did-you-mean.ts';

/** What stands in the document and decides nothing, because another entry wins or no stage can read it. */
export const unusedEntries = (visit: Visit, subject: Conditioner): readonly Issue[] => [
  ...unitsTwice(visit),
  ...dosesBefore(visit),
  ...unreadProofs(visit, subject),
  ...noTimeOfDay(visit),
];

const unitsTwice = ({ conditioners }: Visit): readonly Issue[] =>
  conditioners.flatMap(({ id }, place) =>
    conditioners.findIndex((one) => one.id === id) === place
      ? []
      : [
          unused(
            'unit-twice',
            ['conditioners', place, 'id'],
            message('situation.unit-twice', { id }),
            message('situation.unit-twice-mend'),
          ),
        ],
  );

/** Only one dose can be programmed; faults and conversions may be several. */
const dosesBefore = ({ decided = [] }: Visit): readonly Issue[] => {
  const last = decided.findLastIndex(({ what }) => what === 'dose');
  return decided.flatMap(({ what, value }, place) =>
    what !== 'dose' || place === last
      ? []
      : [
          unused(
            'dose-twice',
            ['decided', place],
            message('situation.dose-twice', { written: value, used: decided[last]?.value ?? '' }),
            message('situation.dose-twice-mend'),
          ),
        ],
  );
};

type Proof = NonNullable<Visit['proofs']>[number];

const unreadProofs = (visit: Visit, { kind }: Conditioner): readonly Issue[] => {
  const known = checkDefinitions.filter(({ kinds }) => kinds.includes(kind));
  return (visit.proofs ?? []).flatMap((proof, place) => {
    const check = known.find(({ id }) => id === proof.check);
    return check === undefined ? [unknownCheck(proof, place, known)] : misread(check, proof, place);
  });
};

const unknownCheck = ({ check }: Proof, place: number, known: readonly CheckDefinition[]): Issue => {
  const ids = known.map(({ id }) => id);
  return unused(
    'unknown-check',
    ['proofs', place, 'check'],
    message('situation.proof.unknown', { check }),
    didYouMean(check, ids, message('situation.unknown-id-mend', { known: ids.join(', ') })),
  );
};

/** A number where something is only seen, a state where a number is asked, or neither. */
const misread = ({ read, title }: CheckDefinition, proof: Proof, place: number): readonly Issue[] => {
  const [asked, other] = read === 'seen' ? (['state', 'value'] as const) : (['value', 'state'] as const);
  const stray = proof[other] !== undefined;
  if (!stray && proof[asked] !== undefined) return [];
  return [
    unused(
      'proof-not-read',
      stray ? ['proofs', place, other] : ['proofs', place],
      message(`situation.proof.no-${asked}`, { check: message(title) }),
      message(`situation.proof.no-${asked}-mend`),
    ),
  ];
};

const timeOfDay = /^(?:[01]\d|2[0-3]):[0-5]\d$/u;

const noTimeOfDay = ({ settings }: Visit): readonly Issue[] =>
  (['found', 'set'] as const).flatMap((which) => {
    const at = settings?.[which]?.at;
    return at === undefined || timeOfDay.test(at)
      ? []
      : [
          unused(
            'no-time-of-day',
            ['settings', which, 'at'],
            message('situation.no-time-of-day', { at }),
            message('situation.no-time-of-day-mend'),
          ),
        ];
  });

const unused = (code: string, at: Path, what: Message, mend: Message): Issue => ({
  code,
  severity: 'warning',
  at,
  message: what,
  mend,
});
