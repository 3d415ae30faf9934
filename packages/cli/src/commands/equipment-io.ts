import { resolve } from 'node:path';
import { nearest } from '@brinewright/equipment';
import { formatMessage, type Language, type MessageKey, message } from '@brinewright/words';

/** What a verb needs of the command line. */
export type EquipmentIo = {
  readonly write: (text: string) => void;
  readonly json: boolean;
  readonly language: Language;
  /** Own definitions, from --equipment and the environment. */
  readonly equipment: readonly string[];
  readonly cwd: string;
  /** JSON Schema of a visit, for `schema --visit`. */
  readonly visitSchema?: () => unknown;
};

export const say = (
  io: EquipmentIo,
  key: MessageKey,
  values: Readonly<Record<string, string | number>> = {},
): string => formatMessage(message(key, values), { language: io.language, system: 'us' });

export const writeJson = (io: EquipmentIo, value: unknown): void =>
  io.write(`${JSON.stringify(value, null, 2)}\n`);

export const ownPaths = (io: EquipmentIo, paths: readonly string[] = []): readonly string[] =>
  [...io.equipment, ...paths].map((path) => resolve(io.cwd, path));

/** That a word is not among those known, and the one that was probably meant. */
export const writeUnknown = (
  io: EquipmentIo,
  key: 'equipment.cli.no-family' | 'equipment.cli.no-section',
  word: string,
  known: readonly string[],
): void => {
  const near = nearest(word, known);
  io.write(`${say(io, key, { word, known: known.join(', ') })}\n`);
  if (near !== undefined) io.write(`${say(io, 'issue.did-you-mean', { near })}\n`);
};
