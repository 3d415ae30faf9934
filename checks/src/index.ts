export type { CheckRow, Claim, Tolerance, Verdict } from './row.ts';
export { type CheckReport, runChecks } from './run.ts';
