export const appLeaveSafeEn = {
  'app.leave-safe.title': 'Leave the unit safe',
  'app.leave-safe.first': 'First, {time}',
  'app.leave-safe.service': 'Put back as it was, and in service.',
  'app.leave-safe.bypass': 'A piece is missing: closed, without pressure and power, and led round.',
  'app.leave-safe.now': 'Now, 1 of {of}',
  'app.leave-safe.nothing-first': 'It may be left as it stands.',
  'app.leave-safe.once-done': 'Once the steps are done it says:',
  'app.leave-safe.card': 'The card that stays at the unit',
  'app.leave-safe.settings': 'Settings until then',
  'app.leave-safe.print': 'Print the card',
  'app.leave-safe.save': 'Keep it as a file',
  'app.leave-safe.to-work': 'Back to the work',
} as const;
