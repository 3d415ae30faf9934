import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { GateAskView, GateView, InHandView, WorkView } from '../../../engine/views/work/work-types.ts';
import { useDraft } from '../../../offline/use-draft.ts';
import { Button, Field, Icon } from '../../../ui/index.ts';
import { gateAgreed, handChanged, wayBackSaid } from '../commands/gate.ts';

type Props = Omit<StageProps<WorkView>, 'view'> & { readonly gate: GateView };

/** What is compared and agreed before the water goes off; each ask is checked off by itself. */
export const GateAsks = (props: Props) => {
  const word = useWord();
  return (
    <ul className="gate-asks">
      {props.gate.asks.map((ask) => (
        <li key={ask.id} className={ask.met ? 'met' : 'open'}>
          <span className="gate-box">{ask.met ? <Icon name="tick" /> : null}</span>
          <div>
            <p>
              <span className="only-heard">
                {word(ask.met ? 'app.work.gate.met' : 'app.work.gate.open')}{' '}
              </span>
              {ask.says}
            </p>
            <AskControl {...props} ask={ask} />
          </div>
        </li>
      ))}
    </ul>
  );
};

const agreed = {
  photographed: { field: 'photographed', word: 'app.work.gate.photographed' },
  price: { field: 'priceAgreed', word: 'app.work.gate.price' },
  outage: { field: 'outageAgreed', word: 'app.work.gate.outage' },
} as const;

const AskControl = (props: Props & { readonly ask: GateAskView }) => {
  const { ask, gate, about, record, nav } = props;
  const word = useWord();
  switch (ask.id) {
    case 'variant':
      return ask.met ? null : (
        <Button onPress={() => nav.toStage('recognise')}>{word('app.work.gate.recognise')}</Button>
      );
    case 'kit':
      return (
        <Hand
          items={gate.kit}
          said={ask.says}
          onChange={(hand, id) => void record(handChanged(about, 'kit', hand, id))}
        />
      );
    case 'tools':
      return (
        <Hand
          items={gate.tools}
          said={ask.says}
          onChange={(hand, id) => void record(handChanged(about, 'tools', hand, id))}
        />
      );
    case 'way-back':
      return <WayBack {...props} />;
    case 'photographed':
    case 'price':
    case 'outage': {
      const { field, word: key } = agreed[ask.id];
      return (
        <div className="buttons">
          {ask.id === 'price' && gate.price !== undefined ? (
            <b className="gate-price">{word('app.work.gate.parts-cost', { price: gate.price })}</b>
          ) : null}
          <Button onPress={() => void record(gateAgreed(about, field, !ask.met))}>
            {word(ask.met ? 'app.work.gate.undo' : key)}
          </Button>
        </div>
      );
    }
  }
};

const Hand = (props: {
  readonly items: readonly InHandView[];
  /** What the ask says already. */
  readonly said: string;
  readonly onChange: (hand: readonly string[], id: string) => void;
}) => {
  const word = useWord();
  const hand = props.items.filter(({ inHand }) => inHand).map(({ id }) => id);
  if (props.items.length === 0) return null;
  return (
    <ul className="hand">
      {props.items.map(({ id, name, inHand, wrong }) => (
        <li key={id}>
          <button
            type="button"
            className={wrong === undefined ? 'toggle' : 'toggle wrong'}
            aria-pressed={inHand}
            onClick={() => props.onChange(hand, id)}
          >
            <span>{name}</span>
            <small>{word(handWord(inHand, wrong !== undefined))}</small>
          </button>
          {wrong === undefined || wrong === props.said ? null : <p className="hand-wrong">{wrong}</p>}
        </li>
      ))}
    </ul>
  );
};

const handWord = (inHand: boolean, isWrong: boolean) => {
  if (isWrong) return 'app.work.gate.wrong';
  return inHand ? 'app.work.gate.in-hand' : 'app.work.gate.not-in-hand';
};

const WayBack = ({ gate, about, record, isStale }: Props) => {
  const word = useWord();
  const [draft, setDraft] = useDraft(`way-back ${about.visit}`, '');
  const text = draft.trim();
  const why = text === '' ? word('app.work.gate.way-back.empty') : undefined;
  return (
    <div className="way-back">
      <Field
        label={word('app.work.gate.way-back')}
        hint={word('app.work.gate.way-back.hint')}
        value={draft}
        onChange={setDraft}
      />
      <div className="buttons">
        <Button
          blocked={why ?? (isStale ? word('app.work.planning') : undefined)}
          onPress={() => void record(wayBackSaid(about, text)).then(() => setDraft(''))}
        >
          {word(gate.wayBack === '' ? 'app.work.gate.way-back.keep' : 'app.work.gate.way-back.change')}
        </Button>
      </div>
    </div>
  );
};
