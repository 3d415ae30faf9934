export const programEn = {
  'program.step.backwash': 'Backwash',
  'program.step.brine': 'Brine and slow rinse',
  'program.step.draw': 'Brine draw',
  'program.step.slow-rinse': 'Slow rinse',
  'program.step.fast-rinse': 'Fast rinse',
  'program.step.refill': 'Refill',
  'program.filter-interval':
    'Backwash by the calendar until the pressure loss over the bed is known: note it clean and again before a backwash.',
  'program.found-too-much':
    'As found each regeneration gets {found} of salt where {dose} is programmed: salt is wasted and more brine has to be rinsed out.',
  'program.found-too-little':
    'As found each regeneration gets {found} of salt where {dose} is programmed: the bed runs hard early.',
  'program.found-no-rinse':
    'As found the draw takes {draw} and the step is only {step}: it ends before the brine does and rinses nothing. That is the salty water.',
  'program.found-short-rinse':
    'As found the draw takes {draw} of the {step}, and only {rinsed} are left to rinse. Below one bed volume the water tastes of salt.',
  'program.found-hard-early':
    'As found the salt softens {full} and the unit waits for {asked}: the water is hard before it regenerates.',
  'program.once.add-water':
    'Once: the tank holds brine for {standing} of salt only. Add {more} of water to the brine tank and wait two to four hours before the next regeneration.',
  'program.potassium':
    'Potassium chloride: its brine is weaker when cold, so the refill follows the brine temperature. Its table is from memory; weigh the first fill.',
  'program.sodium': 'Softening adds {sodium} of sodium to the water.',
  'program.iron-much': '{iron} of iron is more than a softener should carry: put a filter ahead of it.',
  'program.iron-some':
    '{iron} of iron: regenerate at least every four days and clean the resin twice a year.',
  'program.control-instead':
    'Or leave the refill at {time} and fit {control}: that gives {dose}. Time or control, never both.',
  'program.leak': '{day} a day run to the drain in service, {year} a year.',
  'program.gap.nothing': 'Nothing can be programmed yet: hardness, bed volume and the rates are needed.',
  'program.gap.prices': 'Prices at {site} are not known, so the difference is given in mass and volume.',
  'program.bed-too-small':
    'The bed softens {full} and a day takes {daily}: it does not last a day. Regenerate at once when the meter says so, or fit a second tank.',
  'program.beyond-controller': '{step} needs {exact} and the controller holds {most} at most.',
  'program.below-controller': '{step} needs {exact} and the controller holds {least} at least.',
  'program.dose-not-read': 'The decided dose “{dose}” cannot be read; the usual one is used.',
  'program.dose-not-read-mend': 'Write it with its unit, such as 8 lb/ft3.',
  'program.window.empty.supply': 'The supply cannot lift this bed.',
  'program.window.empty.drain': 'The drain cannot carry what this bed needs.',
  'program.window.empty.height': 'The coldest water lifts the bed out before the warmest lifts it enough.',
  'program.window.choice.pump': 'a stronger supply, or a backwash when nothing else draws',
  'program.window.choice.smaller-tank': 'two narrower tanks, backwashed one after the other',
  'program.window.choice.drain': 'a larger drain line',
  'program.window.choice.compromise':
    '{flow} all year: it keeps the bed in and lifts it {lift} in the warmest water; backwash longer then',
  'program.window.choice.less-bed': 'less bed, so that it has room to rise',
  'program.window.choice.two-controls': 'one drain control for winter and one for summer',
  'program.window.fit-below': 'The fitted backwash of {fitted} is too weak for this bed: fit {control}.',
  'program.window.fit-above': 'The fitted backwash of {fitted} is too strong for this bed: fit {control}.',
  'program.window.fit-below-rinse':
    'The fitted backwash of {fitted} is too weak for this bed: fit {control}. The times here are for it; until it is in, the fast rinse is {rinse}.',
  'program.window.fit-above-rinse':
    'The fitted backwash of {fitted} is too strong for this bed: fit {control}. The times here are for it; until it is in, the fast rinse is {rinse}.',
  'program.window.nearly-below':
    'The fitted backwash of {fitted} lies just below the window, by less than it is known. {control} would lie inside.',
  'program.window.nearly-above':
    'The fitted backwash of {fitted} lies just above the window, by less than it is known. {control} would lie inside.',
  'program.set-draw-cut':
    'With these settings the draw takes {draw} and its step ends after {step}: brine stays behind and the water turns salty. Take a smaller dose.',
  'program.set-short-rinse':
    'With these settings only {rinsed} rinse after the brine: the water turns salty. Take a smaller dose.',
  'program.no-reserve':
    'The water use per day is not known: nothing is held back, and the last day may run hard.',
  'program.window.fitted-below':
    'The backwash of {fitted} is too weak for this bed, and no drain control in the definition lies in the window.',
  'program.window.fitted-above':
    'The backwash of {fitted} is too strong for this bed, and no drain control in the definition lies in the window.',
  'program.window.spread':
    'The other method (Ergun) sees {ergun} of lift at this rate in the coldest water, and there is room for {most}. Hold a pail under the drain and look for beads.',
  'derivation.rule.as-read': 'as read in the test',
  'derivation.rule.nearest': 'to the nearest time that the controller holds',
  'derivation.rule.upward': 'to the next longer time that the controller holds',
  'derivation.rule.downward': 'down to what the controller holds',
  'derivation.rule.below': 'the next shorter time that the controller holds',
  'derivation.rule.above': 'the next longer time that the controller holds',
  'derivation.rule.same': 'the same',
  'derivation.rule.shorter': 'the shorter of the two',
  'derivation.rule.dose-as-found': 'kept as found, since it lies between 6 and 10 lb/ft³',
  'derivation.rule.one-day': 'one average day',
  'derivation.rule.no-reserve': 'the bed does not last a day, so nothing is kept back',
  'derivation.rule.whole-days': 'whole days, at least one, at most the calendar limit',
  'derivation.rule.calendar': 'at most the calendar limit',
  'derivation.rule.inside-window': 'the aim, moved inside the window',
  'derivation.rule.lower': 'the lower limit of the prediction',
  'derivation.rule.upper': 'the upper limit of the prediction',
  'derivation.rule.reading': 'median of the repeats',
  'program.leak-cost': '{day} a day run to the drain in service, {year} a year; a day of it costs {cost}.',
  'program.found-brine-left':
    '{left} of brine stay behind each time, so the level in the brine tank climbs until it overflows or the float stops it.',
  'program.once.much-brine-brine':
    'Once: {brine} of brine stand in the tank, {standing} of salt where {wanted} is wanted. Set the brine step to {step} for the first regeneration so that all of it is drawn and rinsed out, and back afterwards; or pump the surplus out first.',
  'program.once.much-brine-draw':
    'Once: {brine} of brine stand in the tank, {standing} of salt where {wanted} is wanted. Set the brine draw to {step} for the first regeneration so that all of it is drawn, and back afterwards; or pump the surplus out first.',
  'program.once.pump-out':
    'Once: {brine} of brine stand in the tank, {standing} of salt where {wanted} is wanted, and no step of this controller is long enough to draw and rinse it all. Pump the surplus out before the first regeneration.',
  'program.once.then-usual':
    'That heavy draw helps the exhausted bed; regenerate once more with the new settings.',
  'program.once.exhausted-twice':
    'Once: the bed is exhausted and one usual dose does not restore it. Regenerate twice in a row, with two to four hours in between for the brine to become strong.',
  'program.once.exhausted-twice-water':
    'Once: the bed is exhausted and one usual dose does not restore it. Add {more} of water to the brine tank, wait two to four hours, regenerate; wait again as long after the refill and regenerate once more.',
  'program.once.exhausted-heavy-brine':
    'Or once, heavy: add {more} of water so that {salt} of salt dissolve, wait two to four hours, set the brine step to {step} for that regeneration and back afterwards.',
  'program.once.exhausted-heavy-draw':
    'Or once, heavy: add {more} of water so that {salt} of salt dissolve, wait two to four hours, set the brine draw to {step} for that regeneration and back afterwards.',
  'derivation.rule.as-advised': 'nobody read it; taken as advised',
  'derivation.rule.override': 'the calendar limit, in days that the controller holds',
} as const satisfies Record<string, string>;
