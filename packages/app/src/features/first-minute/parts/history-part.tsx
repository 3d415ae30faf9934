import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, Row, Rows, Section } from '../../../ui/index.ts';
import { type HistoryDraft, historyTold, isNothingTold } from '../commands/told.ts';
import type { PartProps } from '../part-props.ts';
import { Chips } from './chips.tsx';

const empty: HistoryDraft = { changed: '', changes: [], by: '', what: '' };

/** What changed, and who worked on it last: the cheapest test there is. */
export const HistoryPart = (props: PartProps) => {
  const { view, about, record } = props;
  const word = useWord();
  const [draft, setDraft] = useDraft(`history ${about.visit}`, empty);
  const [isOpen, setIsOpen] = useState(false);
  const { history } = view;
  if (history !== undefined && !isOpen)
    return (
      <Section title={word('app.first.history')}>
        <Told history={history} view={view} />
        <Button
          kind="plain"
          onPress={() => {
            setDraft(history);
            setIsOpen(true);
          }}
        >
          {word('app.first.change')}
        </Button>
      </Section>
    );
  const keep = async (): Promise<void> => {
    await record(historyTold(about, draft));
    setDraft(empty);
    setIsOpen(false);
  };
  const say = (some: Partial<HistoryDraft>): void => setDraft({ ...draft, ...some });
  return (
    <Section title={word('app.first.history')}>
      <Chips
        more={word('app.first.history.more')}
        name={word('app.first.history.changed')}
        all={view.changes}
        chosen={draft.changes}
        onChange={(changes) => say({ changes })}
      />
      <div className="section-gap">
        <Field
          label={word('app.first.history.changed')}
          lines
          value={draft.changed}
          onChange={(changed) => say({ changed })}
        />
        <Field label={word('app.first.history.by')} value={draft.by} onChange={(by) => say({ by })} />
        <Field label={word('app.first.history.what')} value={draft.what} onChange={(what) => say({ what })} />
      </div>
      <div className="buttons">
        <Button
          onPress={() => void keep()}
          blocked={isNothingTold(draft) ? word('app.first.settings.none') : undefined}
        >
          {word('app.first.history.keep')}
        </Button>
      </div>
    </Section>
  );
};

const Told = ({ history, view }: { readonly history: HistoryDraft; readonly view: PartProps['view'] }) => {
  const word = useWord();
  const changes = view.changes.filter(({ id }) => history.changes.includes(id)).map(({ title }) => title);
  const lines = [
    [
      word('app.first.history.changed'),
      [...changes, history.changed].filter((text) => text !== '').join('. '),
    ],
    [word('app.first.history.by'), history.by],
    [word('app.first.history.what'), history.what],
  ] as const;
  return (
    <Rows>
      {lines
        .filter(([, value]) => value !== '')
        .map(([label, value]) => (
          <Row key={label} over={label} title={value} />
        ))}
    </Rows>
  );
};
