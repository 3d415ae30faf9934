import type { Issue } from '@brinewright/words';
import type { z } from 'zod';
import { hasErrors, issueAt, type Locate, type PlaceOf, unknownWord } from '../issue/report.ts';
import { type DocumentKind, documents, type WrittenFamily, type WrittenMedia } from '../schema/documents.ts';
import { normalised, normalisedPlaces } from './normalised.ts';
import { readYaml, type YamlRead } from './read-yaml.ts';
import { isRecord } from './record.ts';
import { schemaIssues } from './schema-issues.ts';

type Base = { readonly file: string; readonly issues: readonly Issue[] };
export type ParsedFamily = Base & {
  readonly state: 'family' | 'stock';
  readonly id: string;
  readonly written: WrittenFamily;
  readonly placeOf: PlaceOf;
};
export type ParsedMedia = Base & {
  readonly state: 'media';
  readonly written: WrittenMedia;
  readonly locate: Locate;
};
/** A file with errors; what it was about to define is kept, so that others need not miss it twice. */
export type ParsedBroken = Base & { readonly state: 'broken'; readonly id?: string };

/** One definition file, checked against the schema. */
export type Parsed = ParsedFamily | ParsedMedia | ParsedBroken;

/** Reads a definition file: syntax, then all that its schema finds wrong. Pure; never throws. */
export const parseDefinition = (file: string, text: string): Parsed => {
  const yaml = readYaml(file, text);
  if (!('data' in yaml)) return { state: 'broken', file, issues: yaml.issues };
  const kind = kindOf(yaml.data);
  if (kind === undefined) return { state: 'broken', file, issues: [...yaml.issues, noKind(file, yaml)] };
  if (kind === 'media') return parseMedia(file, yaml);
  return parseFamily(file, kind, yaml);
};

const parseFamily = (file: string, kind: 'family' | 'stock', yaml: YamlRead): Parsed => {
  const checked = checkedBy(documents[kind], yaml);
  const id = idOf(yaml.data, kind);
  const known = id === undefined ? {} : { id: kind === 'stock' ? `stock/${id}` : id };
  if (checked.data === undefined || id === undefined) {
    return { state: 'broken', file, issues: checked.issues, ...known };
  }
  const written = normalised(withoutKind(checked.data));
  return { state: kind, file, id, written, placeOf: normalisedPlaces(yaml.placeOf), issues: checked.issues };
};

type Kinded = { readonly family?: string; readonly stock?: string };

const withoutKind = <T extends Kinded>({ family: _family, stock: _stock, ...written }: T) => written;

const parseMedia = (file: string, yaml: YamlRead): Parsed => {
  const checked = checkedBy(documents.media, yaml);
  if (checked.data === undefined) return { state: 'broken', file, issues: checked.issues };
  return { state: 'media', file, written: checked.data, locate: yaml.locate, issues: checked.issues };
};

type Checked<T> = { readonly data?: T; readonly issues: readonly Issue[] };

const checkedBy = <S extends z.ZodType>(schema: S, yaml: YamlRead): Checked<z.output<S>> => {
  const read = schema.safeParse(yaml.data);
  if (!read.success) {
    return { issues: [...yaml.issues, ...schemaIssues(read.error, schema, yaml)] };
  }
  return hasErrors(yaml.issues) ? { issues: yaml.issues } : { data: read.data, issues: yaml.issues };
};

const kindNames = ['family', 'stock', 'media'] as const;

const kindOf = (data: unknown): DocumentKind | undefined =>
  kindNames.find((kind) => isRecord(data) && Object.hasOwn(data, kind));

const idOf = (data: unknown, kind: string): string | undefined => {
  const id = isRecord(data) ? data[kind] : undefined;
  return typeof id === 'string' ? id : undefined;
};

/** Keys that only a visit begins with. */
const visitKeys = ['conditioners', 'site'];

/** Neither family, stock nor media: a visit, or a key close to one of them was probably meant. */
const noKind = (file: string, yaml: YamlRead): Issue => {
  const keys = isRecord(yaml.data) && !Array.isArray(yaml.data) ? Object.keys(yaml.data) : [];
  const ofVisit = keys.find((key) => visitKeys.includes(key));
  if (ofVisit !== undefined) {
    const values = { key: ofVisit, file };
    return issueAt('error', [ofVisit], yaml.locate([ofVisit], 'key'), {
      code: 'definition.is-visit',
      values,
    });
  }
  for (const key of keys) {
    const finding = unknownWord('schema.unknown-key', key, kindNames);
    if ('mend' in finding) return issueAt('error', [key], yaml.locate([key], 'key'), finding);
  }
  return issueAt('error', [], yaml.locate([]), { code: 'definition.no-kind' });
};
