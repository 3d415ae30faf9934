import type { Family, Operation, StackPiece } from '@brinewright/equipment';
import type { RepairPlan } from '../repair/repair.ts';
import { tinyFamily } from './tiny-family.ts';

/* The operations of an invented valve, as few as a plan needs to show every rule. Nothing here is a product. */

export const operation = (id: string, more: Partial<Operation> = {}): Operation => ({
  id,
  order: id,
  how: [],
  phase: 'open',
  after: [],
  needs: {},
  makes: {},
  tools: [],
  minutes: { hands: 2, waiting: 0 },
  takesOut: [],
  hazards: [],
  lookOvers: [],
  consumables: [],
  fits: {},
  always: false,
  ...more,
});

export const back = (minutes: number): NonNullable<Operation['back']> => ({
  order: 'back',
  how: [],
  minutes,
  lookOvers: [],
  hazards: [],
});

const dry = { water: 'off', pressure: 'none' } as const;
const dead = { ...dry, power: 'off' } as const;

/** Recording, isolating, restoring and proving as the trade does it. */
export const surroundings: readonly Operation[] = [
  operation('photograph', { phase: 'record', always: true, tools: ['camera'] }),
  operation('warn', { phase: 'isolate', always: true, after: [['photograph']], hazards: ['warned'] }),
  operation('shut', { phase: 'isolate', always: true, after: [['warn']], makes: { water: 'off' } }),
  operation('vent', {
    phase: 'isolate',
    always: true,
    after: [['shut']],
    needs: { water: 'off' },
    makes: { pressure: 'none' },
    hazards: ['pressure'],
  }),
  operation('to-removal', {
    phase: 'isolate',
    after: [['vent']],
    needs: { power: 'on', water: 'off' },
    makes: { piston: 'removal' },
    minutes: { hands: 1, waiting: 2 },
  }),
  operation('unplug', {
    phase: 'isolate',
    always: true,
    after: [['vent']],
    makes: { power: 'off' },
    hazards: ['mains'],
  }),
  operation('verify', { phase: 'isolate', always: true, after: [['vent']], needs: dry }),
  operation('stroke', { phase: 'restore', after: [['piston-out']], needs: { pressure: 'none' } }),
  operation('plug-in', {
    phase: 'restore',
    always: true,
    needs: { power: 'off' },
    makes: { power: 'on' },
  }),
  operation('home', {
    phase: 'restore',
    always: true,
    after: [['plug-in']],
    needs: { power: 'on' },
    makes: { piston: 'home' },
  }),
  operation('set-program', { phase: 'restore', always: true, after: [['home']], needs: { power: 'on' } }),
  operation('open-water', {
    phase: 'restore',
    always: true,
    after: [['set-program']],
    needs: { power: 'on' },
    makes: { water: 'on', pressure: 'full' },
    hazards: ['pressure-returns'],
  }),
  operation('leaks', { phase: 'restore', always: true, after: [['open-water']], needs: { water: 'on' } }),
  operation('run-steps', { phase: 'restore', always: true, after: [['leaks']], needs: { water: 'on' } }),
  operation('regenerate', { phase: 'restore', after: [['run-steps']], needs: { water: 'on' } }),
  operation('prove', { phase: 'prove', always: true, after: [['run-steps']] }),
];

/** The inside: two ways to the link pin, a drive that differs by size, a stack that is counted, jobs on two sides. */
export const inside: readonly Operation[] = [
  operation('cover-off', { tools: ['driver'], side: 'front', takesOut: ['cover'], back: back(1) }),
  operation('side-plate-off', {
    tools: ['driver'],
    side: 'left',
    minutes: { hands: 6, waiting: 0 },
    takesOut: ['side-plate'],
    back: back(6),
  }),
  operation('pin-out', {
    after: [['side-plate-off'], ['cover-off']],
    needs: { ...dead, piston: 'removal' },
    tools: ['pliers'],
    side: 'front',
    takesOut: ['pin'],
    back: back(1),
  }),
  operation('slim-drive-off', {
    after: [['pin-out']],
    needs: dead,
    tools: ['driver'],
    takesOut: ['drive'],
    fits: { size: ['slim'] },
    back: back(3),
  }),
  operation('broad-drive-off', {
    after: [['pin-out']],
    needs: dead,
    tools: ['hex'],
    takesOut: ['drive'],
    fits: { size: ['broad'] },
    back: back(4),
  }),
  operation('piston-out', {
    after: [['slim-drive-off'], ['broad-drive-off']],
    needs: { ...dead, piston: 'removal' },
    takesOut: ['piston', 'sleeve'],
    back: back(3),
  }),
  operation('stack-out', {
    after: [['piston-out']],
    needs: dead,
    tools: ['hook-slim', 'hook-broad'],
    side: 'front',
    minutes: { hands: 12, waiting: 0 },
    takesOut: ['seal', 'spacer'],
    counts: 'stack',
    back: back(15),
  }),
  operation('look-in-bore', { phase: 'work', after: [['stack-out']], tools: ['lamp'] }),
  operation('injector-out', {
    after: [['verify']],
    needs: dry,
    tools: ['driver'],
    side: 'right',
    takesOut: ['injector'],
    back: back(2),
  }),
  operation('clean-injector', { phase: 'work', after: [['injector-out']], tools: ['brush'] }),
  operation('drain-control-out', {
    after: [['verify']],
    needs: dry,
    tools: ['wrench'],
    side: 'back',
    takesOut: ['drain-control'],
    back: back(2),
  }),
  operation('break-bridge', { phase: 'work', tools: ['rod'], side: 'brine-tank' }),
  operation('flush-heater', {
    phase: 'work',
    needs: { water: 'on' },
    minutes: { hands: 5, waiting: 30 },
  }),
];

/** Three seals, two spacers and a plug at the mouth. */
export const shortStack: readonly StackPiece[] = [
  { is: 'plug' },
  { is: 'seal' },
  { is: 'spacer' },
  { is: 'seal' },
  { is: 'spacer' },
  { is: 'seal' },
];

export const tinyOperations = (more: Partial<Family> = {}): Family =>
  tinyFamily({
    stack: shortStack,
    looksWrong: ['proud-plug'],
    operations: [...surroundings, ...inside],
    tools: ['hook-slim', 'hook-broad'].map((id) => ({
      id,
      title: id,
      fits: { size: [id === 'hook-slim' ? 'slim' : 'broad'] },
      special: true,
    })),
    ...more,
  });

export const repairOf = (
  targets: RepairPlan['targets'],
  more: Partial<Omit<RepairPlan, 'targets'>> = {},
): RepairPlan => ({
  targets,
  parts: [],
  differs: [],
  substitutes: [],
  refused: [],
  wrong: [],
  advice: [],
  ...more,
});
