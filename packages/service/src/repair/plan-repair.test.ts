import { formatMessage, type Message } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import { assess } from '../assess.ts';
import { laundry } from '../testing/laundry.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import { type VisitDocument, visitSchema } from '../visit/schema.ts';
import { planRepair } from './plan-repair.ts';
import type { RepairPlan } from './repair.ts';

const equipment = shippedEquipment();

const repairOf = (document: VisitDocument): RepairPlan => {
  const { repair } = assess(visitSchema.parse(document), equipment, {
    now: '2026-11-25T10:00:00Z',
    effort: 'quick',
  }).stages;
  if (repair.state === 'blocked') throw new Error('no repair');
  return repair.value;
};

const said = (messages: readonly Message[]): string =>
  messages.map((message) => formatMessage(message, { language: 'en', system: 'us' })).join('\n');

/** A slim softener for cold water with nitrile seals, every tell answered that says so. */
const slim = [
  { tell: 'foot-letter', answer: 'J' },
  { tell: 'web-count', answer: '4' },
  { tell: 'tap-while-backwash', answer: 'runs' },
  { tell: 'rod-sleeve', answer: 'no' },
  { tell: 'brine-boss', answer: 'tube' },
  { tell: 'flange-wave', answer: 'no' },
  { tell: 'seal-tabs', answer: '1' },
  { tell: 'cover-slip', answer: 'nitrile' },
  { tell: 'injector-cap-dots', answer: '3' },
  { tell: 'nozzle-notches', answer: '3' },
];
const leak = [{ what: 'fault' as const, value: 'leak-raw-to-drain' }];

describe('parts for what was really built', () => {
  it('come as the kit where one covers what is needed', () => {
    const { parts, differs } = repairOf(laundry({ answers: slim, decided: leak }));
    expect(parts).toMatchObject([{ part: 'reseal-slim-nitrile', role: 'kit', count: 1 }]);
    expect(differs).toEqual([]);
  });

  it('are the whole stack where one seal is known to be bad', () => {
    const family = tinyFamily();
    const seal = { kind: 'replace', role: 'seal' } as const;
    const stage = planRepair(situationOf({ family }), undefined, undefined, [seal], undefined, {});
    if (stage.state === 'blocked') throw new Error('blocked');
    const kitOf = (plan: RepairPlan) => plan.differs.flatMap(({ parts }) => parts).concat(plan.parts);
    const roles = new Set(kitOf(stage.value).map(({ role }) => role));
    expect(roles.has('seal') || roles.has('kit')).toBe(true);
    const holds = kitOf(stage.value).flatMap(({ part, role }) =>
      role === 'kit' ? Object.keys(family.parts.find(({ id }) => id === part)?.holds ?? {}) : [part],
    );
    const held = new Set(holds.map((id) => family.parts.find((part) => part.id === id)?.is));
    expect(held).toEqual(new Set(['seal', 'spacer']));
  });

  it('say what is in stock, and nothing where no stock is written', () => {
    const stock = [{ part: 'reseal-slim-nitrile', count: 2 }];
    expect(repairOf(laundry({ answers: slim, decided: leak, stock })).parts[0]?.have).toBe(2);
    expect(repairOf(laundry({ answers: slim, decided: leak })).parts[0]).not.toHaveProperty('have');
  });

  it('differ where builds remain, each with its odds, and name the tell that parts them', () => {
    const { differs, parts } = repairOf(laundry({ decided: leak }));
    const kits = differs.flatMap((one) => one.parts.map(({ part }) => part));
    expect(kits).toEqual(expect.arrayContaining(['reseal-slim-nitrile', 'reseal-broad-nitrile']));
    expect(parts.map(({ part }) => part)).not.toContain('reseal-slim-nitrile');
    expect(differs.every(({ tell }) => tell !== undefined)).toBe(true);
    const odds = differs.map((one) => one.parts[0]?.p ?? 0);
    expect(odds).toEqual(odds.toSorted((a, b) => b - a));
  });

  it('wait for a fault that is clear enough, and a gap says so', () => {
    const visit = visitSchema.parse(laundry());
    const { repair } = assess(visit, equipment, { now: '2026-11-25T10:00:00Z', effort: 'quick' }).stages;
    expect(repair.gaps.map(({ message }) => message.key)).toContain('repair.gap.fault');
  });

  it('are none for a make that nobody has described', () => {
    const plan = repairOf(laundry({ decided: leak }, { family: 'undescribed', fitted: {} }));
    expect(plan.parts).toEqual([]);
    expect(plan.advice.map(({ key }) => key)).toContain('repair.undescribed');
  });
});

describe('kit and tools in the hand', () => {
  it('are flagged when made for the other body, with what the valve is', () => {
    const gate = { kit: ['reseal-broad-nitrile'], tools: ['stuffer-broad'] };
    const { wrong } = repairOf(laundry({ answers: slim, decided: leak, gate }));
    expect(wrong.map(({ id, is }) => [id, is])).toEqual([
      ['reseal-broad-nitrile', 'part'],
      ['stuffer-broad', 'tool'],
    ]);
    expect(said(wrong.map(({ says }) => says))).toContain(
      'Made for – Body size: broad. This valve – Body size: slim.',
    );
    const spoken = wrong.map(({ says }) => formatMessage(says, { language: 'es', system: 'us' })).join('\n');
    expect(spoken).toContain(
      'Hecho para – Tamaño del cuerpo: ancho. Esta válvula – Tamaño del cuerpo: delgado.',
    );
    expect(spoken).not.toMatch(/size|slim|seals/u);
  });

  it('pass without a word when they fit, or while nobody can say', () => {
    const fits = { kit: ['reseal-slim-nitrile'], tools: ['stuffer-slim'] };
    expect(repairOf(laundry({ answers: slim, decided: leak, gate: fits })).wrong).toEqual([]);
    const either = { kit: ['reseal-broad-nitrile'], tools: ['stuffer-slim'] };
    expect(repairOf(laundry({ decided: leak, gate: either })).wrong).toEqual([]);
  });

  it('are said to be unknown when the definition does not have them', () => {
    const { wrong } = repairOf(laundry({ gate: { kit: ['spare-from-elsewhere'] } }));
    expect(wrong[0]?.says.key).toBe('repair.not-in-definition');
  });
});

describe('another control in place of the right one', () => {
  const lost = [{ what: 'fault' as const, value: 'refill-control-lost' }];

  it('is offered with what it does to the time: a third of the rate, three times the minutes', () => {
    const { substitutes } = repairOf(
      laundry(
        { decided: lost },
        { fitted: { controller: 'tally', injector: 'middle', drain: 'd4', refill: 'r3' } },
      ),
    );
    const slower = substitutes.find(({ use }) => use === 'r2');
    // 1.5 gpm ÷ 0.5 gpm.
    expect(slower?.says.values?.times).toMatchObject({ si: expect.closeTo(3, 9) });
  });
});

describe('a refusal', () => {
  it('is given where no part serves a role that a build needs: nothing is adapted', () => {
    const family = tinyFamily();
    const bare = { ...family, parts: family.parts.filter(({ is }) => is !== 'piston') };
    const piston = { kind: 'replace', role: 'piston' } as const;
    const stage = planRepair(situationOf({ family: bare }), undefined, undefined, [piston], undefined, {});
    if (stage.state === 'blocked') throw new Error('blocked');
    expect(stage.value.refused).toMatchObject([
      { key: 'repair.no-part', values: { role: { key: 'cli.role.piston' } } },
    ]);
  });

  it('is given where the water is hotter than the build stands', () => {
    const water = [{ of: 'raw' as const, hardness: '18 gpg', temperature: '130 degF', warmest: '140 degF' }];
    const { refused } = repairOf(laundry({ answers: slim, decided: leak, water }));
    expect(refused.map(({ key }) => key)).toContain('repair.too-hot');
    expect(repairOf(laundry({ answers: slim, decided: leak })).refused).toEqual([]);
  });

  it('names feature and value in the language of the reader where no conversion is known', () => {
    const decided = [{ what: 'convert' as const, value: 'regeneration:raw-pass' }];
    const answers = [
      { tell: 'rod-sleeve', answer: 'no' },
      { tell: 'tap-while-backwash', answer: 'runs' },
    ];
    const { refused } = repairOf(laundry({ answers, decided }));
    const spoken = refused.map((one) => formatMessage(one, { language: 'es', system: 'us' })).join('\n');
    expect(spoken).toContain('Salida durante la regeneración: pasa agua cruda');
  });
});

describe('the limits of the family', () => {
  const issuesOf = (document: VisitDocument) => {
    const { repair } = assess(visitSchema.parse(document), equipment, {
      now: '2026-11-25T10:00:00Z',
      effort: 'quick',
    }).stages;
    return repair.issues;
  };
  const hotWater = [{ of: 'raw' as const, hardness: '18 gpg', temperature: '130 degF', warmest: '140 degF' }];
  const epdm = slim.map((one) => (one.answer === 'nitrile' ? { ...one, answer: 'epdm' } : one));
  const wave = epdm
    .filter(({ tell }) => tell !== 'seal-tabs')
    .map((one) => (one.tell === 'flange-wave' ? { ...one, answer: 'yes' } : one));

  it('warn with the odds where the build may be the cold one', () => {
    const document = laundry({ answers: wave, decided: leak, water: hotWater });
    expect(repairOf(document).refused.map(({ key }) => key)).not.toContain('repair.too-hot');
    const warned = issuesOf(document).find(({ code }) => code === 'maybe-too-hot');
    expect(warned?.severity).toBe('warning');
    const odds = warned?.message.values?.odds;
    const share = typeof odds === 'object' && 'si' in odds ? odds.si : Number.NaN;
    expect(share).toBeGreaterThan(0.02);
    expect(share).toBeLessThan(0.5);
  });

  it('say nothing once the hot build is plain', () => {
    const inside = [
      { tell: 'piston-face', answer: 'satin' },
      { tell: 'seal-tabs', answer: '3' },
    ];
    const answers = [...wave, ...inside];
    const codes = issuesOf(laundry({ answers, decided: leak, water: hotWater })).map(({ code }) => code);
    expect(codes).not.toContain('maybe-too-hot');
  });

  it('hold the supply pressure against what the family stands and needs', () => {
    const codes = (pressure: string) => issuesOf(laundry({ supply: { pressure } })).map(({ code }) => code);
    expect(codes('130 psi')).toContain('pressure-above');
    expect(codes('15 psi')).toContain('pressure-below');
    expect(codes('60 psi')).toEqual([]);
  });
});

describe('advice', () => {
  it('names the fault and what mends it', () => {
    expect(said(repairOf(laundry({ answers: slim, decided: leak })).advice).length).toBeGreaterThan(20);
  });
});
