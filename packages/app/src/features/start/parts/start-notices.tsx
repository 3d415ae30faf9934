import { useSyncExternalStore } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { newerVersion } from '../../../offline/service-worker/keep-shell.ts';
import { isNearlyFull, sizeText } from '../../../offline/storage.ts';
import { useStorage } from '../../../offline/use-storage.ts';
import { Button, Notice, Problem } from '../../../ui/index.ts';
import { mustBeInstalled } from '../must-be-installed.ts';

/** What is to be known before work begins; none of it stands in the way. */
export const StartNotices = () => {
  const word = useWord();
  const storage = useStorage();
  const isNewerHere = useSyncExternalStore(newerVersion.listen, newerVersion.isHere);
  return (
    <>
      {mustBeInstalled() ? (
        <Notice title={word('app.start.install')}>{word('app.start.install.why')}</Notice>
      ) : null}
      {isNewerHere ? (
        <Notice
          title={word('app.start.update')}
          actions={<Button onPress={newerVersion.change}>{word('app.start.update.do')}</Button>}
        >
          {word('app.start.update.why')}
        </Notice>
      ) : null}
      {storage !== undefined && isNearlyFull(storage) ? (
        <Problem
          what={word('app.start.storage-full', {
            used: sizeText(storage.used),
            quota: sizeText(storage.quota),
          })}
          why={word('app.start.storage-full.do')}
        />
      ) : null}
    </>
  );
};
