import fc from 'fast-check';
import { expect, it } from 'vitest';
import { optionTable } from './options.ts';
import { parseCommandLine } from './parse.ts';
import { verbs } from './verbs.ts';

const word = fc.oneof(
  fc.constantFrom(...verbs.flatMap(({ words }) => words), 'visit.yaml', 'key=5 gpm', '--', '-x'),
  fc.constantFrom(...Object.keys(optionTable).map((name) => `--${name}`)),
  fc.string({ maxLength: 12 }),
);

it('reads any words as a command line or as one problem, and loses no argument', () => {
  fc.assert(
    fc.property(fc.array(word, { maxLength: 8 }), (argv) => {
      const parsed = parseCommandLine(argv);
      if (!parsed.ok) {
        expect(parsed.problem.key).toMatch(/^cli\./u);
        return;
      }
      const { verb, args, given } = parsed.line;
      const known = [...args, ...(verb?.words ?? []), ...[...given.values.values()].flat()];
      if (verb !== undefined)
        expect(known.every((one) => argv.some((whole) => whole.includes(one)))).toBe(true);
    }),
    { numRuns: 100, seed: 20261125 },
  );
});
