import type { Path } from '@brinewright/words';
import type { Report } from '../issue/report.ts';
import type { Control, Controller, Injector, Medium, Meter } from '../model/fitting.ts';
import { parseSeries } from '../quantity/written.ts';
import type { WrittenFamily } from '../schema/documents.ts';
import type {
  WrittenControl,
  WrittenController,
  WrittenInjector,
  WrittenMedium,
  WrittenMeter,
} from '../schema/fitting.ts';
import { compileEach, needed, quantityOf, rangeOf, titleOr } from './compiling.ts';

export const compileInjectors = (written: WrittenFamily): readonly Injector[] =>
  compileEach(written.injectors, 'injectors', injectorOf);

const injectorOf = (written: WrittenInjector, id: string): Injector => {
  if (written === 'unknown') return { id, title: id, at: [] };
  const { nozzle, throat, tanks } = written;
  return {
    id,
    title: written.title ?? id,
    ...(nozzle === undefined ? {} : { nozzle: quantityOf(nozzle, 'length') }),
    ...(throat === undefined ? {} : { throat: quantityOf(throat, 'length') }),
    ...(tanks === undefined ? {} : { tanks: rangeOf(tanks, 'length') }),
    at: pointsOf(written.at ?? {}),
  };
};

type Points = NonNullable<Exclude<WrittenInjector, string>['at']>;

const pointsOf = (written: Points): Injector['at'] =>
  Object.entries(written)
    .map(([pressure, point]) => ({
      pressure: quantityOf(pressure, 'pressure'),
      draw: quantityOf(point.draw, 'flow'),
      slowRinse: quantityOf(point['slow-rinse'], 'flow'),
    }))
    .toSorted((a, b) => a.pressure.si - b.pressure.si);

export const compileControls = (written: WrittenFamily) => ({
  drain: compileEach(written.controls?.drain, 'drain', controlOf),
  refill: compileEach(written.controls?.refill, 'refill', controlOf),
});

const controlOf = (written: WrittenControl, id: string): Control =>
  typeof written === 'string'
    ? { id, title: id, rate: quantityOf(written, 'flow') }
    : { id, title: written.title ?? id, rate: quantityOf(written.rate, 'flow') };

export const compileControllers = (written: WrittenFamily, report: Report): readonly Controller[] =>
  compileEach(written.controllers, 'controllers', (one, id, at) => controllerOf(one, id, at, report));

const controllerOf = (
  written: WrittenController,
  id: string,
  at: Path,
  report: Report,
): Controller | undefined => {
  const holds = needed(written.holds, at, 'holds', report);
  const times = needed(written.times, at, 'times', report);
  if (holds === undefined || times === undefined) return undefined;
  const { volumes, days } = written;
  return {
    id,
    title: titleOr(written.title, id),
    holds,
    times: seriesOf(times, 'time'),
    starts: written.starts ?? [volumes === undefined ? 'clock' : 'metered'],
    ...(volumes === undefined ? {} : { volumes: seriesOf(volumes, 'volume') }),
    ...(days === undefined ? {} : { days: plainSeries(days) }),
  };
};

const seriesOf = <K extends 'time' | 'volume' | 'count'>(text: string, kind: K) => {
  const read = parseSeries(text, kind);
  if (!read.ok) throw new RangeError(`unchecked:${text}`);
  return read.range;
};

const plainSeries = (text: string) => {
  const { min, max, by } = seriesOf(text, 'count');
  return { min: min.si, max: max.si, by: by?.si ?? 1 };
};

export const compileMeters = (written: WrittenFamily, report: Report): readonly Meter[] =>
  compileEach(written.meters, 'meters', (meter, id, at) => meterOf(meter, id, at, report));

const meterOf = (written: WrittenMeter, id: string, at: Path, report: Report): Meter | undefined => {
  const perPulse = needed(written['per-pulse'], at, 'per-pulse', report);
  const flow = needed(written.flow, at, 'flow', report);
  if (perPulse === undefined || flow === undefined) return undefined;
  return {
    id,
    title: titleOr(written.title, id),
    perPulse: quantityOf(perPulse, 'volume-per-pulse'),
    flow: rangeOf(flow, 'flow'),
  };
};

export const compileMedium = (written: WrittenMedium, id: string): Medium => ({
  id,
  title: written.title,
  is: written.is,
  diameter: quantityOf(written.diameter, 'length'),
  density: quantityOf(written.density, 'density'),
  voidage: written.voidage,
  sphericity: written.sphericity ?? 1,
  ...(written.capacity === undefined ? {} : { capacity: quantityOf(written.capacity, 'capacity') }),
  ...(written.backwash === undefined ? {} : { backwash: rangeOf(written.backwash, 'superficial-velocity') }),
  expansion: written.expansion,
  known: written.known,
});
