import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { Sheet } from '../../../ui/index.ts';
import { type Kept, keepDefinition } from '../commands/keep-definition.ts';
import { DefinitionsScreen } from './definitions-screen.tsx';

/** The definitions on this device, one family open at most. */
export const DefinitionsPlace = ({ family }: { readonly family: string | undefined }) => {
  const word = useWord();
  const device = useDevice();
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const { view } = useView('definitions', { family });
  const back = { to: family === undefined ? '/' : '/definitions', name: word('app.record.back') };
  const add = async (files: readonly File[]): Promise<void> => {
    const now = new Date().toISOString();
    setKept(await Promise.all(files.map((file) => keepDefinition(device, file, now))));
  };
  return view === undefined ? (
    <Sheet back={back} />
  ) : (
    <DefinitionsScreen view={view} kept={kept} back={back} onAdd={(files) => void add(files)} />
  );
};
