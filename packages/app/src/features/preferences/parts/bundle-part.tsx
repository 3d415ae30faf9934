import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { dayHere } from '../../../engine/views/days.ts';
import type { BundleTaken } from '../../../offline/bundle-file.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { Button, Note, Problem, Section, Told } from '../../../ui/index.ts';

/** All of it in one file, out and in. */
export const BundlePart = () => {
  const word = useWord();
  const { database } = useDevice();
  const [taken, setTaken] = useState<BundleTaken>();
  const read = async (file: File): Promise<void> => {
    const { takeBundle } = await import('../../../offline/bundle-file.ts');
    setTaken(await takeBundle(database, await file.text(), new Date().toISOString()));
  };
  const save = async (): Promise<void> => {
    const { saveBundle } = await import('../../../offline/bundle-file.ts');
    offer(await saveBundle(database), `brinewright-${dayHere(new Date().toISOString())}.json`);
  };
  return (
    <Section title={word('app.preferences.bundle')}>
      <Note>{word('app.preferences.bundle.under')}</Note>
      <div className="buttons">
        <Button onPress={() => void save()}>{word('app.preferences.bundle.save')}</Button>
        <label className="button photo-button">
          {word('app.preferences.bundle.read')}
          <input
            type="file"
            accept="application/json,.json"
            aria-label={word('app.preferences.bundle.read')}
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file !== undefined) void read(file);
              currentTarget.value = '';
            }}
          />
        </label>
      </div>
      <div aria-live="polite">
        <Outcome taken={taken} />
      </div>
    </Section>
  );
};

const Outcome = ({ taken }: { readonly taken: BundleTaken | undefined }) => {
  const word = useWord();
  if (taken === undefined) return null;
  if (taken.state === 'taken')
    return <Told>{word('app.preferences.bundle.was-read', { fresh: taken.fresh })}</Told>;
  return (
    <Problem
      what={word('app.preferences.bundle.not-read')}
      why={word('app.preferences.bundle.not-read.why')}
    />
  );
};

const offer = (file: Blob, name: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};
