import { useState } from 'react';
import {
  Answer,
  Answers,
  Button,
  Choice,
  emptyEntry,
  Field,
  Icon,
  Notice,
  Odds,
  QuantityField,
  Timer,
  type TimerState,
} from '../../ui/index.ts';
import { Cell } from './gallery.tsx';

const nothing = () => undefined;

export const ActionParts = () => (
  <Cell name="Actions">
    <div className="buttons">
      <Button kind="main" onPress={nothing}>
        Take the reading
        <Icon name="on" />
      </Button>
      <Button onPress={nothing}>Other tests</Button>
      <Button kind="main" blocked="3 seals to go">
        Done
      </Button>
      <Button kind="plain" onPress={nothing}>
        Why?
      </Button>
    </div>
  </Cell>
);

export const AnswerParts = () => {
  const [chosen, setChosen] = useState<string | undefined>('Six');
  return (
    <Cell name="Answers">
      <Answers name="How many ribs?">
        {['Six', 'Eight', "Can't see it", 'Unsure'].map((title) => (
          <Answer
            key={title}
            title={title}
            under="leaves 2"
            chosen={chosen === title}
            onPress={() => setChosen(chosen === title ? undefined : title)}
          />
        ))}
      </Answers>
      <Notice title="These answers don't agree." actions={<Button onPress={nothing}>Ribs again</Button>}>
        Six ribs is a small body; a 44 mm lug is a large one.
      </Notice>
    </Cell>
  );
};

export const ReadingParts = () => {
  const [hardness, setHardness] = useState({ ...emptyEntry('gpg'), figure: '180' });
  const [volume, setVolume] = useState({ ...emptyEntry('gal'), figure: '2' });
  const [words, setWords] = useState('');
  const [side, setSide] = useState<'left' | 'right'>('left');
  const [timer, setTimer] = useState<TimerState>({ startedAt: 0, stoppedAt: 83_400 });
  return (
    <Cell name="Reading with its unit">
      <QuantityField
        label="Hardness, raw"
        kind="hardness"
        units={['gpg', 'mg/L CaCO3']}
        value={hardness}
        onChange={setHardness}
        u="± 0.5 gpg"
      />
      <QuantityField
        label="Pail"
        kind="volume"
        units={['gal', 'L']}
        value={volume}
        onChange={setVolume}
        size="small"
        mayLack={false}
      />
      <Field label="What was said" value={words} onChange={setWords} lines hint="In the customer's words." />
      <Choice
        label="Drive end"
        value={side}
        onChange={setSide}
        options={[
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
      />
      <Timer
        state={timer}
        onStart={() => setTimer({ startedAt: Date.now() })}
        onStop={() => setTimer({ ...timer, stoppedAt: Date.now() })}
        onClear={() => setTimer({})}
      />
      <Odds
        rows={[
          { title: 'Seal 5 torn', p: 0.46, percent: '46 %', before: 0.17, for: 'drain runs in service' },
          {
            title: 'Seal 1 torn',
            p: 0.24,
            percent: '24 %',
            before: 0.09,
            against: 'would not use up the bed',
          },
          { title: 'None of these', p: 0.08, percent: '8 %', isNone: true },
        ]}
      />
    </Cell>
  );
};
