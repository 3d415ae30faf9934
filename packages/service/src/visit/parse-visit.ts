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
  if (paths.some((path) => path.length === 0)) return undefined;
  return paths.reduce<unknown>((rest, path) => withoutPath(rest, path), data);
};

/** List elements become empty places first, so that the paths after them still hold. */
const withoutPath = (data: unknown, path: Path): unknown => {
  const [key, ...rest] = path;
  if (key === undefined || typeof data !== 'object' || data === null) return data;
  if (Array.isArray(data)) {
    const items: readonly unknown[] = data;
    return rest.length === 0
      ? items.filter((_, place) => place !== key)
      : items.map((item, place) => (place === key ? withoutPath(item, rest) : item));
  }
  const entries: [string, unknown][] = Object.entries(data);
  return Object.fromEntries(
    entries.flatMap(([name, value]): [string, unknown][] => {
      if (name !== String(key)) return [[name, value]];
      return rest.length === 0 ? [] : [[name, withoutPath(value, rest)]];
    }),
  );
};

/** The written form of a visit, quantities as they were entered. `parseVisit(writeVisit(visit))` is the same visit. */
export const writeVisit = (visit: Visit): string => stringify(z.encode(visitSchema, visit), { lineWidth: 0 });

/** JSON Schema of the document, so that editors complete and check while typing. */
export const visitJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(visitSchema, { io: 'input', target: 'draft-2020-12' });
