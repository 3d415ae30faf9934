import { describe, expect, it } from 'vitest';
import { bareVisit, demoVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { recogniseView } from './recognise-view.ts';

const { answers: _, ...unanswered } = demoVisit('look-alike');
const fresh = recogniseView(madeOf(unanswered));

describe('a valve nobody has looked at', () => {
  it('is asked about, with the tell that tells most for a minute first', () => {
    expect(fresh.state).toBe('asking');
    const [first] = fresh.questions;
    expect(first?.ask).toMatch(/\?$/);
    expect(first?.takes).toMatch(/\u00a0min$/);
    expect(first?.opens).toBeUndefined();
  });

  it('shows under each answer what it goes with and what it leaves', () => {
    for (const { answers } of fresh.questions)
      for (const answer of answers) {
        expect(answer.leaves).toMatch(/^leaves (one choice|\d+ choices)$/);
        expect(answer.goesWith).toBeDefined();
      }
  });

  it('names its variants only by what parts them, with odds to whole percent', () => {
    expect(fresh.remaining.title).toMatch(/^\d+ of \d+ variants remain$/);
    for (const { percent } of fresh.remaining.rows) expect(percent).toMatch(/^\d+\u00a0%$/);
    const names = fresh.remaining.rows.map(({ title, under }) => `${title} ${under}`);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('answers', () => {
  const letter = recogniseView(madeOfDemo('look-alike')).answered.find(
    ({ question }) => question.id === 'foot-letter',
  );

  it('that are counts or letters are all drawn, others none of them', () => {
    expect(letter?.question.answers.map(({ drawing }) => drawing?.includes('<svg'))).toEqual([true, true]);
    const thread = fresh.questions.find(({ id }) => id === 'drain-thread');
    expect(thread?.answers.map(({ drawing }) => drawing)).toEqual([undefined, undefined]);
  });

  it('of a measured tell are sizes in the reader’s own unit', () => {
    const gap = (reader: typeof english) =>
      recogniseView(madeOf(unanswered, reader)).questions.find(({ id }) => id === 'stud-gap');
    expect(gap(english)?.answers.map(({ title }) => title)).toEqual(['1.81\u00a0in', '2.13\u00a0in']);
    expect(gap(english)?.measure?.units).toEqual(['in', 'mm']);
    expect(gap(spanish)?.answers.map(({ title }) => title)).toEqual(['46\u00a0mm', '54\u00a0mm']);
    expect(gap(spanish)?.measure?.spread[0]?.text).toBe('±\u00a00.7\u00a0mm');
  });

  it('carry the entry they stand in, and the last of them can be taken back', () => {
    const { answered, last } = recogniseView(madeOfDemo('look-alike'));
    expect(answered.map(({ entry }) => entry)).toContain(last);
    expect(answered.at(-1)?.entry).toBe(last);
  });
});

describe('when there is nothing to ask', () => {
  it('a settled valve says why it may stop', () => {
    const view = recogniseView(madeOfDemo('look-alike'));
    expect(view.state).toBe('settled');
    expect(view.why).toContain('all take the same parts, tools and settings');
    expect(view.features.every(({ isSettled }) => isSettled)).toBe(true);
    expect(view.picture?.drawings.wide.twin[0]).toBe('The bore at the stop service.');
  });

  it('a make nobody has described has nothing to tell apart', () => {
    const view = recogniseView(madeOf(bareVisit));
    expect(view).toMatchObject({ state: 'single', questions: [], answered: [], features: [] });
    expect(view.why).toContain('nobody has described');
  });

  it('speaks Spanish throughout', () => {
    const view = recogniseView(madeOf(unanswered, spanish));
    expect(view.remaining.title).toMatch(/^Quedan \d+ de \d+ variantes$/);
    expect(view.questions.map(({ ask }) => ask)).toContain(
      '¿Qué letra está fundida bajo la toma de drenaje?',
    );
    expect(view.questions[0]?.answers[0]?.leaves).toMatch(/^deja/);
  });

  it('definitions that are not here leave a reason and no question', () => {
    const away = { ...demoVisit('look-alike') };
    const gone = madeOf({
      ...away,
      conditioners: away.conditioners.map((one) => ({ ...one, family: 'gone-family' })),
    });
    const view = recogniseView(gone);
    expect(view.questions).toEqual([]);
    expect(view.why).not.toBe('');
  });
});
