import {
  batchExchange,
  bedExchange,
  bedSize,
  blendPast,
  brineDensity,
  brineFromRefill,
  capacityFromDose,
  celsiusZero,
  chalkPerEquivalent,
  dilutedBrine,
  drawTime,
  dryResin,
  exchangeNeeded,
  hardnessFromIons,
  refillTime,
  refillWater,
  regenerationTime,
  rinseTime,
  rinseVolume,
  saltDose,
  saltEfficiency,
  saltMass,
  saltPerWater,
  separationCapacity,
  serviceTime,
  volumeBetween,
  waterDensity,
} from '@brinewright/physics';
import { fromUnit, type QuantityKind, toUnit } from '@brinewright/units';
import { numbersIn } from '../json-access.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';

const si = (value: number, unit: string, kind: QuantityKind): number => fromUnit(value, unit, kind).si;
const shown = (value: number, unit: string, kind: QuantityKind): number => toUnit({ kind, si: value }, unit);

/** S1, S2: equivalents per litre of resin and of water; the source rounds 1/1.9. */
const separation = ({ input }: Example) =>
  separationCapacity.compute({
    totalCapacity: si(input('q_T_eq_L'), 'eq/L', 'capacity'),
    calcium: input('Ca_meq_L'),
    sodium: input('Na_meq_L'),
    separationFactor: input('alpha_Ca_Na'),
  });

const s3 = ({ input }: Example) => {
  const radius = input('column_diameter_cm') / 200;
  const resinVolume = Math.PI * radius ** 2 * (input('resin_height_cm') / 100);
  const { dryMass } = dryResin.compute({
    resinVolume,
    moistDensity: input('moist_density_g_cm3') * 1000,
    moisture: input('moisture'),
  });
  const split = blendPast.compute({
    hardness: input('hardness_meq_L'),
    wantedHardness: si(input('target_mg_L_CaCO3'), 'mg/L CaCO3', 'hardness'),
    leakage: input('leakage'),
    totalFlow: si(input('design_flow_m3_d'), 'm3/d', 'flow'),
  });
  return {
    dry_mass_g: dryMass * 1000,
    flow_through_m3_d: shown(split.softenedFlow, 'm3/d', 'flow'),
    bypass_m3_d: shown(split.blendFlow, 'm3/d', 'flow'),
  };
};

const s5 = ({ input }: Example) => {
  const size = bedSize.compute({
    serviceFlow: si(input('flow_m3_d'), 'm3/d', 'flow'),
    loadingRate: si(input('loading_m3_d_m2'), 'm/d', 'superficial-velocity'),
    resinVolume: input('resin_volume_m3'),
  });
  return {
    area_m2: size.area,
    diameter_m: size.diameter,
    height_m: size.depth,
    height_to_diameter: size.depthToDiameter,
  };
};

/** Magnesium and calcium chloride as salts: two charges each, by the molar masses of the example's notes. */
const s6 = ({ input }: Example) => {
  const hardness = (2 * input('MgCl2_mg_L')) / 95.211 + (2 * input('CaCl2_mg_L')) / 110.984;
  const hours = input('service_h');
  const { exchange } = exchangeNeeded.compute({
    serviceVolume: (input('flow_m3_d') * hours) / 24,
    hardness,
    remainingHardness: 0,
  });
  const resin = exchange / input('capacity_meq_g');
  return {
    hardness_meq_L: hardness,
    resin_kg_per_d: (resin * 24) / (hours + input('regeneration_h')),
  };
};

const s7 = ({ input }: Example) => {
  const { remainingIon } = batchExchange.compute({
    exchange: input('resin_g') * input('capacity_meq_g') * 1e-3,
    dissolvedIon: input('KCl_meq') * 1e-3,
    dissolvedCounterIon: input('NaCl_meq') * 1e-3,
    selectivity: input('selectivity_K_Na'),
  });
  return { residual_K_meq: remainingIon * 1e3 };
};

const s10 = ({ input }: Example) => {
  const resinVolume = si(input('resin_ft3'), 'ft3', 'volume');
  const capacity = si(input('capacity_gr_ft3'), 'gr/ft3', 'capacity');
  const { exchange } = bedExchange.compute({ capacity, resinVolume });
  const salt = exchange * si(input('salt_lb_per_kgr'), 'lb/kgr', 'salt-per-exchange');
  const dose = saltDose.compute({ saltMass: salt, resinVolume }).saltDose;
  const efficiency = saltEfficiency.compute({ exchange, saltMass: salt });
  return {
    capacity_kgr: shown(exchange, 'kgr', 'exchange'),
    salt_lb: shown(salt, 'lb', 'mass'),
    salt_lb_ft3: shown(dose, 'lb/ft3', 'salt-dose'),
    efficiency_gr_lb: shown(efficiency.saltEfficiency, 'gr/lb', 'salt-efficiency'),
    fraction_of_theoretical: efficiency.fractionOfTheoretical,
    capacity_eq_L: shown(capacityFromDose.compute({ saltDose: dose }).capacity, 'eq/L', 'capacity'),
  };
};

/** S12, S14: a whole regeneration. */
const regeneration = ({ input }: Example) => {
  const temperature = input('t_C') + celsiusZero;
  const massFraction = input('saturation');
  const resinVolume = si(input('resin_ft3'), 'ft3', 'volume');
  const dose = si(input('dose_lb_ft3'), 'lb/ft3', 'salt-dose');
  const salt = saltMass.compute({ saltDose: dose, resinVolume }).saltMass;
  const perWater = saltPerWater.compute({ temperature, massFraction }).saltPerWater;
  const water = refillWater.compute({ saltMass: salt, saltPerWater: perWater }).refillWater;
  const brine = brineFromRefill.compute({ refillWater: water, temperature, massFraction }).brineVolume;
  const drawFlow = si(input('brine_draw_gpm'), 'gpm', 'flow');
  const motiveFlow = si(input('motive_gpm'), 'gpm', 'flow');
  const refillFlow = si(input('refill_gpm'), 'gpm', 'flow');
  const rinse = rinseTime.compute({
    bedVolumes: input('slow_rinse_bed_volumes'),
    resinVolume,
    rinseFlow: motiveFlow,
  });
  const diluted = dilutedBrine.compute({
    massFraction,
    drawFlow,
    motiveFlow,
    brineDensity: brineDensity.compute({ temperature, massFraction }).density,
    waterDensity: waterDensity.compute({ temperature }).density,
  });
  return {
    salt_lb: shown(salt, 'lb', 'mass'),
    salt_lb_per_gal_water_at_saturation: shown(perWater, 'lb/gal', 'concentration'),
    refill_water_gal: shown(water, 'gal', 'volume'),
    brine_gal: shown(brine, 'gal', 'volume'),
    refill_min: refillTime.compute({ refillWater: water, refillFlow }).refillTime / 60,
    brine_draw_min: drawTime.compute({ brineVolume: brine, drawFlow }).drawTime / 60,
    bed_volume_gal: shown(resinVolume, 'gal', 'volume'),
    slow_rinse_min: rinse.rinseTime / 60,
    diluted_brine_percent: 100 * diluted.dilutedMassFraction,
  };
};

const s15 = ({ input, inputs }: Example) => {
  const resinVolume = si(input('resin_ft3'), 'ft3', 'volume');
  const inBedVolumes = (name: string): readonly number[] =>
    numbersIn(inputs, name).map((value) => si(value, 'gal/ft3', 'bed-volumes'));
  const gallons = (bedVolumes: number): number =>
    shown(rinseVolume.compute({ bedVolumes, resinVolume }).rinseVolume, 'gal', 'volume');
  const lowRate = si(numbersIn(inputs, 'fast_rinse_gpm_ft3')[0] ?? Number.NaN, 'gpm/ft3', 'specific-flow');
  const minutes = (bedVolumes: number): number =>
    rinseTime.compute({ bedVolumes, resinVolume, rinseFlow: lowRate * resinVolume }).rinseTime / 60;
  const displacement = inBedVolumes('displacement_gal_ft3');
  const fastRinse = inBedVolumes('fast_rinse_gal_ft3');
  return {
    displacement_gal: displacement.map(gallons),
    displacement_bed_volumes: displacement,
    fast_rinse_gal: fastRinse.map(gallons),
    fast_rinse_min_at_low_rate: fastRinse.map(minutes),
  };
};

const s16 = ({ inputs }: Example) => {
  const seconds = (name: string, i: number): number => (numbersIn(inputs, name)[i] ?? Number.NaN) * 60;
  const total = (i: number): number =>
    regenerationTime.compute({
      backwashTime: seconds('backwash_min', i),
      drawTime: seconds('regeneration_min', i),
      slowRinseTime: seconds('slow_rinse_min', i),
      fastRinseTime: seconds('fast_rinse_min', i),
    }).regenerationTime / 60;
  return { total_min: [total(0), total(1)] };
};

const s18 = ({ input }: Example) => {
  const hardness = si(input('raw_mg_L'), 'mg/L CaCO3', 'hardness');
  const wantedHardness = si(input('target_mg_L'), 'mg/L CaCO3', 'hardness');
  const totalFlow = si(input('use_L_d'), 'L/d', 'flow');
  const split = blendPast.compute({ hardness, wantedHardness, leakage: 0, totalFlow });
  const { exchange } = bedExchange.compute({
    capacity: si(input('capacity_kg_CaCO3_m3'), 'g/L CaCO3', 'capacity'),
    resinVolume: input('resin_m3'),
  });
  const { serviceVolume } = volumeBetween.compute({ exchange, hardness, remainingHardness: wantedHardness });
  const { serviceTime: seconds } = serviceTime.compute({
    meteredVolume: serviceVolume,
    averageUse: totalFlow,
  });
  return {
    bypass_fraction: split.blendFraction,
    bypass_L_d: shown(split.blendFlow, 'L/d', 'flow'),
    days: seconds / 86400,
  };
};

/** S9 prints 124.8 where 127.4 is right: the misprint is shown and must not be met. */
const s9 = (examples: ReadonlyMap<string, Example>): readonly Claim[] =>
  claimsOf(examples, 'S9', ({ input }) => {
    const { hardness } = hardnessFromIons.compute({ calcium: input('Ca_mg_L') * 1e-3, magnesium: 0 });
    const asChalk = hardness * chalkPerEquivalent * 1e3;
    return { correct_mg_L_CaCO3: asChalk, misprinted_value: asChalk };
  }).map((claim) => (claim.id.endsWith('misprinted_value') ? { ...claim, notCounted: 'misprint' } : claim));

export const rows = (): readonly Claim[] => {
  const examples = readExamples('softening-worked-examples.json');
  return [
    ...claimsOf(examples, 'S1', (example) => {
      const { calciumLoading, bedVolumes } = separation(example);
      return {
        alpha_Na_Ca: 1 / example.input('alpha_Ca_Na'),
        q_Ca_meq_L_resin: calciumLoading,
        volume_L_water_per_L_resin: bedVolumes,
        rounded_q: calciumLoading,
        rounded_volume: bedVolumes,
      };
    }),
    ...claimsOf(examples, 'S2', (example) => {
      const { calciumLoading, bedVolumes } = separation(example);
      return { q_Ca_meq_L_resin: calciumLoading, volume_L_per_L: bedVolumes };
    }),
    ...claimsOf(examples, 'S3', s3),
    ...claimsOf(examples, 'S5', s5),
    ...claimsOf(examples, 'S6', s6),
    ...claimsOf(examples, 'S7', s7),
    ...s9(examples),
    ...claimsOf(examples, 'S10', s10),
    ...claimsOf(examples, 'S12', regeneration),
    ...claimsOf(examples, 'S14', regeneration),
    ...claimsOf(examples, 'S15', s15),
    ...claimsOf(examples, 'S16', s16),
    ...claimsOf(examples, 'S18', s18),
  ];
};
