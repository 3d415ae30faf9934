export const cautionsEn = {
  'caution.danger': 'Danger',
  'caution.warning': 'Warning',
  'caution.caution': 'Caution',
  'caution.notice': 'Notice',
  'caution.codes':
    'Electrical, plumbing, backflow and discharge work follow local codes and the maker’s instructions, which outrank this tool. Licensed work is left to licensed people.',
} as const satisfies Record<string, string>;
