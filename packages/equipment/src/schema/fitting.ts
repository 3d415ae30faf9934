import { z } from 'zod';
import { steps } from '../model/fitting.ts';
import { quantityText } from './quantity-text.ts';
import { says } from './says.ts';
import { id, mark, off, text, words } from './text.ts';

const flow = quantityText('flow');

const injectorPoint = z.strictObject({
  draw: says('injector.draw', flow),
  'slow-rinse': says('injector.slow-rinse', flow),
});

const injector = z.union([
  z.literal('unknown'),
  z.strictObject({
    title: says('injector.title', text.optional()),
    nozzle: says('injector.nozzle', quantityText('length').optional()),
    throat: says('injector.throat', quantityText('length').optional()),
    tanks: says('injector.tanks', quantityText('length', 'range').optional()),
    at: says('injector.at', z.record(quantityText('pressure'), injectorPoint).optional()),
    off: says('off', off),
  }),
]);
export type WrittenInjector = z.infer<typeof injector>;
export const injectors = z.record(mark, injector);

const control = z.union([
  flow,
  z.strictObject({ title: says('control.title', text.optional()), rate: says('control.rate', flow) }),
]);
export type WrittenControl = z.infer<typeof control>;
export const controls = z.strictObject({
  drain: says('controls.drain', z.record(mark, control).optional()),
  refill: says('controls.refill', z.record(mark, control).optional()),
});

const timedStep = z.enum([...steps, 'brine']);
const start = z.enum(['clock', 'metered']);

const controller = z.strictObject({
  title: says('controller.title', text.optional()),
  like: says('controller.like', words.optional()),
  holds: says('controller.holds', z.array(timedStep).min(1).optional()),
  times: says('controller.times', quantityText('time', 'series').optional()),
  starts: says('controller.starts', z.array(start).min(1).optional()),
  days: says('controller.days', quantityText('count', 'series').optional()),
  volumes: says('controller.volumes', quantityText('volume', 'series').optional()),
  off: says('off', off),
});
export type WrittenController = z.infer<typeof controller>;
export const controllers = z.record(id, controller);

const meter = z.strictObject({
  title: says('meter.title', text.optional()),
  'per-pulse': says('meter.per-pulse', quantityText('volume-per-pulse').optional()),
  flow: says('meter.flow', quantityText('flow', 'range').optional()),
  off: says('off', off),
});
export type WrittenMeter = z.infer<typeof meter>;
export const meterEntry = meter;
export const meters = z.record(id, meter);

const share = z.number().min(0).max(1);

const medium = z.strictObject({
  title: says('medium.title', text),
  is: says('medium.is', z.enum(['exchanger', 'filter'])),
  diameter: says('medium.diameter', quantityText('length')),
  density: says('medium.density', quantityText('density')),
  voidage: says('medium.voidage', share),
  sphericity: says('medium.sphericity', share.optional()),
  capacity: says('medium.capacity', quantityText('capacity').optional()),
  backwash: says('medium.backwash', quantityText('superficial-velocity', 'range').optional()),
  expansion: says(
    'medium.expansion',
    z.strictObject({ aim: says('medium.aim', share), least: says('medium.least', share) }),
  ),
  known: says('medium.known', z.enum(['seen', 'second-hand', 'memory', 'common-practice', 'ours'])),
});
export type WrittenMedium = z.infer<typeof medium>;
export const media = z.record(id, medium);
