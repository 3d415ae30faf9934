import type { Entry } from '../entry/entry.ts';
import type { Handlers } from '../kinds/read-payload.ts';
import { saidOf } from './said.ts';
import type { SiteState } from './site-state.ts';
import type { VisitState } from './visit-state.ts';
import { fieldOf, ofUnit, withEntry, without } from './written.ts';

/** What an entry does to the visit it is about. */
export const visitHandlers: Handlers<{
  readonly visit: VisitState;
  readonly site: SiteState;
  readonly entry: Entry;
}> = {
  'visit-started': ({ visit, entry }, { definitions }, written) => {
    visit.setFields(entry, without(written, 'definitions'));
    if (definitions !== undefined) pinDefinitions(visit, entry, definitions);
  },
  'visit-definitions-changed': ({ visit, entry }, { definitions, gone }) => {
    pinDefinitions(visit, entry, definitions);
    visit.gone = gone;
  },
  'visit-noted': ({ visit, entry }, _, written) => visit.setFields(entry, written),
  'complaint-told': ({ visit, entry }, _, written) => visit.set(entry, 'complaint', written),
  'history-told': ({ visit, entry }, _, written) => visit.setPart(entry, 'history', written),
  'tell-answered': ({ visit, entry }, { tell }, written) =>
    visit.put(entry, 'answers', [entry.about.conditioner ?? '', tell], written),
  'reading-taken': ({ visit, entry }, _, written) => visit.add('readings', ofUnit(entry, written)),
  'decision-made': ({ visit, entry }, { what, value }, written) =>
    visit.put(entry, 'decided', what === 'convert' ? [what, value.split(':')[0] ?? ''] : [what], written),
  'gate-checked': ({ visit, entry }, _, written) => visit.setPart(entry, 'gate', written),
  'apart-noted': ({ visit, entry }, _, written) => visit.setPart(entry, 'apart', written),
  'operation-done': ({ visit, entry }, { operation, instance }, written) =>
    visit.put(entry, 'done', [operation, String(instance ?? '')], written),
  'part-used': ({ visit, entry }, { part, instance }, written) =>
    visit.put(entry, 'used', [part, String(instance ?? '')], written),
  'stock-listed': ({ visit, entry }, _, written) => visit.set(entry, 'stock', fieldOf(written, 'lines')),
  'setting-found': ({ visit, entry }, _, written) => visit.setPart(entry, 'found', written),
  'setting-set': ({ visit, entry }, _, written) => visit.setPart(entry, 'set', written),
  'meter-read': ({ visit, entry }, { lastRegeneration }, written) => {
    const volume = fieldOf(written, 'volume');
    if (volume !== null) visit.set(entry, 'meterNow', volume);
    if (lastRegeneration !== undefined) visit.set(entry, 'lastRegeneration', lastRegeneration);
  },
  'proof-reading-taken': ({ visit, entry }, _, written) => visit.add('proofs', withEntry(entry, written)),
  'caution-acknowledged': ({ visit, entry }, { caution }, written) =>
    visit.put(entry, 'acknowledged', [caution], written),
  'photo-taken': ({ visit }, _, written) => visit.add('photos', without(written, 'bytes', 'type')),
  'signature-given': ({ visit }, _, written) => visit.add('signatures', without(written, 'file')),
  'advice-given': ({ visit, entry }, shown) => void visit.advice.push({ ...saidOf(entry), shown }),
  'handed-over': ({ visit, site, entry }, { shown }, written) => {
    visit.set(entry, 'handOver', without(written, 'shown'));
    visit.handedOver = { ...saidOf(entry), ...(shown === undefined ? {} : { shown }) };
    visit.siteThen = site.written();
  },
};

const pinDefinitions = (
  visit: VisitState,
  entry: Entry,
  { digest, file }: { readonly digest: string; readonly file?: string | undefined },
): void => {
  visit.set(entry, 'definitions', digest);
  visit.definitionsFile = file;
};
