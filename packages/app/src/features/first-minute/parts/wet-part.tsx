import { useWord } from '../../../app/words/use-word.ts';
import { aboutVisit } from '../../../offline/draft-about.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Answer, Answers, Button, Caution, Told } from '../../../ui/index.ts';
import type { PartProps } from '../part-props.ts';

type Floor = 'not-asked' | 'dry' | 'wet';

/** Before anything else: nobody walks into a wet boiler room with the power on. */
export const WetPart = (props: PartProps) => {
  const word = useWord();
  const [floor, setFloor] = useDraft<Floor>(`floor ${props.about.visit}`, 'not-asked');
  if (floor === 'dry')
    return (
      <div className="section-gap">
        <Told>{word('app.first.wet.dry.said')}</Told>
        <Button kind="plain" onPress={() => setFloor('not-asked')}>
          {word('app.first.wet.again')}
        </Button>
      </div>
    );
  return (
    <div className="section-gap stack">
      <h2>{word('app.first.wet')}</h2>
      <Answers name={word('app.first.wet')}>
        <Answer title={word('app.first.wet.dry')} onPress={() => setFloor('dry')} />
        <Answer
          title={word('app.first.wet.wet')}
          chosen={floor === 'wet'}
          onPress={() => setFloor(floor === 'wet' ? 'not-asked' : 'wet')}
        />
      </Answers>
      {floor === 'wet' ? <StopPowerThenWater {...props} /> : null}
    </div>
  );
};

const StopPowerThenWater = ({ view, about, record }: PartProps) => {
  const word = useWord();
  const note = (what: 'power' | 'water') => () =>
    void record([aboutVisit(about, 'apart-noted', { [what]: 'off' })]);
  return (
    <>
      <Caution
        signal={word('app.first.power.signal')}
        text={<p>{word('app.first.power.do')}</p>}
        button={{ text: word('app.first.power.fact'), onPress: note('power') }}
        done={view.isPowerOff ? word('app.first.power.done') : undefined}
      />
      <Caution
        signal={word('app.first.water.signal')}
        text={<p>{word('app.first.water.do')}</p>}
        button={{ text: word('app.first.water.fact'), onPress: note('water') }}
        done={view.isWaterOff ? word('app.first.water.done') : undefined}
      />
    </>
  );
};
