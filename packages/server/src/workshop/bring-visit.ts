import { parseDefinition } from '@brinewright/equipment';
import type { FoldedSite } from '@brinewright/journal';
import { parseVisit, type Visit } from '@brinewright/service';
import type { Issue } from '@brinewright/words';
import type { SiteOf } from './log-follower.ts';

export type VisitRead =
  | { readonly state: 'read'; readonly visit: Visit; readonly issues: readonly Issue[] }
  /** Something in it could not be read; nothing of it is taken, so that it can be mended and sent again. */
  | { readonly state: 'faulty'; readonly issues: readonly Issue[] }
  | { readonly state: 'definition' };

/** A visit document for the record: all of it or nothing. */
export const readWritten = (file: string, text: string): VisitRead => {
  const parsed = parseVisit(file, text);
  const isFaulty = !parsed.ok || parsed.issues.some(({ severity }) => severity === 'error');
  if (!isFaulty) return { state: 'read', visit: parsed.value, issues: parsed.issues };
  return parseDefinition(file, text).state === 'broken'
    ? { state: 'faulty', issues: parsed.issues }
    : { state: 'definition' };
};

/** The site a visit belongs to: of the same name, and of the same address where both say one. */
export const siteOfVisit = (
  sites: readonly SiteOf[],
  { site }: Visit,
): { readonly stream: string; readonly folded: FoldedSite } | undefined =>
  sites.find(({ folded }) => {
    if (folded.site === undefined || alike(folded.site.name) !== alike(site.name)) return false;
    const addresses = [folded.site.address, site.address].filter((one) => one !== undefined);
    return new Set(addresses.map(alike)).size < 2;
  });

const alike = (text: string): string => text.trim().replaceAll(/\s+/gu, ' ').toLowerCase();
