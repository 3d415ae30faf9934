import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseVisit, visitJsonSchema } from '@brinewright/service';
import { describe, expect, test } from 'vitest';
import { equipmentCommand } from '../src/commands/equipment.ts';
import { repository, runInProcess } from '../src/testing/run-in-process.ts';

/* The guides in docs/ are run: what they paste is what the program says. */

const read = (path: string): string => readFileSync(join(repository, path), 'utf8');
const guide = read('docs/equipment-definitions.md');
const heron = read('docs/samples/heron.yaml');
const own = ['--equipment', 'docs/samples/heron.yaml'];

type Block = { readonly language: string; readonly text: string };

const blocksOf = (markdown: string): readonly Block[] =>
  [...markdown.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gmu)].map(([, language = '', text = '']) => ({
    language,
    text,
  }));

const section = (title: string): string =>
  guide.split(/^(?=## )/mu).find((part) => part.startsWith(`## ${title}\n`)) ?? '';

const paragraphs = (text: string): readonly string[] => text.trim().split('\n\n');

const checked = async (text: string): Promise<string> => {
  const cwd = mkdtempSync(join(tmpdir(), 'samples-'));
  let out = '';
  const write = (more: string): void => {
    out += more;
  };
  try {
    writeFileSync(join(cwd, 'heron.yaml'), text);
    await equipmentCommand(['check', 'heron.yaml'], {
      write,
      json: false,
      language: 'en',
      equipment: [],
      cwd,
    });
  } finally {
    rmSync(cwd, { recursive: true });
  }
  return out;
};

describe('the worked example', () => {
  const blocks = blocksOf(section('The worked example'));

  test('grows into the sample, and the linter says at each step what the guide shows', async () => {
    let soFar = '';
    for (const { language, text } of blocks) {
      if (language === 'yaml') soFar += text;
      else expect(paragraphs(await checked(soFar))).toEqual(expect.arrayContaining([...paragraphs(text)]));
    }
    expect(soFar).toBe(heron);
  });

  test('has no errors and no warnings', async () => {
    const { code, out } = await runInProcess(['equipment', 'check', 'docs/samples/heron.yaml']);
    expect(code).toBe(0);
    expect(out).toMatch(/^1 file: 0 errors, 0 warnings/mu);
  });
});

const mistakes = [
  ['spacer-wide: all', 'spacer-wide: 5'],
  ['cold: 104 degF', 'cold: 104'],
  ['"5": 5 gpm', '"5": 5,5 gpm'],
  ['edition: [bolted, twist]', 'edition: [bolted, twists]'],
  ['ask: Which colour', 'ask: Look: which colour'],
  ['end-cap-off:', 'end-cap-of:'],
  ['90 min by 1 min', '90 min'],
  ['backwash: [3, 6, 7]', 'backwash: [3, 4]'],
] as const;

describe('the errors of the guide', () => {
  const shown = blocksOf(section('How to read an error')).map(({ text }) => text.trim());

  test.each(mistakes)('%s written as %s gives the one shown', async (right, wrong) => {
    expect(heron).toContain(right);
    const [first = ''] = paragraphs(await checked(heron.replace(right, wrong)));
    expect(first).toContain('error');
    expect(shown).toContain(first);
  });

  test('are all provoked', () => {
    expect(shown).toHaveLength(mistakes.length);
  });
});

describe('the visit of the guide', () => {
  const visit = 'docs/samples/heron-visit.yaml';

  test('is assessed with the family and finds the kit of the edition', async () => {
    const { code, out, err } = await runInProcess(['assess', visit, ...own]);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('Raw water leaks to the drain (seal 3)');
    expect(out).toMatch(/1 {2}reseal wide {2}HR-91/u);
    expect(out).toContain('Count: plugs 1, seals 7, spacers 6.');
  });

  test.each([
    ['parts', ['parts', visit, ...own]],
    ['plan', ['plan', visit, ...own]],
    ['show', ['equipment', 'show', 'heron', ...own]],
    ['ids', ['equipment', 'show', 'heron', 'ids', ...own]],
  ])('%s says what the guide shows', async (word, argv) => {
    const { out } = await runInProcess(argv);
    const title =
      word === 'show' || word === 'ids' ? 'What the stock gives, and how `like` merges' : 'Use the family';
    const shown = blocksOf(section(title)).filter(({ language }) => language === 'text');
    const block = shown[word === 'plan' || word === 'ids' ? 1 : 0]?.text.trim() ?? '';
    expect(block).not.toBe('');
    for (const line of block.split('\n')) expect(out.split('\n')).toContain(line);
  });
});

test('the bed material of the guide has no errors', async () => {
  const media = blocksOf(section('Bed materials'))[0]?.text ?? '';
  expect(media).toContain('media:');
  expect(await checked(media)).toBe('1 file: 0 errors, 0 warnings, 0 notes\n');
});

test('the draft ends with what the guide shows', async () => {
  const { out } = await runInProcess(['equipment', 'new', 'Heron valve']);
  const shown = blocksOf(section('The first ten minutes')).find(({ language }) => language === 'text');
  expect(shown?.text).toContain('Still to enter');
  expect(paragraphs(await checked(out))).toEqual(expect.arrayContaining([...paragraphs(shown?.text ?? '')]));
});

describe('the page on visits', () => {
  const page = read('docs/visit-document.md');
  const pieces = blocksOf(page).filter(({ language }) => language === 'yaml');
  const visit = pieces.map(({ text }) => text).join('');

  test('shows one visit, piece by piece, without a fault', () => {
    const parsed = parseVisit('visit.yaml', visit);
    expect(parsed.issues).toEqual([]);
    expect(parsed.ok).toBe(true);
  });

  test('shows or names every field of a visit', () => {
    const fields = Object.keys(visitJsonSchema().properties ?? {});
    expect(fields.length).toBeGreaterThan(25);
    expect(fields.filter((field) => !new RegExp(`^${field}:|\`${field}\``, 'mu').test(page))).toEqual([]);
  });

  test('shows a visit that is assessed without a complaint', async () => {
    const files = new Map([['visit.yaml', visit]]);
    const { code, out, err } = await runInProcess(['assess', 'visit.yaml', ...own], files);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).not.toContain('is kept and not used');
  });
});
