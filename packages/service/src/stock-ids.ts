/**
 * Ids of a definition that the reasoning itself looks for. A family that lacks one loses what hangs on it and nothing
 * else; the shipped stock has them all.
 */
export const stockIds = {
  features: { build: 'build', outlet: 'regeneration', water: 'water' },
  roles: { drainControl: 'drain-control', refillControl: 'refill-control', seal: 'seal', spacer: 'spacer' },
  tests: {
    backwash: 'backwash-flow',
    drainInService: 'drain-in-service',
    draw: 'draw-rate',
    fastRinse: 'fast-rinse-flow',
    programCompared: 'program-compared',
    refill: 'refill-rate',
  },
  cautions: { hotWater: 'hot-water', ratedParts: 'rated-parts' },
} as const;

/** The one operation for a make whose inside nobody has described. */
export const openByMaker = 'open-by-maker';
