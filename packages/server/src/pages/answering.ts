import type { FastifyReply, FastifyRequest } from 'fastify';
import type { House, WorkshopName } from '../http/house.ts';
import { readerOf } from '../http/reader.ts';
import type { Workshop } from '../workshop/workshop.ts';
import type { Place } from './place.ts';
import { type View, viewFor } from './view.ts';

export const viewOf = (request: FastifyRequest, { usualLanguage }: House): View =>
  viewFor(readerOf(request, usualLanguage), request.url);

export const sendPage = (reply: FastifyReply, text: string): FastifyReply =>
  reply.type('text/html; charset=utf-8').send(text);

/** What the workshop is called, by its owner where it was given no name. */
export const titleOf = async (view: View, workshop: Workshop): Promise<string> =>
  (await workshop.name()) ?? view.word('server.begin.usual-name', { author: workshop.owner });

/** The workshop as the title block names it: who, with which definitions, how much is in the record. */
export const placeOf = async (
  view: View,
  name: WorkshopName,
  workshop: Workshop,
  { app }: House,
): Promise<Place> => {
  const [{ last }, { equipment }] = [await workshop.state(), await workshop.inUse()];
  return {
    name,
    hasApp: app !== undefined,
    title: name === 'demo' ? view.word('server.demo.title') : await titleOf(view, workshop),
    cells: [
      [view.word('server.cell.entries'), view.word('server.cell.entries.on-disk', { entries: last })],
      [
        view.word('server.cell.definitions'),
        view.word('server.cell.definitions.count', { families: equipment.families.size }),
      ],
    ],
  };
};
