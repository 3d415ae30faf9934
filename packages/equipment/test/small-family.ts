import type { Issue } from '@brinewright/words';
import { type Compiled, compileDefinitions } from '../src/compile/compile-definitions.ts';
import { lintFamily } from '../src/lint/lint-family.ts';
import { parseDefinition } from '../src/load/parse-definition.ts';
import type { Family } from '../src/model/family.ts';
import { variantsOf } from '../src/variants/variants-of.ts';

/** A small sound stock and family (invented), for tests to break. */
export const smallStock = `stock: small
title: {en: Small stock, es: Base chica}
source: invented
kinds: [softener]
tools:
  pliers: {title: {en: Pliers, es: Pinzas}}
cautions:
  pressure-release:
    signal: warning
    title: {en: Pressure, es: Presión}
    does: {en: It throws parts, es: Avienta piezas}
    act: [{en: Vent first, es: Ventile primero}]
operations:
  cover-off:
    order: {en: Take the cover off, es: Quite la tapa}
    minutes: 1
  piston-out:
    order: {en: Draw the piston, es: Saque el pistón}
    after: [cover-off]
    tools: [pliers]
    takes-out: [piston]
    hazards: [pressure-release]
    back: {order: {en: Put the piston in, es: Meta el pistón}}
faults:
  leak-raw-to-drain:
    title: {en: Raw water leaks to the drain, es: Fuga de agua cruda al drenaje}
    explains: {en: Raw water runs away, es: Se va agua cruda}
    mend: {en: Change the stack, es: Cambie el paquete}
    path: TOP+DR
    odds: 3
    repair: {replace: [seal], do: [piston-out]}
tests:
  drain-in-service:
    ask: {en: Does the drain run in service?, es: ¿Corre el drenaje en servicio?}
    reading: {kind: flow, u: 0.01 gpm, plausible: 0 gpm to 30 gpm}
    outcomes:
      none: {title: {en: 'No', es: 'No'}, to: 0.03 gpm}
      some: {title: {en: 'Yes', es: Sí}, from: 0.03 gpm, faults: {leak-raw-to-drain: sure}}
    normal: none
complaints:
  runs: {title: {en: It runs all day, es: Corre todo el día}, words: {en: [runs]}, faults: {leak-raw-to-drain: likely}}
changes:
  worked-on: {title: {en: Worked on, es: Se trabajó}, raises: {leak-raw-to-drain: 3}}
`;

export const smallFamily = `family: harrow
title: {en: Harrow, es: Harrow}
source: invented
like: stock/small
limits: {pressure: 20 psi to 125 psi, temperature: 110 degF}
features:
  size: [slim, broad]
  injector: [a, b]
tells:
  ribs: {ask: {en: How many ribs?, es: ¿Cuántas costillas?}, answers: {"3": {size: slim}, "4": {size: broad}}}
bore:
  ports: OUTSIDE IN TOP DR BOT OUT IN BOT
  joins:
    - {service: [IN+TOP, OUT+BOT], backwash: [IN+BOT, TOP+DR], brine: [BOT+DR], fast-rinse: [IN+TOP, BOT+DR]}
injectors:
  a: {nozzle: 1.5 mm, throat: 3.6 mm, tanks: 6 in to 9 in}
  b: {nozzle: 1.7 mm, throat: 4 mm, tanks: 9 in to 12 in}
controls: {drain: {"4": 4 gpm}, refill: {S: 0.25 gpm}}
controllers:
  dial: {holds: [backwash, brine, fast-rinse, refill], times: 2 min to 80 min by 2 min}
parts:
  piston: {is: piston, title: {en: Piston, es: Pistón}, number: "K-1"}
  seal-slim: {is: seal, title: {en: Seal, es: Sello}, number: "K-2", fits: {size: slim}}
  seal-broad: {is: seal, title: {en: Seal, es: Sello}, number: "K-3", fits: {size: broad}}
  kit-slim: {is: kit, title: {en: Kit, es: Juego}, number: "K-4", fits: {size: slim}, holds: {seal-slim: all}}
`;

export const compiledFrom = (...texts: readonly string[]) =>
  compileDefinitions(texts.map((text, index) => parseDefinition(`${index}.yaml`, text)));

/** @throws Error where the texts have errors: for tests that look at what was compiled. */
export const soundFrom = (...texts: readonly string[]): Compiled => {
  const result = compiledFrom(...texts);
  if (!result.ok) throw new Error(JSON.stringify(result.issues, null, 1));
  return result.value;
};

export const familyFrom = (...texts: readonly string[]): Family => {
  const family = soundFrom(...texts).equipment.families.get('harrow');
  if (family === undefined) throw new Error('no-harrow');
  return family;
};

/** What the rules find in the small family after one change of its text. */
export const lintAfter = (change: (text: string) => string, stock = smallStock): readonly Issue[] => {
  const compiled = soundFrom(stock, change(smallFamily));
  const resolved = compiled.sources.get('harrow');
  const family = compiled.equipment.families.get('harrow');
  if (resolved === undefined || family === undefined) throw new Error('no-harrow');
  return lintFamily({ family, resolved, variants: variantsOf(family) });
};

export const codesOf = (issues: readonly Issue[]): readonly string[] => issues.map(({ code }) => code);

/** A change that must change something, or the test would prove nothing. */
export const replacing =
  (from: string, to: string) =>
  (text: string): string => {
    if (!text.includes(from)) throw new Error(`not in the text: ${from}`);
    return text.replace(from, to);
  };
