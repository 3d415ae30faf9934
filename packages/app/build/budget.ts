import type { Plugin, Rolldown } from 'vite';

/** What loads before the start place is in use: the entry, what it imports, and the chunks named here. */
const alsoAtStart = [/\/src\/features\/start\/screens\/start-screen\.tsx$/u, /\/words\/src\/en\/app\.ts$/u];

/** Writes `budget.json`, the list of chunks that the limit of the first screen is held to. */
export const budget = (): Plugin => ({
  name: 'budget',
  apply: 'build',
  enforce: 'post',
  generateBundle(_, bundle) {
    const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
    const first = chunks.filter((chunk) => chunk.fileName !== 'sw.js' && isFirst(chunk));
    const start = [...new Set(first.flatMap((chunk) => [chunk.fileName, ...importsOf(chunk, chunks)]))];
    this.emitFile({
      type: 'asset',
      fileName: 'budget.json',
      source: `${JSON.stringify({ start }, null, 2)}\n`,
    });
  },
});

const isFirst = (chunk: Rolldown.OutputChunk): boolean =>
  chunk.isEntry || alsoAtStart.some((one) => one.test(chunk.facadeModuleId ?? ''));

const importsOf = (
  chunk: Rolldown.OutputChunk,
  all: readonly Rolldown.OutputChunk[],
  seen: ReadonlySet<string> = new Set(),
): readonly string[] =>
  chunk.imports.flatMap((name) => {
    if (seen.has(name)) return [];
    const next = all.find(({ fileName }) => fileName === name);
    return [name, ...(next === undefined ? [] : importsOf(next, all, new Set([...seen, name])))];
  });
