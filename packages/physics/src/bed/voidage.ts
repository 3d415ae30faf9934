/** A voidage is a share: more than nothing, less than all. */
export const requireVoidage = (name: string, value: number): void => {
  if (!(value > 0 && value < 1)) throw new RangeError(`${name} must lie between 0 and 1, got ${value}`);
};

/** How much higher a bed stands when its voidage grows: (1 − ε₀)/(1 − ε) − 1. Infinite at voidage 1. */
export const expansionOf = (settled: number, expanded: number): number => (1 - settled) / (1 - expanded) - 1;

/** The voidage at which a bed has grown by a share of its settled depth. */
export const voidageAt = (settled: number, expansion: number): number => 1 - (1 - settled) / (1 + expansion);
