import { type Fault, strengths } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import { at } from '../recognition/bayes.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import { foremost, type Membership, membershipOf } from './bands.ts';
import type { Hypotheses } from './hypotheses.ts';
import type { Predictor } from './predictor.ts';

/** One thing that speaks for some faults and against others. Only ratios of a likelihood count. */
export type Clue = {
  readonly id: string;
  readonly is: 'measured' | 'seen' | 'told';
  readonly likelihood: Float64Array;
  readonly says: Message;
};

/** After-service faults are likelier within about two months after a visit; common practice, factors ours. */
const serviced = { recently: 4, notKnown: 0.5, longAgo: 0.2 } as const;

/** What customers say is weak: it counts for the square root of its strength; ours. */
const complaintWeight = 0.5;

/** A complaint under a fault that does not list it, and under a fault nobody listed; ours. */
const unlistedComplaint = 0.05;
const noneComplaint = 0.2;

/** Everything that was told, seen and measured, sorted by id so that the order of readings changes no bit. */
export const cluesOf = (
  s: Situation,
  hypotheses: Hypotheses,
  predictor: Predictor,
  computed: readonly TestReading[] = [],
): readonly Clue[] =>
  [
    ...s.readings.flatMap((reading) => clueOfReading(s, hypotheses, predictor, reading)),
    ...computed
      .flatMap((reading) => clueOfReading(s, hypotheses, predictor, reading))
      .map((clue) => ({ ...clue, says: message('diagnosis.clue.computed', { clue: clue.says }) })),
    ...s.complaints.flatMap((id) => clueOfComplaint(s, hypotheses, id)),
    ...s.changes.flatMap((id) => clueOfChange(s, hypotheses, id)),
    clueOfService(s, hypotheses),
  ].sort((a, b) => (a.id < b.id ? -1 : 1));

export const readingClueId = (test: string): string => `reading:${test}`;

const clueOfReading = (
  s: Situation,
  { ids }: Hypotheses,
  predictor: Predictor,
  reading: TestReading,
): readonly Clue[] => {
  const shares = membershipOf(reading, s);
  if (shares === undefined) return [];
  const likelihood = Float64Array.from(ids, (fault) => {
    const odds = predictor.predict(fault, reading.test, s);
    return shares.reduce((total, share, o) => total + share * at(odds, o), 0);
  });
  const is = reading.kind === 'quantity' ? 'measured' : 'seen';
  return [{ id: readingClueId(reading.test.id), is, likelihood, says: sayReading(reading, shares) }];
};

const sayReading = (reading: TestReading, shares: Membership): Message => {
  const { test } = reading;
  const outcome = foremost(test, shares)?.title ?? test.normal;
  if (reading.kind !== 'quantity' || test.reading === undefined)
    return message('diagnosis.clue.seen', { test: test.ask, outcome });
  const value = quantity(test.reading.kind, reading.value);
  return message('diagnosis.clue.measured', { test: test.ask, value, outcome });
};

const byFault = ({ faults }: Hypotheses, ofFault: (fault: Fault) => number, none: number): Float64Array =>
  Float64Array.from([...faults.map(ofFault), none]);

const clueOfComplaint = (s: Situation, hypotheses: Hypotheses, id: string): readonly Clue[] => {
  const complaint = s.family.complaints.find((one) => one.id === id);
  if (complaint === undefined) return [];
  const strength = ({ id: fault }: Fault): number => {
    const listed = complaint.faults[fault];
    return listed === undefined ? unlistedComplaint : strengths[listed];
  };
  return [
    {
      id: `complaint:${id}`,
      is: 'told',
      likelihood: byFault(hypotheses, strength, noneComplaint).map((p) => p ** complaintWeight),
      says: message('diagnosis.clue.complaint', { complaint: complaint.title }),
    },
  ];
};

const clueOfChange = (s: Situation, hypotheses: Hypotheses, id: string): readonly Clue[] => {
  const change = s.family.changes.find((one) => one.id === id);
  if (change === undefined) return [];
  return [
    {
      id: `change:${id}`,
      is: 'told',
      likelihood: byFault(hypotheses, (fault) => change.raises[fault.id] ?? 1, 1),
      says: message('diagnosis.clue.change', { change: change.title }),
    },
  ];
};

const clueOfService = (s: Situation, hypotheses: Hypotheses): Clue => {
  const told = s.visit.history?.lastWork?.when !== undefined;
  const when = s.recentlyServiced ? 'recently' : told ? 'longAgo' : 'notKnown';
  const says = {
    recently: message('diagnosis.clue.serviced-recently'),
    longAgo: message('diagnosis.clue.serviced-long-ago'),
    notKnown: message('diagnosis.clue.service-not-known'),
  };
  return {
    id: 'service',
    is: 'told',
    likelihood: byFault(hypotheses, (fault) => (fault.afterService ? serviced[when] : 1), 1),
    says: says[when],
  };
};

/** Whether anything beyond the age of the last work was told, seen or measured. */
export const saysSomething = (clues: readonly Clue[]): boolean => clues.some(({ id }) => id !== 'service');
