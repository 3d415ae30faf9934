import { catalogues, type Language, type MessageKey } from '@brinewright/words';
import { describe, expect, test } from 'vitest';
import { pageCss } from '../src/documents/page-css.ts';
import { report } from '../src/documents/report.ts';
import { leaveSafeCard, workSheet } from '../src/documents/work-sheet.ts';
import { type Assessed, assessedBare, assessedHostile, assessedLeak } from './assessed.ts';
import { xmlProblems } from './well-formed.ts';

type Paper = typeof report;

const papers: readonly { readonly name: string; readonly write: Paper }[] = [
  { name: 'report', write: report },
  { name: 'work sheet', write: workSheet },
  { name: 'leave-safe card', write: leaveSafeCard },
];

const written = (
  write: Paper,
  { visit, assessment, equipment }: Assessed,
  language: Language = 'en',
): string => write(visit, assessment, { language, system: language === 'en' ? 'us' : 'metric', equipment });

const body = (page: string): string => /<main[\s\S]*<\/main>/u.exec(page)?.[0] ?? '';

const leak = assessedLeak();
const bare = assessedBare();

describe.each(papers)('the $name', ({ write }) => {
  test.each(['en', 'es'] as const)('is well-formed and leaves no word open (%s)', (language) => {
    for (const visit of [leak, bare]) {
      const page = written(write, visit, language);
      expect(xmlProblems(body(page))).toEqual([]);
      expect(page).not.toMatch(/‹|undefined|\[object/u);
      expect(page).toContain(`<html lang="${language}">`);
    }
  });

  test('is the same text each time', () => {
    expect(written(write, leak)).toBe(written(write, leak));
  });

  test('keeps what people typed as text', () => {
    const page = written(write, assessedHostile('</title><script>alert("x")</script>&'));
    expect(page).not.toContain('<script');
    expect(xmlProblems(body(page))).toEqual([]);
  });

  test('needs nothing from anywhere else', () => {
    expect(written(write, leak)).not.toMatch(/(?:src|href)="(?!#)|@import|url\((?!#|"data:)/u);
  });
});

describe('the report', () => {
  const page = written(report, leak);

  test('has its sections, in the language of the reader', () => {
    const headings: readonly MessageKey[] = [
      'papers.found',
      'papers.settings',
      'papers.regeneration',
      'papers.backwash',
      'papers.proof',
      'papers.cautions',
      'papers.water',
      'papers.customer',
      'papers.sources',
      'papers.derivations',
    ];
    for (const language of ['en', 'es'] as const) {
      const own = written(report, leak, language);
      for (const heading of headings) expect(own).toContain(`<h2>${catalogues[language][heading]}</h2>`);
    }
  });

  test('shows the seal that leaks, torn', () => {
    expect(page).toContain('The valve cut open, seal 3 torn');
    expect(page).toContain('Seal 3 is torn. Raw water leaks from the tank top to the drain.');
  });

  test.each([
    ['fail', 'Fail'],
    ['pass', 'Pass'],
    ['open', 'Not read'],
  ])('gives the verdict %s its mark and its word', (verdict, word) => {
    const shown = [
      ...page.matchAll(/class="verdict ([\w-]+)"><svg class="verdict-mark ([\w-]+)".*?<b>([^<]+)</gu),
    ];
    const own = shown.filter(([, of]) => of === verdict);
    expect(own.length).toBeGreaterThan(0);
    expect(own.every(([, , mark, said]) => mark === verdict && said === word)).toBe(true);
  });

  test('opens every figure to a derivation, and every input of one to its own', () => {
    const links = [...page.matchAll(/href="#([^"]+)"/gu)].map(([, id]) => id);
    expect(links.length).toBeGreaterThan(20);
    expect(links.filter((id) => !page.includes(`id="${id}"`))).toEqual([]);
    expect(
      /<details class="figure[^"]*" name="figure"><summary>[^<]+<\/summary><div class="why">/u.test(page),
    ).toBe(true);
  });

  test('gives an id only once', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(ids.length).toBe(new Set(ids).size);
  });

  test('says what is missing instead of leaving a stage blank', () => {
    const own = written(report, bare);
    expect(own).toContain(catalogues.en['papers.missing']);
    expect(own).toContain(catalogues.en['papers.gaps']);
  });

  test('takes a font only as base64 data', () => {
    const { visit, assessment, equipment } = leak;
    const options = { language: 'en', system: 'us', equipment } as const;
    const good = report(visit, assessment, { ...options, fontUri: 'data:font/woff2;base64,AAAA' });
    const bad = report(visit, assessment, { ...options, fontUri: 'data:font/woff2;base64,A")}body{' });
    expect(good).toContain('@font-face');
    expect(bad).not.toContain('@font-face');
  });
});

test('no text on a screen is smaller than 15 px', () => {
  const screen = pageCss.split('@media print')[0] ?? '';
  const sizes = [...screen.matchAll(/(?:font-size:|font:var\(--wt\) )([\d.]+)(?:rem|em)/gu)].map(
    ([, size]) => Number(size) * 16,
  );
  expect(sizes.length).toBeGreaterThan(3);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(15);
  expect(screen).not.toMatch(/font-size:[\d.]+px/u);
});
