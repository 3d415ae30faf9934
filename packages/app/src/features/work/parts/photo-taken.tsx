import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useKeepPhoto } from '../../../offline/use-keep-photo.ts';
import type { Photo } from '../commands/found.ts';

/** A photo first; it is on the device before any words are typed. */
export const PhotoTaken = (props: {
  readonly photo: Photo | undefined;
  readonly onTaken: (photo: Photo) => void;
}) => {
  const word = useWord();
  const keep = useKeepPhoto();
  const [wrong, setWrong] = useState<string>();
  const take = (file: File | undefined): void => {
    if (file === undefined) return;
    setWrong(undefined);
    keep(file).then(props.onTaken, (reason: unknown) =>
      setWrong(reason instanceof Error ? reason.message : String(reason)),
    );
  };
  return (
    <>
      <label className="button photo">
        {word(props.photo === undefined ? 'app.work.found.photo' : 'app.work.found.photo.again')}
        <input
          type="file"
          accept="image/*"
          capture="environment"
          className="only-heard"
          onChange={(event) => take(event.currentTarget.files?.[0])}
        />
      </label>
      <p role="status" className="note">
        {wrong ?? (props.photo === undefined ? '' : word('app.work.found.photo.kept'))}
      </p>
    </>
  );
};
