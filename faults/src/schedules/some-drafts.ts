import type { Draft, Json } from '@brinewright/journal';
import type { Random } from '../random.ts';

/* What simulated people enter: few values and names, so that they often say different things of the same. */

export type Places = {
  readonly company: string;
  readonly sites: readonly [string, string];
  readonly van: string;
};

type Make = (random: Random) => {
  readonly kind: string;
  readonly payload: Json;
  readonly about: Draft['about'];
};

const visitOf = (random: Random) => ({ visit: random.pick(['v1', 'v2']) });
const unitOf = (random: Random) => ({ conditioner: random.pick(['s1', 's2']) });

const ofSite: readonly [Make, ...Make[]] = [
  (random) => say('site-opened', { name: random.pick(['Mill Lane', 'Quay Row']) }),
  (random) => say('site-described', { access: random.pick(['side door', 'desk', 'roof']) }),
  (random) =>
    say(
      'conditioner-added',
      { family: random.pick(['osier', 'undescribed']), kind: 'softener' },
      unitOf(random),
    ),
  (random) => say('water-analysed', { of: 'raw', hardness: random.pick(['18 gpg', '20 gpg']) }),
  (random) => say('visit-started', { subject: random.pick(['s1', 's2']) }, visitOf(random)),
  (random) => say('setting-set', { refill: random.pick(['8 min', '9 min', '12 min']) }, visitOf(random)),
  (random) => say('setting-set', { refill: random.pick(['8 min', '9 min', '12 min']) }, visitOf(random)),
  (random) =>
    say(
      'tell-answered',
      { tell: random.pick(['boss', 'ribs']), answer: random.pick(['tube', 'elbow']) },
      visitOf(random),
    ),
  (random) =>
    say(
      'reading-taken',
      { test: random.pick(['drain', 'refill']), value: random.pick(['0.4 gpm', '0.5 gpm']) },
      visitOf(random),
    ),
  (random) =>
    say('operation-done', { operation: random.pick(['shut-water', 'pull-seals']) }, visitOf(random)),
  (random) => say('part-used', { part: random.pick(['kit', 'piston']), count: 1 }, visitOf(random)),
  (random) => say('handed-over', { to: random.pick(['Ms Ware', 'Mr Lund']) }, visitOf(random)),
];

const ofVan: readonly [Make, ...Make[]] = [
  (random) => say('stock-place-named', { name: random.pick(['van one', 'blue van']) }),
  (random) =>
    say('stock-taken', { lines: [{ part: random.pick(['kit', 'piston']), count: random.between(0, 5) }] }),
];

const ofWorkshop: readonly [Make, ...Make[]] = [
  (random) => say('workshop-named', { name: random.pick(['Brine and Sons', 'The Softener Shop']) }),
];

const say = (kind: string, payload: Json, about: Draft['about'] = {}) => ({
  kind: `${kind}/1`,
  payload,
  about,
});

/** A stream's usual entry; one in twelve is of a kind or version that no program here knows. */
export const someDraft = (random: Random, places: Places, stream: string): Draft => {
  if (random.between(1, 12) === 1) return { stream, ...newer(random) };
  if (stream === places.van) return { stream, ...vanDraft(random, places) };
  return { stream, ...random.pick(stream === places.company ? ofWorkshop : ofSite)(random) };
};

const vanDraft = (random: Random, { van }: Places) =>
  random.between(1, 3) === 1
    ? say('stock-moved', { part: random.pick(['kit', 'piston']), count: random.between(1, 3), to: van })
    : random.pick(ofVan)(random);

export const newerKinds: readonly [string, ...string[]] = ['reading-taken/7', 'smell-noted/1'];

const newer = (random: Random) => ({
  kind: random.pick(newerKinds),
  payload: { smell: random.pick(['eggs', 'none']) },
  about: visitOf(random),
});
