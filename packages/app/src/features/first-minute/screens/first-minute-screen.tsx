import { useWord } from '../../../app/words/use-word.ts';
import type { StageId } from '../../../engine/stage-props.ts';
import { useView } from '../../../engine/use-view.ts';
import { useDevice } from '../../../offline/device-context.ts';
import type { Place } from '../../../offline/draft-about.ts';
import { ButtonLink, Heading, Icon, Row, Rows, Section, Sheet } from '../../../ui/index.ts';
import { BeforePhotos } from '../parts/before-photos.tsx';
import { ComplaintPart } from '../parts/complaint-part.tsx';
import { FoundSettings } from '../parts/found-settings.tsx';
import { HistoryPart } from '../parts/history-part.tsx';
import { WetPart } from '../parts/wet-part.tsx';

/** Places in reach from any stage. */
const Beside = ({ at }: { readonly at: string }) => {
  const word = useWord();
  return (
    <Section title={word('app.first.beside')}>
      <Rows>
        <Row to={`${at}/cutaway`} title={word('app.cutaway.title')} />
        <Row to={`${at}/leave-safe`} title={word('app.first.leave-safe')} />
      </Rows>
    </Section>
  );
};

export type FirstMinuteProps = {
  readonly about: Place;
  readonly next: StageId;
  /** Address of the visit, under which its stages lie. */
  readonly at: string;
};

/** On arriving: is it safe, what is said, what changed, how it looks and how it is set. */
export const FirstMinuteScreen = ({ about, next, at }: FirstMinuteProps) => {
  const word = useWord();
  const { record } = useDevice();
  const { view } = useView('first-minute', { stream: about.stream, visit: about.visit });
  const actions = (
    <ButtonLink kind="main" to={`${at}/${next}`}>
      {word('app.first.go-on', { stage: word(`app.stage.${next}`) })}
      <Icon name="on" />
    </ButtonLink>
  );
  if (view === undefined) return <Sheet actions={actions} />;
  const props = { view, about, record };
  const asked = (
    <>
      <Heading>{word('app.first.title')}</Heading>
      <WetPart {...props} />
      <ComplaintPart {...props} />
      <HistoryPart {...props} />
      <Beside at={at} />
    </>
  );
  const seen = (
    <>
      <BeforePhotos {...props} />
      <FoundSettings {...props} />
    </>
  );
  return <Sheet wide={{ doing: asked, picture: seen }} actions={actions} />;
};
