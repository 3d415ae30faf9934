import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { ShotView } from '../../../engine/views/first-minute-view.ts';
import { useKeepPhoto } from '../../../offline/use-keep-photo.ts';
import { Icon, Problem, Section } from '../../../ui/index.ts';
import { photoTaken } from '../commands/photo-taken.ts';
import type { PartProps } from '../part-props.ts';

/** The fixed set of photos, so that nobody forgets how it was. */
export const BeforePhotos = (props: PartProps) => {
  const { view, about, record } = props;
  const word = useWord();
  const keep = useKeepPhoto();
  const [lost, setLost] = useState<string>();
  const take = async (shot: ShotView, photo: File): Promise<void> => {
    try {
      const kept = await keep(photo);
      await record(photoTaken(about, kept, shot.of));
      setLost(undefined);
    } catch {
      setLost(shot.title);
    }
  };
  return (
    <Section title={word('app.first.photos')}>
      <p className="note">{word('app.first.photos.under')}</p>
      {lost === undefined ? null : (
        <Problem
          what={word('app.first.photos.lost')}
          where={`${lost}.`}
          why={word('app.first.photos.lost.why')}
        />
      )}
      <ul className="rows">
        {view.shots.map((shot) => (
          <Shot key={shot.id} shot={shot} onTake={(photo) => void take(shot, photo)} />
        ))}
      </ul>
    </Section>
  );
};

const Shot = ({ shot, onTake }: { readonly shot: ShotView; readonly onTake: (photo: File) => void }) => {
  const word = useWord();
  return (
    <li>
      <div className="row">
        <span className="row-words">
          <span className="row-title">{shot.title}</span>
          <span className="row-under">{word('app.first.photos.taken', { count: shot.taken })}</span>
        </span>
        <label className="button photo-button">
          <Icon name={shot.taken > 0 ? 'tick' : 'photo'} />
          {word('app.first.photos.take')}
          <input
            type="file"
            accept="image/*"
            capture="environment"
            aria-label={`${word('app.first.photos.take')}: ${shot.title}`}
            onChange={({ currentTarget }) => {
              const [photo] = currentTarget.files ?? [];
              if (photo !== undefined) onTake(photo);
              currentTarget.value = '';
            }}
          />
        </label>
      </div>
    </li>
  );
};
