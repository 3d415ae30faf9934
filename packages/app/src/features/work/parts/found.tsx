import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { Question, WorkView } from '../../../engine/views/work/work-types.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Choice, Field, Heading } from '../../../ui/index.ts';
import { type Found, foundSomething, type Photo } from '../commands/found.ts';
import { PhotoTaken } from './photo-taken.tsx';

type Kind = Found['kind'];
type FoundDraft = {
  readonly kind: Kind;
  readonly text: string;
  readonly asked: string;
  readonly answer: string;
};
const empty: FoundDraft = { kind: 'note', text: '', asked: '', answer: '' };

/** Something turned up: what it is, a photo, and the plan is made anew from it. */
export const FoundSomething = (props: StageProps<WorkView> & { readonly at: string | undefined }) => {
  const { view, about, record, nav, at } = props;
  const word = useWord();
  const [draft, setDraft] = useDraft<FoundDraft>(`found ${about.visit}`, empty);
  const [photo, setPhoto] = useState<Photo>();
  const found = foundIn(draft);
  const keep = (): void => {
    if (found === undefined) return;
    const more = {
      note: view.found.note,
      at: new Date().toISOString(),
      ...(photo === undefined ? {} : { photo }),
    };
    void record(foundSomething(about, found, { ...more, ...(at === undefined ? {} : { of: at }) })).then(
      () => {
        setDraft(empty);
        nav.toPart(undefined);
      },
    );
  };
  return (
    <>
      <Heading>{word('app.work.found.title')}</Heading>
      {at === undefined ? null : <p className="note lead">{word('app.work.found.at', { order: at })}</p>}
      <div className="stack found">
        <PhotoTaken photo={photo} onTaken={setPhoto} />
        <Choice<Kind>
          label={word('app.work.found.what')}
          value={draft.kind}
          options={kinds.map((kind) => ({ value: kind, label: word(`app.work.found.${kind}`) }))}
          onChange={(kind) => setDraft({ ...empty, text: draft.text, kind })}
        />
        {draft.kind === 'note' ? (
          <Field
            label={word('app.work.found.words')}
            lines
            value={draft.text}
            onChange={(text) => setDraft({ ...draft, text })}
          />
        ) : (
          <Asked
            questions={draft.kind === 'tell' ? view.found.tells : view.found.looks}
            draft={draft}
            onChange={setDraft}
          />
        )}
        <div className="buttons">
          <Button
            kind="main"
            onPress={keep}
            blocked={found === undefined ? word('app.work.found.missing') : undefined}
          >
            {word('app.work.found.keep')}
          </Button>
          <Button onPress={() => nav.toPart(undefined)}>{word('app.work.back')}</Button>
        </div>
      </div>
    </>
  );
};

const kinds = ['note', 'look', 'tell'] as const;

const foundIn = ({ kind, text, asked, answer }: FoundDraft): Found | undefined => {
  if (kind === 'note') return text.trim() === '' ? undefined : { kind, text };
  if (asked === '' || answer === '') return undefined;
  return kind === 'tell' ? { kind, tell: asked, answer } : { kind, test: asked, state: answer };
};

const Asked = (props: {
  readonly questions: readonly Question[];
  readonly draft: FoundDraft;
  readonly onChange: (draft: FoundDraft) => void;
}) => {
  const { questions, draft, onChange } = props;
  const word = useWord();
  const chosen = questions.find(({ id }) => id === draft.asked);
  return (
    <>
      <label className="field">
        <span className="field-label">{word('app.work.found.which')}</span>
        <span className="field-box">
          <select
            value={draft.asked}
            onChange={(event) => onChange({ ...draft, asked: event.currentTarget.value, answer: '' })}
          >
            <option value="">{word('app.work.found.choose')}</option>
            {questions.map(({ id, ask }) => (
              <option key={id} value={id}>
                {ask}
              </option>
            ))}
          </select>
        </span>
      </label>
      {chosen === undefined ? null : (
        <Choice
          label={chosen.ask}
          look="list"
          value={draft.answer === '' ? undefined : draft.answer}
          options={chosen.answers.map(({ id, title }) => ({ value: id, label: title }))}
          onChange={(answer) => onChange({ ...draft, answer })}
        />
      )}
    </>
  );
};
