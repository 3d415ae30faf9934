import { message } from '@brinewright/words';
import { type Call, callOf, misused, print } from './call.ts';
import { helpText, usage } from './command-line/help.ts';
import { parseCommandLine } from './command-line/parse.ts';
import type { Verb } from './command-line/verbs.ts';
import { assessCommand, stageCommand } from './commands/assess.ts';
import { backupCommand } from './commands/backup.ts';
import { checkCommand } from './commands/check.ts';
import { equipmentVerb } from './commands/equipment-verb.ts';
import { labList } from './commands/lab-list.ts';
import { labRun } from './commands/lab-run.ts';
import { labWater } from './commands/lab-water.ts';
import { migrateCommand } from './commands/migrate.ts';
import { restoreCommand } from './commands/restore.ts';
import { serveCommand } from './commands/serve.ts';
import { startCommand } from './commands/start.ts';
import { exit } from './exit.ts';
import type { Io } from './io.ts';

/** The whole program for one command line; gives the exit code and never throws. */
export const run = async (argv: readonly string[], io: Io): Promise<number> => {
  const parsed = parseCommandLine(argv);
  if (!parsed.ok) return misused(callOf(io, [], parsed.given), parsed.problem, message('cli.see-help'));
  const { verb, args, given } = parsed.line;
  const call = callOf(io, args, given);
  if (verb === undefined || given.flags.has('help')) return help(call, parsed.line);
  if (args.length < verb.least || args.length > verb.most)
    return misused(call, message('cli.usage', { usage: usage(verb) }));
  try {
    return await perform(verb, call);
  } catch (error) {
    io.err(
      `${call.speech.word('cli.our-mistake', { what: error instanceof Error ? error.message : String(error) })}\n`,
    );
    return exit.ours;
  }
};

/** Asked for, help is data; a bare command is a use that gives nothing. */
const help = (call: Call, asked: Parameters<typeof helpText>[1]): number => {
  const lines = helpText(call.speech, asked);
  if (call.given.flags.has('help')) {
    print(call, lines);
    return exit.fine;
  }
  call.io.err(`${lines.join('\n')}\n`);
  return exit.usage;
};

const perform = (verb: Verb, call: Call): number | Promise<number> => {
  const [first, second = ''] = verb.words;
  switch (first) {
    case 'assess':
      return assessCommand(call);
    case 'recognise':
      return stageCommand(call, 'recognition');
    case 'diagnose':
      return stageCommand(call, 'diagnosis');
    case 'parts':
      return stageCommand(call, 'repair');
    case 'plan':
      return stageCommand(call, 'plan');
    case 'program':
      return stageCommand(call, 'program');
    case 'prove':
      return stageCommand(call, 'proof');
    case 'equipment':
      return equipmentVerb(call, second);
    case 'check':
      return checkCommand(call);
    case 'lab':
      return second === 'list' ? labList(call) : second === 'run' ? labRun(call) : labWater(call);
    case 'start':
      return startCommand(call);
    case 'serve':
      return serveCommand(call);
    case 'migrate':
      return migrateCommand(call);
    case 'backup':
      return backupCommand(call);
    case 'restore':
      return restoreCommand(call);
    default:
      throw new Error(`no command for ${verb.words.join(' ')}`);
  }
};
