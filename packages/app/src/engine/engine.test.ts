import { draftsOfVisit } from '@brinewright/journal';
import { describe, expect, test } from 'vitest';
import { Engine } from './engine.ts';
import type { Question } from './protocol.ts';
import type { Source } from './source.ts';
import { demoVisit, english, now, spanish } from './testing/made-of-visit.ts';
import { testStream, writtenEntries } from './testing/written-entries.ts';

const visit = demoVisit('laundry-slow');
const entries = writtenEntries(draftsOfVisit(visit, { stream: testStream }));

const source = (some: Partial<Source> = {}): Source => ({
  company: '00000000-0000-7000-8000-000000000001',
  streams: async () => [testStream],
  entriesOf: async (stream) => (stream === testStream ? entries : []),
  definitions: async () => [],
  ...some,
});

const ticks = { now: () => now, pause: async () => true };
const asked = { stream: testStream, visit: visit.id };

const collected = async <T>(all: AsyncIterable<T>): Promise<readonly T[]> => {
  const found: T[] = [];
  for await (const one of all) found.push(one);
  return found;
};

const repliesTo = (engine: Engine, question: Question) => collected(engine.answer(question, ticks));

describe('the engine in the worker', () => {
  test('a visit is folded, assessed and told in the language of the reader', async () => {
    const engine = new Engine(source());
    const frame = { number: 1, kind: 'frame', input: asked } as const;
    const [first] = (await repliesTo(engine, { ...frame, reader: english })).filter(
      ({ state }) => state === 'view',
    );
    expect(first).toMatchObject({ view: { site: visit.site.name, goOn: expect.any(String) } });
    const [second] = (await repliesTo(engine, { ...frame, reader: spanish })).filter(
      ({ state }) => state === 'view',
    );
    expect(JSON.stringify(second)).toContain('Válvula');
  });

  test('a visit that is not on this device is missing, not a failure', async () => {
    const question = {
      number: 1,
      kind: 'frame',
      input: { ...asked, visit: 'none' },
      reader: english,
    } as const;
    expect(await repliesTo(new Engine(source()), question)).toEqual([
      { state: 'missing' },
      { state: 'settled' },
    ]);
  });

  test('where nobody waits any more the work stops without a view', async () => {
    const replies = new Engine(source()).answer(
      { number: 1, kind: 'frame', input: asked, reader: english },
      { ...ticks, pause: async () => false },
    );
    const states = (await collected(replies)).map(({ state }) => state);
    expect(states).not.toContain('progress');
  });

  test('a definition of the workshop that does not compile leaves the shipped ones in use', async () => {
    const engine = new Engine(source({ definitions: async () => [{ name: 'own.yaml', text: 'family: [' }] }));
    const replies = await repliesTo(engine, { number: 1, kind: 'unit-choices', input: {}, reader: english });
    expect(replies[0]).toMatchObject({ state: 'view', view: { families: [{ id: 'osier' }] } });
  });
});
