import { isQuantityKind, unitsOf } from '@brinewright/units';
import { catalogues, formatMessage, type Language, type MessageKey, message } from '@brinewright/words';
import { z } from 'zod';
import { space } from '../issue/space.ts';
import { isRecord } from '../load/record.ts';
import { documents } from './documents.ts';

const isMessageKey = (text: string): text is MessageKey => Object.hasOwn(catalogues.en, text);

type Schema = Readonly<Record<string, unknown>>;

/**
 * JSON Schema (draft 2020-12) of definition files, so that an editor completes keys and explains them.
 *
 * Quantities are texts; their descriptions name the units that may be written.
 */
export const equipmentSchema = (language: Language = 'en'): Schema => {
  const schema = z.toJSONSchema(z.union(Object.values(documents)), { io: 'input', target: 'draft-2020-12' });
  return explainedMap(schema, language);
};

/** Marks of our own in the schema become descriptions. */
const explained = (node: unknown, language: Language): unknown => {
  if (Array.isArray(node)) return node.map((item) => explained(item, language));
  return isRecord(node) ? explainedMap(node, language) : node;
};

const explainedMap = ({ says, quantity, ...node }: Schema, language: Language): Schema => {
  const inner = Object.fromEntries(
    Object.entries(node).map(([key, value]) => [key, explained(value, language)]),
  );
  const description = describe(says, quantity, language);
  return { ...inner, ...(description === '' ? {} : { description }) };
};

const describe = (says: unknown, kind: unknown, language: Language): string => {
  const key = `equipment.schema.${String(says)}`;
  const text = isMessageKey(key) ? catalogues[language][key] : '';
  const units = typeof kind === 'string' && isQuantityKind(kind) ? unitsOf(kind) : [];
  if (units.length === 0) return text;
  const values = { text, units: units.map(({ symbol }) => symbol).join(`,${space}`) };
  return formatMessage(message('equipment.schema.units', values), { language, system: 'us' }).trim();
};
