import { useWord } from '../../../app/words/use-word.ts';
import type { PlacesView } from '../../../engine/views/places-view.ts';
import { Empty, Row, Rows } from '../../../ui/index.ts';
import { UnitMark } from './unit-mark.tsx';

/** What was found by name or by the code on the label; opens a new visit to it. */
export const UnitRows = ({ view }: { readonly view: PlacesView }) => {
  const word = useWord();
  if (view.units.length === 0)
    return (
      <div className="section-gap">
        <Empty title={word('app.start.find.none')} under={word('app.start.find.none.do')} />
      </div>
    );
  return (
    <div className="edge-to-edge section-gap">
      <Rows>
        {view.units.map(({ stream, conditioner, site, unit, kind, code, last }) => (
          <Row
            key={`${stream} ${conditioner}`}
            to={`/unit/${stream}/${conditioner}`}
            heading
            over={code}
            title={site}
            under={`${unit}, ${last === '' ? word('app.start.never') : word('app.start.last', { day: last })}`}
            drawing={<UnitMark kind={kind} />}
          />
        ))}
      </Rows>
    </div>
  );
};
