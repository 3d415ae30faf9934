import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = join(import.meta.dirname, '../../../demo');

export type DemoVisit = { readonly file: string; readonly text: string };

/** The written visits of the demo, in order of name. */
export const demoVisits: readonly DemoVisit[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .toSorted()
  .map((file) => ({ file, text: readFileSync(join(folder, file), 'utf8') }));
