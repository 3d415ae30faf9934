import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { FindView } from '../../../engine/views/find-view.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Choice, Field, Heading, Sheet } from '../../../ui/index.ts';
import { chooseFault } from '../commands/choose-fault.ts';
import { useChoiceEntry } from '../parts/decided.tsx';
import { OddsNow } from '../parts/stands.tsx';

type Props = StageProps<FindView>;

const initial = { fault: '', reason: '' };

/** The fault decided on site, with the reason why; parts, work and proof follow it. */
export const ChooseFault = (props: Props) => {
  const { view, about, record, nav } = props;
  const word = useWord();
  const [choice, setChoice] = useDraft(`${about.visit} fault`, initial);
  const [, setEntry] = useChoiceEntry(about.visit);
  const chosen = view.faults.find(({ id }) => id === choice.fault);
  const keep = async (): Promise<void> => {
    const [entry = ''] = await record(chooseFault(about, choice.fault, choice.reason));
    setEntry(entry);
    setChoice(initial);
    nav.toPart(undefined);
  };
  const doing = (
    <>
      <Heading>{word('app.find.choose')}</Heading>
      <p className="ask-how">{word('app.find.choose.how')}</p>
      <div className="choose-why">
        <Field
          label={word('app.find.choose.reason')}
          hint={word('app.find.choose.reason.hint')}
          value={choice.reason}
          onChange={(reason) => setChoice({ ...choice, reason })}
        />
      </div>
      <Choice
        label={word('app.find.choose.which')}
        look="list"
        options={view.faults.map(({ id, title, percent, explains }) => ({
          value: id,
          label: `${title}, ${percent}`,
          under: explains,
        }))}
        value={choice.fault}
        onChange={(fault) => setChoice({ ...choice, fault })}
      />
    </>
  );
  return (
    <Sheet
      wide={{ doing, why: <OddsNow view={view} /> }}
      actions={
        <>
          <Button onPress={() => nav.toPart(undefined)}>{word('app.find.choose.none')}</Button>
          {chosen === undefined ? (
            <Button kind="main" blocked={word('app.find.chosen.missing')}>
              {word('app.find.choose')}
            </Button>
          ) : (
            <Button kind="main" onPress={() => void keep()}>
              {word('app.find.chosen.keep', { fault: chosen.title })}
            </Button>
          )}
        </>
      }
    >
      {doing}
    </Sheet>
  );
};
