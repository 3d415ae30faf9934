import type { Control, Family, Injector, InjectorPoint } from '@brinewright/equipment';
import { type Quantity, quantity } from '@brinewright/units';
import { type Issue, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Gap } from '../stage/stage.ts';
import { stockIds } from '../stock-ids.ts';
import type { Conditioner } from '../visit/schema.ts';

/** Relative standard uncertainty of a chart and of a flow control when nobody measured: ours, shown as such. */
const chartSpread = { injector: 0.1, control: 0.05 } as const;

/**
 * Rates of this very unit. What was measured beats the chart; the drain control sets backwash and fast rinse, the
 * injector at this pressure draw and slow rinse.
 */
export const putRates = (conditioner: Conditioner, family: Family, ledger: Ledger): void => {
  const { measured } = conditioner;
  for (const step of ['backwash', 'draw', 'slow-rinse', 'fast-rinse', 'refill'] as const) {
    const known = measured?.[step];
    if (known !== undefined) ledger.given(`situation.rate.${step}`, known);
  }
  putControl('backwash', family.controls.drain, conditioner.fitted?.drain, ledger);
  putControl('refill', family.controls.refill, conditioner.fitted?.refill, ledger);
  putFastRinse(ledger);
  const injector = family.injectors.find(({ id }) => id === conditioner.fitted?.injector);
  if (injector !== undefined) putInjector(injector, ledger);
};

/** The rate the chart gives stands beside the measured one: their ratio tells a worn or wrong control. */
const putControl = (
  step: 'backwash' | 'refill',
  controls: readonly Control[],
  fitted: string | undefined,
  ledger: Ledger,
): void => {
  const control = controls.find(({ id }) => id === fitted);
  if (control === undefined) return;
  const u = control.rate.si * chartSpread.control;
  ledger.define(`situation.chart.${step}`, control.rate, control.id, 'definition', u);
  if (!ledger.has(`situation.rate.${step}`)) {
    ledger.define(`situation.rate.${step}`, control.rate, control.id, 'definition', u);
  }
};

const putFastRinse = (ledger: Ledger): void => {
  const backwash = ledger.value('situation.rate.backwash');
  if (ledger.has('situation.rate.fast-rinse') || backwash === undefined) return;
  ledger.choose(
    'situation.rate.fast-rinse',
    quantity('flow', backwash),
    'same-drain-control',
    { backwash: 'situation.rate.backwash' },
    { as: 'situation.rate.backwash' },
  );
};

const putInjector = (injector: Injector, ledger: Ledger): void => {
  const pressure = ledger.value('situation.supply.pressure');
  if (pressure === undefined || injector.at.length === 0) return;
  for (const step of ['draw', 'slow-rinse'] as const) {
    const rate = rateAt(injector.at, pressure, step === 'draw' ? (p) => p.draw : (p) => p.slowRinse);
    const u = rate.si * chartSpread.injector;
    ledger.define(`situation.chart.${step}`, rate, injector.id, 'definition', u);
    if (!ledger.has(`situation.rate.${step}`)) {
      ledger.define(`situation.rate.${step}`, rate, injector.id, 'definition', u);
    }
  }
};

/** Straight lines between the points of the chart; its end values outside it. */
const rateAt = (
  points: readonly InjectorPoint[],
  pressure: number,
  of: (point: InjectorPoint) => Quantity<'flow'> | Quantity,
): Quantity => {
  const sorted = points.toSorted((a, b) => a.pressure.si - b.pressure.si);
  const above = sorted.findIndex((point) => point.pressure.si >= pressure);
  const hi = sorted[above === -1 ? sorted.length - 1 : above];
  const lo = sorted[Math.max(0, above === -1 ? sorted.length - 1 : above - 1)];
  if (hi === undefined || lo === undefined) return quantity('flow', 0);
  const span = hi.pressure.si - lo.pressure.si;
  const share = span === 0 ? 0 : Math.min(1, Math.max(0, (pressure - lo.pressure.si) / span));
  return quantity('flow', of(lo).si + share * (of(hi).si - of(lo).si));
};

/** Tests of the stock whose reading is a rate of this unit. */
const rateTests = [
  ['backwash', `reading.${stockIds.tests.backwash}`],
  ['fast-rinse', `reading.${stockIds.tests.fastRinse}`],
  ['draw', `reading.${stockIds.tests.draw}`],
  ['refill', `reading.${stockIds.tests.refill}`],
] as const;

/** A reading this far off the chart tells of a fault to mend, not of a rate to program for: ours. */
const soundWithin = 0.25;

/** A rate read as a test beats the chart as well, as long as it is the rate of a sound unit; else the chart is said. */
export const putMeasuredRates = (ledger: Ledger): readonly Issue[] =>
  rateTests.flatMap(([step, reading]): readonly Issue[] => {
    const read = ledger.value(reading);
    const chart = ledger.value(`situation.chart.${step}`);
    const rate = ledger.value(`situation.rate.${step}`);
    if (read === undefined || read === 0 || (rate !== undefined && rate !== chart)) return [];
    if (chart !== undefined && Math.abs(read / chart - 1) > soundWithin) return [setAside(step, read, chart)];
    ledger.choose(`situation.rate.${step}`, quantity('flow', read), 'as-read', { reading }, { as: reading });
    return [];
  });

const setAside = (step: (typeof rateTests)[number][0], read: number, chart: number): Issue => ({
  code: 'rate-set-aside',
  severity: 'note',
  at: ['readings'],
  message: message('situation.rate-set-aside', {
    step: message(`program.step.${step}`),
    read: quantity('flow', read),
    chart: quantity('flow', chart),
  }),
  mend: message('situation.rate-set-aside-mend'),
});

/** Rates that nothing tells: neither measured, read, nor in the chart of what is fitted. */
export const gapsOfRates = (conditioner: Conditioner, ledger: Ledger): readonly Gap[] => {
  const needed =
    conditioner.kind === 'softener'
      ? (['backwash', 'draw', 'slow-rinse', 'refill'] as const)
      : (['backwash'] as const);
  return needed
    .filter((step) => !ledger.has(`situation.rate.${step}`))
    .map((step) => ({
      needs: ['conditioners', conditioner.id, 'measured', step],
      message: message(`situation.gap.rate.${step}`),
      settles: ['program', 'proof'],
    }));
};

/** An injector's chart holds its end values beyond its pressures; that is said. */
export const chartIssues = (conditioner: Conditioner, family: Family, ledger: Ledger): readonly Issue[] => {
  const points = family.injectors.find(({ id }) => id === conditioner.fitted?.injector)?.at ?? [];
  const pressure = ledger.value('situation.supply.pressure');
  const pressures = points.map((point) => point.pressure.si);
  if (pressure === undefined || pressures.length === 0) return [];
  const least = Math.min(...pressures);
  const most = Math.max(...pressures);
  if (pressure >= least && pressure <= most) return [];
  return [
    {
      code: 'chart-ends',
      severity: 'warning',
      at: ['supply', 'pressure'],
      message: message('situation.chart-ends', {
        pressure: quantity('pressure', pressure),
        least: quantity('pressure', least),
        most: quantity('pressure', most),
      }),
      mend: message('situation.chart-ends-mend'),
    },
  ];
};
