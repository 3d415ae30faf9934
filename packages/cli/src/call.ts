import { delimiter, resolve } from 'node:path';
import type { Message } from '@brinewright/words';
import { type Given, languageOf, systemOf } from './command-line/options.ts';
import { exit } from './exit.ts';
import type { Io } from './io.ts';
import { type Speech, speechFor } from './view.ts';

/** One command at work: what it was given, and how it speaks. */
export type Call = {
  readonly io: Io;
  readonly args: readonly string[];
  readonly given: Given;
  readonly speech: Speech;
  readonly json: boolean;
  /** Own definitions, absolute, from the options and the environment. */
  readonly equipment: readonly string[];
};

export const callOf = (io: Io, args: readonly string[], given: Given): Call => ({
  io,
  args,
  given,
  speech: speechFor({ language: languageOf(given), system: systemOf(given) }),
  json: given.flags.has('json'),
  equipment: [...fromEnvironment(io), ...(given.values.get('equipment') ?? [])].map((path) =>
    resolve(io.cwd, path),
  ),
});

const fromEnvironment = ({ env }: Io): readonly string[] =>
  (env.BRINEWRIGHT_EQUIPMENT ?? '').split(delimiter).filter((path) => path !== '');

export const print = ({ io }: Call, lines: readonly string[]): void => io.out(`${lines.join('\n')}\n`);

export const printJson = ({ io }: Call, value: unknown): void =>
  io.out(`${JSON.stringify(value, undefined, 2)}\n`);

export const complain = ({ io, speech }: Call, ...messages: readonly Message[]): void =>
  io.err(`${messages.map(speech.say).join(' ')}\n`);

/** The command is wrong, not what it looks at. */
export const misused = (call: Call, ...messages: readonly Message[]): number => {
  complain(call, ...messages);
  return exit.usage;
};
