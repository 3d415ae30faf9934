import { space } from '../issue/space.ts';

/**
 * The common part of YAML, read in one pass: maps and lists by indentation or in braces and brackets, plain and
 * double-quoted values of one line, comments. A tenth of the time of the full parser, and no places.
 *
 * Whatever is unusual, doubtful or wrong gives nothing, and the full parser decides. What comes back is what the full
 * parser finds, without an error or a note; a test holds the two against each other.
 */
export const quickYaml = (text: string): { readonly data: unknown } | undefined => {
  if (/[\t\r\uFEFF]|^(?:---|\.\.\.|%)/mu.test(text)) return undefined;
  const cursor: Cursor = { text, at: 0, depth: 0 };
  try {
    const indent = nextLine(cursor);
    if (indent !== 0) return undefined;
    const data = blockMap(cursor, indent);
    return nextLine(cursor) === none ? { data } : undefined;
  } catch (error) {
    if (error instanceof NotQuick) return undefined;
    throw error;
  }
};

type Cursor = { readonly text: string; at: number; depth: number };

class NotQuick extends Error {}

const giveUp = (): never => {
  throw new NotQuick();
};

const none = -1;
const deepest = 30;

/** To the first sign of the next line that has one; gives its column. */
const nextLine = (cursor: Cursor): number => {
  const { text } = cursor;
  for (;;) {
    const start = cursor.at;
    while (text[cursor.at] === space) cursor.at += 1;
    const sign = text[cursor.at];
    if (sign === undefined) return none;
    if (sign !== '\n' && sign !== '#') return cursor.at - start;
    toNextLine(cursor);
  }
};

const toNextLine = (cursor: Cursor): void => {
  const end = cursor.text.indexOf('\n', cursor.at);
  cursor.at = end < 0 ? cursor.text.length : end + 1;
};

/** Nothing but a comment may follow on the line. */
const endLine = (cursor: Cursor): void => {
  const start = cursor.at;
  while (cursor.text[cursor.at] === space) cursor.at += 1;
  const sign = cursor.text[cursor.at];
  const isComment = sign === '#' && cursor.at > start;
  if (sign !== undefined && sign !== '\n' && !isComment) giveUp();
  toNextLine(cursor);
};

const match = (cursor: Cursor, pattern: RegExp): string | undefined => {
  pattern.lastIndex = cursor.at;
  const found = pattern.exec(cursor.text)?.[0];
  if (found !== undefined) cursor.at += found.length;
  return found;
};

const quoted = /"[^"\\\n]*"/uy;
const blockKey = /[^\s\-?:,[\]{}#&*!|>'"%@`][^\n:#]*(?=:(?:[ \n]|$))/uy;
const blockPlain = /(?:[^\s\-?:,[\]{}#&*!|>'"%@`]|-(?=\S))(?:[^\n:#]|:(?=[^ \n])|(?<=\S)#)*/uy;
const flowPlain =
  /(?:[^\s\-?:,[\]{}#&*!|>'"%@`]|-(?=[^\s,[\]{}]))(?:[^\s,[\]{}:#]|:(?=[^\s,[\]{}])|(?<=\S)#| +(?=[^\s,[\]{}:#]))*/uy;

/** A node that begins a line, or stands behind the hyphen of a list. */
const block = (cursor: Cursor, indent: number): unknown => {
  cursor.depth += 1;
  if (cursor.depth > deepest) giveUp();
  const data = blockOf(cursor, indent);
  cursor.depth -= 1;
  return data;
};

const blockOf = (cursor: Cursor, indent: number): unknown => {
  const { text, at } = cursor;
  if (text[at] === '-' && text[at + 1] === space) return blockList(cursor, indent);
  if (text[at] === '{' || text[at] === '[') return inline(cursor, indent - 1);
  const isKey = keyText(cursor) !== undefined && text[cursor.at] === ':';
  cursor.at = at;
  return isKey ? blockMap(cursor, indent) : inline(cursor, indent - 1);
};

const keyText = (cursor: Cursor): string | undefined => {
  const inQuotes = match(cursor, quoted);
  return inQuotes === undefined ? plainKey(match(cursor, blockKey)) : inQuotes.slice(1, -1);
};

/** Keys stay as they are written; one that a number would be written otherwise for gets a note elsewhere. */
const plainKey = (key: string | undefined): string | undefined => {
  const text = key?.trimEnd();
  return text !== undefined && numberLike.test(text) && String(Number(text)) !== text ? giveUp() : text;
};

const blockMap = (cursor: Cursor, indent: number): unknown => {
  const entries = new Map<string, unknown>();
  for (;;) {
    const key = keyText(cursor) ?? giveUp();
    if (cursor.text[cursor.at] !== ':' || entries.has(key)) giveUp();
    cursor.at += 1;
    entries.set(key, valueOfKey(cursor, indent));
    if (!isNext(cursor, indent)) return Object.fromEntries(entries);
  }
};

const blockList = (cursor: Cursor, indent: number): unknown => {
  const items: unknown[] = [];
  for (;;) {
    const start = cursor.at;
    if (match(cursor, /- +(?=[^\s#])/uy) === undefined) giveUp();
    items.push(block(cursor, indent + cursor.at - start));
    if (!isNext(cursor, indent)) return items;
  }
};

/** Whether the next line goes on with what stands at this column; deeper would be part of a value. */
const isNext = (cursor: Cursor, indent: number): boolean => {
  const start = cursor.at;
  const found = nextLine(cursor);
  if (found > indent) giveUp();
  if (found === indent) return true;
  cursor.at = start;
  return false;
};

const valueOfKey = (cursor: Cursor, indent: number): unknown => {
  const start = cursor.at;
  while (cursor.text[cursor.at] === space) cursor.at += 1;
  const sign = cursor.text[cursor.at];
  if (sign !== '\n' && sign !== '#' && sign !== undefined) {
    return cursor.at === start ? giveUp() : inline(cursor, indent);
  }
  endLine(cursor);
  const below = nextLine(cursor);
  return below > indent ? block(cursor, below) : giveUp();
};

/** A value that ends its line. */
const inline = (cursor: Cursor, indent: number): unknown => {
  const sign = cursor.text[cursor.at];
  const data =
    sign === '{' || sign === '[' || sign === '"'
      ? flow(cursor, indent)
      : scalar(match(cursor, blockPlain)?.trimEnd());
  endLine(cursor);
  return data;
};

const flow = (cursor: Cursor, indent: number): unknown => {
  cursor.depth += 1;
  if (cursor.depth > deepest) giveUp();
  const data = flowOf(cursor, indent);
  cursor.depth -= 1;
  return data;
};

const flowOf = (cursor: Cursor, indent: number): unknown => {
  switch (cursor.text[cursor.at]) {
    case '{':
      return flowMap(cursor, indent);
    case '[':
      return flowList(cursor, indent);
    case '"':
      return (match(cursor, quoted) ?? giveUp()).slice(1, -1);
    default:
      return scalar(match(cursor, flowPlain));
  }
};

const flowMap = (cursor: Cursor, indent: number): unknown => {
  const entries = new Map<string, unknown>();
  eachIn(cursor, indent, '}', () => {
    const inQuotes = match(cursor, quoted)?.slice(1, -1);
    const key = inQuotes ?? plainKey(match(cursor, flowPlain)) ?? giveUp();
    if (match(cursor, /:(?=[ \n])/uy) === undefined || entries.has(key)) giveUp();
    skip(cursor, indent);
    entries.set(key, flow(cursor, indent));
  });
  return Object.fromEntries(entries);
};

const flowList = (cursor: Cursor, indent: number): unknown => {
  const items: unknown[] = [];
  eachIn(cursor, indent, ']', () => {
    items.push(flow(cursor, indent));
  });
  return items;
};

/** What stands between a bracket and its fellow. A comma right before a figure may be a decimal one. */
const eachIn = (cursor: Cursor, indent: number, close: string, read: () => void): void => {
  cursor.at += 1;
  for (;;) {
    skip(cursor, indent);
    if (cursor.text[cursor.at] === close) break;
    read();
    skip(cursor, indent);
    if (cursor.text[cursor.at] === close) break;
    if (match(cursor, /,(?!\d)/uy) === undefined) giveUp();
  }
  cursor.at += 1;
};

/** Spaces and line ends inside brackets; each line stands deeper than what holds the bracket. */
const skip = (cursor: Cursor, indent: number): void => {
  while (cursor.text[cursor.at] === space) cursor.at += 1;
  if (cursor.text[cursor.at] !== '\n') return;
  const before = cursor.at + 1;
  toNextLine(cursor);
  const column = nextLine(cursor);
  if (column <= indent || cursor.text.slice(before, cursor.at).includes('#')) giveUp();
};

const numberLike = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$|^0[xo]|^[-+]?\.(?:inf|nan)$/iu;
const number = /^-?(?:0|[1-9]\d{0,14})(?:\.\d+)?$/u;

const scalar = (text: string | undefined): unknown => {
  if (text === undefined || text === '') return giveUp();
  if (text === 'true' || text === 'false') return text === 'true';
  if (number.test(text) && text !== '-0') return Number(text);
  return numberLike.test(text) || /^(?:null|true|false|~)$/iu.test(text) ? giveUp() : text;
};
