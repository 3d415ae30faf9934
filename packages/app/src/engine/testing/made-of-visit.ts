import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Draft, draftsOfVisit, type Entry, fold } from '@brinewright/journal';
import { assess, parseVisit, type Visit } from '@brinewright/service';
import { shippedEquipment } from '@brinewright/service/testing';
import type { Made } from '../made.ts';
import { type ReaderChoice, speechFor } from '../speech.ts';
import { testStream, writtenEntries } from './written-entries.ts';

const demo = join(import.meta.dirname, '../../../../../demo');

export const now = '2026-11-25T12:00:00Z';
export const english: ReaderChoice = { language: 'en', system: 'us' };
export const spanish: ReaderChoice = { language: 'es', system: 'metric' };

export const demoVisit = (name: string): Visit => {
  const file = `${name}.yaml`;
  const read = parseVisit(file, readFileSync(join(demo, file), 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value;
};

/** What the entries make of one visit, folded and assessed as the worker does it. */
export const madeOfEntries = (entries: readonly Entry[], id: string, reader: ReaderChoice): Made => {
  const site = fold(entries);
  const folded = site.visits.find((one) => one.id === id);
  const subject = folded?.visit.conditioners.find((one) => one.id === folded.visit.subject);
  if (folded === undefined || subject === undefined) throw new Error(id);
  const { visit } = folded;
  const equipment = shippedEquipment();
  return {
    stream: testStream,
    site,
    folded,
    visit,
    subject,
    assessment: assess(visit, equipment, { now, effort: 'quick' }),
    equipment,
    family: equipment.families.get(subject.family),
    speech: speechFor({ ...reader, currency: visit.site.prices?.currency }),
    now,
  };
};

/** A visit as it was written, with what was entered after it. */
export const madeOf = (visit: Visit, reader = english, more: readonly Draft[] = []): Made =>
  madeOfEntries(writtenEntries([...draftsOfVisit(visit, { stream: testStream }), ...more]), visit.id, reader);

export const madeOfDemo = (name: string, reader = english, more: readonly Draft[] = []): Made =>
  madeOf(demoVisit(name), reader, more);

/** A unit of which nobody knows anything yet: 'describe it later'. */
export const bareVisit: Visit = {
  schema: 1,
  id: 'bare',
  site: { name: 'Quarry Lane Kitchen (invented)' },
  conditioners: [{ id: 'u1', family: 'undescribed', kind: 'softener' }],
  subject: 'u1',
};
