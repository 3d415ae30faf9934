import { expect, it } from 'vitest';
import { english, madeOfDemo } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { recogniseView } from '../../../engine/views/recognise-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { answerTell } from './answer-tell.ts';

const about = { stream: testStream, visit: 'look-alike', conditioner: 's1' };
const after = (more: Parameters<typeof madeOfDemo>[2]) =>
  recogniseView(madeOfDemo('look-alike', english, more));
const entryOf = (tell: string) =>
  after([]).answered.find(({ question }) => question.id === tell)?.entry ?? '';

it('an answer stands among the answers, a guess as one', () => {
  const { answered } = after(
    answerTell(about, { tell: 'stud-gap', answer: '46 mm', isUnsure: true }, undefined),
  );
  expect(answered.find(({ question }) => question.id === 'stud-gap')).toMatchObject({
    answer: '46 mm',
    isUnsure: true,
  });
});

it('an answer changed takes the place of the first, and taken back leaves none', () => {
  const entry = entryOf('web-count');
  const changed = answerTell(about, { tell: 'web-count', answer: '6', isUnsure: false }, entry);
  const counts = (more: Parameters<typeof after>[0]) =>
    after(more)
      .answered.filter(({ question }) => question.id === 'web-count')
      .map(({ title }) => title);
  expect(counts(changed)).toEqual(['6']);
  expect(counts([...changed, ...undoOf(testStream, [entry], 'mistaken')])).toEqual([]);
});

it('answers that disagree name the fewest to doubt', () => {
  const changed = answerTell(
    about,
    { tell: 'web-count', answer: '6', isUnsure: false },
    entryOf('web-count'),
  );
  const { contradiction, why } = after(changed);
  expect(contradiction?.doubts).toHaveLength(1);
  expect(contradiction?.doubts[0]?.tell).toMatch(/^(web-count|foot-letter)$/);
  expect(why).toContain('disagree');
});
