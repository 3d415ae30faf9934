import type { IonEquivalents } from './ions.ts';

/** Free ions, mol per kg of water, with the charges of the pairs they left for. */
export type FreeIons = {
  readonly calcium: number;
  readonly magnesium: number;
  readonly sulfate: number;
  readonly bicarbonate: number;
  /** Half the sum of molality times charge squared, pairs included. */
  readonly ionicStrength: number;
};

/**
 * Association constants at 25 °C, kg/mol: the pairs of WATEQ4F (Ball & Nordstrom 1991) that matter in hard water, from
 * memory. Their change with temperature is left out.
 */
const associates = {
  calciumSulfate: 10 ** 2.3,
  magnesiumSulfate: 10 ** 2.37,
  calciumBicarbonate: 10 ** 1.106,
  magnesiumBicarbonate: 10 ** 1.07,
};

/** Davies (1962), 25 °C; held at 1 mol/kg, where it loses meaning. */
const activity = (charge: number, ionicStrength: number): number => {
  const strength = Math.min(ionicStrength, 1);
  const root = Math.sqrt(strength);
  return 10 ** (-0.509 * charge ** 2 * (root / (1 + root) - 0.3 * strength));
};

type Molalities = Omit<FreeIons, 'ionicStrength'>;

/**
 * One pass: who is free when the partners are as given. Steps are halved, since calcium and sulfate chase each other.
 * The bicarbonate pair has one charge like bicarbonate, so that only the doubly charged ion's activity is left.
 */
const pass = (total: Molalities, free: Molalities, ionicStrength: number): Molalities => {
  const two = activity(2, ionicStrength);
  const sulfatePair = two ** 2;
  const half = (before: number, all: number, pull: number): number => 0.5 * (before + all / (1 + pull));
  const calcium = half(
    free.calcium,
    total.calcium,
    sulfatePair * associates.calciumSulfate * free.sulfate +
      two * associates.calciumBicarbonate * free.bicarbonate,
  );
  const magnesium = half(
    free.magnesium,
    total.magnesium,
    sulfatePair * associates.magnesiumSulfate * free.sulfate +
      two * associates.magnesiumBicarbonate * free.bicarbonate,
  );
  const sulfate = half(
    free.sulfate,
    total.sulfate,
    sulfatePair * (associates.calciumSulfate * calcium + associates.magnesiumSulfate * magnesium),
  );
  const bicarbonate = half(
    free.bicarbonate,
    total.bicarbonate,
    two * (associates.calciumBicarbonate * calcium + associates.magnesiumBicarbonate * magnesium),
  );
  return { calcium, magnesium, sulfate, bicarbonate };
};

/** What the pairs leave: neutral sulfate pairs count nothing, bicarbonate pairs one charge each. */
const strengthOf = (others: number, total: Molalities, free: Molalities): number => {
  const bound = total.bicarbonate - free.bicarbonate;
  return (
    others +
    2 * (free.calcium + free.magnesium + free.sulfate) +
    0.5 * free.bicarbonate +
    0.5 * Math.max(0, bound)
  );
};

const apart = (a: Molalities, b: Molalities): number =>
  Math.max(
    Math.abs(a.calcium - b.calcium),
    Math.abs(a.magnesium - b.magnesium),
    Math.abs(a.sulfate - b.sulfate),
    Math.abs(a.bicarbonate - b.bicarbonate),
  );

/** Calcium and magnesium that are not paired with sulfate or bicarbonate. A litre of water is taken as a kilogram. */
export const freeIons = (equivalents: IonEquivalents, hydrogen: number): FreeIons => {
  const total: Molalities = {
    calcium: equivalents.calcium / 2000,
    magnesium: equivalents.magnesium / 2000,
    sulfate: equivalents.sulfate / 2000,
    bicarbonate: equivalents.bicarbonate / 1000,
  };
  const single = ['sodium', 'potassium', 'ammonium', 'chloride', 'nitrate', 'fluoride'] as const;
  const double = ['iron', 'manganese', 'strontium', 'barium', 'carbonate'] as const;
  const others =
    single.reduce((sum, ion) => sum + equivalents[ion] / 2000, hydrogen / 2000) +
    double.reduce((sum, ion) => sum + equivalents[ion] / 1000, 0);
  let free = total;
  for (let round = 0; round < 300; round += 1) {
    const next = pass(total, free, strengthOf(others, total, free));
    const moved = apart(free, next);
    free = next;
    if (moved < 1e-14) break;
  }
  return { ...free, ionicStrength: strengthOf(others, total, free) };
};
