import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, Section } from '../../../ui/index.ts';
import { complaintTold } from '../commands/told.ts';
import type { PartProps } from '../part-props.ts';
import { Chips } from './chips.tsx';

type ComplaintDraft = { readonly words: string; readonly kinds: readonly string[] };
const empty: ComplaintDraft = { words: '', kinds: [] };

/** What the customer says, in the customer's words, and what of the definitions it comes to. */
export const ComplaintPart = ({ view, about, record }: PartProps) => {
  const word = useWord();
  const [draft, setDraft] = useDraft(`complaint ${about.visit}`, empty);
  const [isOpen, setIsOpen] = useState(false);
  const { complaint } = view;
  if (complaint !== undefined && !isOpen)
    return (
      <Section title={word('app.first.complaint.kept')}>
        <p>“{complaint.words}”</p>
        <p className="note">{titles(view.complaints, complaint.kinds)}</p>
        <Button
          kind="plain"
          onPress={() => {
            setDraft(complaint);
            setIsOpen(true);
          }}
        >
          {word('app.first.change')}
        </Button>
      </Section>
    );
  const keep = async (): Promise<void> => {
    await record(complaintTold(about, draft));
    setDraft(empty);
    setIsOpen(false);
  };
  return (
    <Section title={word('app.first.complaint')}>
      <Field
        label={word('app.first.complaint.words')}
        lines
        value={draft.words}
        onChange={(words) => setDraft({ ...draft, words })}
      />
      <p className="field-label section-gap">{word('app.first.complaint.kinds')}</p>
      <Chips
        more={word('app.first.complaint.more')}
        name={word('app.first.complaint.kinds')}
        all={view.complaints}
        chosen={draft.kinds}
        onChange={(kinds) => setDraft({ ...draft, kinds })}
      />
      <div className="buttons">
        <Button
          onPress={() => void keep()}
          blocked={draft.words.trim() === '' ? word('app.first.settings.none') : undefined}
        >
          {word('app.first.complaint.keep')}
        </Button>
      </div>
    </Section>
  );
};

const titles = (all: PartProps['view']['complaints'], ids: readonly string[]): string =>
  all
    .filter(({ id }) => ids.includes(id))
    .map(({ title }) => title)
    .join(', ');
