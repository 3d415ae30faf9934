import { fromUnit, quantity } from '@brinewright/units';

/*
 * Decisions of the handbook where the trade leaves a choice. Each enters the ledger as an assumption with its mark:
 * common practice, or ours.
 */
const minute = 60;

export const dosesShown = [6, 8, 10, 15] as const;

export const rules = {
  /** A found dose between these is kept; else `usual`. Ours. */
  dose: {
    from: fromUnit(6, 'lb/ft3', 'salt-dose'),
    to: fromUnit(10, 'lb/ft3', 'salt-dose'),
    usual: fromUnit(8, 'lb/ft3', 'salt-dose'),
  },
  /** What iron and manganese take of the bed beyond their charge. Common practice. */
  ironFactor: fromUnit(4, 'gpg/(mg/L)', 'hardness-per-metal'),
  manganeseFactor: fromUnit(2, 'gpg/(mg/L)', 'hardness-per-metal'),
  /** UFC 3-240-13FN. */
  yearlyLoss: quantity('share', 0.05),
  /** Common practice. */
  backwash: quantity('time', 10 * minute),
  slowRinse: { aim: quantity('bed-volumes', 1.5), least: quantity('bed-volumes', 1) },
  fastRinse: quantity('bed-volumes', 2),
  filterRinse: quantity('time', 5 * minute),
  /** Longest time between regenerations, days: common practice; the iron level is ours. */
  calendar: { plain: 7, iron: 4, ironFrom: quantity('concentration', 3e-4), filter: 3 },
  /** Left between the risen bed and the top: ours. */
  margin: fromUnit(2, 'in', 'length'),
  /** Smallest step a volume is rounded to where the controller does not say: ours. */
  volumeStep: fromUnit(10, 'gal', 'volume'),
} as const;
