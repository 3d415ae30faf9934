import { useWord } from '../../../app/words/use-word.ts';
import { Choice } from '../../../ui/index.ts';

export type Way = 'pail' | 'key';

/** Timed with a pail, or keyed in as read. */
export const WayChoice = (props: { readonly way: Way; readonly onWay: (way: Way) => void }) => {
  const word = useWord();
  const options = [
    { value: 'pail', label: word('app.readings.by-pail') },
    { value: 'key', label: word('app.readings.key-in') },
  ] as const;
  return (
    <div className="unlabelled way-choice">
      <Choice
        label={word('app.readings.how-read')}
        options={options}
        value={props.way}
        onChange={props.onWay}
      />
    </div>
  );
};
