import { catalogues, type Language, type MessageKey } from '@brinewright/words';
import { describe, expect, test } from 'vitest';
import { pageCss } from '../src/documents/page-css.ts';
import { report } from '../src/documents/report.ts';
import { leaveSafeCard, workSheet } from '../src/documents/work-sheet.ts';
import { oddsText } from '../src/drawings/odds-bars.ts';
import { escaped } from '../src/markup/element.ts';
import {
  type Assessed,
  assessedBare,
  assessedHostile,
  assessedLeak,
  assessedOpen,
  assessedStarved,
} from './assessed.ts';
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
const open = assessedOpen();
const starved = assessedStarved();

describe.each(papers)('the $name', ({ write }) => {
  test.each(['en', 'es'] as const)('is well-formed and leaves no word open (%s)', (language) => {
    for (const visit of [leak, bare, open, starved]) {
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
      'papers.valve',
      'papers.cautions.grave',
      'papers.settings',
      'papers.regeneration',
      'papers.backwash',
      'papers.proof',
      'papers.cautions',
      'papers.water',
      'papers.customer',
      'cli.assumed',
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

  test('puts danger and warning before the work, and the lighter cautions after the proof', () => {
    const placeOf = (text: string): number => page.indexOf(text);
    const signals = [...page.matchAll(/class="caution (\w+)"/gu)].map(({ 1: signal, index }) => ({
      signal,
      early: index < placeOf('<h2>What to do</h2>'),
    }));
    expect(signals.length).toBeGreaterThan(4);
    expect(
      signals.every(({ signal, early }) => early === (signal === 'danger' || signal === 'warning')),
    ).toBe(true);
  });

  test('says of each feature whether it is settled or open', () => {
    expect(page).toMatch(/<td>Body size<\/td><td>[^<]*%[^<]*<\/td><td>open<\/td>/u);
    expect(written(report, leak, 'es')).toContain('<td>por definir</td>');
  });

  test('asks first and shows where each result of the next test leads, until it is clear enough to act', () => {
    const { diagnosis } = open.assessment.stages;
    const next = diagnosis.state === 'done' ? diagnosis.value.next[0] : undefined;
    const own = written(report, open);
    expect(own).toContain(catalogues.en['diagnosis.ask.changed']);
    const box = /<p class="in-hand-label">Next test<\/p>[\s\S]*?<\/table>/u.exec(own)?.[0] ?? '';
    expect(box.match(/<tr><td>/gu)?.length).toBe(next?.outcomes.length);
    expect(page).not.toContain('Next test');
  });

  test('says that a reading is wild, though it is only a note', () => {
    expect(written(report, open)).toContain('1 of 4 readings lies far from the others');
  });

  test('draws no seal torn while the leak is only possible', () => {
    expect(written(report, open)).not.toContain('The valve cut open, seal');
  });

  test('leads with what to measure, each assumption once', () => {
    const said = page.match(/Measure the grain size first/gu) ?? [];
    expect(said).toHaveLength(1);
    expect(page.indexOf('Measure the grain size first')).toBeLessThan(page.indexOf('<h2>Proof</h2>'));
  });

  test('lists what is assumed by its source, in the language of the reader', () => {
    expect(page).toContain('<th scope="col">From memory, not confirmed</th>');
    const own = written(report, leak, 'es');
    expect(own).toContain('<th scope="col">De memoria, sin confirmar</th>');
    expect(own).not.toMatch(/By definition|Geometry|Our own decision|Common practice/u);
  });

  test('shows what a check is predicted to give, and leaves what is not read to be written in', () => {
    expect(page).toMatch(/<td class="num" data-label="predicted"><details/u);
    expect(page).toContain('<td class="num" data-label="read"></td>');
  });

  test('says that a cheap year buys hard water, only where it does', () => {
    expect(written(report, starved)).toContain(catalogues.en['papers.year.runs-hard']);
    const { program } = leak.assessment.stages;
    const keys = program.state === 'done' ? program.value.notes.map(({ key }) => key) : [];
    expect(page.includes(catalogues.en['papers.year.runs-hard'])).toBe(
      keys.includes('program.found-hard-early'),
    );
  });

  test('shows the money of a year without cents, all alike', () => {
    const sum = page.slice(page.indexOf('<tr class="sum'), page.indexOf('<h3>Salt doses</h3>'));
    const shown = [...sum.matchAll(/<summary>([^<]+USD)<\/summary>/gu)].map(([, money]) => money);
    expect(shown).toHaveLength(3);
    expect(shown.filter((money) => money?.includes('.'))).toEqual([]);
  });

  test('leaves no section empty', () => {
    for (const visit of [leak, bare, open])
      expect(written(report, visit)).not.toMatch(/<\/h2>(?:<div[^>]*><\/div>)*<\/section>/u);
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

describe('the steps on the work sheet', () => {
  const sheet = written(workSheet, leak);
  const { plan } = leak.assessment.stages;
  const steps = plan.state === 'done' ? plan.value.steps : [];
  const family = leak.equipment.families.get('osier');
  const text = (words: { readonly en: string } | string): string =>
    escaped(typeof words === 'string' ? words : words.en);

  test('give every look-over a box of its own, out and back', () => {
    const looks = steps.flatMap((step) =>
      step.kind === 'operation' ? step.operation.lookOvers : step.kind === 'back' ? step.lookOvers : [],
    );
    expect(looks.length).toBeGreaterThan(10);
    const boxed = looks.filter((look) =>
      sheet.includes(`<span class="mark" aria-hidden="true"></span><span>${text(look)}</span>`),
    );
    expect(boxed).toEqual(looks);
  });

  test('name the cautions they call for', () => {
    const hazards = steps.flatMap((step) => (step.kind === 'operation' ? step.operation.hazards : []));
    expect(hazards.length).toBeGreaterThan(3);
    const applying = new Set(leak.assessment.cautions.map(({ caution }) => caution));
    expect(applying.size).toBeGreaterThan(3);
    const titles = hazards
      .filter((id) => applying.has(id))
      .map((id) => family?.cautions.find((one) => one.id === id)?.title ?? '');
    expect(titles.filter((title) => !sheet.includes(`${text(title)}</span>`))).toEqual([]);
  });

  test('say what goes back new and what as it was', () => {
    expect(sheet).toMatch(/<p class="puts new">New: [^<]*seals/u);
    expect(sheet).toMatch(/<p class="puts old">Back as they were: [^<]*piston/u);
  });

  test('say which builds they are for, where not for all', () => {
    const feature = family?.features[0];
    const value = feature?.values[0];
    if (plan.state !== 'done' || feature === undefined || value === undefined) throw new Error('no plan');
    const only = { [feature.id]: [value.id] };
    const limited = steps.map((step) => (step.kind === 'operation' ? { ...step, when: only } : step));
    const stages = { ...leak.assessment.stages, plan: { ...plan, value: { ...plan.value, steps: limited } } };
    const own = written(workSheet, { ...leak, assessment: { ...leak.assessment, stages } });
    const said = `<p class="only-with">Only with ${text(feature.title)}: ${text(value.title)}</p>`;
    const operations = steps.filter(({ kind }) => kind === 'operation');
    expect(own.split(said).length - 1).toBe(operations.length);
  });
});

test('the leave-safe card shows how the unit is put back, step by step', () => {
  const { plan } = leak.assessment.stages;
  if (plan.state !== 'done') throw new Error('no plan');
  const steps = plan.value.steps.filter(({ kind }) => kind === 'back');
  const leaveSafe = { ...plan.value.leaveSafe, steps, minutes: 31 };
  const stages = { ...leak.assessment.stages, plan: { ...plan, value: { ...plan.value, leaveSafe } } };
  const card = written(leaveSafeCard, { ...leak, assessment: { ...leak.assessment, stages } });
  expect(card).toContain('<h3>How it is put back, 31\u00a0min</h3>');
  expect(card.match(/<p class="order">/gu)?.length).toBe(steps.length);
  expect(card).toContain('Back as they were');
  expect(card).toContain('<h2>Not safe yet: the steps below come first</h2>');
  expect(written(leaveSafeCard, leak)).not.toContain('Not safe yet');
});

test('the work sheet has the parts to bring and every setting to key in', () => {
  const sheet = written(workSheet, leak);
  const { repair, program } = leak.assessment.stages;
  if (repair.state !== 'done' || program.state !== 'done') throw new Error('blocked');
  const lines = [...repair.value.parts, ...repair.value.differs.flatMap(({ parts }) => parts)];
  const rowsOf = (of: string): number =>
    new RegExp(`<table class="${of}">[\\s\\S]*?</table>`, 'u').exec(sheet)?.[0].match(/<tr[ >]/gu)?.length ??
    0;
  expect(lines.length).toBeGreaterThan(0);
  expect(sheet).toContain('<h2>Bring along</h2>');
  expect(rowsOf('parts')).toBeGreaterThan(lines.length);
  // A head, every timed step, the volume and the days.
  expect(rowsOf('settings')).toBe(1 + program.value.settings.length + 2);
  expect(written(workSheet, bare)).not.toContain('<h2>Bring along</h2>');
});

test('no odds are told as certain, neither way', () => {
  expect([1, 0.99, 0.95, 0.5, 0.05, 0.02, 0].map(oddsText)).toEqual([
    '95',
    '95',
    '95',
    '50',
    '5',
    '< 5',
    '< 5',
  ]);
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
