import type { DiagnosisTest, Family } from '@brinewright/equipment';
import { medianOfRepeats } from '@brinewright/physics';
import { likelyUnits, parseQuantity } from '@brinewright/units';
import { type Issue, message, quantityProblemMessages } from '@brinewright/words';
import type { Reading, Visit } from '../visit/schema.ts';
import { didYouMean } from './did-you-mean.ts';
import type { TestReading } from './situation.ts';
import { wildIssue } from './wild.ts';

export type ReadReadings = { readonly readings: readonly TestReading[]; readonly issues: readonly Issue[] };

/** All readings of the subject, gathered by test. An odd one is asked about, never refused; a broken one is said. */
export const readReadings = (visit: Visit, family: Family): ReadReadings => {
  const issues: Issue[] = [];
  const byTest = new Map<string, { test: DiagnosisTest; list: { reading: Reading; place: number }[] }>();
  for (const [place, reading] of (visit.readings ?? []).entries()) {
    if ((reading.conditioner ?? visit.subject) !== visit.subject) continue;
    const test = family.tests.find(({ id }) => id === reading.test);
    if (test === undefined) {
      issues.push(unknownTest(reading, place, family));
      continue;
    }
    const entry = byTest.get(test.id) ?? { test, list: [] };
    entry.list.push({ reading, place });
    byTest.set(test.id, entry);
  }
  const readings = [...byTest.values()].flatMap(({ test, list }) => {
    const read = list.map(({ reading, place }) => readOne(test, reading, place));
    const gathered = gather(test, read);
    issues.push(...read.flatMap((one) => one.issues), ...gathered.flatMap(saidIfWild));
    return gathered;
  });
  return { readings, issues };
};

type One = {
  readonly value?: number;
  readonly u?: number;
  readonly outcome?: string;
  readonly cannot?: true;
  readonly issues: readonly Issue[];
};

const readOne = (test: DiagnosisTest, reading: Reading, place: number): One => {
  const at = ['readings', place] as const;
  if (reading.state === 'cannot-do') return { cannot: true, issues: [] };
  if (test.reading === undefined || reading.value === undefined) {
    const outcome = test.outcomes.find(({ id }) => id === reading.state);
    return outcome === undefined
      ? { issues: [wrongState(test, reading, at)] }
      : { outcome: outcome.id, issues: [] };
  }
  const parsed = parseQuantity(reading.value, test.reading.kind);
  if (!parsed.ok) return { issues: [notRead(at, 'value', parsed.problem)] };
  const spread = reading.u === undefined ? undefined : parseQuantity(reading.u, test.reading.kind);
  const wrongSpread = spread !== undefined && !spread.ok ? [notRead(at, 'u', spread.problem)] : [];
  return {
    value: parsed.quantity.si,
    u: spread?.ok === true ? spread.quantity.si : test.reading.u.si,
    issues: [...wrongSpread, ...askIfOdd(test, reading.value, parsed.quantity.si, at)],
  };
};

/** Repeats give a median; a state wins over 'cannot do'. */
const gather = (test: DiagnosisTest, read: readonly One[]): readonly TestReading[] => {
  const values = read.flatMap(({ value }) => value ?? []);
  if (values.length > 0) {
    const { median, uncertainty, wild } = medianOfRepeats(values, spreadOf(test, read));
    return [{ kind: 'quantity', test, repeats: values, wild, value: median, u: uncertainty }];
  }
  const outcome = read.findLast((one) => one.outcome !== undefined)?.outcome;
  if (outcome !== undefined) return [{ kind: 'state', test, outcome }];
  return read.some(({ cannot }) => cannot === true) ? [{ kind: 'cannot-do', test }] : [];
};

/** A repeat far from the others: the median hardly feels it, and somebody should know. */
const saidIfWild = (reading: TestReading): readonly Issue[] =>
  reading.kind !== 'quantity' || reading.wild.length === 0
    ? []
    : [wildIssue(['readings'], reading.test.ask, reading.wild.length, reading.repeats.length)];

/** A stated uncertainty of nothing is taken as the instrument's own. */
const spreadOf = (test: DiagnosisTest, read: readonly One[]): number =>
  read.find(({ u }) => u !== undefined && u > 0)?.u ?? test.reading?.u.si ?? Number.MIN_VALUE;

const askIfOdd = (
  test: DiagnosisTest,
  written: string,
  si: number,
  at: readonly (string | number)[],
): readonly Issue[] => {
  const plausible = test.reading?.plausible;
  if (plausible === undefined || test.reading === undefined) return [];
  if (si >= plausible.min.si && si <= plausible.max.si) return [];
  const number = Number.parseFloat(written);
  const unit = likelyUnits(number, test.reading.kind, { min: plausible.min.si, max: plausible.max.si })[0];
  return [
    {
      code: 'reading-odd',
      severity: 'warning',
      at: [...at, 'value'],
      message: message('situation.reading.odd', {
        test: test.ask,
        value: { kind: test.reading.kind, si },
        min: plausible.min,
        max: plausible.max,
      }),
      mend:
        unit === undefined
          ? message('situation.reading.odd-again')
          : message('situation.reading.odd-unit', { unit, number }),
    },
  ];
};

const unknownTest = (reading: Reading, place: number, family: Family): Issue => ({
  code: 'unknown-test',
  severity: 'warning',
  at: ['readings', place, 'test'],
  message: message('situation.reading.unknown-test', { test: reading.test }),
  mend: didYouMean(
    reading.test,
    family.tests.map(({ id }) => id),
    message('situation.reading.unknown-test-mend'),
  ),
});

const wrongState = (test: DiagnosisTest, reading: Reading, at: readonly (string | number)[]): Issue => ({
  code: 'unknown-state',
  severity: 'warning',
  at: [...at, 'state'],
  message: message('situation.reading.unknown-state', { test: test.ask, state: reading.state ?? '' }),
  mend: didYouMean(
    reading.state ?? '',
    test.outcomes.map(({ id }) => id),
    message('situation.reading.unknown-state-mend', {
      states: test.outcomes.map(({ id }) => id).join(', '),
    }),
  ),
});

const notRead = (
  at: readonly (string | number)[],
  field: string,
  problem: Parameters<typeof quantityProblemMessages>[0],
): Issue => ({
  code: 'quantity',
  severity: 'warning',
  at: [...at, field],
  ...quantityProblemMessages(problem),
});
