export const recognitionEn = {
  'recognition.why.undescribed':
    'Nothing to tell apart: nobody has described this make. Go by what it does, and write down the numbers found on it.',
  'recognition.why.single': 'Nothing to tell apart: this family has one variant.',
  'recognition.why.no-target': 'Nothing planned so far depends on the variant.',
  'recognition.why.one-left': 'One variant remains.',
  'recognition.why.same-for-all':
    '{count, plural, one {# variant remains.} other {# variants remain, and all take the same parts, tools and settings.}}',
  'recognition.why.clear-enough':
    'Clear enough to go on. {count, plural, one {One other choice} other {# other choices}} of parts, tools or settings together at 5 % or less.',
  'recognition.why.open':
    '{count, plural, one {One choice} other {# choices}} of parts, tools or settings remain. Next: {tell}',
  'recognition.why.no-tell-left':
    '{count, plural, one {One choice} other {# choices}} of parts, tools or settings remain, and no tell is left that parts them. Bring what each needs.',
  'recognition.why.disagree': 'Answers disagree. Look again: {doubt} (answer: {answer}).',
  'recognition.why.disagree-or-converted':
    'Answers disagree. Look again: {doubt} (answer: {answer}). Or it was converted from {from} to {to}.',
  'recognition.gap.tell': 'Still to be told apart: {tell}',
  'recognition.gap.no-variant':
    'No variant of {family} is left: its “never” rules exclude them all. Mend the definition.',
  'recognition.unknown-answer': '{tell} There is no answer “{answer}”. It is kept and not used.',
  'recognition.unknown-answer-mend': 'Write one of these: {answers}, cannot-see, unsure.',
  'recognition.no-such-size': '{tell} {value} is near no size of this family. It is not used.',
  'recognition.no-such-size-mend':
    'Check the unit of measure and measure again. If it stays so, it is another family.',
  'recognition.unknown-value': 'Feature “{feature}” has no value “{value}” in this family. It is not used.',
  'recognition.unknown-value-mend': 'Write one of these: {known}.',
  'recognition.unknown-value-none': 'The family has no such feature. “equipment show” lists them.',
} as const satisfies Record<string, string>;
