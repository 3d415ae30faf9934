export const situationEn = {
  'situation.gap.situation': 'Which unit is meant, and what it is, must be known first.',
  'situation.gap.water':
    'No analysis of the raw water. Test its hardness and iron at a cold tap before the unit.',
  'situation.gap.hardness': 'Hardness of the raw water is not known. A drop titration takes five minutes.',
  'situation.gap.tank': 'Tank size is not known. Take the girth with a tape.',
  'situation.gap.bed':
    'Bed volume is not known. Take the girth with a tape and the depth of the bed with a rod.',
  'situation.gap.free':
    'Height above the bed is not known. Without it nobody can say how far the bed may rise.',
  'situation.gap.rate.backwash':
    'Backwash flow is not known. Time a pail at the drain, or read the drain control.',
  'situation.gap.rate.draw': 'Brine draw is not known. Put the brine line in a pail of water and time it.',
  'situation.gap.rate.slow-rinse':
    'Slow rinse flow is not known. Time a pail at the drain once the air check has closed.',
  'situation.gap.rate.refill': 'Refill flow is not known. Time a pail at the end of the brine line.',
  'situation.gap.demand':
    'Water use per day is not known. Read the water meter on two days. Without it the program gives volume only.',
  'situation.gap.controller': 'The controller is not known, so times are given for each step alone.',
  'situation.no-subject': 'The visit is about “{subject}”, and no unit has that id.',
  'situation.no-subject-mend': 'Write one of these under “subject”: {ids}.',
  'situation.unknown-family': 'No definition is loaded for the family “{family}”.',
  'situation.unknown-family-mend':
    'Write one of {families}, load its definition with --equipment, or write “undescribed” and the measured rates.',
  'situation.unknown-id': 'The definitions do not know “{id}”. It is kept and not used.',
  'situation.unknown-id-mend': 'Write one of these: {known}.',
  'situation.unknown-id-none': 'Compare it with the list that “equipment show” prints.',
  'situation.unknown-unit': 'The visit has no unit “{id}”. The entry is kept and not used.',
  'situation.unit-twice': 'Two units have the id “{id}”. The first one is used.',
  'situation.unit-twice-mend': 'Give each unit an id of its own.',
  'situation.dose-twice': 'A dose is decided twice: the last one, {used}, is used, and {written} is not.',
  'situation.dose-twice-mend': 'Take out the dose that does not hold.',
  'situation.proof.unknown': 'This unit has no proof check “{check}”. The reading is kept and not used.',
  'situation.proof.no-value': '“{check}” is measured, and a state says nothing of it.',
  'situation.proof.no-value-mend': 'Write under “value” what was read, with its unit, and no “state”.',
  'situation.proof.no-state': '“{check}” is seen or not seen, and a value says nothing of it.',
  'situation.proof.no-state-mend': 'Write “state: seen” or “state: not-seen”, and no “value”.',
  'situation.no-time-of-day': '“{at}” is no time of day. It is kept and not used.',
  'situation.no-time-of-day-mend': 'Write hours and minutes from 00:00 to 23:59, such as 02:00.',
  'situation.seasons-swapped':
    'The coldest water, {coldest}, is told warmer than the warmest, {warmest}. The lower one is taken as the coldest.',
  'situation.seasons-swapped-mend': 'Swap “coldest” and “warmest”, or correct the one that is wrong.',
  'situation.temperature-outside':
    'The water was {measured}, outside the {coldest} to {warmest} told for the year. The told values are used.',
  'situation.temperature-outside-mend': 'Measure again, or ask again for the coldest and warmest water.',
  'situation.reading.odd': '{test}: {value} is outside what such a unit gives ({min} to {max}).',
  'situation.reading.odd-unit': 'Was it {number} {unit}? Write the unit, or read it again.',
  'situation.reading.odd-again': 'Read it again, or write how it was read.',
  'situation.reading.unknown-test':
    'The definitions have no test “{test}”. The reading is kept and not used.',
  'situation.reading.unknown-test-mend': '“equipment show” lists the tests.',
  'situation.reading.unknown-state': '“{test}” has no result “{state}”.',
  'situation.reading.unknown-state-mend': 'Write one of these: {states}, or cannot-do.',
  'situation.reading.wild':
    '{what}: {wild, plural, one {# of {repeats} readings lies far from the others and hardly counts.} other {# of {repeats} readings lie far from the others and hardly count.}}',
  'situation.reading.wild-mend': 'Read once more; with few readings the odd one may be the true one.',
  'situation.rate-set-aside':
    '{step} was read at {read}, far from the {chart} of what is fitted. It speaks of a fault; the program goes by what is fitted.',
  'situation.rate-set-aside-mend': 'Read again once the fault is mended.',
  'situation.gap.age':
    'Age of the resin is not known; it is taken as new. Each year costs about 5 % of its capacity.',
  'situation.gap.seasons':
    'Coldest and warmest water of the year are not known; a narrow span about one reading is taken. They decide the backwash.',
  'situation.water.fine': 'fine',
  'situation.water.odd': 'odd',
  'situation.water.questionable': 'questionable',
  'situation.water.charge-balance': 'The analysis is {verdict}: its charges are off by {balance}.',
  'situation.water.hardness':
    'The analysis is {verdict}: calcium and magnesium make {hardness}, the laboratory says otherwise.',
  'situation.water.conductivity':
    'The analysis is {verdict}: its ions make {conductivity}, which does not agree with the measured conductivity.',
  'situation.water.doubt-mend': 'Titrate the hardness on site before the settings rest on it.',
  'situation.chart-ends':
    'The supply has {pressure} and the injector’s chart ends at {least} and {most}; its end value is used.',
  'situation.chart-ends-mend': 'Measure the draw with a pail: a measured rate beats the chart.',
  'derivation.below-range': '{equation}: {what} {value} is below {limit}, the least it was tested at.',
  'derivation.above-range': '{equation}: {what} {value} is above {limit}, the most it was tested at.',
  'derivation.cannot-compute': '“{equation}” cannot be computed from these values.',
  'derivation.cannot-compute.mend': 'Look at its inputs: one of them is zero, or they contradict each other.',
  'derivation.rule.mean': 'mean of the two',
  'derivation.rule.same-drain-control': 'the drain control sets both',
  'derivation.rule.pail-calibration':
    'moved as far as the pail under the drain demands, within 0.45 to 0.75 mm',
} as const satisfies Record<string, string>;
