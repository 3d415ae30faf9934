import { describe, expect, it } from 'vitest';
import { agrees } from './row.ts';
import { runChecks } from './run.ts';

describe('the published values', () => {
  const report = runChecks();

  it('are all met within the tolerance of their source', () => {
    const failures = report.rows
      .filter(({ verdict }) => verdict === 'fail')
      .map(({ id, computed, expected, difference }) => `${id}: ${computed} for ${expected} (${difference})`);
    expect(failures).toEqual([]);
    expect(report.failed).toBe(0);
  });

  it('count for something: none is from memory, and they come from many sources', () => {
    expect(report.passed).toBeGreaterThan(900);
    expect(report.sources).toBeGreaterThan(20);
    const counted = report.rows.filter(({ verdict }) => verdict !== 'shown');
    expect(counted.filter(({ mark }) => mark.startsWith('memory'))).toEqual([]);
  });

  it('that the engine carries in tables of its own are the published ones, and not counted', () => {
    const own = report.rows.filter(({ notCounted }) => notCounted === 'own-table');
    expect(own.length).toBeGreaterThan(100);
    expect(own.filter((row) => !agrees(row)).map(({ id }) => id)).toEqual([]);
  });

  it('have an id each', () => {
    const ids = report.rows.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('leave the misprint of S9 to its source', () => {
    const misprint = report.rows.find(({ id }) => id === 'S9 misprinted_value');
    expect(misprint?.verdict).toBe('shown');
    expect(Math.abs(misprint?.difference ?? 0)).toBeGreaterThan(2);
  });

  it('can be asked for by family, id or source', () => {
    const brine = runChecks('rogers');
    expect(brine.rows.length).toBeGreaterThan(100);
    expect(brine.rows.every(({ source }) => source.includes('Rogers'))).toBe(true);
    expect(runChecks('S12').rows.every(({ id }) => id.startsWith('S12'))).toBe(true);
  });
});
