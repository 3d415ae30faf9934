import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as physics from '@brinewright/physics';
import * as units from '@brinewright/units';
import { describe, expect, it } from 'vitest';

const packages = fileURLToPath(new URL('../../packages/', import.meta.url));

type Example = { readonly file: string; readonly code: string; readonly printed: string };

const examplesIn = (file: string): readonly Example[] => {
  const comments = [...readFileSync(`${packages}${file}`, 'utf8').matchAll(/```ts\n([\s\S]*?)```/g)];
  return comments.map(([, block = '']) => {
    const text = block.replaceAll(/^ *\* ?/gm, '');
    const [code = '', printed = ''] = text.split('// =>');
    return { file, code: code.trim().replace(/;$/, ''), printed: printed.trim() };
  });
};

/** Digits as printed: 0.00100157 has six, 1.003367e-6 seven. */
const digitsOf = (printed: string): number =>
  printed
    .replace(/e.*$/, '')
    .replace(/^-?0\.0*/, '')
    .replaceAll(/[-._]/g, '').length;

const evaluate = (code: string): unknown => {
  const scope = { ...physics, ...units };
  const run = new Function(...Object.keys(scope), `return (${code});`);
  return run(...Object.values(scope));
};

const examples = globSync('{physics,units}/src/**/*.ts', { cwd: packages })
  .filter((file) => !file.endsWith('.test.ts'))
  .sort()
  .flatMap(examplesIn);

describe('the examples in the comments of physics and units', () => {
  it('are there', () => {
    expect(examples.length).toBeGreaterThan(50);
  });

  it.each(examples)('$file: $code', ({ code, printed }) => {
    expect(printed).not.toBe('');
    const value = evaluate(code);
    const expected = evaluate(printed);
    if (typeof value === 'number') expect(Number(value.toPrecision(digitsOf(printed)))).toBe(expected);
    else expect(value).toEqual(expected);
  });
});
