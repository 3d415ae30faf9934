import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from './run.ts';
import { repository, runInProcess } from './testing/run-in-process.ts';

const demos = readdirSync(join(repository, 'demo')).filter((name) => name.endsWith('.yaml'));

describe('the papers', () => {
  it.each([
    ['html', 'Report written to p.html.'],
    ['sheet', 'Work sheet written to p.html.'],
    ['card', 'Leave-safe card written to p.html.'],
  ])(
    '--%s is written to the file named, with the typeface, and the terminal is told',
    async (option, told) => {
      const { code, out, err, written } = await runInProcess([
        'assess',
        'demo/laundry-fast.yaml',
        `--${option}`,
        'p.html',
      ]);
      const html = written.get(join(repository, 'p.html')) ?? '';
      expect(code).toBe(0);
      expect(out).toBe('');
      expect(err).toContain(told);
      expect(html).toMatch(/^<!doctype html>/iu);
      expect(html).toContain('Saltmere Laundry');
      expect(html).toContain('data:font/woff2;base64,');
    },
  );

  it('that cannot be written are said, and the rest is not tried', async () => {
    const err: string[] = [];
    const code = await run(['assess', 'demo/laundry-fast.yaml', '--html', 'no/r.html', '--card', 'c.html'], {
      out: () => {},
      err: (text) => void err.push(text),
      cwd: repository,
      env: {},
      readText: (path) => readFileSync(path, 'utf8'),
      readBase64: () => '',
      realPath: (path) => path,
      writeText: () => {
        throw Object.assign(new Error('no such folder'), { code: 'ENOENT' });
      },
      now: () => '2026-11-25T15:00:00.000Z',
      stopAsked: () => Promise.resolve(),
    });
    expect(code).toBe(1);
    expect(err.join('')).toBe(
      'no/r.html was not written. Check that its folder exists and may be written to.\n',
    );
  });
});

describe('a paper', () => {
  const visit = 'demo/laundry-fast.yaml';

  it.each([
    ['the visit', ['--html', visit], `--html ${visit} would overwrite a file that this command reads.`],
    ['the visit by another path', ['--card', 'demo/../demo/laundry-fast.yaml'], 'would overwrite a file'],
    [
      'a definition',
      ['--sheet', 'docs/samples/heron.yaml', '--equipment', 'docs/samples/heron.yaml'],
      'would overwrite a file',
    ],
    [
      'a definition in a folder of them',
      ['--sheet', 'docs/samples/heron.yaml', '--equipment', 'docs/samples'],
      'would overwrite a file',
    ],
    [
      'another paper',
      ['--html', 'p.html', '--card', './p.html'],
      '--card ./p.html would overwrite the paper of --html.',
    ],
  ])('is not written onto %s', async (_title, options, told) => {
    const { code, out, err, written } = await runInProcess(['assess', visit, ...options]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(told);
    expect(err).toContain('Nothing was written. Name another file for the paper.');
    expect(written.size).toBe(0);
  });

  it('is not written onto the visit through a link to it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'brinewright-'));
    const link = join(folder, 'report.html');
    symlinkSync(join(repository, visit), link);
    const { code, written } = await runInProcess(['assess', visit, '--html', link]);
    rmSync(folder, { recursive: true });
    expect(code).toBe(2);
    expect(written.size).toBe(0);
  });
});

describe('a mistake of ours', () => {
  it('is said in a sentence and ends with 70, without a stack', async () => {
    const err: string[] = [];
    const code = await run(['assess', 'demo/laundry-fast.yaml'], {
      out: () => {},
      err: (text) => void err.push(text),
      cwd: repository,
      env: {},
      readText: () => {
        throw new TypeError('disk on fire');
      },
      readBase64: () => '',
      realPath: (path) => path,
      writeText: () => {},
      now: () => '2026-11-25T15:00:00.000Z',
      stopAsked: () => Promise.resolve(),
    });
    expect(code).toBe(70);
    expect(err.join('')).toBe(
      'A mistake of the program, not of the input: disk on fire. Nothing was changed.\n',
    );
  });
});

describe('own definitions', () => {
  const broken = 'packages/cli/test/transcripts';

  it('may follow --equipment as several paths, with the visit before them', async () => {
    const { code, err } = await runInProcess([
      'assess',
      'demo/laundry-fast.yaml',
      '--equipment',
      'demo/none',
      'demo/other',
    ]);
    expect(code).toBe(1);
    expect(err).toContain('demo/none does not exist.');
    expect(err).toContain('demo/other does not exist.');
  });

  it('come from the environment too', async () => {
    const { code, err } = await runInProcess(['assess', 'demo/laundry-fast.yaml'], new Map(), {
      BRINEWRIGHT_EQUIPMENT: `${broken}`,
    });
    expect(code).toBe(1);
    expect(err).toContain('holds no definitions.');
  });

  it('that are wrong are data too when data are asked for', async () => {
    const { code, out } = await runInProcess([
      'assess',
      'demo/laundry-fast.yaml',
      '--json',
      '--equipment',
      'demo/none',
    ]);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ issues: [{ severity: 'error' }] });
  });
});

describe.each(demos)('the text of %s', (name) => {
  it.each(['en', 'es'])(
    'has no line wider than the page, no empty place and no bare id of a figure (%s)',
    async (lang) => {
      const { code, out } = await runInProcess(['assess', `demo/${name}`, '--lang', lang]);
      expect(code).toBe(0);
      expect(out.split('\n').filter((line) => [...line].length > 88)).toEqual([]);
      expect(out).not.toMatch(/‹|›|undefined|NaN|\[object/u);
      expect(out.match(/\b(?:situation|program|proof|reading)\.[a-z-]+/gu)).toBeNull();
    },
  );
});
