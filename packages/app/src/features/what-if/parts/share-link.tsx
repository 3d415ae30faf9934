import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { Button } from '../../../ui/index.ts';

/** Gives the address away; by the device's own sharing where it has one. */
export const ShareLink = () => {
  const word = useWord();
  const [said, setSaid] = useState<string>();
  const share = async (): Promise<void> => {
    try {
      if (typeof navigator.share === 'function') await navigator.share({ url: location.href });
      else {
        await navigator.clipboard.writeText(location.href);
        setSaid(word('app.what-if.copied'));
      }
    } catch {
      setSaid(word('app.what-if.not-copied'));
    }
  };
  return (
    <>
      <Button kind="main" onPress={() => void share()}>
        {word('app.what-if.copy')}
      </Button>
      {said === undefined ? null : (
        <p className="note" role="status">
          {said}
        </p>
      )}
    </>
  );
};
