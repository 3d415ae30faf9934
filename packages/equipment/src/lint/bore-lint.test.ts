import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const joinsLine = 'backwash: [IN+BOT, TOP+DR]';

test('joins that one set of seals gives pass in silence', () => {
  const codes = codesOf(lintAfter((text) => text));
  expect(codes).not.toContain('lint.joins-open');
  expect(codes.filter((code) => code.startsWith('lint.open-'))).toEqual([]);
});

test('joins between ports that are no neighbours are an error at the stop', () => {
  const issue = lintAfter(
    replacing('ports: OUTSIDE IN TOP DR BOT OUT IN BOT', 'ports: OUTSIDE DR IN TOP BOT OUT'),
  ).find(({ code }) => code === 'lint.joins-open');
  expect(issue).toMatchObject({
    severity: 'error',
    place: { line: 14 },
    message: { values: { stop: 'backwash' } },
  });
});

const openIn = (backwash: string) =>
  lintAfter(replacing(joinsLine, backwash)).filter(({ code }) => code.startsWith('lint.open-'));

test('where a port stands twice, what open settles is said at open', () => {
  expect(openIn('backwash: [IN+BOT+OUT, TOP+DR], open: {backwash: [3, 6, 7]}')).toMatchObject([
    {
      code: 'lint.open-settled',
      severity: 'note',
      place: { line: 14, column: 75 },
      message: { values: { stop: 'backwash', seals: '3, 6, 7' } },
    },
  ]);
});

test('a choice that is left open is another note, with every set that would do, at the joins', () => {
  expect(openIn('backwash: [IN+BOT+OUT, TOP+DR]')).toMatchObject([
    {
      code: 'lint.open-left',
      severity: 'note',
      place: { line: 14, column: 36 },
      message: { values: { stop: 'backwash', seals: '3, 5, 6', choices: expect.stringContaining('3+6+7') } },
    },
  ]);
});

const measured = (backwash: string): string => `  measured:
    seals: [12 mm, 46 mm, 80 mm, 107 mm, 120 mm, 154 mm, 181 mm]
    chambers:
      - {port: OUTSIDE, from: -40 mm, to: 12 mm}
      - {port: IN, from: 12 mm, to: 46 mm}
      - {port: TOP, from: 46 mm, to: 80 mm}
      - {port: DR, from: 80 mm, to: 107 mm}
      - {port: BOT, from: 107 mm, to: 120 mm}
      - {port: OUT, from: 120 mm, to: 154 mm}
      - {port: IN, from: 154 mm, to: 181 mm}
      - {port: BOT, from: 181 mm, to: 233 mm}
    stops: {service: 0 mm, backwash: ${backwash}, brine: 14 mm, fast-rinse: 21 mm, refill: 28 mm}
    pistons:
      - grooves: [14 mm to 29 mm, 42 mm to 50 mm, 69 mm to 77 mm, 82 mm to 97 mm, 116 mm to 124 mm, 170 mm to 178 mm]
        ends: -29 mm to 194 mm
`;

test('measured lengths that give the joins pass', () => {
  const codes = codesOf(lintAfter(replacing('injectors:\n', `${measured('7 mm')}injectors:\n`)));
  expect(codes.filter((code) => code.startsWith('lint.lengths'))).toEqual([]);
});

test('measured lengths that give other joins are an error at the stop', () => {
  const issue = lintAfter(replacing('injectors:\n', `${measured('4 mm')}injectors:\n`)).find(
    ({ code }) => code === 'lint.lengths-differ',
  );
  expect(issue).toMatchObject({ severity: 'error', message: { values: { stop: 'backwash' } } });
});

test('measured lengths that cannot all be true are an error', () => {
  const wrong = measured('7 mm').replace('{port: TOP, from: 46 mm', '{port: TOP, from: 50 mm');
  expect(codesOf(lintAfter(replacing('injectors:\n', `${wrong}injectors:\n`)))).toContain(
    'lint.lengths-impossible',
  );
});
