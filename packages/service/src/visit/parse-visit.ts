import { readYaml, schemaIssues } from '@brinewright/equipment';
import type { Issue, Path, Result } from '@brinewright/words';
import { stringify } from 'yaml';
import { z } from 'zod';
import { type Visit, visitSchema } from './schema.ts';

/**
 * Reads a visit document: syntax, then all that its schema finds wrong, each with its place.
 *
 * A value that cannot be read is set aside and said, and the rest is kept: nothing entered is lost by a fault
 * elsewhere in the document. Only what leaves no visit at all (broken syntax, no site, no unit) gives no value.
 */
export const parseVisit = (file: string, text: string): Result<Visit> => {
  const yaml = readYaml(file, text);
  if (!('data' in yaml)) return { ok: false, issues: yaml.issues };
  const issues: Issue[] = [...yaml.issues];
  let data: unknown = yaml.data;
  for (let round = 0; round < mostRounds; round += 1) {
    const read = visitSchema.safeParse(data);
    if (read.success) return { ok: true, value: read.data, issues };
    const found = schemaIssues(read.error, visitSchema, { ...yaml, data });
    if (round === 0) issues.push(...found);
    const rest = withoutPaths(
      data,
      found.map(({ at }) => at),
    );
    if (rest === undefined) break;
    data = rest;
  }
  return { ok: false, issues };
};

/** A value set aside may leave its surroundings empty, which is then a fault of their own: few rounds settle it. */
const mostRounds = 8;

/** The same data without what stands at these paths; nothing when the root itself is at fault. */
const withoutPaths = (data: unknown, paths: readonly Path[]): unknown => {
  const places = paths.map((path) => standing(data, path));
  if (places.some((path) => path.length === 0)) return undefined;
  return pruned(data, [], new Set(places.map((path) => JSON.stringify(path))));
};

/** What is missing cannot be set aside: then that which misses it is. */
const standing = (data: unknown, path: Path): Path => {
  let within = data;
  for (const key of path) {
    if (typeof within !== 'object' || within === null || !Object.hasOwn(within, key))
      return path.slice(0, -1);
    within = Object.entries(within).find(([name]) => name === String(key))?.[1];
  }
  return path;
};

const pruned = (data: unknown, at: Path, gone: ReadonlySet<string>): unknown => {
  if (typeof data !== 'object' || data === null) return data;
  const kept = <K extends string | number>([key, value]: readonly [K, unknown]): [K, unknown][] => {
    const path = [...at, key];
    return gone.has(JSON.stringify(path)) ? [] : [[key, pruned(value, path, gone)]];
  };
  if (Array.isArray(data)) return [...data.entries()].flatMap(kept).map(([, value]) => value);
  return Object.fromEntries(Object.entries(data).flatMap(kept));
};

/** The written form of a visit, quantities as they were entered. `parseVisit(writeVisit(visit))` is the same visit. */
export const writeVisit = (visit: Visit): string => stringify(z.encode(visitSchema, visit), { lineWidth: 0 });

/** JSON Schema of the document, so that editors complete and check while typing. */
export const visitJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(visitSchema, { io: 'input', target: 'draft-2020-12' });
