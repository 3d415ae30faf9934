import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseVisit } from '@brinewright/service';
import type { Workshop } from './workshop.ts';

const folder = fileURLToPath(new URL('../../../../demo/', import.meta.url));

/** The invented visits that come with the program, each entered by its own technician. */
export const fillWithDemo = async (workshop: Workshop): Promise<void> => {
  const files = (await readdir(folder)).filter((file) => file.endsWith('.yaml')).toSorted();
  for (const file of files) {
    const text = await readFile(join(folder, file), 'utf8');
    const taken = await workshop.addVisit(writerOf(file, text) ?? workshop.owner, file, text);
    if (taken.state !== 'taken') throw new Error(`demo/${file} was not taken: ${taken.state}`);
  }
};

const writerOf = (file: string, text: string): string | undefined => {
  const parsed = parseVisit(file, text);
  return parsed.ok ? parsed.value.by?.name : undefined;
};
