import { visitJsonSchema } from '@brinewright/service';
import type { Call } from '../call.ts';
import { optionValue } from '../command-line/options.ts';
import { exit } from '../exit.ts';
import { equipmentCommand } from './equipment.ts';

/** The equipment verbs, with what they write sent the right way: findings are data, refusals are messages. */
export const equipmentVerb = async (call: Call, verb: string): Promise<number> => {
  const written: string[] = [];
  const code = await equipmentCommand([verb, ...call.args, ...optionsOf(call)], {
    write: (text) => void written.push(text),
    json: call.json,
    language: call.speech.reader.language,
    equipment: call.equipment,
    cwd: call.io.cwd,
    visitSchema: visitJsonSchema,
  });
  const isData = code === exit.fine || (code === exit.faulty && (verb === 'check' || call.json));
  (isData ? call.io.out : call.io.err)(written.join(''));
  return code;
};

const optionsOf = ({ given }: Call): readonly string[] => {
  const like = optionValue(given, 'like');
  const from = optionValue(given, 'from');
  return [
    ...(given.flags.has('visit') ? ['--visit'] : []),
    ...(like === undefined ? [] : ['--like', like]),
    ...(from === undefined ? [] : ['--from', from]),
  ];
};
