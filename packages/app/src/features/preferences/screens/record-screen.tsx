import { useEffect, useState, useSyncExternalStore } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import { clockTime } from '../../../engine/views/days.ts';
import { useDevice } from '../../../offline/device-context.ts';
import { useRecordState } from '../../../offline/record-state.ts';
import { Button, Heading, Problem, Row, Rows, Sheet, Told } from '../../../ui/index.ts';
import { BundlePart } from '../parts/bundle-part.tsx';

/** What waits here, what the office has, what it would not take and why. */
export const RecordScreen = () => {
  const word = useWord();
  const { sync } = useDevice();
  const { counts } = useRecordState();
  return (
    <Sheet
      back={{ to: '/', name: word('app.record.back') }}
      actions={
        <Button kind="main" onPress={sync.nudge}>
          {word('app.record.now')}
        </Button>
      }
    >
      <Heading>{word('app.record.title')}</Heading>
      <Rows>
        <Row title={word('app.record.waiting', { count: counts.waiting })} />
        <Row title={word('app.record.files', { count: counts.files })} />
        <Row title={word('app.record.sent', { count: counts.sent })} />
      </Rows>
      <div aria-live="polite">
        <Meeting />
      </div>
      {counts.refused === 0 ? null : <Refused count={counts.refused} />}
      <BundlePart />
    </Sheet>
  );
};

/** How it stands with the network. */
const Meeting = () => {
  const word = useWord();
  const { sync } = useDevice();
  const { state, since } = useSyncExternalStore(sync.listen, sync.status);
  if (state === 'not-allowed')
    return <Problem what={word('app.record.not-allowed')} why={word('app.record.not-allowed.why')} />;
  if (since === undefined) return null;
  return (
    <Told>
      <b>{word('app.record.no-network', { time: clockTime(new Date(since).toISOString()) })}</b>{' '}
      {word('app.record.no-network.why')}
    </Told>
  );
};

const Refused = ({ count }: { readonly count: number }) => {
  const word = useWord();
  const { database } = useDevice();
  const [reasons, setReasons] = useState<readonly string[]>([]);
  useEffect(() => {
    void database.entries
      .where('standing')
      .equals('refused')
      .toArray()
      .then((rows) => setReasons([...new Set(rows.flatMap(({ held }) => held.refused ?? []))]));
  }, [database]);
  return (
    <Problem
      what={word('app.record.refused', { count })}
      why={word('app.record.refused.why', { reason: reasons.join(', ') })}
    />
  );
};
