import { useWord } from '../../../app/words/use-word.ts';
import type { Again, RemarkLine, RemarksView, RivalView } from '../../../engine/views/hand-over/remarks.ts';
import { Button, Notice } from '../../../ui/index.ts';

/** What the journal could not settle by itself. */
export const Remarks = (props: {
  readonly remarks: RemarksView;
  readonly onKeep: (again: Again) => void;
}) => {
  const { rivals, setAside, waiting, newer } = props.remarks;
  const word = useWord();
  return (
    <>
      {rivals.map((rival) => (
        <RivalNotice key={rival.key} rival={rival} onKeep={props.onKeep} />
      ))}
      <Lines title={word('app.hand-over.newer')} lines={newer} />
      <Lines title={word('app.hand-over.set-aside')} lines={setAside} />
      <Lines title={word('app.hand-over.waiting')} lines={waiting} />
    </>
  );
};

/** Both values with who said them; the one in force first. */
const RivalNotice = (props: { readonly rival: RivalView; readonly onKeep: (again: Again) => void }) => {
  const { what, values } = props.rival;
  const word = useWord();
  return (
    <Notice
      title={`${word('app.hand-over.rivals')}: ${what}`}
      actions={values.map(({ text, again, who }) =>
        again === undefined ? null : (
          <Button key={`${text} ${who}`} onPress={() => props.onKeep(again)}>
            {word('app.hand-over.rival.keep', { value: text })}
          </Button>
        ),
      )}
    >
      <ul>
        {values.map(({ text, who, when, isInForce }) => (
          <li key={`${text} ${who}`}>
            <b>{text}</b> {word('app.hand-over.rival.by', { who, when })}
            {isInForce ? `, ${word('app.hand-over.rival.force')}` : ''}
          </li>
        ))}
      </ul>
      {word('app.hand-over.rivals.why')}
    </Notice>
  );
};

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly RemarkLine[] }) =>
  lines.length === 0 ? null : (
    <Notice title={title}>
      {lines.map(({ says, why }) => (
        <p key={says}>
          {says}
          {why === undefined ? '' : `. ${why}`}
        </p>
      ))}
    </Notice>
  );
