import { useState } from 'react';
import {
  Button,
  Caution,
  Counter,
  Empty,
  Facts,
  Figure,
  InHand,
  Problem,
  Progress,
  Row,
  Rows,
  Told,
  Verdict,
  WhereRecord,
} from '../../ui/index.ts';
import { Cell } from './gallery.tsx';

const nothing = () => undefined;
const none = { waiting: 0, files: 0, refused: 0 };

export const WorkParts = () => {
  const [count, setCount] = useState(7);
  return (
    <>
      <Cell name="In hand">
        <InHand tag="Best next test">
          <h2>Hardness of the trickle at the drain</h2>
          <p>Catch it at the air gap while the unit is in service.</p>
          <Facts
            items={[
              { label: 'Takes', value: '3 min' },
              { label: 'Open', value: 'nothing' },
              { label: 'With', value: 'drop test kit' },
            ]}
          />
        </InHand>
      </Cell>
      <Cell name="Caution, before and after">
        <Caution
          signal="Warning. The tank is under pressure."
          text={<p>Close both valves, turn the bypass, open the drain until the gauge reads 0.</p>}
          button={{ text: 'Gauge reads 0 psi', onPress: nothing }}
        />
        <Caution signal="Warning." done="Pressure is off. Gauge 0 psi at 8:52." />
      </Cell>
      <Cell name="Count of loose pieces">
        <Counter
          label="Spacers in"
          count={count}
          of={6}
          onAdd={() => setCount(count + 1)}
          onTake={() => setCount(Math.max(0, count - 1))}
        />
        <Problem what="One spacer too many." why="6 came out. Draw the last one and look." />
      </Cell>
      <Cell name="Verdicts">
        <div className="buttons">
          <Verdict verdict="pass" word="Pass" />
          <Verdict verdict="fail" word="Fail" />
          <Verdict verdict="not-decided" word="Not decided" />
        </div>
      </Cell>
    </>
  );
};

export const StateParts = () => (
  <>
    <Cell name="Derived figure">
      <Figure
        size="fig"
        text={'16\u00a0min'}
        derivation={{
          title: 'Refill, 16 min',
          source: 'common practice',
          formula: 'Refill time = salt ÷ salt one gallon dissolves ÷ refill rate',
          inputs: [
            { label: 'Salt, 8 lb/ft³ × 3 ft³', value: '24 lb' },
            { label: 'Refill control fitted', value: '0.5 gpm' },
          ],
          result: { label: 'Refill time', value: '16.0 min' },
        }}
      />
    </Cell>
    <Cell name="Rows">
      <Rows>
        <Row title="Drain flow in service" at="0.20 gpm" />
        <Row
          title="Ablandador de doble tanque con derivación manual"
          under="Long words wrap and push down."
          at="2,810 gal"
        />
      </Rows>
    </Cell>
    <Cell name="Where the record is">
      <WhereRecord state="device" counts={none} />
      <WhereRecord state="sent" counts={none} />
      <WhereRecord state="refused" counts={{ ...none, refused: 2 }} />
    </Cell>
    <Cell name="Empty">
      <Empty
        title="No visit today"
        under="Find a unit or begin one from nothing."
        action={<Button onPress={nothing}>New visit</Button>}
      />
    </Cell>
    <Cell name="Loading">
      <Progress
        text="Working out the odds, 12 of 23 faults"
        share={12 / 23}
        under="Nothing waits for this."
      />
    </Cell>
    <Cell name="Offline">
      <Told>
        <b>No network since 8:31.</b> All stages work.
      </Told>
    </Cell>
    <Cell name="Error">
      <Problem
        what="Photo 4 was not kept."
        where="Work, operation 12."
        why="This device has 9 MB left and a photo needs 12."
        mend={<Button onPress={nothing}>Go on without</Button>}
      />
    </Cell>
  </>
);
