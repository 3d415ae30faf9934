import { type TimedPail, takenTogether, timedPail, wildIssue } from '@brinewright/service';
import {
  enteredAs,
  parseQuantity,
  type Quantity,
  quantity,
  shownUnit,
  writeQuantity,
} from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import type { DerivationView } from '../../ui/parts/figure.tsx';
import type { Speech } from '../speech.ts';

/** One time that a pail was filled to a mark. */
export type PailRun = { readonly volume: string; readonly milliseconds: number };

/** What the runs come to; each is a reading of its own, so that the engine takes them together by its own rule. */
export type PailView = {
  readonly runs: readonly {
    readonly text: string;
    readonly spread: string;
    readonly isWild: boolean;
    /** As an entry holds it. */
    readonly value: string;
    readonly u: string;
  }[];
  /** The median of all that could be read, as the button says it. */
  readonly keep?: { readonly text: string; readonly spread: string };
  readonly wild?: { readonly says: string; readonly mend: string };
  readonly derivation?: DerivationView;
};

type Timed = {
  readonly volume: Quantity<'volume'>;
  readonly time: Quantity<'time'>;
  readonly flow: NonNullable<TimedPail['flow']>;
  readonly figures: TimedPail['figures'];
};

export const pailView = (speech: Speech, runs: readonly PailRun[]): PailView => {
  const timed = runs.flatMap((run) => timedOf(run) ?? []);
  const [first] = timed;
  if (first === undefined) return { runs: [] };
  const together = takenTogether(
    timed.map(({ flow }) => flow.quantity.si),
    Math.max(...timed.map(({ flow }) => flow.u)),
  );
  const wild = together?.wild ?? [];
  const last = timed.at(-1) ?? first;
  return {
    runs: timed.map(({ flow }, place) => ({
      ...shownFlow(speech, flow.quantity.si, flow.u),
      isWild: wild.includes(place),
      value: writeQuantity(flow.quantity),
      u: writeQuantity(quantity('flow', flow.u)),
    })),
    ...(together === undefined ? {} : { keep: shownFlow(speech, together.median, together.uncertainty) }),
    ...(wild.length === 0 ? {} : { wild: wildSaid(speech, wild.length, timed.length) }),
    derivation: derivationOf(speech, last),
  };
};

const timedOf = ({ volume, milliseconds }: PailRun): Timed | undefined => {
  const parsed = parseQuantity(volume, 'volume');
  if (!parsed.ok) return undefined;
  const caught = { kind: parsed.quantity.kind, si: parsed.quantity.si, as: volume };
  const time = quantity('time', milliseconds / 1000);
  const { flow, figures } = timedPail(caught, time);
  return flow === undefined ? undefined : { volume: caught, time, flow, figures };
};

const shownFlow = (speech: Speech, si: number, u: number) => {
  const unit = shownUnit('flow', speech.reader.system, si).symbol;
  return {
    text: formatQuantity(quantity('flow', si), { ...speech.reader, unit }).text,
    spread: `±\u00a0${formatQuantity(quantity('flow', u), { ...speech.reader, unit, digits: 2 }).text}`,
  };
};

const wildSaid = (speech: Speech, wild: number, repeats: number) => {
  const issue = wildIssue(['readings'], speech.word('app.readings.pail.flow'), wild, repeats);
  return { says: speech.say(issue.message), mend: issue.mend === undefined ? '' : speech.say(issue.mend) };
};

/** The mark and the watch are what is assumed of pail and hand. */
const derivationOf = (speech: Speech, { volume, time, flow, figures }: Timed): DerivationView => {
  const shown = (id: string, unit: string | undefined): string => {
    const found = figures[id]?.quantity;
    return found === undefined ? '' : formatQuantity(found, { ...speech.reader, unit, digits: 2 }).text;
  };
  const { text, spread } = shownFlow(speech, flow.quantity.si, flow.u);
  return {
    title: speech.word('equation.pail-rate'),
    formula: speech.word('formula.pail-rate'),
    inputs: [
      {
        label: speech.word('app.readings.pail.caught'),
        value: `${speech.quantity(volume)} ±\u00a0${shown('pail.mark', enteredAs(volume)?.row.symbol)}`,
      },
      {
        label: speech.word('app.readings.pail.time'),
        value: `${seconds(speech, time)} ±\u00a0${shown('pail.watch', 's')}`,
      },
    ],
    result: { label: speech.word('app.readings.pail.flow'), value: `${text} ${spread}` },
    source: speech.word('app.readings.pail.source'),
  };
};

const seconds = (speech: Speech, time: Quantity<'time'>): string =>
  formatQuantity(time, { ...speech.reader, unit: 's' }).text;
