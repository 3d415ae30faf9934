import { expect, test } from 'vitest';
import {
  compiledFrom,
  familyFrom,
  replacing,
  smallFamily,
  smallStock,
  soundFrom,
} from '../../test/small-family.ts';

const harrow = familyFrom(smallStock, smallFamily);
const after = (from: string, to: string) => familyFrom(smallStock, replacing(from, to)(smallFamily));
const issues = (text: string, stock = smallStock) =>
  compiledFrom(stock, text).issues.map(({ code, place, mend }) => [code, place?.line, mend?.values?.near]);

test('quantities become SI and keep the text that was written', () => {
  expect(harrow.controls.refill[0]?.rate).toMatchObject({ kind: 'flow', as: '0.25 gpm' });
  expect(harrow.controls.refill[0]?.rate.si).toBeCloseTo(0.25 * 6.30902e-5, 10);
  expect(harrow.limits.temperature.any?.as).toBe('110 degF');
  expect(harrow.injectors[0]).toMatchObject({ nozzle: { si: 0.0015 }, tanks: { min: { as: '6 in' } } });
});

test('what only the engine needs has a default', () => {
  expect(harrow.tells[0]).toMatchObject({ trust: 0.9, minutes: 1, after: [] });
  expect(harrow.parts[0]).toMatchObject({ count: 1, fits: {}, holds: {} });
  expect(harrow.features[0]?.values.map(({ weight }) => weight)).toEqual([0.5, 0.5]);
});

test('weights become shares', () => {
  const [size] = after('size: [slim, broad]', 'size: {slim: 3, broad: 1}').features;
  expect(size?.values.map(({ weight }) => weight)).toEqual([0.75, 0.25]);
});

test('the stack is seal, spacer, seal … for the seals of the bore unless written', () => {
  const kinds = harrow.stack.map(({ is }) => is);
  expect(kinds.filter((is) => is === 'seal')).toHaveLength(7);
  expect(kinds.filter((is) => is === 'spacer')).toHaveLength(6);
  const own = familyFrom(smallStock, `${smallFamily}stack: [plug, {seal: seal-slim}, spacer]\n`).stack;
  expect(own).toEqual([{ is: 'plug' }, { is: 'seal', part: 'seal-slim' }, { is: 'spacer' }]);
});

test('refill joins as service unless said', () => {
  const joins = harrow.bores[0]?.rows[0]?.joins;
  expect(joins?.refill).toEqual(joins?.service);
});

test('a leak between ports that no one seal parts is no fault of this valve, and a note says so', () => {
  const result = compiledFrom(smallStock.replace('path: TOP+DR', 'path: TOP+OUT'), smallFamily);
  expect(result.issues.map(({ code, severity }) => [code, severity])).toEqual([
    ['fault.path-not-here', 'note'],
  ]);
  expect(result.ok ? result.value.equipment.families.get('harrow')?.faults : undefined).toEqual([]);
});

test('without a bore every leak stays possible', () => {
  const bare = smallFamily.replace(/bore:[\s\S]*?injectors:/u, 'injectors:');
  expect(familyFrom(smallStock, bare).faults.map(({ path }) => path)).toEqual([['TOP', 'DR']]);
});

test('whatever names something that is not there is told where it stands, with what was meant', () => {
  expect(issues(`${smallFamily}never: [{sise: slim}]\n`)).toEqual([['reference.unknown', 26, 'size']]);
  expect(issues(replacing('"3": {size: slim}', '"3": {size: slin}')(smallFamily))).toEqual([
    ['reference.unknown', 10, 'slim'],
  ]);
  expect(issues(replacing('{seal-slim: all}', '{seal-slin: all}')(smallFamily))).toEqual([
    ['reference.unknown', 25, 'seal-slim'],
  ]);
  const inStock = (from: string, to: string) => issues(smallFamily, replacing(from, to)(smallStock));
  expect(inStock('after: [cover-off]', 'after: [cover-of]')).toEqual([
    ['reference.unknown', 19, 'cover-off'],
  ]);
  expect(inStock('tools: [pliers]', 'tools: [plier]')).toEqual([['reference.unknown', 20, 'pliers']]);
  expect(inStock('hazards: [pressure-release]', 'hazards: [presure-release]')).toEqual([
    ['reference.unknown', 22, 'pressure-release'],
  ]);
  expect(inStock('do: [piston-out]', 'do: [piston-ou]')).toEqual([['reference.unknown', 31, 'piston-out']]);
  expect(inStock('faults: {leak-raw-to-drain: sure}', 'faults: {leak-raw-to-drian: sure}')).toEqual([
    ['reference.unknown', 38, 'leak-raw-to-drain'],
  ]);
  expect(inStock('normal: none', 'normal: non')).toEqual([['reference.unknown', 39, 'none']]);
});

test('a tool named in plain words needs no entry', () => {
  const family = familyFrom(smallStock, `${smallFamily}operations: {cover-off: {tool: driver T20}}\n`);
  expect(family.operations[0]?.tools).toEqual(['driver-t20']);
  expect(family.tools.at(-1)).toEqual({ id: 'driver-t20', title: 'driver T20', fits: {}, special: false });
});

test('bands are in SI, or shares where the reading is compared with a figure', () => {
  expect(harrow.tests[0]?.outcomes[0]?.to).toBeCloseTo(0.03 * 6.30902e-5, 12);
  const shared = smallStock
    .replace('plausible: 0 gpm to 30 gpm', 'plausible: 0 gpm to 30 gpm, of: program.backwash.rate')
    .replace('to: 0.03 gpm', 'to: 0.8')
    .replace('from: 0.03 gpm', 'from: 0.8');
  expect(familyFrom(shared, smallFamily).tests[0]?.outcomes[0]?.to).toBe(0.8);
});

test('the same equipment has the same digest, and a change of it another', () => {
  const digest = (...texts: readonly string[]) => soundFrom(...texts).equipment.digest;
  expect(digest(smallStock, smallFamily)).toMatch(/^[0-9a-f]{64}$/u);
  expect(digest(smallFamily, smallStock)).toBe(digest(smallStock, smallFamily));
  expect(digest(smallStock, `# a remark\n${smallFamily}`)).toBe(digest(smallStock, smallFamily));
  expect(digest(smallStock, smallFamily.replace('0.25 gpm', '0.26 gpm'))).not.toBe(
    digest(smallStock, smallFamily),
  );
});

test('there is always a family for a unit nobody has described', () => {
  const bare = soundFrom(smallStock, smallFamily).equipment.families.get('undescribed');
  expect(bare).toMatchObject({ features: [], bores: [] });
  const own = soundFrom(smallStock.replace('stock: small', 'stock: undescribed'), smallStock, smallFamily);
  expect(own.equipment.families.get('undescribed')?.faults).toHaveLength(1);
});

const sizes = (text: string): string => replacing('size: [slim, broad]', text)(smallFamily);

test('a value misspelt under features is mended there, and names where it is used', () => {
  for (const features of [
    'size: [slin, broad]',
    'size: {slin: 2, broad: 1}',
    'size: {values: [slin, broad]}',
  ]) {
    const { issues: found } = compiledFrom(smallStock, sizes(features));
    expect(found).toMatchObject([
      {
        code: 'feature.value-unused',
        place: { file: '1.yaml', line: 7, column: 3 + features.indexOf('slin') },
        message: { values: { defined: 'slin', used: 'slim', line: 10 } },
      },
    ]);
  }
});

test('a value misspelt where it is used is mended there, for the value itself is used elsewhere', () => {
  expect(issues(replacing('fits: {size: slim}, holds', 'fits: {size: slin}, holds')(smallFamily))).toEqual([
    ['reference.unknown', 25, 'slim'],
  ]);
});
