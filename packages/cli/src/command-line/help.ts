import { hanging, paragraph, stacked } from '../text/lines.ts';
import { widthOf } from '../text/wrap.ts';
import type { Speech } from '../view.ts';
import { commonOptions, type OptionName, optionOf } from './options.ts';
import type { CommandLine } from './parse.ts';
import { type Verb, verbs, verbsUnder } from './verbs.ts';

/** Of one verb, of those that begin with one word, or of all. */
export const helpText = (speech: Speech, { verb, group }: Pick<CommandLine, 'verb' | 'group'>): string[] => {
  if (verb !== undefined) return helpOfOne(speech, verb);
  return group === undefined ? helpOfAll(speech) : helpOfGroup(speech, verbsUnder(group));
};

const helpOfGroup = (speech: Speech, group: readonly Verb[]): string[] =>
  stacked(
    ...group.map((verb) => [
      `brinewright ${usage(verb)}`,
      ...hanging('  ', speech.word(verb.says)),
      ...(verb.example === undefined ? [] : [`  brinewright ${[...verb.words, verb.example].join(' ')}`]),
    ]),
    paragraph(speech.word('cli.help.more')),
  );

const helpOfAll = (speech: Speech): string[] =>
  stacked(
    paragraph(speech.word('cli.help.what')),
    listed(verbs.map((verb) => [usage(verb), speech.word(verb.says)])),
    paragraph(speech.word('cli.help.options')),
    listed(commonOptions.map((name) => optionRow(speech, name))),
    paragraph(speech.word('cli.help.more')),
  );

const helpOfOne = (speech: Speech, verb: Verb): string[] =>
  stacked(
    hanging('', `${speech.word('cli.help.usage')} brinewright ${usage(verb)}`),
    paragraph(speech.word(verb.says)),
    listed([...verb.options, ...commonOptions].map((name) => optionRow(speech, name))),
  );

export const usage = ({ words, args }: Verb): string => [...words, args].join(' ').trim();

const optionRow = (speech: Speech, name: OptionName): readonly [string, string] => {
  const { value, many, says } = optionOf(name);
  return [`--${name}${value === undefined ? '' : ` ${value}`}${many === true ? '…' : ''}`, speech.word(says)];
};

const listed = (rows: readonly (readonly [string, string])[]): string[] => {
  const wide = Math.max(...rows.map(([name]) => widthOf(name))) + 2;
  return rows.flatMap(([name, says]) => hanging(`  ${name.padEnd(wide)}`, says));
};
