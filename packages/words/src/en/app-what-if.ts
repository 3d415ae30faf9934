export const appWhatIfEn = {
  'app.what-if.title': 'What if',
  'app.what-if.under': 'Numbers in, program out. Nothing is kept; the link holds the numbers.',
  'app.what-if.numbers': 'Numbers',
  'app.what-if.copy': 'Copy the link',
  'app.what-if.copied': 'The link is copied.',
  'app.what-if.not-copied': 'The link was not copied; it stands in the address line.',
  'app.what-if.clear': 'Clear',
  'app.what-if.taken': 'For an undescribed softener of cation resin and a controller of whole minutes.',
} as const;
