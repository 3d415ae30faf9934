import { useState } from 'react';
import { v7 } from 'uuid';
import { useWord } from '../../../app/words/use-word.ts';
import { useView } from '../../../engine/use-view.ts';
import { dayHere } from '../../../engine/views/days.ts';
import type { UnitRow } from '../../../engine/views/places-view.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { useReader } from '../../../offline/reader.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import {
  Answer,
  Answers,
  Button,
  ButtonLink,
  Choice,
  Empty,
  emptyEntry,
  Heading,
  Note,
  type QuantityEntry,
  QuantityField,
  readEntry,
  Section,
  Sheet,
  Told,
} from '../../../ui/index.ts';
import { justAReading } from '../commands/just-a-reading.ts';

const salts = ['fine', 'empty', 'bridge', 'mud'] as const;
type Salt = (typeof salts)[number];

type ReadingDraft = {
  readonly unit: string;
  readonly raw: QuantityEntry;
  readonly outlet: QuantityEntry;
  readonly salt: '' | Salt;
};

/** Hardness and salt, and done. */
export const ReadingScreen = () => {
  const word = useWord();
  const { system } = useReader();
  const units = system === 'us' ? ['gpg', 'mg/L CaCO3'] : ['mg/L CaCO3', 'gpg'];
  const [first] = useState<ReadingDraft>(() => {
    const entry = emptyEntry(units[0] ?? 'gpg');
    return { unit: '', raw: entry, outlet: entry, salt: '' };
  });
  const [draft, setDraft] = useDraft('just-a-reading', first);
  const [isKept, setIsKept] = useState(false);
  const { view } = useView('places', { query: '' });
  const unit = view?.units.find((one) => keyOf(one) === draft.unit);
  const keep = useKeep(draft, unit, () => {
    setDraft(first);
    setIsKept(true);
  });
  const blocked = whyBlocked(draft, unit);
  return (
    <Sheet
      title={{ name: word('app.reading.title'), under: unit?.site }}
      back={{ to: '/', name: word('app.record.back') }}
      actions={
        <Button
          kind="main"
          onPress={() => void keep()}
          blocked={blocked === undefined ? undefined : word(blocked)}
        >
          {word('app.reading.keep')}
        </Button>
      }
    >
      <Heading>{word('app.reading.title')}</Heading>
      <Note>{word('app.reading.lead')}</Note>
      <div aria-live="polite">{isKept ? <Told>{word('app.reading.kept')}</Told> : null}</div>
      {view === undefined ? null : (
        <Units
          all={view.units}
          chosen={draft.unit}
          onChoose={(chosen) => setDraft({ ...draft, unit: chosen })}
        />
      )}
      <Section title={word('app.reading.outlet')}>
        <QuantityField
          label={word('app.reading.outlet')}
          kind="hardness"
          units={units}
          value={draft.outlet}
          mayLack={false}
          onChange={(outlet) => setDraft({ ...draft, outlet })}
        />
        <QuantityField
          label={word('app.reading.raw')}
          kind="hardness"
          units={units}
          size="small"
          value={draft.raw}
          mayLack={false}
          onChange={(raw) => setDraft({ ...draft, raw })}
        />
      </Section>
      <Section title={word('app.reading.salt')}>
        <Choice
          label={word('app.reading.salt')}
          value={draft.salt}
          options={salts.map((value) => ({ value, label: word(`app.reading.salt.${value}`) }))}
          onChange={(salt) => setDraft({ ...draft, salt })}
        />
      </Section>
    </Sheet>
  );
};

const keyOf = ({ stream, conditioner }: UnitRow): string => `${stream} ${conditioner}`;

const Units = (props: {
  readonly all: readonly UnitRow[];
  readonly chosen: string;
  readonly onChoose: (key: string) => void;
}) => {
  const word = useWord();
  if (props.all.length === 0)
    return (
      <Empty
        title={word('app.reading.none')}
        under={word('app.reading.none.do')}
        action={<ButtonLink to="/new">{word('app.start.new')}</ButtonLink>}
      />
    );
  return (
    <Section title={word('app.reading.unit')}>
      <Answers name={word('app.reading.unit')}>
        {props.all.map((row) => (
          <Answer
            key={keyOf(row)}
            title={row.site}
            under={row.unit}
            chosen={props.chosen === keyOf(row)}
            onPress={() => props.onChoose(props.chosen === keyOf(row) ? '' : keyOf(row))}
          />
        ))}
      </Answers>
    </Section>
  );
};

const textOf = (entry: QuantityEntry): string | undefined =>
  entry.figure.trim() === '' ? undefined : `${entry.figure.trim()} ${entry.unit}`;

const whyBlocked = ({ raw, outlet, salt }: ReadingDraft, unit: UnitRow | undefined) => {
  if (unit === undefined) return 'app.new.begin.no-unit';
  if ([raw, outlet].some((entry) => readEntry('hardness', entry)?.ok === false))
    return 'app.reading.keep.wrong';
  const isEmpty = textOf(raw) === undefined && textOf(outlet) === undefined && salt === '';
  return isEmpty ? 'app.reading.keep.none' : undefined;
};

const useKeep = (draft: ReadingDraft, unit: UnitRow | undefined, done: () => void) => {
  const { record, session } = useDevice();
  const word = useWord();
  return async (): Promise<void> => {
    if (unit === undefined) return;
    const at = new Date().toISOString();
    const of = { stream: unit.stream, conditioner: unit.conditioner, visit: v7() };
    const told = { date: dayHere(at), by: session.author, note: word('app.reading.note'), at };
    const salt = draft.salt === '' ? undefined : draft.salt;
    await record(
      justAReading({ ...of, ...told }, { raw: textOf(draft.raw), outlet: textOf(draft.outlet), salt }),
    );
    done();
  };
};
