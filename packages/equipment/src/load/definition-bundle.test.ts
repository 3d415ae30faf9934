import { expect, test } from 'vitest';
import { bundleOf, compileBundle } from './definition-bundle.ts';

const harrow = {
  file: 'harrow.yaml',
  text: 'family: harrow\ntitle: {en: Harrow, es: Harrow}\nsource: invented\n',
};
const media = { file: 'media.yaml', text: 'media: {}\n' };

test('the same definitions give the same text in any order, and compile from it', () => {
  expect(bundleOf([harrow, media])).toBe(bundleOf([media, harrow]));
  const direct = compileBundle(bundleOf([harrow]));
  expect(direct.issues.map(({ code }) => code)).toEqual(
    compileBundle(bundleOf([harrow])).issues.map(({ code }) => code),
  );
});

test.each(['', '{', '[]', '{"schema":2,"files":[]}', '{"schema":1,"files":[{"file":"a"}]}'])(
  'a text that is none gives an issue: %s',
  (text) => {
    expect(compileBundle(text)).toMatchObject({ ok: false, issues: [{ code: 'yaml.unreadable' }] });
  },
);
