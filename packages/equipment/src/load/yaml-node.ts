import type { Path } from '@brinewright/words';
import { isAlias, isMap, isScalar, isSeq } from 'yaml';

/** A key as it stands in the text. */
export const keyOf = (node: unknown): string => {
  if (!isScalar(node)) return String(node);
  return typeof node.value === 'string' ? node.value : (node.source ?? String(node.value));
};

/** Where a node begins in the text. */
export const offsetOf = (node: unknown): number => rangeStart(node) ?? 0;

const rangeStart = (node: unknown): number | undefined =>
  isScalar(node) || isMap(node) || isSeq(node) || isAlias(node) ? node.range?.[0] : undefined;

/** A plain value as it stands in the text. */
export const sourceAt = (root: unknown, path: Path): string | undefined => {
  const { node } = walkTo(root, path) ?? {};
  return isScalar(node) ? node.source : undefined;
};

/** Offset of the key or value at a path; nothing where the text has none. */
export const offsetAt = (root: unknown, path: Path, part: 'key' | 'value'): number | undefined => {
  const { key, node } = walkTo(root, path) ?? {};
  return (part === 'key' ? rangeStart(key) : undefined) ?? rangeStart(node) ?? rangeStart(key);
};

type Step = { readonly key?: unknown; readonly node: unknown };

const walkTo = (root: unknown, path: Path): Step | undefined => {
  let here: Step | undefined = { node: root };
  for (const step of path) here = here === undefined ? undefined : stepInto(here.node, step);
  return here;
};

const stepInto = (node: unknown, step: string | number): Step | undefined => {
  if (isSeq(node)) return { node: node.items[Number(step)] };
  const pair = isMap(node) ? node.items.find((item) => keyOf(item.key) === String(step)) : undefined;
  return pair === undefined ? undefined : { key: pair.key, node: pair.value };
};
