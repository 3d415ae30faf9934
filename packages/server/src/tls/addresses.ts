import { hostname, networkInterfaces } from 'node:os';

/** Names and addresses under which this machine is reached in its network. */
export type Addresses = { readonly names: readonly string[]; readonly addresses: readonly string[] };

export const ownAddresses = (listensOn: string): Addresses => {
  const host = hostname().toLowerCase();
  const found = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ address }) => !address.startsWith('fe80:'))
    .map(({ address }) => address);
  const asked = isAddress(listensOn) && !isAny(listensOn) ? [listensOn] : [];
  const names = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?$/u.test(host) ? [host, `${host}.local`] : [];
  return {
    names: [...new Set(['localhost', ...names, ...(isAddress(listensOn) ? [] : [listensOn])])].toSorted(),
    addresses: [...new Set([...found, ...asked, '127.0.0.1'])].toSorted(),
  };
};

/** Where devices reach a listener: by each address of the machine where it listens on all of them. */
export const reachedBy = (listensOn: string): readonly string[] => {
  if (!isAny(listensOn)) return [listensOn];
  const own = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ internal, family }) => !internal && family === 'IPv4')
    .map(({ address }) => address);
  return own.length === 0 ? ['127.0.0.1'] : own;
};

const isAny = (host: string): boolean => host === '0.0.0.0' || host === '::';
const isAddress = (host: string): boolean => /^\d+(?:\.\d+){3}$/u.test(host) || host.includes(':');
