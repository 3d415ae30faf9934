import { describe, expect, test } from 'vitest';
import { xmlProblems } from '../../test/well-formed.ts';
import { element, escaped, rounded, written } from './element.ts';
import { html } from './html.ts';

const hostile = '</text><script>alert("x")</script> & \' \u0000\u0007';

describe('an element', () => {
  test('escapes hostile text in its content and its attributes', () => {
    const { markup } = element('text', { 'aria-label': hostile }, hostile);
    expect(markup).not.toContain('<script');
    expect(xmlProblems(markup)).toEqual([]);
    expect(written([hostile])).toBe(escaped(hostile));
  });

  test('drops control characters, which no XML may hold', () => {
    expect(escaped('a\u0000b\u0007c')).toBe('abc');
  });

  test('writes numbers to a tenth, without a minus before nought', () => {
    expect(element('rect', { x: -0.01, y: 1 / 3 }).markup).toBe('<rect x="0" y="0.3"/>');
  });

  test('leaves out attributes that are not there', () => {
    expect(element('rect', { x: 1, y: undefined }).markup).toBe('<rect x="1"/>');
  });

  test('refuses a number that is not finite', () => {
    expect(() => rounded(Number.NaN)).toThrow(RangeError);
  });
});

test('an empty HTML element keeps its end tag', () => {
  expect(html('td', { class: 'num' }).markup).toBe('<td class="num"></td>');
});
