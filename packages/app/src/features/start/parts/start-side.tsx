import { useWord } from '../../../app/words/use-word.ts';
import type { PlacesView } from '../../../engine/views/places-view.ts';
import { useRecordState } from '../../../offline/record-state.ts';
import { Note, Row, Rows, Section } from '../../../ui/index.ts';

/** On the wide sheet: the units on this device, and what waits to be sent. */
export const StartSide = ({ view }: { readonly view: PlacesView | undefined }) => {
  const word = useWord();
  const { counts } = useRecordState();
  return (
    <>
      <h2>{word('app.start.units')}</h2>
      <Rows>
        {(view?.units ?? []).map(({ stream, conditioner, site, unit, code, last }) => (
          <Row
            key={`${stream} ${conditioner}`}
            to={`/unit/${stream}/${conditioner}`}
            title={site}
            under={`${unit}, ${last === '' ? word('app.start.never') : word('app.start.last', { day: last })}`}
            at={code}
          />
        ))}
      </Rows>
      <Section title={word('app.start.waiting')}>
        <p>{word('app.start.waiting.count', { entries: counts.waiting, photos: counts.files })}</p>
        <Note>{word('app.start.safe')}</Note>
      </Section>
    </>
  );
};
