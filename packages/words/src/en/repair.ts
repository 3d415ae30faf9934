export const repairEn = {
  'repair.not-in-definition': '“{id}” is not in the definition of this valve.',
  'repair.wrong-part':
    '{title} does not go with this valve. Made for – {fits}. This valve – {valve}. Leave it in the van.',
  'repair.wrong-tool':
    '{title} does not go with this valve. Made for – {fits}. This valve – {valve}. It would damage the bore.',
  'repair.feature': '{feature}: {values}',
  'repair.features': '{first}; {rest}',
  'repair.either': '{first} or {rest}',
  'repair.no-part':
    'No part in the definition serves as “{role}” for every build that remains. Nothing is adapted; find out which build it is, or take the unit to bypass.',
  'repair.too-hot':
    'The water reaches {warmest}, more than the cold build stands (odds that it is the cold build: {odds}). Fit hot-water parts only, or move the unit ahead of the heater.',
  'repair.maybe-too-hot':
    'The water reaches {warmest}, more than the cold build stands, and the odds that it is the cold build are {odds}.',
  'repair.maybe-too-hot-mend':
    'Tell the build apart before parts are fitted; until then hot-water parts only. If it is the cold build, move the unit ahead of the heater.',
  'repair.pressure-above': 'The supply pressure is {pressure}; {limit} is the most that {family} stands.',
  'repair.pressure-above-mend': 'Fit a pressure regulator ahead of the unit, or check the gauge.',
  'repair.pressure-below':
    'The supply pressure is {pressure}; {family} needs {limit} at least to move and draw.',
  'repair.pressure-below-mend': 'Look for a shut valve or a clogged line ahead of the unit, or fit a pump.',
  'repair.drain-control':
    'Backwash here needs {floor} to {ceiling}, and what is fitted gives {fitted}. Fit: {control}.',
  'repair.no-drain-control':
    'Backwash here needs {floor} to {ceiling}, and no drain control in the definition lies in that. Nothing is adapted; ask the maker for a control of that flow.',
  'repair.no-drain-window': 'No drain control can be chosen. {why} Nothing is adapted.',
  'repair.substitute-refill':
    '{control} ({rate}) can take its place: then every refill time is multiplied by {times}, and nothing else changes.',
  'repair.mend': '{fault}: {mend}.',
  'repair.undescribed':
    'No part list for this make. Note every number found on parts and body; take the old piece along and compare.',
  'repair.convert-check': 'Before converting: {check}.',
  'repair.no-conversion':
    'No conversion to “{feature}: {to}” is in the definition for the builds that remain. Nothing is adapted.',
  'repair.unknown-conversion':
    'The decided conversion “{written}” names nothing that this family has; it is not planned.',
  'repair.unknown-conversion-mend': 'Write feature and value, one of these: {known}.',
  'repair.gap.fault':
    'What is wrong with {unit} is not clear enough to choose parts. The next test says most.',
} as const satisfies Record<string, string>;
