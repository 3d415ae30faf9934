export const diagnosisEn = {
  'diagnosis.none-of-these': 'None of these',
  'diagnosis.with-others':
    '{fault} (with {count, plural, one {another fault} other {# other faults}} of the same repair)',
  'diagnosis.says.decided': 'Decided on site: {fault}.',
  'diagnosis.says.act': '{fault}: {odds}. Clear enough to act on.',
  'diagnosis.says.act-alike':
    '{fault} or {other}: {odds}. The repair is the same, so they need not be told apart.',
  'diagnosis.says.test': 'Leading: {fault}, {odds}. Next: {test}.',
  'diagnosis.says.cannot-tell':
    'No test is left that helps. {first} leads with {odds}; it cannot be told from {second} yet.',
  'diagnosis.says.begin': 'Nothing points to a fault yet. Begin with: {test}.',
  'diagnosis.says.nothing-told': 'Nothing was told, seen or measured that points to a fault.',
  'diagnosis.says.none-leads': 'No listed fault explains it well. Next: {test}.',
  'diagnosis.says.none-fits':
    'No listed fault explains it, and no test is left that helps. Write down what is seen, with photos.',
  'diagnosis.ask.changed': 'What changed since it last worked well?',
  'diagnosis.ask.last-work': 'Who worked on it last, when, and what was done?',
  'diagnosis.clue.measured': '{test} – {value}, {outcome}',
  'diagnosis.clue.seen': '{test} – {outcome}',
  'diagnosis.clue.computed': '{clue} (computed from the found settings)',
  'diagnosis.clue.complaint': 'Complaint: {complaint}',
  'diagnosis.clue.change': 'Changed: {change}',
  'diagnosis.clue.serviced-recently': 'Somebody worked on it within two months',
  'diagnosis.clue.serviced-long-ago': 'Nobody worked on it within two months',
  'diagnosis.clue.service-not-known': 'Last work on it not known',
  'diagnosis.gap.no-faults':
    'The definition of {family} lists no faults for this kind of unit. Take them from a stock with “like”, or write them.',
  'diagnosis.gap.reading-not-judged':
    '“{test}”: the reading is kept, but the rate it is compared with is not known. Measure it, or name what is fitted.',
  'diagnosis.gap.test-not-judged':
    '“{test}” would tell something once the rate it is compared with is known. Measure it, or name what is fitted.',
} as const satisfies Record<string, string>;
