import { quantity } from '@brinewright/units';
import { type Issue, message } from '@brinewright/words';
import type { Visit, WaterAnalysis } from '../visit/schema.ts';

/** A thermometer and a told figure agree within this: ours. */
const agreeK = 1;

type Seasons = Partial<Pick<WaterAnalysis, 'coldest' | 'warmest'>>;

/** Coldest and warmest water as told, the lower one always the coldest: swapped they would wash the bed out. */
export const seasonsOf = (water: WaterAnalysis | undefined): Seasons => {
  const { coldest, warmest } = water ?? {};
  if (isSwapped(water)) return { coldest: warmest, warmest: coldest };
  return { coldest, warmest };
};

const isSwapped = (water: WaterAnalysis | undefined): boolean =>
  water?.coldest !== undefined &&
  water.warmest !== undefined &&
  water.coldest.value.si > water.warmest.value.si;

export const judgeSeasons = (visit: Visit): readonly Issue[] => {
  const place = visit.water?.findIndex(({ of }) => of === 'raw') ?? -1;
  const water = visit.water?.[place];
  return water === undefined ? [] : [...swapped(water, place), ...outside(water, place)];
};

const swapped = (water: WaterAnalysis, place: number): readonly Issue[] =>
  !isSwapped(water) || water.coldest === undefined || water.warmest === undefined
    ? []
    : [
        {
          code: 'seasons-swapped',
          severity: 'warning',
          at: ['water', place, 'coldest'],
          message: message('situation.seasons-swapped', {
            coldest: water.coldest.value,
            warmest: water.warmest.value,
          }),
          mend: message('situation.seasons-swapped-mend'),
        },
      ];

/** The told span stands; that the water was met outside it is worth a second question. */
const outside = (water: WaterAnalysis, place: number): readonly Issue[] => {
  const at = water.temperature?.value;
  const { coldest, warmest } = seasonsOf(water);
  if (at === undefined || coldest === undefined || warmest === undefined) return [];
  const [low, high] = [coldest.value.si, warmest.value.si];
  if (at.si >= low - agreeK && at.si <= high + agreeK) return [];
  return [
    {
      code: 'temperature-outside-seasons',
      severity: 'note',
      at: ['water', place, 'temperature'],
      message: message('situation.temperature-outside', {
        measured: quantity('temperature', at.si),
        coldest: quantity('temperature', low),
        warmest: quantity('temperature', high),
      }),
      mend: message('situation.temperature-outside-mend'),
    },
  ];
};
