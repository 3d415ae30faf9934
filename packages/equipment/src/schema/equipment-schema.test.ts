import { expect, test } from 'vitest';
import { equipmentSchema } from './equipment-schema.ts';

/** Every key of every map in the schema, with its description. */
const keysOf = (node: unknown, path: string): readonly (readonly [string, unknown])[] => {
  if (typeof node !== 'object' || node === null) return [];
  const own =
    'properties' in node && typeof node.properties === 'object' && node.properties !== null
      ? Object.entries(node.properties).map(
          ([key, value]: [string, object]) => [`${path}.${key}`, value] as const,
        )
      : [];
  const described = own.map(
    ([key, value]) => [key, 'description' in value ? value.description : undefined] as const,
  );
  return [...described, ...Object.entries(node).flatMap(([key, inner]) => keysOf(inner, `${path}.${key}`))];
};

const english = equipmentSchema();

test('the schema is draft 2020-12 and offers a family, a stock or media', () => {
  expect(english.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(english.anyOf).toHaveLength(3);
});

/** The languages of a text, the pieces of a stack and the ends of a chamber need no explanation. */
const plain = /\.(?:en|es|seal|spacer|ring|plug|port|from|to|hands|waiting)$/u;

test('every key is explained, in both languages', () => {
  const keys = keysOf(english, '');
  expect(keys.length).toBeGreaterThan(250);
  expect(keys.filter(([key, says]) => says === undefined && !plain.test(key)).map(([key]) => key)).toEqual(
    [],
  );
  const spanish = keysOf(equipmentSchema('es'), '');
  expect(spanish.filter(([, says], index) => says !== undefined && says === keys[index]?.[1])).toEqual([]);
});

test('a quantity names the units that may be written', () => {
  const nozzle = keysOf(english, '').find(([key]) => key.endsWith('.nozzle'));
  expect(nozzle?.[1]).toMatch(/^Bore of the nozzle\. Units: .*\bmm\b/u);
});

test('unknown keys are refused', () => {
  expect(english).toMatchObject({ anyOf: [{ additionalProperties: false, required: ['family'] }, {}, {}] });
});
