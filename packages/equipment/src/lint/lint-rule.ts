import type { Issue, Path, Severity } from '@brinewright/words';
import type { Finding } from '../issue/codes.ts';
import { issueAt } from '../issue/report.ts';
import type { Resolved } from '../like/resolve.ts';
import type { Family } from '../model/family.ts';
import type { WeightedVariant } from '../variants/variants-of.ts';

/** A compiled family with what it was compiled from. */
export type LintSubject = {
  readonly family: Family;
  readonly variants: readonly WeightedVariant[];
  readonly resolved: Resolved;
};

/** One thing that a schema cannot see. */
export type LintRule = {
  readonly code: string;
  readonly check: (subject: LintSubject) => readonly Issue[];
};

/** An issue of a rule, at its place in the family's file or its stock's. */
export const lintIssue = (subject: LintSubject, severity: Severity, at: Path, finding: Finding): Issue =>
  issueAt(severity, at, subject.resolved.locate(at, 'key'), finding);
