/** Every bit of an assessment or a stage as text, the definitions it was given apart. */
export const textOf = (value: unknown): string =>
  JSON.stringify(value, (name, inner: unknown) => {
    if (name === 'equipment' || name === 'family') return null;
    return inner instanceof Float64Array ? [...inner] : inner;
  });
