import type { Assessment, Visit } from '@brinewright/service';
import { assumedSection } from './assumed-section.ts';
import { backwashSection } from './backwash-section.ts';
import { graveCautions, lightCautions } from './cautions-section.ts';
import { derivations, sourceList } from './derivation.ts';
import { cutSection, cutShowsFault, foundSection } from './found-section.ts';
import { customerSection, doubtSection, gapSection } from './notes-sections.ts';
import { page } from './page.ts';
import { programSection } from './program-section.ts';
import { proofSection } from './proof-section.ts';
import { recognitionSection } from './recognition-section.ts';
import { openSheet, type PaperOptions } from './sheet.ts';
import { timelineSection } from './timeline-section.ts';
import { signatureBlock, titleBlock } from './title-block.ts';
import { waterSection } from './water-section.ts';
import { workSection } from './work-section.ts';

/** The report of a visit as one HTML file: what was found, done, set and proved, every figure open to its derivation. */
export const report = (visit: Visit, assessment: Assessment, options: PaperOptions): string => {
  const sheet = openSheet(visit, assessment, options);
  const title = sheet.word('papers.report');
  const torn = cutShowsFault(sheet);
  const content = [
    titleBlock(sheet, title),
    foundSection(sheet),
    torn ? cutSection(sheet) : undefined,
    recognitionSection(sheet),
    graveCautions(sheet),
    workSection(sheet),
    programSection(sheet),
    torn ? undefined : cutSection(sheet),
    timelineSection(sheet),
    backwashSection(sheet),
    proofSection(sheet),
    lightCautions(sheet),
    gapSection(sheet),
    doubtSection(sheet),
    waterSection(sheet),
    customerSection(sheet),
    signatureBlock(sheet),
    assumedSection(sheet),
    sourceList(sheet),
    derivations(sheet),
  ];
  return page(
    { title: `${title}: ${visit.site.name}`, language: options.language, fontUri: options.fontUri },
    content,
  );
};
