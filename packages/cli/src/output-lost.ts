import { formatMessage, message } from '@brinewright/words';
import { languageOf, systemOf } from './command-line/options.ts';
import { parseCommandLine } from './command-line/parse.ts';

/** That the output could not be written, in the language the command asked for. */
export const outputLost = (argv: readonly string[], why: string): string => {
  const parsed = parseCommandLine(argv);
  const given = parsed.ok ? parsed.line.given : parsed.given;
  const reader = { language: languageOf(given), system: systemOf(given) };
  return `${formatMessage(message('cli.output-lost', { why }), reader)}\n`;
};
