import type { Transport } from '@brinewright/journal';
import type { AppDatabase } from './database.ts';

/** Sends what waits, one by one; where the way breaks off it goes on with the same file the next time (A1). */
export const sendFiles = async (database: AppDatabase, transport: Transport): Promise<void> => {
  const waiting = await database.files.where('state').equals('waiting').sortBy('kept');
  for (const { hash, bytes } of waiting) {
    const reply = await transport.sendFile(hash, new Uint8Array(bytes));
    if (reply.state !== 'answered') return;
    await database.files.update(hash, { state: reply.value });
  }
};
