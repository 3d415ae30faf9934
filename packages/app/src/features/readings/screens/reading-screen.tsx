import { useState } from 'react';
import type { ReadingAsk } from '../../../engine/views/reading-ask.ts';
import type { Editing } from '../parts/editing.ts';
import type { ReadingInput } from '../reading-input.ts';
import { AnswerReading } from './answer-reading.tsx';
import { KeyedReading } from './keyed-reading.tsx';
import { PailReading } from './pail-reading.tsx';
import '../readings.css';

export type ReadingScreenProps = {
  readonly ask: ReadingAsk;
  /** What a sound unit shows, what is expected, what must come off first. */
  readonly lines: readonly string[];
  /** What to mind while it is taken. */
  readonly cautions: readonly { readonly signal: string; readonly title: string }[];
  /** Names the drafts of this entry on the device. */
  readonly draft: string;
  /** Whether it may be given up, so that another test is asked for. */
  readonly mayFail: boolean;
  /** Each resolves once it is written durably; only then are drafts forgotten. */
  readonly onTake: (readings: readonly ReadingInput[]) => Promise<void>;
  readonly onCorrect: (entry: string, reading: ReadingInput) => Promise<void>;
  readonly onWithdraw: (entry: string) => Promise<void>;
  readonly onLeave: () => void;
};

/** One reading: seen, keyed in, or timed with a pail. Odd figures are asked about, never refused. */
export const ReadingScreen = (props: ReadingScreenProps) => {
  const { ask } = props;
  const [way, setWay] = useState<'pail' | 'key'>('pail');
  const [editing, setEditing] = useState<Editing>();
  const shared = { ...props, editing, onEdit: setEditing };
  if (ask.quantity === undefined) return <AnswerReading {...shared} />;
  if (ask.quantity.byPail && way === 'pail' && editing === undefined)
    return <PailReading {...shared} quantity={ask.quantity} onWay={setWay} />;
  return <KeyedReading {...shared} quantity={ask.quantity} onWay={setWay} />;
};
