import { quantity } from '@brinewright/units';
import { type Issue, type Message, type MessageKey, message } from '@brinewright/words';
import type { Recognition, Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';
import type { Use } from '../visit/schema.ts';

/** Raw water never to these, and a shut outlet never to those without a plan: common practice, no source. */
const rawKeys: Readonly<Partial<Record<Use, MessageKey>>> = {
  boiler: 'plan.raw-pass.boiler',
  laundry: 'plan.raw-pass.laundry',
  dialysis: 'plan.raw-pass.dialysis',
};

const shutKeys: Readonly<Partial<Record<Use, MessageKey>>> = {
  fire: 'plan.shut-outlet.fire',
  eyewash: 'plan.shut-outlet.eyewash',
  cooling: 'plan.shut-outlet.cooling',
};

/** Who has to hear of it before the water is led round the unit or shut. */
const warnKeys: Readonly<Record<Use, MessageKey>> = {
  boiler: 'plan.warn.boiler',
  laundry: 'plan.warn.laundry',
  dialysis: 'plan.warn.dialysis',
  food: 'plan.warn.food',
  fire: 'plan.warn.fire',
  eyewash: 'plan.warn.eyewash',
  cooling: 'plan.warn.cooling',
  ice: 'plan.warn.ice',
  guests: 'plan.warn.guests',
  'high-building': 'plan.warn.high-building',
};

export const warnings = (s: Situation): readonly Message[] => usesOf(s).map((use) => message(warnKeys[use]));

const usesOf = (s: Situation): readonly Use[] => [...new Set(s.visit.site.uses ?? [])].sort();

type Outlet = 'raw-pass' | 'shut-outlet';

/** How likely each is; without a number where nothing was recognised. */
type Outlets = ReadonlyMap<string, number | undefined>;

/** What the outlet does in regeneration against what hangs on it, for every outlet that is not ruled out. */
export const outletIssues = (
  s: Situation,
  recognition: Recognition | undefined,
  targets: readonly Target[],
): readonly Issue[] => {
  const outlets = outletsOf(s, recognition, targets);
  return [...issuesFor(s, 'raw-pass', outlets), ...issuesFor(s, 'shut-outlet', outlets)];
};

const outletFeature = stockIds.features.outlet;

/** A conversion decides it; otherwise what was recognised. A unit of an unknown make may be either. */
const outletsOf = (
  s: Situation,
  recognition: Recognition | undefined,
  targets: readonly Target[],
): Outlets => {
  const to = targets.find((target) => target.kind === 'convert' && target.feature === outletFeature);
  if (to?.kind === 'convert') return new Map([[to.to, 1]]);
  const odds = recognition?.features.find(({ feature }) => feature === outletFeature)?.odds;
  if (odds !== undefined) return new Map(odds.filter(({ p }) => p > 0.02).map(({ value, p }) => [value, p]));
  const values = s.family.features.find(({ id }) => id === outletFeature)?.values.map(({ id }) => id);
  return new Map((values ?? ['raw-pass', 'shut-outlet']).map((value) => [value, undefined]));
};

const useKeys = { 'raw-pass': rawKeys, 'shut-outlet': shutKeys } as const;
const mendKeys = { 'raw-pass': 'plan.raw-pass-mend', 'shut-outlet': 'plan.shut-outlet-mend' } as const;
const useCodes = { 'raw-pass': 'raw-pass-use', 'shut-outlet': 'shut-outlet-use' } as const;

const issuesFor = (s: Situation, outlet: Outlet, outlets: Outlets): readonly Issue[] => {
  if (!outlets.has(outlet)) return [];
  return usesOf(s).flatMap((use): readonly Issue[] => {
    const key = useKeys[outlet][use];
    if (key === undefined) return [];
    const says = said(message(key), outlet, outlets);
    const mend = message(mendKeys[outlet]);
    return [{ code: useCodes[outlet], severity: 'warning', at: ['site', 'uses'], message: says, mend }];
  });
};

/** While the valve may be of either kind the sentence says so, with the odds where there are any. */
const said = (says: Message, outlet: Outlet, outlets: Outlets): Message => {
  if (outlets.size < 2) return says;
  const p = outlets.get(outlet);
  if (p === undefined) return message('plan.outlet.not-known', { says });
  return message('plan.outlet.not-settled', { says, odds: quantity('share', p) });
};
