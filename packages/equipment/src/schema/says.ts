import type { MessageKey } from '@brinewright/words';
import type { z } from 'zod';

type SchemaKeyOf<Key> = Key extends `equipment.schema.${infer Name}` ? Name : never;

/** Names of the descriptions of written keys; the sentences stand in the catalogue. */
export type SchemaKey = SchemaKeyOf<MessageKey>;

/** Says what a key is for, in both languages, through the catalogue. */
export const says = <S extends z.ZodType>(key: SchemaKey, schema: S): S => schema.meta({ says: key });
