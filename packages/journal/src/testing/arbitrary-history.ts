import fc from 'fast-check';
import type { About, Entry, Json } from '../entry/entry.ts';
import { type KindName, kindNames } from '../kinds/payloads.ts';
import { Desk, testId, testStream } from './desk.ts';

type Said = { readonly kind: KindName; readonly payload: Json; readonly about: About };

const word = (...words: readonly string[]) => fc.constantFrom(...words);
const visit = fc.record({ visit: word('v1', 'v2') });
const unit = fc.record({ conditioner: word('s1', 's2') });
const minutes = fc.integer({ min: 1, max: 3 }).map((count) => `${count} min`);

const say = (
  kind: KindName,
  payload: fc.Arbitrary<Json>,
  about: fc.Arbitrary<About> = fc.constant({}),
): fc.Arbitrary<Said> => fc.record({ kind: fc.constant(kind), payload, about });

/** Few values and names, so that devices often say different things of the same. */
const plausible: fc.Arbitrary<Said> = fc.oneof(
  say('site-opened', fc.record({ name: word('Mill Lane', 'Quay Row') })),
  say('site-described', fc.record({ access: word('side door', 'desk') })),
  say(
    'conditioner-added',
    fc.record({ family: word('osier', 'undescribed'), kind: fc.constant('softener') }),
    unit,
  ),
  say('conditioner-described', fc.record({ tank: fc.record({ height: word('54 in', '65 in') }) }), unit),
  say('water-analysed', fc.record({ of: fc.constant('raw'), hardness: word('18 gpg', '20 gpg') })),
  say('visit-started', fc.record({ subject: word('s1', 's2') }), visit),
  say('setting-set', fc.record({ refill: minutes, backwash: minutes }, { requiredKeys: [] }), visit),
  say('tell-answered', fc.record({ tell: word('boss', 'ribs'), answer: word('tube', 'elbow') }), visit),
  say(
    'reading-taken',
    fc.record({ test: word('drain', 'refill'), value: word('0.4 gpm', '0.5 gpm') }),
    visit,
  ),
  say('operation-done', fc.record({ operation: word('shut-water', 'pull-seals') }), visit),
  say(
    'part-used',
    fc.record({ part: word('kit', 'piston'), count: fc.constant(1), from: fc.constant(testId(20)) }),
    visit,
  ),
  say('handed-over', fc.record({ to: word('Ms Ware', 'Mr Lund') }), visit),
  say(
    'stock-moved',
    fc.record({ part: word('kit', 'piston'), count: fc.constant(2), to: fc.constant(testId(20)) }),
  ),
);

/** What no program of ours would write. */
const odd: fc.Arbitrary<Said> = fc.record({
  kind: fc.constantFrom(...kindNames),
  payload: fc.jsonValue({ maxDepth: 3 }).map((value): Json => JSON.parse(JSON.stringify(value))),
  about: fc.oneof(visit, unit, fc.constant({})),
});

type Command =
  | { readonly at: number; readonly say: Said }
  | { readonly at: number; readonly take: number }
  | { readonly at: number; readonly correct: number; readonly withdrawn: boolean }
  | { readonly at: number; readonly redact: number }
  | { readonly at: number; readonly again: number }
  | { readonly at: number; readonly newer: string };

const desks = 3;
const desk = fc.nat(desks - 1);

const command: fc.Arbitrary<Command> = fc.oneof(
  { weight: 10, arbitrary: fc.record({ at: desk, say: plausible }) },
  { weight: 1, arbitrary: fc.record({ at: desk, say: odd }) },
  { weight: 5, arbitrary: fc.record({ at: desk, take: desk }) },
  { weight: 2, arbitrary: fc.record({ at: desk, correct: fc.nat(), withdrawn: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ at: desk, redact: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ at: desk, again: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ at: desk, newer: word('reading-taken/7', 'smell-noted/1') }) },
);

/** Entries that three devices wrote, each knowing some of what the others had written. */
export const arbitraryHistory: fc.Arbitrary<readonly Entry[]> = fc
  .array(command, { minLength: 3, maxLength: 40 })
  .map((commands) => {
    const all = Array.from({ length: desks }, (_, number) => new Desk(number + 1));
    for (const one of commands) perform(all, one);
    const whole = new Desk(9);
    for (const one of all) whole.take(one);
    return whole.entries;
  });

const perform = (all: readonly Desk[], one: Command): void => {
  const here = all[one.at];
  if (here === undefined) return;
  if ('say' in one) here.write(one.say.kind, one.say.payload, { about: one.say.about, stream: testStream });
  else if ('take' in one) here.take(all[one.take] ?? here);
  else if ('newer' in one) here.writeKind(one.newer, { any: 'thing' }, { about: { visit: 'v1' } });
  else performOn(here, one);
};

const performOn = (
  here: Desk,
  one: Extract<Command, { correct: number } | { redact: number } | { again: number }>,
): void => {
  const chosen = 'correct' in one ? one.correct : 'redact' in one ? one.redact : one.again;
  const target = here.entries[chosen % Math.max(1, here.entries.length)];
  if (target === undefined) return;
  if ('redact' in one) here.write('redacted', { target: target.id, reason: 'private' });
  else if ('again' in one)
    here.writeKind(target.kind, target.payload, { about: target.about, again: target.again ?? target.id });
  else
    here.write(
      'corrected',
      one.withdrawn
        ? { target: target.id, withdrawn: 'wrong' }
        : {
            target: target.id,
            payload: here.entries.find(({ kind }) => kind === target.kind)?.payload ?? null,
          },
    );
};
