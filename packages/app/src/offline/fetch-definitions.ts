import { foldWorkshop, sha256Hex, type Transport } from '@brinewright/journal';
import type { AppDatabase } from './database.ts';
import { dexieStore } from './dexie-store.ts';

/** Brings the workshop's own definition files to this device, so that they are here without a network. */
export const fetchDefinitions = async (
  database: AppDatabase,
  transport: Transport,
  company: string,
): Promise<void> => {
  const held = await dexieStore(database).transact((tx) => tx.entriesOf(company));
  const { definitions } = foldWorkshop(
    held.filter(({ displaced }) => displaced !== true).map(({ entry }) => entry),
  );
  const here = new Map((await database.definitions.toArray()).map(({ name, file }) => [name, file]));
  for (const { name, file } of definitions) {
    if (here.get(name) === file) continue;
    const reply = await transport.fetchFile(file);
    if (reply.state !== 'answered') return;
    if (reply.value === undefined || sha256Hex(reply.value) !== file) continue;
    await database.definitions.put({ name, file, text: new TextDecoder().decode(reply.value) });
  }
  const gone = [...here.keys()].filter((name) => !definitions.some((one) => one.name === name));
  await database.definitions.bulkDelete(gone);
};
