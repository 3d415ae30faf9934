import { type Issue, type Message, type MessageKey, message } from '@brinewright/words';
import type { Recognition, Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
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

/** What the outlet does in regeneration against what hangs on it, for every outlet that is not ruled out. */
export const outletIssues = (
  s: Situation,
  recognition: Recognition | undefined,
  targets: readonly Target[],
): readonly Issue[] => {
  const outlets = outletsOf(s, recognition, targets);
  const raw = outlets.has('raw-pass') ? issuesFor(s, 'raw-pass-use', rawKeys) : [];
  const shut = outlets.has('shut-outlet') ? issuesFor(s, 'shut-outlet-use', shutKeys) : [];
  return [...raw, ...shut];
};

/** A conversion decides it; otherwise what was recognised. A unit of an unknown make may be either. */
const outletsOf = (
  s: Situation,
  recognition: Recognition | undefined,
  targets: readonly Target[],
): ReadonlySet<string> => {
  const to = targets.find((target) => target.kind === 'convert' && target.feature === 'regeneration');
  if (to?.kind === 'convert') return new Set([to.to]);
  const odds = recognition?.features.find(({ feature }) => feature === 'regeneration')?.odds;
  if (odds !== undefined) return new Set(odds.filter(({ p }) => p > 0.02).map(({ value }) => value));
  const values = s.family.features.find(({ id }) => id === 'regeneration')?.values.map(({ id }) => id);
  return new Set(values ?? ['raw-pass', 'shut-outlet']);
};

const issuesFor = (
  s: Situation,
  code: string,
  keys: Readonly<Partial<Record<Use, MessageKey>>>,
): readonly Issue[] =>
  usesOf(s).flatMap((use) => {
    const key = keys[use];
    if (key === undefined) return [];
    return [{ code, severity: 'warning', at: ['site', 'uses'], message: message(key), mend: mendOf(code) }];
  });

const mendOf = (code: string): Message =>
  message(code === 'raw-pass-use' ? 'plan.raw-pass-mend' : 'plan.shut-outlet-mend');
