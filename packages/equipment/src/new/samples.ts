import { spaced } from '../issue/space.ts';

const to = (min: readonly [string, string], max: readonly [string, string]): string =>
  spaced(...min, 'to', ...max);
const of = (figure: string, unit: string): string => spaced(figure, unit);

/** What may be entered, section by section, to be shown as comments (invented). */
export const samples = (ask: string) => ({
  limits: { pressure: to(['20', 'psi'], ['125', 'psi']), temperature: of('110', 'degF') },
  features: { size: ['slim', 'broad'], regeneration: { 'raw-pass': 0.8, 'shut-outlet': 0.2 } },
  tells: { 'rib-count': { ask, answers: { '3': { size: 'slim' }, '4': { size: 'broad' } } } },
  bore: {
    ports: spaced('OUTSIDE', 'IN', 'TOP', 'DR', 'BOT', 'OUT', 'IN', 'BOT'),
    joins: [
      {
        service: ['IN+TOP', 'OUT+BOT'],
        backwash: ['IN+BOT', 'TOP+DR'],
        brine: ['BOT+DR'],
        'fast-rinse': ['IN+TOP', 'BOT+DR'],
      },
    ],
  },
  injectors: {
    a: { nozzle: of('1.5', 'mm'), throat: of('3.6', 'mm'), tanks: to(['6', 'in'], ['9', 'in']) },
    b: 'unknown',
  },
  controls: { drain: { '4': of('4', 'gpm') }, refill: { S: of('0.25', 'gpm') } },
  controllers: {
    dial: {
      like: 'stock/clock',
      holds: ['backwash', 'brine', 'fast-rinse', 'refill'],
      times: spaced(to(['2', 'min'], ['80', 'min']), 'by', '2', 'min'),
    },
  },
  parts: { seal: { is: 'seal', number: '110' } },
  operations: { 'end-cap-off': { minutes: 2 } },
});

export type Section = keyof ReturnType<typeof samples>;
