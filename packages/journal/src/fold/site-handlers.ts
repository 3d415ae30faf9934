import type { Entry } from '../entry/entry.ts';
import type { Handlers } from '../kinds/read-payload.ts';
import type { SiteState } from './site-state.ts';

/** What an entry does to the site, whatever visit it was written in. */
export const siteHandlers: Handlers<{ readonly site: SiteState; readonly entry: Entry }> = {
  'site-opened': ({ site, entry }, _, written) => site.open(entry, written),
  'site-described': ({ site, entry }, _, written) => site.describe(entry, written),
  'water-analysed': ({ site }, _, written) => site.analyse(written),
  'demand-described': ({ site, entry }, _, written) => site.demand(entry, written),
  'supply-described': ({ site, entry }, _, written) => site.supply(entry, written),
  'conditioner-added': ({ site, entry }, _, written) => site.addConditioner(entry, unitOf(entry), written),
  'conditioner-described': ({ site, entry }, _, written) =>
    site.describeConditioner(entry, unitOf(entry), written),
};

const unitOf = ({ about }: Entry): string => about.conditioner ?? '';
