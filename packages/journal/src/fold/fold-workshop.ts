import type { Entry } from '../entry/entry.ts';
import type { Handlers } from '../kinds/read-payload.ts';
import { effectiveFacts } from './effective.ts';
import type { FoldedWorkshop } from './folded.ts';
import { Registers } from './registers.ts';

/** The workshop out of its own stream: its name, and its own definitions by the name of their file. */
export const foldWorkshop = (entries: readonly Entry[]): FoldedWorkshop => {
  const { facts, rivals, setAside, waiting, newer } = effectiveFacts(entries);
  const workshop: Workshop = { name: new Registers(), definitions: new Registers() };
  for (const { entry, fact } of facts) fact.tell(workshopHandlers, { workshop, entry });
  const [name] = workshop.name.values();
  return {
    name: typeof name?.value === 'string' ? name.value : undefined,
    definitions: workshop.definitions
      .values()
      .flatMap(({ path: [file], value }) =>
        file !== undefined && typeof value === 'string' ? [{ name: file, file: value }] : [],
      ),
    rivals: [...rivals, ...workshop.name.rivals(), ...workshop.definitions.rivals()],
    setAside,
    waiting,
    newer,
  };
};

type Workshop = { readonly name: Registers; readonly definitions: Registers };

const workshopHandlers: Handlers<{ readonly workshop: Workshop; readonly entry: Entry }> = {
  'workshop-named': ({ workshop, entry }, { name }) => workshop.name.write(entry, ['name'], name),
  'definition-added': ({ workshop, entry }, { name, file }) =>
    workshop.definitions.write(entry, [name], file),
};
