import { Suspense, useContext, useMemo } from 'react';
import { useLocation } from 'wouter';
import { type Nav, stageIds, type VisitPlaceId } from '../engine/stage-props.ts';
import { useView } from '../engine/use-view.ts';
import type { FrameView } from '../engine/views/frame-view.ts';
import { FirstMinuteScreen } from '../features/first-minute/screens/first-minute-screen.tsx';
import { useDevice } from '../offline/device-context.ts';
import { ButtonLink, Empty, Progress, Sheet, SheetContext, type SheetFrame } from '../ui/index.ts';
import { screens } from './stages.ts';
import { useWord } from './words/use-word.ts';

export type VisitPlaceProps = {
  readonly stream: string;
  readonly visit: string;
  /** None: the first minute, before any stage. */
  readonly stage: VisitPlaceId | undefined;
  readonly part: string | undefined;
};

/** A visit: its title block and stages around whichever stage is open. */
export const VisitPlace = (props: VisitPlaceProps) => {
  const { stream, visit, stage } = props;
  const frame = useView('frame', { stream, visit });
  const around = useFrame(props, frame.view);
  if (frame.problem === 'missing') return <Missing />;
  if (frame.view === undefined) return <Waiting progress={frame.progress} />;
  const about = { stream, visit, conditioner: frame.view.conditioner };
  return (
    <SheetContext value={around}>
      {stage === undefined ? (
        <FirstMinuteScreen about={about} at={`/visit/${stream}/${visit}`} next={frame.view.goOn} />
      ) : (
        <Suspense fallback={<Waiting progress={undefined} />}>
          <StagePlace {...props} stage={stage} about={about} />
        </Suspense>
      )}
    </SheetContext>
  );
};

const useFrame = ({ stream, visit, stage }: VisitPlaceProps, view: FrameView | undefined): SheetFrame => {
  const word = useWord();
  const { record } = useContext(SheetContext);
  return useMemo(
    () => ({
      title: { name: view?.site ?? '', under: view?.unit, cells: view?.cells },
      back: { to: stage === undefined ? '/' : `/visit/${stream}/${visit}`, name: word('app.record.back') },
      record,
      stages: (view?.stages ?? []).map(({ id, state }) => ({
        id,
        name: word(`app.stage.${id}`),
        number: stageIds.indexOf(id) + 1,
        state,
        isNow: id === stage,
        to: `/visit/${stream}/${visit}/${id}`,
      })),
    }),
    [view, stream, visit, stage, record, word],
  );
};

type About = { readonly stream: string; readonly visit: string; readonly conditioner: string };

const StagePlace = (props: VisitPlaceProps & { readonly stage: VisitPlaceId; readonly about: About }) => {
  const { stream, visit, stage, part, about } = props;
  const { record } = useDevice();
  const nav = useNav(props);
  const seen = useView('stage', { stream, visit, stage, part });
  const Screen = screens[stage];
  if (seen.problem === 'missing') return <Missing />;
  if (seen.view === undefined) return <Waiting progress={seen.progress} />;
  return <Screen view={seen.view} isStale={seen.isStale} about={about} record={record} nav={nav} />;
};

const useNav = ({ stream, visit, stage, part }: VisitPlaceProps): Nav => {
  const [, go] = useLocation();
  return useMemo(() => {
    const at = `/visit/${stream}/${visit}`;
    const under = (id: VisitPlaceId | undefined, of: string | undefined): string =>
      `${at}/${id ?? ''}${of === undefined ? '' : `/${encodeURIComponent(of)}`}`;
    return {
      part,
      toPart: (of) => go(under(stage, of)),
      toStage: (id, of) => go(under(id, of)),
      toStart: () => go('/'),
    };
  }, [stream, visit, stage, part, go]);
};

const Missing = () => {
  const word = useWord();
  return (
    <Sheet back={{ to: '/', name: word('app.record.back') }}>
      <Empty
        title={word('app.visit.missing')}
        under={word('app.visit.missing.why')}
        action={<ButtonLink to="/">{word('app.visit.to-start')}</ButtonLink>}
      />
    </Sheet>
  );
};

const Waiting = ({
  progress,
}: {
  readonly progress: { readonly done: number; readonly of: number } | undefined;
}) => {
  const word = useWord();
  return (
    <Sheet>
      {progress === undefined ? null : (
        <Progress
          text={word('app.visit.working', { done: progress.done, of: progress.of })}
          share={progress.done / progress.of}
          under={word('app.visit.working.under')}
        />
      )}
    </Sheet>
  );
};
