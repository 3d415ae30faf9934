import type { Equipment } from '@brinewright/equipment';
import { loadEquipment } from '@brinewright/equipment/load-files';
import { type Assessment, assess, parseVisit, type Visit } from '@brinewright/service';

/** An invented leak to the drain, proved with one pass, one failure and one that is not decided. */
const leak = `
schema: 1
id: v-0042
date: 2026-11-25
by: { name: Ada Quill, company: Fenlight Water (invented) }
site:
  name: Cold Harbour Kitchens
  address: 9 Tallow Lane
  prices: { currency: USD, salt: 8 per 40 lb, water: 10 per 1000 gal, sewer: 12 per 1000 gal }
water:
  - { of: raw, hardness: 18 gpg, iron: 0.25 mg/L, temperature: 50 degF, coldest: 46 degF, warmest: 61 degF }
demand: { daily: 700 gal, peak: 12 gpm }
supply: { pressure: 60 psi, flow: 16 gpm, drain: 10 gpm, drainPipe: 3/4 in }
conditioners:
  - id: s1
    name: Softener, cellar
    family: osier
    kind: softener
    tank: { girth: 45.4 in, wall: 0.25 in }
    media: [{ medium: gel-cation, depth: 34 in, free: 20 in, age: 2 yr }]
    fitted: { controller: tally, injector: middle, drain: d4, refill: r3, meter: vane }
    brineTank: { temperature: 60 degF }
subject: s1
complaint: { words: Water runs from the drain line all day. }
readings:
  - { test: drain-in-service, value: 0.21 gpm }
  - { test: drain-trickle-hardness, state: hard }
  - { test: outlet-closed-step, state: still-runs }
settings:
  found: { backwash: 10 min, brine: 60 min, fast-rinse: 6 min, refill: 10 min, volume: 2300 gal, at: "02:00" }
proofs:
  - { check: outlet-hardness, value: 0.2 gpg, u: 0.1 gpg }
  - { check: air-gap, value: 0.5 in, u: 0.1 in }
signatures: [{ name: R. Haldane, at: "2026-11-25T10:41:00-05:00" }]
`;

/** A make nobody has described, with nothing measured. */
const bare = `
schema: 1
id: v-0043
site: { name: Nowhere Baths }
conditioners: [{ id: s1, family: undescribed, kind: softener }]
subject: s1
`;

/** A hard-water complaint with little known and one wild repeat: what is asked and tested next matters most. */
const open = `
schema: 1
id: v-0044
site: { name: Foundry Canteen }
conditioners:
  - id: s1
    family: osier
    kind: softener
    tank: { girth: 45.4 in }
    media: [{ medium: gel-cation, depth: 34 in }]
subject: s1
complaint: { words: The water is hard. }
readings:
  - { test: drain-in-service, value: 0.21 gpm }
  - { test: drain-in-service, value: 0.22 gpm }
  - { test: drain-in-service, value: 0.21 gpm }
  - { test: drain-in-service, value: 2.1 gpm }
`;

const loaded = loadEquipment();

const equipmentOf = (): Equipment => {
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.issues));
  return loaded.value.equipment;
};

export type Assessed = {
  readonly visit: Visit;
  readonly assessment: Assessment;
  readonly equipment: Equipment;
};

const assessed = (yaml: string): Assessed => {
  const visit = parseVisit('visit.yaml', yaml);
  if (!visit.ok) throw new Error(JSON.stringify(visit.issues));
  const equipment = equipmentOf();
  const assessment = assess(visit.value, equipment, { now: '2026-11-25T10:00:00Z', effort: 'full' });
  return { visit: visit.value, assessment, equipment };
};

export const assessedLeak = (): Assessed => assessed(leak);
export const assessedBare = (): Assessed => assessed(bare);
export const assessedOpen = (): Assessed => assessed(open);

/** With the refill as short as it is often found: the salt does not last until the unit regenerates. */
export const assessedStarved = (): Assessed => assessed(leak.replace('refill: 10 min', 'refill: 3 min'));

/** The same visit with other words in the places that people fill in. */
export const assessedHostile = (words: string): Assessed => {
  const { visit, assessment, equipment } = assessedLeak();
  const named: Visit = {
    ...visit,
    site: { ...visit.site, name: words, address: words },
    complaint: { words },
    by: { name: words },
    note: words,
    signatures: [{ name: words }],
  };
  return { visit: named, assessment, equipment };
};
