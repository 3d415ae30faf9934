import { useWord } from '../../../app/words/use-word.ts';
import type { CheckView } from '../../../engine/views/prove-view.ts';
import { Button, Choice, Drawing, Figure, useWide, Verdict } from '../../../ui/index.ts';

export type CheckProps = {
  readonly check: CheckView;
  readonly onSeen: (check: string, state: 'seen' | 'not-seen') => Promise<void>;
  readonly onRead: () => void;
};

/** One check: verdict, reading and how sure it is, the line it stands on, and what would decide it. */
export const Check = (props: CheckProps) => {
  const { check } = props;
  return (
    <section className={`check ${check.verdict}`} aria-label={check.title}>
      <div className="head-line">
        <h2>{check.title}</h2>
        <VerdictOf check={check} />
      </div>
      {check.isSeen ? <SeenChoice {...props} /> : <Measured {...props} />}
    </section>
  );
};

const VerdictOf = ({ check: { verdict, word } }: { readonly check: CheckView }) =>
  verdict === 'open' ? <span className="note">{word}</span> : <Verdict verdict={verdict} word={word} />;

const SeenChoice = ({ check, onSeen }: CheckProps) => {
  const word = useWord();
  const options = [
    { value: 'seen', label: word('app.prove.seen') },
    { value: 'not-seen', label: word('app.prove.not-seen') },
  ] as const;
  const value = { pass: 'seen', fail: 'not-seen', open: undefined, 'not-decided': undefined } as const;
  return (
    <div className="unlabelled">
      <Choice
        label={check.title}
        options={options}
        value={value[check.verdict]}
        onChange={(state) => void onSeen(check.id, state)}
      />
    </div>
  );
};

const Measured = ({ check, onRead }: CheckProps) => {
  const word = useWord();
  const isWide = useWide();
  const { reading, line, must, decide, sure } = check;
  return (
    <>
      {reading === undefined ? null : (
        <p className="check-reading">
          <Figure text={reading.text} size="mid" />
          <span className="spread">{reading.spread}</span>
        </p>
      )}
      {line === undefined ? null : <Drawing {...(isWide ? line.wide : line.narrow)} />}
      <p className="check-says">{[must, sure, decide].filter((part) => part !== undefined).join(' ')}</p>
      <Behind check={check} />
      <Button onPress={onRead}>{word(reading === undefined ? 'app.prove.take' : 'app.prove.again')}</Button>
    </>
  );
};

/** Prediction and limits, each open to where it comes from. */
const Behind = ({ check: { predicted, limits } }: { readonly check: CheckView }) => {
  const word = useWord();
  const lines = [
    ...(predicted === undefined ? [] : [{ label: word('app.prove.predicted'), figure: predicted }]),
    ...limits.map((figure) => ({ label: word('app.prove.limit'), figure })),
  ];
  if (lines.length === 0) return null;
  return (
    <details className="check-behind">
      <summary>{word('app.prove.behind')}</summary>
      <dl>
        {lines.map(({ label, figure }) => (
          <div key={`${label} ${figure.text}`}>
            <dt>{label}</dt>
            <dd>
              <Figure text={figure.text} derivation={figure.derivation} />
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
};
