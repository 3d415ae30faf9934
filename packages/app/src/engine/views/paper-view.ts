import { leaveSafeCard, type PaperOptions, report, workSheet } from '@brinewright/papers';
import { sources } from '@brinewright/service';
import type { Made } from '../made.ts';
import type { ReaderChoice } from '../speech.ts';

export const paperKinds = ['report', 'work-sheet', 'leave-safe-card'] as const;
export type PaperKind = (typeof paperKinds)[number];

/** One file that needs nothing else, and a name to keep it under. */
export type PaperView = { readonly name: string; readonly html: string };

/** A paper of the visit in the language and units chosen for it; `fontUri` is the typeface as a data: address. */
export const paperView = (
  { visit, assessment, equipment }: Pick<Made, 'visit' | 'assessment' | 'equipment'>,
  kind: PaperKind,
  reader: ReaderChoice,
  fontUri?: string,
): PaperView => {
  const options = { ...reader, equipment, sources, ...(fontUri === undefined ? {} : { fontUri }) };
  return {
    name: `${[visit.site.name, visit.date ?? '', kind].map(plainName).filter(Boolean).join('-')}.html`,
    html: written[kind](visit, assessment, options),
  };
};

const written: Readonly<
  Record<PaperKind, (visit: Made['visit'], assessment: Made['assessment'], options: PaperOptions) => string>
> = { report, 'work-sheet': workSheet, 'leave-safe-card': leaveSafeCard };

/** Letters and figures without accents, for a file name. */
const plainName = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-|-$/gu, '');
