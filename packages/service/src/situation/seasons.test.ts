import { toUnit } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { laundry, programmed, situationFor } from '../testing/laundry.ts';
import type { VisitDocument } from '../visit/schema.ts';

type Water = NonNullable<VisitDocument['water']>[number];

const withWater = (water: Partial<Water>): VisitDocument =>
  laundry({
    water: [
      { of: 'treated', hardness: '0.5 gpg' },
      { of: 'raw', hardness: '18 gpg', iron: '0.25 mg/L', ...water },
    ],
  });

const seasonIn = (document: VisitDocument, name: string): number => {
  const figure = situationFor(document).figures[`situation.temperature.${name}`];
  if (figure === undefined) throw new Error(`no ${name}`);
  return toUnit(figure.quantity, 'degF');
};

const issuesOf = (document: VisitDocument) =>
  situationFor(document).issues.map(({ code, severity, at }) => ({ code, severity, at }));

describe('coldest and warmest water told the wrong way round', () => {
  const right = withWater({ temperature: '54 degF', coldest: '40 degF', warmest: '90 degF' });
  const swapped = withWater({ temperature: '54 degF', coldest: '90 degF', warmest: '40 degF' });

  it('are said at their place, with the swap as the mend', () => {
    expect(issuesOf(swapped)).toEqual([
      { code: 'seasons-swapped', severity: 'warning', at: ['water', 1, 'coldest'] },
    ]);
    expect(situationFor(swapped).issues[0]?.mend?.key).toBe('situation.seasons-swapped-mend');
    expect(issuesOf(right)).toEqual([]);
  });

  it('give the window that the right way round gives', () => {
    expect(seasonIn(swapped, 'coldest')).toBeCloseTo(40, 9);
    expect(seasonIn(swapped, 'warmest')).toBeCloseTo(90, 9);
    const ceiling = (document: VisitDocument): number =>
      programmed(document).read('program.window.ceiling', 'gpm');
    expect(ceiling(swapped)).toBe(ceiling(right));
  });
});

describe('water measured outside the span told for the year', () => {
  const measured = (temperature: string) =>
    withWater({ temperature, coldest: '50 degF', warmest: '60 degF' });

  it('is a note, and the told span stays', () => {
    const hot = measured('75 degF');
    expect(issuesOf(hot)).toEqual([
      { code: 'temperature-outside-seasons', severity: 'note', at: ['water', 1, 'temperature'] },
    ]);
    expect(seasonIn(hot, 'warmest')).toBeCloseTo(60, 9);
  });

  it('is not worth a word within 1 K', () => {
    expect(issuesOf(measured('61.7 degF'))).toEqual([]);
    expect(issuesOf(measured('61.9 degF'))).toHaveLength(1);
    expect(issuesOf(measured('48.3 degF'))).toEqual([]);
    expect(issuesOf(measured('48.1 degF'))).toHaveLength(1);
  });
});

it('never assumes a warmest water colder than the coldest that was told', () => {
  const document = withWater({ coldest: '70 degF' });
  expect(seasonIn(document, 'warmest')).toBeGreaterThanOrEqual(seasonIn(document, 'coldest'));
  const other = withWater({ warmest: '40 degF' });
  expect(seasonIn(other, 'coldest')).toBeLessThanOrEqual(seasonIn(other, 'warmest'));
});
