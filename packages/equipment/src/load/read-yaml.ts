import type { Issue, Path, Place } from '@brinewright/words';
import { type Document, LineCounter, parseDocument, type YAMLError } from 'yaml';
import type { Finding } from '../issue/codes.ts';
import { issueAt, type Locate, type PlaceOf } from '../issue/report.ts';
import { type Found, plainData } from './plain-data.ts';
import { offsetAt, sourceAt } from './yaml-node.ts';

export type YamlRead = {
  /** Plain data; absent when the syntax could not be read. */
  readonly data?: unknown;
  /** Place of a key or value, where the text has it. */
  readonly placeOf: PlaceOf;
  /** Place of a path, or of the nearest thing round it. */
  readonly locate: Locate;
  /** A plain value as it stands in the text. */
  readonly textOf: (path: Path) => string | undefined;
  readonly issues: readonly Issue[];
};

/** Plain data that was never YAML, so that a schema finds in it what it finds in a file; `name` stands for the file. */
export const readData = (name: string, data: unknown): YamlRead => ({
  data,
  placeOf: () => undefined,
  textOf: () => undefined,
  locate: () => ({ file: name, line: 1, column: 1 }),
  issues: [],
});

const longestText = 1_000_000;

/** Reads a YAML text into plain data that knows the place of every key and value. Never throws. */
export const readYaml = (file: string, text: string): YamlRead => {
  if (text.length > longestText)
    return refused(file, { code: 'yaml.too-long', values: { limit: longestText } });
  const lines = new LineCounter();
  const document = parsed(text, lines);
  if (document === undefined) return refused(file, { code: 'yaml.too-deep' });
  const placeAt = (offset: number): Place => placeIn(file, lines, offset);
  const broken = document.errors[0] ?? document.warnings[0];
  if (broken !== undefined)
    return refused(file, syntaxFinding(broken), placeAt(Math.min(broken.pos[0], text.trimEnd().length)));
  const root = document.contents;
  if (root === null) return refused(file, { code: 'yaml.empty' });
  const { data, found } = plainData(root);
  const placeOf: PlaceOf = (path, part = 'value') => {
    const offset = offsetAt(root, path, part);
    return offset === undefined ? undefined : placeAt(offset);
  };
  return {
    data,
    textOf: (path) => sourceAt(root, path),
    placeOf,
    locate: locateWith(placeOf, file),
    issues: found.map((one) => foundAt(one, placeAt)),
  };
};

const refused = (file: string, finding: Finding, place: Place = { file, line: 1, column: 1 }): YamlRead => ({
  placeOf: () => undefined,
  textOf: () => undefined,
  locate: () => ({ file, line: 1, column: 1 }),
  issues: [issueAt('error', [], place, finding)],
});

const foundAt = (found: Found, placeAt: (offset: number) => Place): Issue => {
  const line = found.first === undefined ? {} : { line: placeAt(found.first).line };
  const values = { ...found.values, ...line };
  return issueAt(found.severity, found.path, placeAt(found.offset), { code: found.code, values });
};

/** The place of a path, or of the nearest thing round it that has one. */
export const locateWith =
  (placeOf: PlaceOf, file: string): Locate =>
  (path: Path, part) => {
    const own = placeOf(path, part);
    if (own !== undefined) return own;
    for (let length = path.length - 1; length > 0; length -= 1) {
      const round = placeOf(path.slice(0, length), 'key');
      if (round !== undefined) return round;
    }
    return placeOf([]) ?? { file, line: 1, column: 1 };
  };

const placeIn = (file: string, lines: LineCounter, offset: number): Place => {
  const { line, col } = lines.linePos(offset);
  return { file, line: Math.max(1, line), column: Math.max(1, col) };
};

/** Nesting thousands deep overflows the parser's stack; that is a fault of the text, not ours. */
const parsed = (text: string, lineCounter: LineCounter): Document.Parsed | undefined => {
  try {
    return parseDocument(text, { lineCounter, uniqueKeys: false, prettyErrors: false });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};

const syntaxFinding = (error: YAMLError): Finding => {
  switch (error.code) {
    case 'BAD_INDENT':
      return { code: ofBrackets(error) ? 'yaml.not-closed' : 'yaml.indent' };
    case 'TAB_AS_INDENT':
      return { code: 'yaml.tab' };
    case 'BLOCK_IN_FLOW':
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return { code: 'yaml.key-in-value' };
    case 'MISSING_CHAR':
      return { code: ofList(error) ? 'yaml.indent' : 'yaml.not-closed' };
    case 'BAD_SCALAR_START':
    case 'BAD_DQ_ESCAPE':
      return { code: 'yaml.quote-needed' };
    case 'MULTIPLE_DOCS':
      return { code: 'yaml.two-documents' };
    case 'TAG_RESOLVE_FAILED':
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
    case 'MULTIPLE_TAGS':
      return { code: 'yaml.tag' };
    default:
      return { code: 'yaml.unreadable' };
  }
};

/* One code of the parser for two mistakes: its sentence tells a bracket left open from a line set too far in. */
const ofBrackets = ({ message }: YAMLError): boolean => message.startsWith('Flow');

const ofList = ({ message }: YAMLError): boolean => message.startsWith('Sequence');
