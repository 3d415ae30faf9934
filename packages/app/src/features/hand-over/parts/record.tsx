import { useWord } from '../../../app/words/use-word.ts';
import type { Nav } from '../../../engine/stage-props.ts';
import type { Line, ProvedLine } from '../../../engine/views/hand-over/done.ts';
import type { OpenLine } from '../../../engine/views/hand-over/open.ts';
import type { HandOverView } from '../../../engine/views/hand-over-view.ts';
import { Row, Rows, Section, Told, Verdict } from '../../../ui/index.ts';

/** Found, done, set, proved: the visit in four headings. */
export const RecordOfVisit = ({ view }: { readonly view: HandOverView }) => {
  const word = useWord();
  return (
    <>
      <Lines title={word('app.hand-over.found')} lines={view.found} none={word('app.hand-over.none.found')} />
      <Lines title={word('app.hand-over.done')} lines={view.done} none={word('app.hand-over.none.done')} />
      <Lines title={word('app.hand-over.set')} lines={view.set} none={word('app.hand-over.none.set')} />
      <Proved lines={view.proved} />
    </>
  );
};

const Lines = (props: { readonly title: string; readonly lines: readonly Line[]; readonly none: string }) => (
  <Section title={props.title}>
    {props.lines.length === 0 ? (
      <p className="note">{props.none}</p>
    ) : (
      <Rows>
        {props.lines.map(({ says, value }) => (
          <Row key={`${says} ${value ?? ''}`} title={says} at={value} />
        ))}
      </Rows>
    )}
  </Section>
);

const Proved = ({ lines }: { readonly lines: readonly ProvedLine[] }) => {
  const word = useWord();
  return (
    <Section title={word('app.hand-over.proved')}>
      {lines.length === 0 ? (
        <p className="note">{word('app.hand-over.none.proved')}</p>
      ) : (
        <>
          <Rows>
            {lines.map((line) =>
              line.verdict === 'open' ? null : <ProvedRow key={line.title} line={line} />,
            )}
          </Rows>
          <NotRead lines={lines.filter(({ verdict }) => verdict === 'open')} />
        </>
      )}
    </Section>
  );
};

const ProvedRow = ({ line }: { readonly line: ProvedLine }) => {
  const { title, read, decide, verdict, word } = line;
  const said = [read, verdict === 'pass' ? undefined : decide].filter((text) => text !== undefined);
  return (
    <Row
      title={title}
      under={said.length === 0 ? undefined : said.join('. ')}
      at={verdict === 'open' ? word : <Verdict verdict={verdict} word={word} />}
    />
  );
};

const NotRead = ({ lines }: { readonly lines: readonly ProvedLine[] }) => {
  const word = useWord();
  return lines.length === 0 ? null : (
    <details className="more">
      <summary>{word('app.hand-over.not-read', { count: lines.length })}</summary>
      <Rows>
        {lines.map(({ title }) => (
          <Row key={title} title={title} />
        ))}
      </Rows>
    </details>
  );
};

/** What is left to do, each leading to its stage. */
export const StillOpen = (props: { readonly open: readonly OpenLine[]; readonly onGo: Nav['toStage'] }) => {
  const word = useWord();
  if (props.open.length === 0)
    return (
      <div className="lead">
        <Told>{word('app.hand-over.open.none')}</Told>
      </div>
    );
  return (
    <Section title={word('app.hand-over.open')}>
      <Rows>
        {props.open.map(({ says, stage }) => (
          <Row
            key={says}
            title={says}
            at={<span className="note">{word(`app.stage.${stage}`)}</span>}
            onPress={() => props.onGo(stage)}
          />
        ))}
      </Rows>
    </Section>
  );
};

/** What the customer is told in any case, and what nobody knows yet. */
export const NotesAndGaps = ({ view }: { readonly view: HandOverView }) => {
  const word = useWord();
  return (
    <>
      <Section title={word('app.hand-over.notes')}>
        {view.notes.map((note) => (
          <p key={note} className="lead">
            {note}
          </p>
        ))}
      </Section>
      {view.gaps.length === 0 ? null : (
        <details className="more section">
          <summary>{word('app.hand-over.gaps', { count: view.gaps.length })}</summary>
          {view.gaps.map((gap) => (
            <p key={gap} className="lead">
              {gap}
            </p>
          ))}
        </details>
      )}
    </>
  );
};
