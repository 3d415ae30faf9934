/*
 * The certificate library wires its parts by notes on classes, which it expects under `Reflect`. Only these three are
 * used, so they stand here instead of a package. Import this before the library.
 */
const notes = new WeakMap<object, Map<unknown, unknown>>();

const own = (key: unknown, target: object): unknown => notes.get(target)?.get(key);

const inherited = (key: unknown, target: object): unknown => {
  for (let at: object | null = target; at !== null; at = Object.getPrototypeOf(at))
    if (notes.get(at)?.has(key)) return own(key, at);
  return undefined;
};

const define = (key: unknown, value: unknown, target: object): void => {
  const known = notes.get(target) ?? new Map<unknown, unknown>();
  known.set(key, value);
  notes.set(target, known);
};

for (const [name, value] of [
  ['getMetadata', inherited],
  ['getOwnMetadata', own],
  ['defineMetadata', define],
] as const)
  if (!(name in Reflect)) Object.defineProperty(Reflect, name, { value, configurable: true, writable: true });
