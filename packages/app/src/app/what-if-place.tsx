import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { useView } from '../engine/use-view.ts';
import { searchOf, type WhatIf, whatIfOf } from '../engine/views/what-if/numbers.ts';
import { ProgramNotes, ProgramPictures, ProgramResult } from '../features/program/screens/program-result.tsx';
import { WhatIfScreen } from '../features/what-if/screens/what-if-screen.tsx';
import { Sheet } from '../ui/index.ts';
import { useWord } from './words/use-word.ts';

/** Numbers in the address, and the program they make; the last good one stays while the next is on its way. */
export const WhatIfPlace = () => {
  const word = useWord();
  const numbers = whatIfOf(useSearch());
  const [, go] = useLocation();
  const { view: fresh } = useView('what-if', { numbers });
  const [last, setLast] = useState(fresh);
  if (fresh !== undefined && fresh !== last) setLast(fresh);
  const view = fresh ?? last;
  const back = { to: '/', name: word('app.record.back') };
  if (view === undefined) return <Sheet back={back} />;
  const change = (next: WhatIf): void => go(`/what-if?${searchOf(next)}`, { replace: true });
  return (
    <WhatIfScreen
      numbers={numbers}
      fields={view.fields}
      back={back}
      onChange={change}
      program={<ProgramResult view={view.program} />}
      pictures={<ProgramPictures view={view.program} />}
      notes={<ProgramNotes view={view.program} />}
    />
  );
};
