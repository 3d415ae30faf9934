import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { PairedDevice } from '../store/index.ts';
import { type Asker, ownPusher } from '../workshop/workshop.ts';
import type { House, Side } from './house.ts';
import { ProblemError } from './problem/problems.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** The paired device that asks; none for the owner at this computer. */
    device: PairedDevice | undefined;
  }
  interface FastifyContextConfig {
    /** Answered to anybody who reaches the listener. */
    isOpen?: boolean;
    /** Answered to the owner only, who is at this computer. */
    isOwners?: boolean;
    /** A page for people, so that errors are pages too. */
    isPage?: boolean;
  }
}

export const deviceCookie = '__Host-bw-device';

/** Lets in the owner on the loopback listener, and paired devices on the other. */
export const letIn = (app: FastifyInstance, { devices }: House, side: Side): void => {
  app.decorateRequest('device', undefined);
  app.addHook('onRequest', async (request) => {
    const { isOpen, isOwners } = request.routeOptions.config;
    if (side === 'loopback') return;
    const key = keyOf(request);
    request.device = key === undefined ? undefined : await devices.withKey(key);
    if (isOpen === true) return;
    if (request.device === undefined)
      throw new ProblemError('not-paired', { headers: { 'www-authenticate': 'Bearer' } });
    if (isOwners === true) throw new ProblemError('owner-only');
  });
};

const keyOf = (request: FastifyRequest): string | undefined =>
  bearer(request) ?? request.cookies[deviceCookie];

export const bearer = ({ headers }: FastifyRequest): string | undefined =>
  /^Bearer ([\w-]{20,100})$/u.exec(headers.authorization ?? '')?.[1];

export const askerOf = ({ device }: FastifyRequest): Asker =>
  device === undefined ? { pusher: ownPusher, isOwner: true } : { pusher: device.id, isOwner: false };
