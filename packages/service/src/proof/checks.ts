import type { ConditionerKind } from '@brinewright/equipment';
import { fromUnit, type Quantity, type QuantityKind, quantity } from '@brinewright/units';
import type { MessageKey } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { ProofCheck } from './proof.ts';

/** What is proved, how it is read and what its limits follow from. */
export type CheckDefinition = {
  readonly id: string;
  readonly title: MessageKey;
  readonly when: ProofCheck['when'];
  readonly kinds: readonly ConditionerKind[];
  readonly standsOn: ProofCheck['standsOn'];
} & (
  | { readonly read: 'seen' }
  | {
      readonly read: QuantityKind;
      /** Standard uncertainty of the usual instrument: common practice. */
      readonly u: Quantity;
      readonly predicted?: FigureId;
    }
);

const both: readonly ConditionerKind[] = ['softener', 'filter'];
const softener: readonly ConditionerKind[] = ['softener'];
const filter: readonly ConditionerKind[] = ['filter'];

const seen = (
  id: string,
  when: ProofCheck['when'],
  kinds: readonly ConditionerKind[],
  title: MessageKey,
): CheckDefinition => ({ id, title, when, kinds, standsOn: 'seen', read: 'seen' });

export const checkDefinitions: readonly CheckDefinition[] = [
  {
    id: 'outlet-hardness',
    title: 'proof.check.outlet-hardness',
    when: 'now',
    kinds: softener,
    standsOn: 'common-practice',
    read: 'hardness',
    u: fromUnit(0.3, 'gpg', 'hardness'),
  },
  {
    id: 'drain-in-service',
    title: 'proof.check.drain-in-service',
    when: 'now',
    kinds: both,
    standsOn: 'common-practice',
    read: 'flow',
    u: fromUnit(0.01, 'gpm', 'flow'),
  },
  {
    id: 'backwash-flow',
    title: 'proof.check.backwash-flow',
    when: 'now',
    kinds: both,
    standsOn: 'measured',
    read: 'flow',
    u: fromUnit(0.1, 'gpm', 'flow'),
    predicted: 'proof.backwash-flow.predicted',
  },
  {
    id: 'brine-draw',
    title: 'proof.check.brine-draw',
    when: 'now',
    kinds: softener,
    standsOn: 'measured',
    read: 'flow',
    u: fromUnit(0.016, 'gpm', 'flow'),
    predicted: 'proof.brine-draw.predicted',
  },
  {
    id: 'refill-water',
    title: 'proof.check.refill-water',
    when: 'now',
    kinds: softener,
    standsOn: 'measured',
    read: 'volume',
    u: fromUnit(0.1, 'gal', 'volume'),
    predicted: 'program.as-set.refill.water',
  },
  {
    id: 'iron-at-the-outlet',
    title: 'proof.check.iron-at-the-outlet',
    when: 'now',
    kinds: filter,
    standsOn: 'common-practice',
    read: 'concentration',
    u: fromUnit(0.05, 'mg/L', 'concentration'),
  },
  {
    id: 'pressure-loss',
    title: 'proof.check.pressure-loss',
    when: 'now',
    kinds: filter,
    standsOn: 'common-practice',
    read: 'pressure',
    u: fromUnit(1, 'psi', 'pressure'),
  },
  {
    id: 'air-gap',
    title: 'proof.check.air-gap',
    when: 'now',
    kinds: both,
    standsOn: 'definition',
    read: 'length',
    u: quantity('length', 0.0025),
  },
  seen('no-leaks', 'now', both, 'proof.check.no-leaks'),
  seen('every-step-run', 'now', both, 'proof.check.every-step-run'),
  seen('settings-keyed', 'now', both, 'proof.check.settings-keyed'),
  seen('clock-right', 'now', both, 'proof.check.clock-right'),
  seen('bypass-in-service', 'now', both, 'proof.check.bypass-in-service'),
  {
    id: 'outlet-hardness-after',
    title: 'proof.check.outlet-hardness-after',
    when: 'tomorrow',
    kinds: softener,
    standsOn: 'common-practice',
    read: 'hardness',
    u: fromUnit(0.3, 'gpg', 'hardness'),
  },
  seen('no-salt-taste', 'tomorrow', softener, 'proof.check.no-salt-taste'),
  seen('brine-level-back', 'tomorrow', softener, 'proof.check.brine-level-back'),
  seen('regenerated-on-time', 'tomorrow', both, 'proof.check.regenerated-on-time'),
  {
    id: 'hardness-at-the-end',
    title: 'proof.check.hardness-at-the-end',
    when: 'tomorrow',
    kinds: softener,
    standsOn: 'common-practice',
    read: 'hardness',
    u: fromUnit(1, 'gpg', 'hardness'),
  },
];
