import { useContext, useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import type { PlacesView } from '../../../engine/views/places-view.ts';
import { ButtonLink, Field, Heading, Icon, Note, Sheet, SheetContext, useWide } from '../../../ui/index.ts';
import { StartNotices } from '../parts/start-notices.tsx';
import { StartSide } from '../parts/start-side.tsx';
import { UnitRows } from '../parts/unit-rows.tsx';
import { VisitRows } from '../parts/visit-rows.tsx';

/** Open and today's visits, finding a unit, a new visit. */
export const StartScreen = () => {
  const [query, setQuery] = useState('');
  const { view } = useView('places', { query });
  const cells = useCells(view);
  const { title } = useContext(SheetContext);
  const isWide = useWide();
  const doing = <Doing view={view} query={query} onQuery={setQuery} />;
  return (
    <Sheet
      title={{ ...title, cells }}
      wide={{ doing, why: <StartSide view={view} /> }}
      actions={<Actions view={view} />}
    >
      {isWide ? null : doing}
    </Sheet>
  );
};

type DoingProps = {
  readonly view: PlacesView | undefined;
  readonly query: string;
  readonly onQuery: (query: string) => void;
};

const Doing = ({ view, query, onQuery }: DoingProps) => {
  const word = useWord();
  return (
    <>
      <Heading>{view?.day ?? '\u00a0'}</Heading>
      <p className="lead note">{view?.says ?? '\u00a0'}</p>
      <div className="section-gap">
        <Field
          label={word('app.start.find')}
          hold={word('app.start.find.hold')}
          type="search"
          mode="search"
          icon={<Icon name="find" />}
          value={query}
          onChange={onQuery}
        />
      </div>
      <StartNotices />
      {view === undefined ? null : query.trim() === '' ? <VisitRows view={view} /> : <UnitRows view={view} />}
      <div className="buttons">
        <ButtonLink to="/reading">{word('app.start.reading')}</ButtonLink>
        <ButtonLink to="/what-if">{word('app.start.what-if')}</ButtonLink>
        <ButtonLink to="/definitions">{word('app.start.definitions')}</ButtonLink>
        <ButtonLink to="/preferences">{word('app.start.preferences')}</ButtonLink>
      </div>
      <Note>{word('app.start.tested')}</Note>
    </>
  );
};

/** The visit in hand comes first; a new one where there is none. */
const Actions = ({ view }: { readonly view: PlacesView | undefined }) => {
  const word = useWord();
  const open = view?.visits.find(({ isOpen }) => isOpen);
  if (open === undefined)
    return (
      <ButtonLink kind="main" to="/new">
        {word('app.start.new')}
      </ButtonLink>
    );
  return (
    <>
      <ButtonLink to="/new">{word('app.start.new')}</ButtonLink>
      <ButtonLink kind="main" to={`/visit/${open.stream}/${open.visit}`}>
        {word('app.start.go-on', { site: open.site.split(' ')[0] ?? open.site })}
      </ButtonLink>
    </>
  );
};

const useCells = (view: PlacesView | undefined) => {
  const word = useWord();
  if (view === undefined) return [];
  return [
    { label: word('app.start.definitions'), value: view.families },
    { label: word('app.start.kept.label'), value: view.kept },
  ];
};
