import { lazy } from 'react';
import { Route, Switch } from 'wouter';
import type { VisitPlaceId } from '../engine/stage-props.ts';
import { StartScreen } from '../features/start/screens/start-screen.tsx';
import { isPlaceId } from './stages.ts';
import { useFocusOnPlace } from './use-focus-on-place.ts';

const NewVisitScreen = lazy(async () => ({
  default: (await import('../features/start/screens/new-visit-screen.tsx')).NewVisitScreen,
}));
const ReadingScreen = lazy(async () => ({
  default: (await import('../features/just-a-reading/screens/reading-screen.tsx')).ReadingScreen,
}));
const PreferencesScreen = lazy(async () => ({
  default: (await import('../features/preferences/screens/preferences-screen.tsx')).PreferencesScreen,
}));
const RecordScreen = lazy(async () => ({
  default: (await import('../features/preferences/screens/record-screen.tsx')).RecordScreen,
}));
const UnitPlace = lazy(async () => ({
  default: (await import('../features/unit/screens/unit-place.tsx')).UnitPlace,
}));
const DefinitionsPlace = lazy(async () => ({
  default: (await import('../features/definitions/screens/definitions-place.tsx')).DefinitionsPlace,
}));
const WhatIfPlace = lazy(async () => ({
  default: (await import('./what-if-place.tsx')).WhatIfPlace,
}));
const VisitPlace = lazy(async () => ({ default: (await import('./visit-place.tsx')).VisitPlace }));

const stageOf = (text: string): VisitPlaceId | undefined => (isPlaceId(text) ? text : undefined);

/** The places of the app; each has an address, so that back and a deep link do what they say. */
export const Routes = () => {
  useFocusOnPlace();
  return (
    <Switch>
      <Route path="/new">
        <NewVisitScreen />
      </Route>
      <Route path="/new/:stream/:unit">
        {({ stream, unit }) => <NewVisitScreen key={unit} known={{ stream, unit }} />}
      </Route>
      <Route path="/reading">
        <ReadingScreen />
      </Route>
      <Route path="/preferences">
        <PreferencesScreen />
      </Route>
      <Route path="/record">
        <RecordScreen />
      </Route>
      <Route path="/unit/:stream/:conditioner/:fact?">
        {({ stream, conditioner, fact }) => (
          <UnitPlace stream={stream} conditioner={conditioner} fact={fact} />
        )}
      </Route>
      <Route path="/definitions/:family?">{({ family }) => <DefinitionsPlace family={family} />}</Route>
      <Route path="/what-if">
        <WhatIfPlace />
      </Route>
      <Route path="/visit/:stream/:visit">
        {({ stream, visit }) => (
          <VisitPlace stream={stream} visit={visit} stage={undefined} part={undefined} />
        )}
      </Route>
      <Route path="/visit/:stream/:visit/:stage">
        {({ stream, visit, stage }) => (
          <VisitPlace stream={stream} visit={visit} stage={stageOf(stage)} part={undefined} />
        )}
      </Route>
      <Route path="/visit/:stream/:visit/:stage/:part">
        {({ stream, visit, stage, part }) => (
          <VisitPlace stream={stream} visit={visit} stage={stageOf(stage)} part={part} />
        )}
      </Route>
      <Route>
        <StartScreen />
      </Route>
    </Switch>
  );
};
