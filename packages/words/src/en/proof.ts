export const proofEn = {
  'proof.check.outlet-hardness': 'Hardness at the outlet',
  'proof.check.drain-in-service': 'Drain flow in service',
  'proof.check.backwash-flow': 'Backwash flow',
  'proof.check.brine-draw': 'Brine draw, from a pail',
  'proof.check.refill-water': 'Refill water',
  'proof.check.air-gap': 'Air gap of the drain line',
  'proof.check.no-leaks': 'No leaks at full pressure',
  'proof.check.every-step-run': 'Every step run once',
  'proof.check.settings-keyed': 'Settings keyed in and read back',
  'proof.check.clock-right': 'Clock right',
  'proof.check.bypass-in-service': 'Bypass back in service',
  'proof.check.outlet-hardness-after': 'Hardness at the outlet after a regeneration',
  'proof.check.no-salt-taste': 'No salt taste after a regeneration',
  'proof.check.brine-level-back': 'Brine level back where it was',
  'proof.check.regenerated-on-time': 'Regenerated when it should',
  'proof.check.hardness-at-the-end': 'Hardness on the last day of the run, by the customer’s strip',
  'proof.decide.u':
    'A reading with an uncertainty of {u} would decide it: a larger pail or a better instrument.',
  'proof.decide.repeats':
    'A reading with an uncertainty of {u} would decide it: a larger pail, or {repeats} readings like this one.',
  'proof.decide.on-the-limit': 'It stands on the limit; no repeat of this test decides it.',
  'proof.summary': '{pass} passed, {fail} failed, {undecided} not decided, {open} still open.',
} as const satisfies Record<string, string>;
