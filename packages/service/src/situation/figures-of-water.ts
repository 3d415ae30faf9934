import {
  analyseIons,
  fromNitrogen,
  hardnessFromIons,
  hardnessWithStrontium,
  type IonName,
  type IonReport,
  type WaterIons,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Issue, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Gap } from '../stage/stage.ts';
import type { Visit, WaterAnalysis } from '../visit/schema.ts';
import { seasonsOf } from './seasons.ts';

const zeroCelsius = 273.15;

/** Ions of an analysis under the names the document uses. */
const ionFields = [
  ['calcium', 'calcium'],
  ['magnesium', 'magnesium'],
  ['sodium', 'sodium'],
  ['potassium', 'potassium'],
  ['iron', 'iron'],
  ['manganese', 'manganese'],
  ['barium', 'barium'],
  ['strontium', 'strontium'],
  ['sulfate', 'sulfate'],
  ['chloride', 'chloride'],
  ['fluoride', 'fluoride'],
] as const satisfies readonly (readonly [keyof WaterAnalysis, IonName])[];

/** The newest analysis of the raw water; of those of one day, and of those without one, the last. */
export const rawWater = (visit: Visit): WaterAnalysis | undefined =>
  visit.water
    ?.filter((water) => water.of === 'raw')
    .reduce<WaterAnalysis | undefined>(
      (newest, one) => (newest !== undefined && (one.date ?? '') < (newest.date ?? '') ? newest : one),
      undefined,
    );

/** Hardness, iron, manganese and temperatures of the raw water; what is assumed is put as assumed. */
export const putWater = (visit: Visit, ledger: Ledger): readonly Gap[] => {
  const water = rawWater(visit);
  if (water === undefined) {
    putTemperatures(undefined, ledger);
    return [{ needs: ['water'], message: message('situation.gap.water'), settles: ['program', 'proof'] }];
  }
  putIons(water, ledger);
  putTemperatures(water, ledger);
  const gaps: Gap[] = [];
  if (!ledger.has('situation.hardness'))
    gaps.push({
      needs: ['water', 'hardness'],
      message: message('situation.gap.hardness'),
      settles: ['program', 'proof'],
    });
  if (water.coldest === undefined || water.warmest === undefined)
    gaps.push({
      needs: ['water', 'coldest'],
      message: message('situation.gap.seasons'),
      settles: ['program'],
    });
  return gaps;
};

const putIons = (water: WaterAnalysis, ledger: Ledger): void => {
  for (const [field] of ionFields) {
    const known = water[field];
    if (known !== undefined) ledger.given(`situation.water.${field}`, known);
  }
  for (const field of ['iron', 'manganese'] as const) {
    if (!ledger.has(`situation.water.${field}`)) {
      ledger.assume(`situation.water.${field}`, quantity('concentration', 0), 'ours', 5e-5);
    }
  }
  if (water.ph !== undefined) ledger.given('situation.water.ph', water.ph);
  if (water.chlorine !== undefined) ledger.given('situation.water.chlorine', water.chlorine);
  if (water.hardness !== undefined) {
    ledger.given('situation.hardness', water.hardness);
    return;
  }
  const calciumAndMagnesium = { calcium: 'situation.water.calcium', magnesium: 'situation.water.magnesium' };
  const counted = ledger.derive(
    hardnessWithStrontium,
    { ...calciumAndMagnesium, strontium: 'situation.water.strontium' },
    { hardness: 'situation.hardness' },
  );
  if (!counted) ledger.derive(hardnessFromIons, calciumAndMagnesium, { hardness: 'situation.hardness' });
};

/** Coldest and warmest decide the backwash; without them a span is assumed and said. */
const putTemperatures = (water: WaterAnalysis | undefined, ledger: Ledger): void => {
  const mean = water?.temperature;
  if (mean !== undefined) ledger.given('situation.temperature.mean', mean);
  const at = mean?.value.si;
  const put = (name: string, known: WaterAnalysis['coldest'], assumed: number): void => {
    const id = `situation.temperature.${name}`;
    if (known !== undefined) ledger.given(id, known);
    else ledger.assume(id, quantity('temperature', assumed), 'ours');
  };
  const { coldest, warmest } = seasonsOf(water);
  const mild = at === undefined ? zeroCelsius + 10 : Math.max(at - 2, zeroCelsius + 1);
  const warm = at === undefined ? zeroCelsius + 15.6 : at + 3;
  /* Where one is told, the assumed one does not pass it. */
  put('coldest', coldest, Math.min(mild, warmest?.value.si ?? mild));
  put('warmest', warmest, Math.max(warm, coldest?.value.si ?? warm));
  if (mean === undefined) {
    const low = ledger.need('situation.temperature.coldest');
    const high = ledger.need('situation.temperature.warmest');
    ledger.choose('situation.temperature.mean', quantity('temperature', (low + high) / 2), 'mean', {
      coldest: 'situation.temperature.coldest',
      warmest: 'situation.temperature.warmest',
    });
  }
};

const laboratoryOf = (water: WaterAnalysis) => ({
  ...(water.alkalinity === undefined ? {} : { alkalinity: water.alkalinity.value.si }),
  ...(water.hardness === undefined ? {} : { hardness: water.hardness.value.si }),
  ...(water.ph === undefined ? {} : { ph: water.ph.value.si }),
  ...(water.conductivity === undefined ? {} : { conductivity: water.conductivity.value.si }),
});

const ionsOf = (water: WaterAnalysis): WaterIons =>
  Object.fromEntries(
    ionFields.flatMap(([field, ion]) => {
      const known = water[field];
      return known === undefined ? [] : [[ion, known.value.si] as const];
    }),
  );

/** Nitrogen of ammonia and nitrate as the ions it is in. */
const nitrogenOf = (water: WaterAnalysis): WaterIons => ({
  ...(water.nitrateNitrogen === undefined
    ? {}
    : { nitrate: fromNitrogen('nitrate', water.nitrateNitrogen.value.si) }),
  ...(water.ammoniaNitrogen === undefined
    ? {}
    : { ammonium: fromNitrogen('ammonium', water.ammoniaNitrogen.value.si) }),
});

/** The analysis held against itself; nothing when it holds no ions. */
export const judgeWater = (
  visit: Visit,
): { readonly report?: IonReport; readonly issues: readonly Issue[] } => {
  const water = rawWater(visit);
  if (water === undefined) return { issues: [] };
  const ions = { ...ionsOf(water), ...nitrogenOf(water) };
  if (Object.values(ions).every((mass) => mass === 0)) return { issues: [] };
  const report = analyseIons(ions, laboratoryOf(water));
  const hasBoth = water.calcium !== undefined && water.magnesium !== undefined;
  const judged = report.doubts.filter(({ about }) =>
    about === 'hardness' ? hasBoth : report.missing.length === 0,
  );
  return {
    report,
    issues: judged.map(
      ({ about, verdict }): Issue => ({
        code: `water-${about}`,
        severity: verdict === 'questionable' ? 'warning' : 'note',
        at: ['water'],
        message: message(`situation.water.${about}`, {
          verdict: message(`situation.water.${verdict}`),
          balance: quantity('share', Math.abs(report.chargeBalance)),
          hardness: quantity('hardness', report.hardness),
          conductivity: quantity('conductivity', report.conductivity),
        }),
        mend: message('situation.water.doubt-mend'),
      }),
    ),
  };
};
