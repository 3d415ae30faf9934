/** A programming mistake in a physical argument: thrown, never returned. */
export const requirePositive = (name: string, value: number): void => {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be positive, got ${value}`);
};

export const requireNotNegative = (name: string, value: number): void => {
  if (!(value >= 0 && Number.isFinite(value)))
    throw new RangeError(`${name} must not be negative, got ${value}`);
};

export const requireFinite = (name: string, value: number): void => {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
};
