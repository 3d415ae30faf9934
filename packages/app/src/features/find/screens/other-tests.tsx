import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { Button, Heading, Row, Rows, Sheet } from '../../../ui/index.ts';
import { OddsNow } from '../parts/stands.tsx';

/** Every test that helps, the best first; and the fault chosen without one. */
export const OtherTests = ({ view, nav }: StageProps<FindView>) => {
  const word = useWord();
  const all = [...(view.first === undefined ? [] : [view.first]), ...view.others];
  const doing = (
    <>
      <Heading>{word('app.find.tests')}</Heading>
      {all.length === 0 ? <p>{word('app.find.no-tests')}</p> : null}
      <Rows>
        {all.map(({ id, title, takes, under }) => (
          <Row key={id} title={title} under={under} at={takes} onPress={() => nav.toPart(id)} />
        ))}
      </Rows>
    </>
  );
  return (
    <Sheet
      wide={{ doing, why: <OddsNow view={view} /> }}
      actions={
        <>
          <Button onPress={() => nav.toPart(undefined)}>{word('app.find.choose.none')}</Button>
          <Button onPress={() => nav.toPart('choose')}>{word('app.find.choose')}</Button>
        </>
      }
    >
      {doing}
    </Sheet>
  );
};
