import {
  parseQuantity,
  parseRange,
  type Quantity,
  type QuantityKind,
  type QuantityRange,
} from '@brinewright/units';
import type { Path } from '@brinewright/words';
import { type Report, unknownWord } from '../issue/report.ts';
import type { DiagnosisTest, Outcome } from '../model/fault.ts';
import { quantityFinding } from '../quantity/finding.ts';
import type { WrittenOutcome, WrittenReading, WrittenTest } from '../schema/diagnosis.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import { compileEach, fitsOf, minutesOf, needed, titleOr } from './compiling.ts';
import { stateOf } from './operations.ts';
import { toolId } from './parts.ts';

export const compileTests = (written: WrittenFamily, report: Report): readonly DiagnosisTest[] =>
  compileEach(written.tests, 'tests', (test, id, at) => testOf(test, id, at, report));

const testOf = (written: WrittenTest, id: string, at: Path, report: Report): DiagnosisTest | undefined => {
  const ask = needed(written.ask, at, 'ask', report);
  const outcomes = needed(written.outcomes, at, 'outcomes', report);
  const normal = needed(written.normal, at, 'normal', report);
  if (ask === undefined || outcomes === undefined || normal === undefined) return undefined;
  const known = Object.keys(outcomes);
  if (!known.includes(normal))
    report.error([...at, 'normal'], unknownWord('reference.unknown', normal, known));
  return {
    id,
    ask,
    how: written.how ?? [],
    ...readingOf(written.reading, [...at, 'reading'], report),
    outcomes: Object.entries(outcomes).map(([name, outcome]) =>
      outcomeOf(outcome, name, [...at, 'outcomes', name], written.reading, report),
    ),
    normal,
    minutes: minutesOf(written.minutes),
    needs: stateOf(written.needs),
    after: written.after ?? [],
    tools: (written.tools ?? []).map(toolId),
    hazards: written.hazards ?? [],
    kinds: written.kinds ?? ['softener', 'filter'],
    fits: fitsOf(written.fits),
  };
};

const readingOf = (
  written: WrittenReading | undefined,
  at: Path,
  report: Report,
): Pick<DiagnosisTest, 'reading'> => {
  if (written === undefined) return {};
  const u = readOne(written.u, written.kind, [...at, 'u'], report);
  const plausible = readRange(written.plausible, written.kind, [...at, 'plausible'], report);
  if (u === undefined || plausible === undefined) return {};
  const { of } = written;
  return { reading: { kind: written.kind, u, ...(of === undefined ? {} : { of }), plausible } };
};

const readOne = (text: string, kind: QuantityKind, at: Path, report: Report): Quantity | undefined => {
  const read = parseQuantity(text, kind);
  if (read.ok) return read.quantity;
  report.error(at, quantityFinding(read.problem));
  return undefined;
};

const readRange = (text: string, kind: QuantityKind, at: Path, report: Report): QuantityRange | undefined => {
  const read = parseRange(text, kind);
  if (read.ok) return read.range;
  report.error(at, quantityFinding(read.problem));
  return undefined;
};

const outcomeOf = (
  written: WrittenOutcome,
  id: string,
  at: Path,
  reading: WrittenReading | undefined,
  report: Report,
): Outcome => {
  const from = bandOf(written.from, [...at, 'from'], reading, report);
  const to = bandOf(written.to, [...at, 'to'], reading, report);
  if (from !== undefined && to !== undefined && from >= to)
    report.error([...at, 'from'], { code: 'test.band-upside-down' });
  return {
    id,
    title: titleOr(written.title, id),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    faults: written.faults ?? {},
  };
};

/** A band in SI, or a share of the expected figure where the reading names one. */
const bandOf = (
  written: string | number | undefined,
  at: Path,
  reading: WrittenReading | undefined,
  report: Report,
): number | undefined => {
  if (written === undefined) return undefined;
  if (reading === undefined) {
    report.error(at, { code: 'test.band-without-reading' });
    return undefined;
  }
  if (reading.of !== undefined && typeof written === 'string') {
    report.error(at, { code: 'test.band-is-share', values: { found: written, of: reading.of } });
    return undefined;
  }
  if (typeof written === 'number' && reading.of !== undefined) return written;
  return readOne(String(written), reading.kind, at, report)?.si;
};
