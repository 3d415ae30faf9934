import type { Draft, Json, Rival } from '@brinewright/journal';

/** What a rival value settles to when it is written again: its kind, and how its payload holds it. */
type Writer = (rival: Rival, value: Json) => { readonly kind: string; readonly payload: Json };

const fields = (value: Json): readonly (readonly [string, Json])[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.entries(value) : [];

const without = (value: Json, ...keys: readonly string[]): Json =>
  Object.fromEntries(fields(value).filter(([key]) => !keys.includes(key)));

/** { tank: { girth: … } } for 'tank.girth'. */
const nested = (what: string, value: Json): Json =>
  what.split('.').reduceRight<Json>((inner, key) => ({ [key]: inner }), value);

const leaf =
  (kind: string): Writer =>
  ({ what }, value) => ({ kind, payload: nested(what, value) });

const whole =
  (kind: string, ...left: readonly string[]): Writer =>
  (_, value) => ({ kind, payload: left.length === 0 ? value : without(value, ...left) });

const under =
  (kind: string, key: string): Writer =>
  (_, value) => ({ kind, payload: { [key]: value } });

const writers: Readonly<Record<string, Writer>> = {
  'workshop-named': leaf('workshop-named/1'),
  'definition-added': ({ what }, value) => ({
    kind: 'definition-added/1',
    payload: { name: what, file: value },
  }),
  'stock-place-named': leaf('stock-place-named/1'),
  'site-opened': leaf('site-described/1'),
  'site-described': leaf('site-described/1'),
  'demand-described': leaf('demand-described/1'),
  'supply-described': leaf('supply-described/1'),
  'conditioner-added': leaf('conditioner-described/1'),
  'conditioner-described': leaf('conditioner-described/1'),
  'history-told': leaf('history-told/1'),
  'gate-checked': leaf('gate-checked/1'),
  'apart-noted': leaf('apart-noted/1'),
  'setting-found': leaf('setting-found/1'),
  'setting-set': leaf('setting-set/1'),
  'visit-noted': leaf('visit-noted/1'),
  'complaint-told': whole('complaint-told/1'),
  'decision-made': whole('decision-made/1'),
  'handed-over': whole('handed-over/1'),
  'tell-answered': whole('tell-answered/1', 'conditioner', 'entry'),
  'operation-done': whole('operation-done/1', 'entry'),
  'stock-listed': under('stock-listed/1', 'lines'),
  'meter-read': ({ what }, value) => ({
    kind: 'meter-read/1',
    payload: { [what === 'meterNow' ? 'volume' : what]: value },
  }),
  'stock-taken': ({ what }, value) => ({
    kind: 'stock-taken/1',
    payload: { lines: [{ part: what, count: value }] },
  }),
  'part-used': ({ what }, value) => {
    const instance = Number(what.split('.').at(-1));
    const more = Number.isInteger(instance) && instance > 0 ? { instance } : {};
    return { kind: 'part-used/1', payload: { ...Object.fromEntries(fields(value)), ...more } };
  },
};

/**
 * The entry that settles a rivalry: the value chosen, written again by somebody who has seen both (F2). Nothing for
 * kinds of which nobody can choose here; those are settled by entering the matter anew in the app.
 */
export const settling = (stream: string, rival: Rival, entry: string): Draft | undefined => {
  const chosen = rival.values.find((one) => one.entry === entry);
  const writer = writers[rival.kind.split('/')[0] ?? ''];
  if (chosen === undefined || writer === undefined || rival.what === '') return undefined;
  const value = asJson(chosen.value);
  return value === undefined ? undefined : { stream, about: rival.about, ...writer(rival, value) };
};

/** A value of the fold is JSON already; this says so to the compiler. */
const asJson = (value: unknown): Json | undefined => {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return value;
  if (Array.isArray(value)) return value.flatMap((one) => asJson(one) ?? []);
  if (typeof value !== 'object') return undefined;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, held]) => {
      const json = asJson(held);
      return json === undefined ? [] : [[key, json]];
    }),
  );
};

/** Whether a rivalry can be settled by a choice; of corrections the chosen one is written again as it stands. */
export const canSettle = (rival: Rival): boolean =>
  rival.what === '' || Object.hasOwn(writers, rival.kind.split('/')[0] ?? '');
