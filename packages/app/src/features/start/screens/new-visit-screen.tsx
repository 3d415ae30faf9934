import { useState } from 'react';
import { v7 } from 'uuid';
import { useLocation } from 'wouter';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import { dayHere } from '../../../engine/views/days.ts';
import type { UnitChoicesView } from '../../../engine/views/unit-choices-view.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Heading, Sheet } from '../../../ui/index.ts';
import { beginVisit } from '../commands/begin-visit.ts';
import { emptyNewVisit, missingIn, type NewVisitDraft } from '../new-visit-draft.ts';
import { ChooseSite } from '../parts/choose-site.tsx';
import { ChooseUnit } from '../parts/choose-unit.tsx';

/** Where, which unit, begin: three taps, and all else can wait. */
export const NewVisitScreen = ({ known }: { readonly known?: Known }) => {
  const word = useWord();
  const [draft, setDraft] = useNewVisit(known);
  const { view } = useView('unit-choices', { stream: draft.stream === '' ? undefined : draft.stream });
  const begin = useBegin(draft, view?.definitions, () => setDraft(emptyNewVisit));
  const missing = missingIn(draft);
  return (
    <Sheet
      title={{ name: word('app.new.title'), under: siteOf(draft, view) }}
      back={{ to: '/', name: word('app.record.back') }}
      actions={
        <Button
          kind="main"
          onPress={() => void begin()}
          blocked={missing === undefined ? undefined : word(`app.new.begin.no-${missing}`)}
        >
          {word('app.new.begin')}
        </Button>
      }
    >
      <Heading>{word(draft.isSiteChosen ? 'app.new.unit' : 'app.new.site')}</Heading>
      {view === undefined ? null : draft.isSiteChosen ? (
        <ChooseUnit draft={draft} view={view} onChange={setDraft} />
      ) : (
        <ChooseSite draft={draft} view={view} onChange={setDraft} />
      )}
    </Sheet>
  );
};

const siteOf = ({ stream, site }: NewVisitDraft, view: UnitChoicesView | undefined): string =>
  view?.sites.find((one) => one.stream === stream)?.name ?? site;

type Known = { readonly stream: string; readonly unit: string };

/** One that was found is chosen already; what was typed for another place stays for later. */
const useNewVisit = (known: Known | undefined): readonly [NewVisitDraft, (draft: NewVisitDraft) => void] => {
  const typed = useDraft<NewVisitDraft>('new-visit', emptyNewVisit);
  const ofKnown = useState<NewVisitDraft>({ ...emptyNewVisit, ...known, isSiteChosen: true });
  return known === undefined ? typed : ofKnown;
};

const useBegin = (draft: NewVisitDraft, definitions: string | undefined, forget: () => void) => {
  const { record, session } = useDevice();
  const [, go] = useLocation();
  return async (): Promise<void> => {
    if (definitions === undefined) return;
    const stream = draft.stream === '' ? v7() : draft.stream;
    const visit = v7();
    const isNewUnit = draft.unit === '';
    const { family, kind, name } = draft;
    await record(
      beginVisit(
        { stream, name: draft.site, isNew: draft.stream === '' },
        isNewUnit
          ? { id: v7(), described: { family, kind: kind === 'filter' ? kind : 'softener', name } }
          : { id: draft.unit },
        { visit, date: dayHere(new Date().toISOString()), by: session.author, definitions },
      ),
    );
    forget();
    go(`/visit/${stream}/${visit}`, { replace: true });
  };
};
