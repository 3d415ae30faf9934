import { useLocation } from 'wouter';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { ButtonLink, Empty, Sheet } from '../../../ui/index.ts';
import { FactScreen } from './fact-screen.tsx';
import { UnitScreen } from './unit-screen.tsx';

export type UnitPlaceProps = {
  readonly stream: string;
  readonly conditioner: string;
  /** The value that is being said anew. */
  readonly fact: string | undefined;
};

/** A unit between visits, or one of its values being said anew. */
export const UnitPlace = ({ stream, conditioner, fact: key }: UnitPlaceProps) => {
  const word = useWord();
  const [, go] = useLocation();
  const { record } = useDevice();
  const { view, problem } = useView('unit', { stream, conditioner });
  const back = { to: '/', name: word('app.record.back') };
  if (problem !== undefined)
    return (
      <Sheet back={back}>
        <Empty
          title={word('app.unit.missing-here')}
          action={<ButtonLink to="/">{word('app.visit.to-start')}</ButtonLink>}
        />
      </Sheet>
    );
  if (view === undefined) return <Sheet back={back} />;
  const at = `/unit/${stream}/${conditioner}`;
  const fact = view.groups.flatMap(({ facts }) => facts).find((one) => one.key === key);
  const props = { view, place: { stream, conditioner }, record, at };
  return fact === undefined ? (
    <UnitScreen {...props} onEdit={(edited) => go(`${at}/${encodeURIComponent(edited)}`)} />
  ) : (
    <FactScreen key={fact.key} {...props} fact={fact} onLeave={() => go(at)} />
  );
};
