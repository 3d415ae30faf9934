/*
 * Transcripts: a command, what it prints and how it ends, in plain text.
 *
 *     ## A sentence on what is shown
 *     <<< name.yaml          a file that exists only for this transcript, up to >>>
 *     >>>
 *     $ assess name.yaml     the command line
 *       text                 a line of the output that holds this, after the one before
 *     | text                 the output is exactly these lines
 *     - text                 no line of the output holds this
 *     ! text                 a line of the messages that holds this, after the one before
 *     @ /a/0/b = "json"      a value of the output as JSON; `@ /a : string` asks for its type only
 *     > 0                    exit code
 */
export type Expectation = {
  readonly holds: readonly string[];
  readonly exactly: readonly string[];
  readonly lacks: readonly string[];
  readonly messages: readonly string[];
  readonly json: readonly JsonClaim[];
  readonly code: number;
};

export type JsonClaim = { readonly pointer: string } & (
  | { readonly value: unknown }
  | { readonly type: string }
);

export type Transcript = Expectation & {
  readonly title: string;
  readonly command: string;
  readonly files: ReadonlyMap<string, string>;
};

/** The transcripts in a text; they are parted by their titles. */
export const readTranscripts = (text: string): readonly Transcript[] =>
  text
    .split(/^(?=## )/mu)
    .filter((part) => part.startsWith('## '))
    .map(readOne);

const readOne = (text: string): Transcript => {
  const files = new Map<string, string>();
  const rest = text.replaceAll(/^<<< (\S+)\n([\s\S]*?)^>>>\n/gmu, (_all, name: string, content: string) => {
    files.set(name, content);
    return '';
  });
  const lines = rest.split('\n');
  const marked = (mark: string): string[] =>
    lines.filter((line) => line.startsWith(mark)).map((line) => line.slice(mark.length).trim());
  return {
    title: marked('## ')[0] ?? '',
    command: marked('$ ')[0] ?? '',
    files,
    holds: marked('  '),
    exactly: lines.filter((line) => /^\|(?: |$)/u.test(line)).map((line) => line.slice(2)),
    lacks: marked('- '),
    messages: marked('! '),
    json: marked('@ ').map(readClaim),
    code: Number(marked('> ')[0] ?? Number.NaN),
  };
};

const readClaim = (line: string): JsonClaim => {
  const [, pointer = '', sign = '', rest = ''] = /^(\S+) ([=:]) (.*)$/u.exec(line) ?? [];
  return sign === '=' ? { pointer, value: JSON.parse(rest) } : { pointer, type: rest };
};

/** Words of a command line, with quotes as a shell has them. */
export const wordsOf = (command: string): readonly string[] =>
  [...command.matchAll(/(?:[^\s"']+|"[^"]*"|'[^']*')+/gu)].map(([word]) =>
    word.replaceAll(
      /"([^"]*)"|'([^']*)'/gu,
      (_all, a: string | undefined, b: string | undefined) => a ?? b ?? '',
    ),
  );

/** RFC 6901, for reading only. */
export const atPointer = (value: unknown, pointer: string): unknown =>
  pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'))
    .reduce<unknown>((inner, part) => (isRecord(inner) ? inner[part] : undefined), value);

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

export const typeName = (value: unknown): string => {
  if (Array.isArray(value)) return 'list';
  return value === null ? 'null' : typeof value;
};
