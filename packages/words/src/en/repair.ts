export const repairEn = {
  'repair.not-in-definition': '“{id}” is not in the definition of this valve.',
  'repair.wrong-part': '{title} is for {fits}; this valve is {valve}. Leave it in the van.',
  'repair.wrong-tool': '{title} is for {fits}; this valve is {valve}. It would damage the bore.',
  'repair.no-part':
    'No part in the definition serves as {role} for every build that remains. Nothing is adapted; find out which build it is, or take the unit to bypass.',
  'repair.too-hot':
    'The water reaches {warmest}, more than the cold build stands (odds that it is the cold build: {odds}). Fit hot-water parts only, or move the unit ahead of the heater.',
  'repair.substitute-refill':
    '{control} ({rate}) can take its place: then every refill time is multiplied by {times}, and nothing else changes.',
  'repair.mend': '{fault}: {mend}',
  'repair.undescribed':
    'No part list for this make. Note every number found on parts and body; take the old piece along and compare.',
  'repair.convert-check': 'Before converting: {check}.',
  'repair.no-conversion':
    'No conversion to {feature} {to} is in the definition for the builds that remain. Nothing is adapted.',
  'repair.unknown-conversion':
    'The decided conversion “{written}” names nothing that this family has; it is not planned.',
  'repair.unknown-conversion-mend': 'Write feature and value, one of these: {known}.',
  'repair.gap.fault':
    'What is wrong with {unit} is not clear enough to choose parts. The next test says most.',
} as const satisfies Record<string, string>;
