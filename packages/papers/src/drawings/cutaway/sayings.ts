import { type Message, type MessageKey, type MessageValue, message } from '@brinewright/words';
import { type BoreDrawing, portsOf } from './bore-drawing.ts';
import { type BrineStep, leakPast, type Passage, passagesIn, standingIn, type Water } from './waters.ts';

type Way = 'name' | 'from' | 'to';

const known = ['IN', 'OUT', 'TOP', 'BOT', 'DR', 'OUTSIDE'] as const;
type KnownPort = (typeof known)[number];

const keys: Readonly<Record<KnownPort, Readonly<Record<Way, MessageKey>>>> = {
  IN: { name: 'papers.port.in', from: 'papers.port.in.from', to: 'papers.port.in.to' },
  OUT: { name: 'papers.port.out', from: 'papers.port.out.from', to: 'papers.port.out.to' },
  TOP: { name: 'papers.port.top', from: 'papers.port.top.from', to: 'papers.port.top.to' },
  BOT: { name: 'papers.port.bot', from: 'papers.port.bot.from', to: 'papers.port.bot.to' },
  DR: { name: 'papers.port.dr', from: 'papers.port.dr.from', to: 'papers.port.dr.to' },
  OUTSIDE: { name: 'papers.port.outside', from: 'papers.port.outside.from', to: 'papers.port.outside.to' },
};

const isKnown = (port: string): port is KnownPort => known.some((name) => name === port);

/** A port of the trade by its word, with its preposition; one that a definition added by its own name. */
export const portWord = (port: string, way: Way = 'name'): Message | string =>
  isKnown(port) ? message(keys[port][way]) : port;

const nouns: Readonly<Record<Water, MessageKey>> = {
  raw: 'papers.water.raw.noun',
  treated: 'papers.water.treated.noun',
  brine: 'papers.water.brine.noun',
  drain: 'papers.water.drain.noun',
};

export const waterWords: Readonly<Record<Water, MessageKey>> = {
  raw: 'papers.water.raw',
  treated: 'papers.water.treated',
  brine: 'papers.water.brine',
  drain: 'papers.water.drain',
};

export const stopWords: Readonly<Record<BoreDrawing['stop'], MessageKey>> = {
  service: 'papers.stop.service',
  backwash: 'papers.stop.backwash',
  brine: 'papers.stop.brine',
  'fast-rinse': 'papers.stop.fast-rinse',
  refill: 'papers.stop.refill',
};

const wayOf = ({ water, from, to, seal }: Passage): Readonly<Record<string, MessageValue>> => ({
  water: message(nouns[water]),
  from: portWord(from, 'from'),
  to: portWord(to, 'to'),
  seal,
});

const ofTorn = (bore: BoreDrawing, seal: number, step: BrineStep): Message => {
  const leak = leakPast(bore, seal, step);
  return leak === undefined
    ? message('papers.cutaway.torn-quiet', { seal })
    : message('papers.cutaway.leaks', wayOf(leak));
};

const injected = (bore: BoreDrawing, step: BrineStep): readonly Message[] => {
  const top = portsOf(bore).includes('TOP') ? standingIn(bore, 'TOP', step) : undefined;
  if (bore.stop !== 'brine' || top === undefined || !top.moves || top.water === 'drain') return [];
  return [message(step === 'draw' ? 'papers.cutaway.injects-brine' : 'papers.cutaway.injects-raw')];
};

const shut = (bore: BoreDrawing, step: BrineStep): readonly Message[] =>
  portsOf(bore).includes('OUT') && !standingIn(bore, 'OUT', step).moves
    ? [message('papers.cutaway.outlet-shut')]
    : [];

/** What the section shows, in sentences: the stop or the tear first, then every join. */
export const cutawaySays = (
  bore: BoreDrawing,
  step: BrineStep,
  torn: number | undefined,
): readonly Message[] => [
  message('papers.cutaway.at', { stop: message(stopWords[bore.stop]) }),
  ...(torn === undefined ? [] : [ofTorn(bore, torn, step)]),
  ...passagesIn(bore, step).map((passage) => message('papers.cutaway.passes', wayOf(passage))),
  ...injected(bore, step),
  ...shut(bore, step),
  ...(bore.schematic ? [message('papers.cutaway.schematic')] : []),
];
