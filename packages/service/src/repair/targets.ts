import type { Fault } from '@brinewright/equipment';
import type { Diagnosis } from '../diagnosis/diagnosis.ts';
import type { BackwashWindow } from '../program/program-advice.ts';
import type { Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import { readConversion } from './convert.ts';
import { withDrainControl } from './drain-window.ts';

/** Faults to act on: what the technician decided, else those of the group that is clear enough, the likeliest first. */
export const faultsToMend = (s: Situation, diagnosis: Diagnosis | undefined): readonly Fault[] => {
  const decided = s.visit.decided?.filter(({ what }) => what === 'fault').map(({ value }) => value) ?? [];
  const ids = decided.length > 0 ? decided : (diagnosis?.act?.named ?? []);
  return ids.flatMap((id) => s.family.faults.find((fault) => fault.id === id) ?? []);
};

/** What is to be renewed, done, set or converted, and the drain control that the backwash window asks for. */
export const targetsOf = (
  s: Situation,
  diagnosis: Diagnosis | undefined,
  window: BackwashWindow | undefined,
): readonly Target[] => withDrainControl(s, mendingTargets(s, diagnosis), window);

const mendingTargets = (s: Situation, diagnosis: Diagnosis | undefined): readonly Target[] => {
  const faults = faultsToMend(s, diagnosis);
  const roles = new Set(faults.flatMap(({ repair }) => repair.replace));
  const operations = new Set(faults.flatMap(({ repair }) => repair.do));
  const converts = (s.visit.decided ?? []).flatMap(({ what, value }): Target[] => {
    const read = what === 'convert' ? readConversion(s.family, value) : undefined;
    return read === undefined ? [] : [read];
  });
  return [
    ...[...roles].toSorted().map((role): Target => ({ kind: 'replace', role })),
    ...[...operations].toSorted().map((operation): Target => ({ kind: 'operation', operation })),
    ...(faults.some(({ repair }) => repair.settings) ? [{ kind: 'settings' } as const] : []),
    ...converts,
  ];
};
