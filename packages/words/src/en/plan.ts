export const planEn = {
  'plan.list': '{first}, {rest}',
  'plan.gap.targets': 'Nothing to do yet. Find the fault, or write what is to be done.',

  'plan.says.maker':
    'Nobody has described this make. The maker’s instructions say how it opens; without them leave it safe.',
  'plan.says.whole-stack':
    'One known bad seal means the whole stack. Seals wear together and the labour is the same. Common practice, no source.',
  'plan.says.water-stays-on': 'Nothing here needs the water off.',
  'plan.says.only-when': 'Only with {when}: {orders}.',
  'plan.says.feature': '{feature} {values}',

  'plan.gate.variant': 'The valve is known as far as parts and tools differ.',
  'plan.gate.variant-undescribed': 'Nothing to tell apart: nobody has described this make.',
  'plan.gate.variant-open': 'Valves that take other parts or tools are not told apart yet.',
  'plan.gate.variant-open-ask':
    'Valves that take other parts or tools are not told apart yet. Next to look at: {ask}',
  'plan.gate.kit': 'The parts in hand are those of this valve.',
  'plan.gate.kit-none': 'No parts are needed.',
  'plan.gate.kit-undescribed':
    'Nobody has described its parts. What is replaced is compared with the old piece before it goes in.',
  'plan.gate.kit-missing': 'Not in hand, or not compared with the valve yet: {parts}.',
  'plan.gate.kit-open': 'Which parts it takes is not known yet, so the kit cannot be compared.',
  'plan.gate.tools': 'The special tools in hand are those of this valve.',
  'plan.gate.tools-none': 'No special tools are needed.',
  'plan.gate.tools-missing': 'Not in hand, or not compared with the valve yet: {tools}.',
  'plan.gate.photographed': 'Settings, clock, wiring and damage are photographed.',
  'plan.gate.photographed-not':
    'Photograph settings, clock, wiring and damage. A power cut may lose the program.',
  'plan.gate.price': 'The price is agreed.',
  'plan.gate.price-not': 'The price is not agreed yet.',
  'plan.gate.outage': 'The outage is agreed: out of service for about {time}, meanwhile {building}.',
  'plan.gate.outage-not':
    'The outage is not agreed yet. Out of service for about {time}, meanwhile {building}.',
  'plan.building.raw': 'raw water by the bypass',
  'plan.building.raw-or-none': 'raw water by the bypass, or none where there is no bypass',
  'plan.building.none': 'no water',
  'plan.gate.way-back': 'The way back is known: {way}',
  'plan.gate.way-back-not': 'Write down how the unit goes back if the work cannot be finished today.',

  'plan.stopped.gate': 'The gate is not passed. The water stays on until it is.',

  'plan.stopped.gate-passed-over':
    'The gate was passed over: the unit is shut and not everything was compared and agreed. Make good what is open, or leave the unit safe.',

  'plan.target.settings': 'settings of the program',

  'plan.piece.seal': 'seals',
  'plan.piece.spacer': 'spacers',
  'plan.piece.ring': 'rings',
  'plan.piece.plug': 'plugs',
  'plan.miscount.out-missing':
    'Counted out {counted} {piece}; the stack has {listed}. A piece is still in the valve or lost.',
  'plan.miscount.out-extra':
    'Counted out {counted} {piece}; the stack has {listed}. A doubled piece was in the valve, or the last work left an old one behind.',
  'plan.miscount.in-missing':
    'Counted in {counted} {piece}; the stack has {listed}. A gap lets water past and damages the valve.',
  'plan.miscount.in-extra':
    'Counted in {counted} {piece}; the stack has {listed}. A doubled piece damages the valve as soon as it is drawn up.',
  'plan.miscount-mend.out-missing':
    'Look in the bore with a lamp, behind the last spacer, on the hook and the puller, on the piston, on the floor and in the pail. Then count again.',
  'plan.miscount-mend.out-extra':
    'Lay the pieces beside the list and find the one too many. Look in the bore with a lamp for more. Put in only what the list has.',
  'plan.miscount-mend.in-missing':
    'Look on the bench, in the bag of the kit and among the old pieces. Draw the stack to the gap and put the piece in. Then count again.',
  'plan.miscount-mend.in-extra':
    'Draw the stack out again, look in the bore with a lamp for an old piece, and start anew by the list.',

  'plan.leave.service': 'The unit is put back as it was and stands in service.',
  'plan.leave.untouched': 'Nothing was opened; the unit stands in service as it was found.',
  'plan.leave.found-in-bypass':
    'Nothing was opened. The unit was found in bypass, so the water is not treated.',
  'plan.leave.bypass-powered':
    'The unit stands in bypass and closed, and its power is on: unplug it. It must not see pressure.',
  'plan.leave.bypass': 'The unit stands in bypass, closed and unplugged. It must not see pressure.',
  'plan.leave.bypass-hard': 'The water is hard until the unit is back in service.',
  'plan.leave.bypass-raw': 'The water is not filtered until the unit is back in service.',
  'plan.leave.bagged': 'The pieces are in a bag tied to the valve. They do not add up to the whole stack.',
  'plan.leave.called-for': 'Called for: “{words}”',
  'plan.leave.done': 'Done today: {what}.',
  'plan.leave.new-part': 'new {part}',
  'plan.leave.still': 'Still to do: {what}.',
  'plan.leave.leak-day': 'Until then about {water} a day run to the drain.',
  'plan.leave.leak-cost-day': 'Until then about {water} a day run to the drain; that costs {cost} a day.',
  'plan.leave.setting': '{setting}: back to {value}, now {now}.',
  'plan.leave.run': '{setting}: {value}, as found.',
  'plan.leave.run-safe':
    '{setting}: {value} until the next visit. The {found} found are more than the salt of the found settings softens; a day’s use is held back.',
  'plan.setting.backwash': 'Backwash',
  'plan.setting.brine': 'Brine',
  'plan.setting.draw': 'Brine draw',
  'plan.setting.slow-rinse': 'Slow rinse',
  'plan.setting.fast-rinse': 'Fast rinse',
  'plan.setting.refill': 'Refill',
  'plan.setting.volume': 'Volume between regenerations',
  'plan.setting.days': 'Days between regenerations',
  'plan.setting.at': 'Start',

  'plan.warn.boiler':
    'Warn the boiler people: raw water makes scale. The boiler is off or fed otherwise until soft water is back.',
  'plan.warn.laundry': 'Warn the laundry: no load starts on raw water.',
  'plan.warn.dialysis':
    'Dialysis hangs on this water. Stop: its own people decide, and it is outside this tool.',
  'plan.warn.food': 'Warn the kitchen: raw water, and nobody drinks it during the work.',
  'plan.warn.fire':
    'Warn the fire people: no water may be shut that a sprinkler or hose hangs on without their plan.',
  'plan.warn.eyewash':
    'Warn the safety people: eyewash and shower need water at all times. Another one stands ready first.',
  'plan.warn.cooling': 'Warn whoever runs the cooling: it stops or overheats without water.',
  'plan.warn.ice': 'Warn the ice machine people: shut it off, and discard the first ice afterwards.',
  'plan.warn.guests':
    'Tell guests: no water or hard water for a while, and nobody drinks it during the work.',
  'plan.warn.high-building':
    'The building stands higher than the tank. Open a tap to air before draining: a vacuum collapses a tank.',
  'plan.raw-pass.boiler':
    'During regeneration raw water passes to the outlet, and a steam boiler hangs on it.',
  'plan.raw-pass.laundry':
    'During regeneration raw water passes to the outlet, and laundry extractors hang on it.',
  'plan.raw-pass.dialysis':
    'During regeneration raw water passes to the outlet, and dialysis hangs on it. Dialysis is outside this tool.',
  'plan.raw-pass-mend':
    'A shut-outlet valve, a second unit, or regeneration at an hour when nothing draws, with the owner’s word on it.',
  'plan.shut-outlet.fire': 'During regeneration the outlet is shut, and fire water hangs on it.',
  'plan.shut-outlet.eyewash': 'During regeneration the outlet is shut, and an eyewash hangs on it.',
  'plan.shut-outlet.cooling': 'During regeneration the outlet is shut, and cooling hangs on it.',
  'plan.outlet.not-settled': 'If so ({odds}; what the outlet does is not settled): {says}',
  'plan.outlet.not-known': 'Either may be, what the outlet does is not known. If so: {says}',
  'plan.shut-outlet-mend':
    'Feed it from before the unit, or have a written plan for the time of regeneration.',

  'plan.no-operation': 'No operation of the definition reaches this: {what}. So the plan leaves it out.',
  'plan.no-operation-mend': 'Add an operation with takes-out for it, or do it by the maker’s instructions.',
  'plan.state.water': 'Water',
  'plan.state.pressure': 'Pressure',
  'plan.state.power': 'Power',
  'plan.state.piston': 'Piston',
  'plan.state.temperature': 'Temperature',
  'plan.wanted.on': 'on',
  'plan.wanted.off': 'off',
  'plan.wanted.full': 'full',
  'plan.wanted.none': 'none',
  'plan.wanted.home': 'at home',
  'plan.wanted.removal': 'at the stop for removal',
  'plan.wanted.cool': 'cool',
  'plan.need': '{order} needs another state. {state}: {wanted}. Nothing in the plan brings it about before.',
  'plan.need-mend': 'Bring it about, write it under “apart”, and the plan starts anew from there.',
  'plan.out-of-order': '{order} does not fit where it stands in the plan.',
  'plan.out-of-order-mend': 'Correct what is written as done, or what the definition says it comes after.',
  'plan.state-left': '{state} is not brought back by any operation of the definition.',
  'plan.state-left-mend': 'Bring it back by hand before the unit goes into service.',
  'plan.not-counted': '{order} is written as done without a count.',
  'plan.not-counted-mend': 'Count the pieces and write the count beside it.',
  'plan.taken-as-off':
    'Taken as off, though not written as done or written as back: {orders}. What is written as done cannot come off otherwise. The plan puts it back.',
  'plan.taken-as-off-mend':
    'Look at the unit. Write it down as done, or write down what is back, with everything that came off after it.',
  'plan.says.shut-first':
    'The unit is open and the water on it is not written as off. Shut it before anything else.',
} as const satisfies Record<string, string>;
