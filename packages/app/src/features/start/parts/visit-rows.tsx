import { useWord } from '../../../app/words/use-word.ts';
import type { PlacesView, VisitRow } from '../../../engine/views/places-view.ts';
import { Empty, Row, Rows } from '../../../ui/index.ts';
import { UnitMark } from './unit-mark.tsx';

export const VisitRows = ({ view }: { readonly view: PlacesView }) => {
  const word = useWord();
  const open = view.visits.find(({ isOpen }) => isOpen);
  if (view.visits.length === 0)
    return (
      <div className="section-gap">
        <Empty
          title={word('app.start.empty')}
          under={word('app.start.empty.do')}
          drawing={<UnitMark kind="softener" />}
        />
      </div>
    );
  return (
    <div className="edge-to-edge section-gap">
      <Rows>
        {view.visits.map((row) => (
          <OneVisit key={row.visit} row={row} isNow={row === open} />
        ))}
      </Rows>
    </div>
  );
};

const OneVisit = ({ row, isNow }: { readonly row: VisitRow; readonly isNow: boolean }) => (
  <Row
    to={`/visit/${row.stream}/${row.visit}`}
    now={isNow}
    heading
    over={row.when}
    title={row.site}
    under={
      <>
        {row.unit}
        {row.complaint === undefined ? null : (
          <>
            <br />“{row.complaint}”
          </>
        )}
      </>
    }
    drawing={<UnitMark kind={row.kind} />}
  />
);
