import type { Path } from '@brinewright/words';
import { isAlias, isMap, isScalar, isSeq, type Node, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { IssueCode, Values } from '../issue/codes.ts';
import { type Rejoined, rejoined } from './comma-split.ts';
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
  if (isSeq(node)) return listOf(node, path, found);
  return isAlias(node) ? refused('yaml.alias', path, node, found) : null;
};

/** A value that a comma broke stands for each of its pieces, so that the others keep their places. */
const listOf = (list: YAMLSeq, path: (string | number)[], found: Found[]): unknown => {
  const values: unknown[] = [];
  while (values.length < list.items.length) {
    const index = values.length;
    const broken = list.flow === true ? rejoined(list.items, index) : undefined;
    if (broken === undefined) values.push(below(list.items[index], index, path, found));
    else {
      found.push(brokenAt(broken, [...path, index]));
      for (let piece = 0; piece < broken.pieces; piece += 1) values.push(meant(broken));
    }
  }
  return values;
};

const brokenAt = ({ offset, text, mended }: Rejoined, path: Path): Found => ({
  severity: 'error',
  path,
  offset,
  ...(mended === undefined
    ? { code: 'yaml.comma-ends-value', values: { text } }
    : { code: 'yaml.decimal-comma', values: { text, mended } }),
});

/** What was meant by a broken value, so that nothing more is said of its pieces. */
const meant = ({ text, mended }: Rejoined): string | number =>
  mended !== undefined && /^\d+\.\d+$/u.test(mended) ? Number(mended) : (mended ?? text);

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
  let piecesLeft = 0;
  for (const [index, { key: node, value }] of map.items.entries()) {
    if (piecesLeft > 0) {
      piecesLeft -= 1;
      continue;
    }
    const key = keyOf(node);
    if (keys.has(key)) found.push(twice(key, path, node, keys.get(key)));
    else keys.set(key, node);
    if (isRewritten(node, key)) found.push(rewritten(key, path, node));
    const broken = map.flow === true ? rejoined(map.items, index) : undefined;
    if (broken === undefined) entries.set(key, below(value, key, path, found));
    else {
      found.push(brokenAt(broken, [...path, key]));
      entries.set(key, meant(broken));
      piecesLeft = broken.pieces - 1;
    }
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
