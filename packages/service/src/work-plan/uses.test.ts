import { describe, expect, test } from 'vitest';
import { recognise } from '../recognition/recognise.ts';
import type { Target } from '../recognition/recognition.ts';
import { finish } from '../stage/work.ts';
import { keys, planOf, replace, stageOf, visitOf } from '../testing/planned.ts';
import { repairOf } from '../testing/tiny-operations.ts';
import type { Visit } from '../visit/schema.ts';
import { planWork } from './plan-work.ts';
import { sensibleSequencer } from './sensible-sequencer.ts';

describe('what hangs on the water', () => {
  const issuesOf = (uses: NonNullable<Visit['site']['uses']>, targets: readonly Target[]) =>
    stageOf(visitOf({ site: { name: 'x', uses } }), repairOf(targets)).issues.map(({ code }) => code);

  test('raw water to a boiler and a shut outlet for fire water are said while both kinds are possible', () => {
    expect(issuesOf(['boiler', 'fire'], [])).toEqual(['raw-pass-use', 'shut-outlet-use']);
  });

  test('nothing is asserted of an outlet that is not settled: the sentence carries the odds', () => {
    const s = visitOf({ site: { name: 'x', uses: ['boiler', 'fire'] } });
    const stage = recognise(s, [], () => 0);
    const known = stage.state === 'done' ? stage.value : undefined;
    const { issues } = finish(planWork(s, known, repairOf([]), sensibleSequencer));
    const odds = issues.map(({ message: { key, values } }) => [key, values?.odds]);
    expect(odds).toMatchObject([
      ['plan.outlet.not-settled', { kind: 'share' }],
      ['plan.outlet.not-settled', { kind: 'share' }],
    ]);
  });

  test('a kind that is settled is said outright', () => {
    const s = visitOf({ site: { name: 'x', uses: ['fire'] } });
    const convert: Target = { kind: 'convert', feature: 'regeneration', to: 'shut-outlet' };
    const [issue] = stageOf(s, repairOf([convert])).issues.filter(({ code }) => code === 'shut-outlet-use');
    expect(issue?.message.key).toBe('plan.shut-outlet.fire');
  });

  test('a conversion to shut-outlet warns of fire water only', () => {
    const convert: Target = { kind: 'convert', feature: 'regeneration', to: 'shut-outlet' };
    expect(issuesOf(['boiler', 'fire'], [convert])).toEqual(['shut-outlet-use']);
  });

  test('people are warned where the water goes off', () => {
    const plan = planOf([replace('seal')], { site: { name: 'x', uses: ['boiler'] } });
    expect(keys(plan.says)).toContain('plan.warn.boiler');
  });
});
