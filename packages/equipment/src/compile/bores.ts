import type { Path } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import { unknownWord } from '../issue/report.ts';
import {
  type BoreDefinition,
  type BoreLengths,
  type JoinRow,
  type StackPiece,
  type Stop,
  stops,
} from '../model/bore.ts';
import { parsePosition, parsePositions } from '../quantity/written.ts';
import type { WrittenBore, WrittenJoinRow, WrittenLengths, WrittenStack } from '../schema/bore.ts';
import { pieces } from '../schema/bore.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import { compileEach, fitsOf, needed } from './compiling.ts';

export const compileBores = (written: WrittenFamily, report: Report): readonly BoreDefinition[] =>
  compileEach(written.bores, 'bores', (bore, id, at) => boreOf(bore, id, at, isFilter(written), report));

/** A valve that only ever filters has no brine. */
const isFilter = (written: WrittenFamily): boolean =>
  written.kinds !== undefined && !written.kinds.includes('softener');

const boreOf = (
  written: WrittenBore,
  id: string,
  at: Path,
  filter: boolean,
  report: Report,
): BoreDefinition | undefined => {
  const ports = needed(portsOf(written), at, 'ports', report);
  const joins = needed(written.joins, at, 'joins', report);
  if (ports === undefined || joins === undefined) return undefined;
  const rows = joins.map((row, index) => rowOf(row, [...at, 'joins', index], ports, filter, report));
  const { measured } = written;
  const brine = written['brine-valve'];
  return {
    id,
    ports,
    rows,
    ...(brine === undefined ? {} : { brineValve: { opensIn: brine['opens-in'] } }),
    ...(measured === undefined
      ? {}
      : { measured: lengthsOf(measured, [...at, 'measured'], ports, filter, report) }),
  };
};

const portsOf = ({ ports }: WrittenBore): readonly string[] | undefined =>
  typeof ports === 'string' ? ports.split(/\s+/u).filter((port) => port !== '') : ports;

const rowOf = (
  written: WrittenJoinRow,
  at: Path,
  ports: readonly string[],
  filter: boolean,
  report: Report,
): JoinRow => {
  const of = (stop: Stop) => joinsOf(written[stop], [...at, stop], ports, report);
  const service = of('service');
  const joins = {
    service,
    backwash: of('backwash'),
    brine: of('brine'),
    'fast-rinse': of('fast-rinse'),
    refill: written.refill === undefined ? service : of('refill'),
  };
  const must = filter ? (['service', 'backwash'] as const) : (['service', 'backwash', 'brine'] as const);
  for (const stop of must) needed(written[stop], at, stop, report);
  checkOpen(written.open ?? {}, [...at, 'open'], ports, report);
  return { fits: fitsOf(written.when), joins, open: withoutGaps(written.open ?? {}) };
};

const joinsOf = (
  written: readonly string[] | undefined,
  at: Path,
  ports: readonly string[],
  report: Report,
): readonly (readonly string[])[] =>
  (written ?? []).map((join, index) => {
    const joined = join.split('+');
    for (const port of joined) {
      if (!ports.includes(port))
        report.error([...at, index], unknownWord('reference.unknown', port, [...new Set(ports)]));
    }
    return joined;
  });

type Open = Readonly<Partial<Record<Stop, readonly number[] | undefined>>>;

const withoutGaps = (open: Open): JoinRow['open'] =>
  Object.fromEntries(
    Object.entries(open).flatMap(([stop, seals]) => (seals === undefined ? [] : [[stop, seals]])),
  );

const checkOpen = (open: Open, at: Path, ports: readonly string[], report: Report): void => {
  const seals = ports.length - 1;
  for (const [stop, numbers] of Object.entries(open)) {
    for (const [index, number] of (numbers ?? []).entries()) {
      if (number <= seals) continue;
      report.error([...at, stop, index], { code: 'bore.no-such-seal', values: { seal: number, seals } });
    }
  }
};

const position = (text: string): number => {
  const read = parsePosition(text);
  if (!read.ok) throw new RangeError(`unchecked:${text}`);
  return read.quantity.si;
};

const positions = (text: string): readonly [number, number] => {
  const read = parsePositions(text);
  if (!read.ok) throw new RangeError(`unchecked:${text}`);
  return [read.range.min.si, read.range.max.si];
};

const lengthsOf = (
  written: WrittenLengths,
  at: Path,
  ports: readonly string[],
  filter: boolean,
  report: Report,
): BoreLengths => {
  const seals = ports.length - 1;
  const counts = [
    ['seals', written.seals.length, seals],
    ['chambers', written.chambers.length, ports.length],
  ] as const;
  for (const [what, found, expected] of counts) {
    if (found !== expected) report.error([...at, what], { code: 'bore.count', values: { found, expected } });
  }
  return {
    sealsAt: written.seals.map(position),
    chambers: written.chambers.map(({ port, from, to }) => ({
      port,
      from: position(from),
      to: position(to),
    })),
    stops: stopsOf(written.stops, [...at, 'stops'], filter, report),
    pistons: written.pistons.map((piston) => ({
      fits: fitsOf(piston.when),
      sleeve: piston.sleeve === undefined ? 0 : position(piston.sleeve),
      grooves: piston.grooves.map(positions),
      ends: positions(piston.ends),
    })),
  };
};

const stopsOf = (
  written: WrittenLengths['stops'],
  at: Path,
  filter: boolean,
  report: Report,
): Record<Stop, number> => {
  const service = position(written.service ?? '0m');
  const at_ = (stop: Stop): number => {
    const text = written[stop];
    if (text !== undefined) return position(text);
    if (!filter || stop === 'service' || stop === 'backwash') needed(text, at, stop, report);
    return service;
  };
  return {
    service: at_(stops[0]),
    backwash: at_('backwash'),
    brine: at_('brine'),
    'fast-rinse': at_('fast-rinse'),
    refill: at_('refill'),
  };
};

/** As written, or seal, spacer, seal … for the seals of the first bore. */
export const compileStack = (
  written: WrittenFamily,
  bores: readonly BoreDefinition[],
): readonly StackPiece[] => {
  if (written.stack !== undefined) return written.stack.flatMap(pieceOf);
  const seals = (bores[0]?.ports.length ?? 1) - 1;
  return Array.from({ length: Math.max(0, 2 * seals - 1) }, (_, index) => ({
    is: index % 2 === 0 ? 'seal' : 'spacer',
  }));
};

const pieceOf = (written: WrittenStack[number]): readonly StackPiece[] => {
  if (typeof written === 'string') return [{ is: written }];
  return pieces.flatMap((is) => {
    const part = written[is];
    return part === undefined ? [] : [{ is, part }];
  });
};
