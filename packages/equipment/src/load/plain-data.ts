import type { Path } from '@brinewright/words';
import { isAlias, isMap, isScalar, isSeq, type Node, type Scalar, type YAMLMap } from 'yaml';
import type { IssueCode, Values } from '../issue/codes.ts';
import { keyOf, offsetOf } from './yaml-node.ts';

/** Something that the parser lets through and a definition does not. */
export type Found = {
  readonly severity: 'error' | 'note';
  readonly path: Path;
  readonly offset: number;
  readonly code: IssueCode;
  readonly values: Values;
  /** Offset of what stood there first, where a key stands twice. */
  readonly first?: number;
};

const deepest = 40;

/** Plain data from parsed YAML. Keys stay as they were written: 1.10 does not become 1.1. */
export const plainData = (root: Node): { readonly data: unknown; readonly found: readonly Found[] } => {
  const found: Found[] = [];
  return { data: dataOf(root, [], found), found };
};

/** The path grows and shrinks with the walk; it is copied only where something is found. */
const dataOf = (node: unknown, path: (string | number)[], found: Found[]): unknown => {
  if (isScalar(node)) return scalarOf(node);
  if (path.length > deepest) return refused('yaml.too-deep', path, node, found);
  if (isMap(node)) return mapOf(node, path, found);
  if (isSeq(node)) return node.items.map((item, index) => below(item, index, path, found));
  return isAlias(node) ? refused('yaml.alias', path, node, found) : null;
};

const below = (node: unknown, key: string | number, path: (string | number)[], found: Found[]): unknown => {
  path.push(key);
  const data = dataOf(node, path, found);
  path.pop();
  return data;
};

const refused = (code: 'yaml.alias' | 'yaml.too-deep', path: Path, node: unknown, found: Found[]): null => {
  found.push({ severity: 'error', path: [...path], offset: offsetOf(node), code, values: {} });
  return null;
};

const scalarOf = (node: Scalar): unknown =>
  typeof node.value === 'bigint' ? Number(node.value) : node.value;

const mapOf = (map: YAMLMap, path: (string | number)[], found: Found[]): unknown => {
  const entries = new Map<string, unknown>();
  const keys = new Map<string, unknown>();
  for (const { key: node, value } of map.items) {
    const key = keyOf(node);
    if (keys.has(key)) found.push(twice(key, path, node, keys.get(key)));
    else keys.set(key, node);
    if (isRewritten(node, key)) found.push(rewritten(key, path, node));
    entries.set(key, below(value, key, path, found));
  }
  return Object.fromEntries(entries);
};

const twice = (key: string, path: Path, node: unknown, first: unknown): Found => ({
  severity: 'error',
  path: [...path, key],
  offset: offsetOf(node),
  first: offsetOf(first),
  code: 'yaml.key-twice',
  values: { key },
});

const isRewritten = (node: unknown, key: string): boolean =>
  isScalar(node) && typeof node.value === 'number' && String(node.value) !== key;

const rewritten = (key: string, path: Path, node: unknown): Found => ({
  severity: 'note',
  path: [...path, key],
  offset: offsetOf(node),
  code: 'yaml.number-key',
  values: { key },
});
