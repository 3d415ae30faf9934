import { z } from 'zod';
import { phases } from '../model/operation.ts';
import { says } from './says.ts';
import { fits, id, ids, minutes, off, text, texts, words } from './text.ts';

export const workState = z.strictObject({
  water: says('state.water', z.enum(['on', 'off']).optional()),
  pressure: says('state.pressure', z.enum(['full', 'none']).optional()),
  power: says('state.power', z.enum(['on', 'off']).optional()),
  piston: says('state.piston', z.enum(['home', 'removal']).optional()),
  temperature: says('state.temperature', z.enum(['cool']).optional()),
});
export type WrittenState = z.infer<typeof workState>;

const back = z.strictObject({
  order: says('back.order', text),
  how: says('back.how', texts.optional()),
  minutes: says('back.minutes', z.number().min(0).max(2000).optional()),
  'look-overs': says('operation.look-overs', texts.optional()),
  hazards: says('operation.hazards', ids.optional()),
});

const operation = z.strictObject({
  order: says('operation.order', text.optional()),
  how: says('operation.how', texts.optional()),
  phase: says('operation.phase', z.enum(phases).optional()),
  after: says('operation.after', z.union([ids, z.array(ids)]).optional()),
  needs: says('operation.needs', workState.optional()),
  makes: says('operation.makes', workState.optional()),
  tool: says('operation.tool', words.optional()),
  tools: says('operation.tools', z.array(words).optional()),
  side: says('operation.side', words.optional()),
  minutes: says('operation.minutes', minutes.optional()),
  'takes-out': says('operation.takes-out', ids.optional()),
  counts: says('operation.counts', z.literal('stack').optional()),
  hazards: says('operation.hazards', ids.optional()),
  'look-overs': says('operation.look-overs', texts.optional()),
  consumables: says('operation.consumables', texts.optional()),
  back: says('operation.back', back.optional()),
  fits: says('operation.fits', fits.optional()),
  always: says('operation.always', z.boolean().optional()),
  off: says('off', off),
});
export type WrittenOperation = z.infer<typeof operation>;
export const operations = z.record(id, operation);
