import { useEffect, useState } from 'react';
import { useChanges } from '../offline/changes.ts';
import { useDevice } from '../offline/device-context.ts';
import { useReader } from '../offline/reader.ts';
import type { ViewKind, Views } from './protocol.ts';

export type Seen<View> = {
  /** The last good one, of this very question. */
  readonly view: View | undefined;
  /** A newer one is on its way. */
  readonly isStale: boolean;
  readonly progress: { readonly done: number; readonly of: number } | undefined;
  readonly problem: 'missing' | 'failed' | undefined;
};

type Kept<View> = Seen<View> & { readonly of: string };

/** A view of what is on this device, made anew whenever that changes. */
export const useView = <K extends ViewKind>(kind: K, input: Views[K]['input']): Seen<Views[K]['view']> => {
  type View = Views[K]['view'];
  const { engine } = useDevice();
  const { language, system } = useReader();
  const changes = useChanges();
  const asked = JSON.stringify([kind, input, language, system]);
  const [kept, setKept] = useState<Kept<View>>(() => ({ ...nothing, of: asked }));
  useEffect(() => {
    // Read again at every change on the device.
    void changes;
    const [, question] = readAsked<K>(asked);
    const change = (next: (before: Seen<View>) => Seen<View>): void =>
      setKept((before) => ({ ...next(before.of === asked ? before : nothing), of: asked }));
    change((before) => ({ ...before, isStale: true }));
    return engine.ask(kind, question, { language, system }, (answer) => {
      if (answer.state === 'view')
        change(() => ({ view: answer.view, isStale: true, progress: undefined, problem: undefined }));
      if (answer.state === 'progress') change((before) => ({ ...before, progress: answer }));
      if (answer.state === 'missing') change(() => ({ ...nothing, problem: 'missing' }));
      if (answer.state === 'failed') change((before) => ({ ...before, problem: 'failed' }));
      if (answer.state === 'settled')
        change((before) => ({ ...before, isStale: false, progress: undefined }));
    });
  }, [engine, kind, asked, language, system, changes]);
  return kept.of === asked ? kept : nothing;
};

const nothing = { view: undefined, isStale: true, progress: undefined, problem: undefined } as const;

/** The input as it was asked; a new object with the same content is the same question. */
const readAsked = <K extends ViewKind>(asked: string): readonly [K, Views[K]['input']] => JSON.parse(asked);
