import { parseArgs } from 'node:util';

export const storeNames = ['sqlite', 'postgres'] as const;
export type StoreName = (typeof storeNames)[number];

/** What is asked for: so many kills and schedules on each store. */
export type Options = {
  readonly kills: number;
  readonly schedules: number;
  readonly seed: number;
  readonly stores: readonly StoreName[];
  readonly trace: boolean;
  readonly nth: boolean;
  /** Every single read and write of a broken disk, not every tenth: most of an hour. */
  readonly thorough: boolean;
};

export const usage =
  'npm run faults -- --kills N --schedules N [--seed S] [--stores sqlite,postgres] [--nth [--thorough]] [--trace]';

/** Without a seed every run is another one; it is printed. */
export const readOptions = (argv: readonly string[], freshSeed: number): Options | string => {
  try {
    const { values } = parseArgs({
      args: [...argv],
      options: {
        kills: { type: 'string', default: '0' },
        schedules: { type: 'string', default: '0' },
        seed: { type: 'string', default: String(freshSeed) },
        stores: { type: 'string', default: storeNames.join(',') },
        trace: { type: 'boolean', default: false },
        nth: { type: 'boolean', default: false },
        thorough: { type: 'boolean', default: false },
      },
    });
    return {
      kills: count('kills', values.kills),
      schedules: count('schedules', values.schedules),
      seed: count('seed', values.seed),
      stores: values.stores.split(',').map(storeNamed),
      trace: values.trace,
      nth: values.nth,
      thorough: values.thorough,
    };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
};

const count = (name: string, text: string): number => {
  if (!/^\d{1,9}$/u.test(text)) throw new RangeError(`--${name} ${text} is no count`);
  return Number(text);
};

const storeNamed = (text: string): StoreName => {
  const name = storeNames.find((one) => one === text);
  if (name === undefined) throw new RangeError(`--stores ${text}: write ${storeNames.join(' or ')}`);
  return name;
};
