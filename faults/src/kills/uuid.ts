import type { Random } from '../random.ts';

const figures = '0123456789abcdef';

/** Of version 4 by its shape; from seeded chance, so that a run can be told again. */
export const uuidFrom = (random: Random): string => {
  const hex = Array.from({ length: 32 }, () => figures[random.between(0, 15)]).join('');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `4${hex.slice(13, 16)}`,
    `8${hex.slice(17, 20)}`,
    hex.slice(20),
  ].join('-');
};
