import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { askToKeep, isNearlyFull, sizeText } from '../../../offline/storage.ts';
import { useStorage } from '../../../offline/use-storage.ts';
import { Button, Note, Problem } from '../../../ui/index.ts';

/** How full it is, and whether the device may clear it. */
export const StoragePart = () => {
  const word = useWord();
  const [asked, setAsked] = useState(0);
  const state = useStorage(asked);
  if (state === undefined) return null;
  const sizes = { used: sizeText(state.used), quota: sizeText(state.quota) };
  return (
    <>
      <h2>{word('app.preferences.storage')}</h2>
      <p>{word('app.preferences.storage.used', sizes)}</p>
      <Note>{word(state.isKept ? 'app.preferences.storage.kept' : 'app.preferences.storage.may-go')}</Note>
      {isNearlyFull(state) ? (
        <Problem what={word('app.preferences.storage.full')} why={word('app.preferences.storage.full.why')} />
      ) : null}
      {state.isKept ? null : (
        <div className="buttons">
          <Button onPress={() => void askToKeep().then(() => setAsked(asked + 1))}>
            {word('app.preferences.storage.keep')}
          </Button>
        </div>
      )}
    </>
  );
};
