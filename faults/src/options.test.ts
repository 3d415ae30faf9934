import { describe, expect, it } from 'vitest';
import { readOptions } from './options.ts';

describe('the options of a fault run', () => {
  it('ask for nothing unless said, on both stores', () => {
    expect(readOptions([], 7)).toEqual({
      kills: 0,
      schedules: 0,
      seed: 7,
      stores: ['sqlite', 'postgres'],
      trace: false,
      nth: false,
      thorough: false,
    });
  });

  it('replay a seed on one store', () => {
    const options = readOptions(['--kills', '25', '--seed', '41', '--stores', 'sqlite'], 7);
    expect(options).toMatchObject({ kills: 25, seed: 41, stores: ['sqlite'] });
  });

  it.each([
    [['--kills', 'many'], '--kills many is no count'],
    [['--stores', 'sqlite,files'], '--stores files: write sqlite or postgres'],
    [['--kill', '3'], "Unknown option '--kill'"],
  ])('%j are refused with the reason', (argv, reason) => {
    expect(readOptions(argv, 7)).toContain(reason);
  });
});
