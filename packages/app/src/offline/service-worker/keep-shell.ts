/** A newer version of the app that has come and waits. */
type Listener = () => void;

let waiting: ServiceWorker | undefined;
const listeners = new Set<Listener>();

const found = (worker: ServiceWorker | null): void => {
  if (worker === null) return;
  waiting = worker;
  for (const listener of listeners) listener();
};

/** Installs the app on the device, and looks for newer versions by the way. */
export const keepShell = (address: string): void => {
  if (!('serviceWorker' in navigator)) return;
  void register(address);
};

const register = async (address: string): Promise<void> => {
  try {
    const kept = await navigator.serviceWorker.register(new URL('sw.js', address));
    if (navigator.serviceWorker.controller !== null) found(kept.waiting);
    kept.addEventListener('updatefound', () => {
      const { installing } = kept;
      installing?.addEventListener('statechange', () => {
        if (installing.state === 'installed' && navigator.serviceWorker.controller !== null)
          found(installing);
      });
    });
  } catch {
    // Without it the app works while the network does; the browser may forbid it.
  }
};

export const newerVersion = {
  listen: (listener: Listener): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
  isHere: (): boolean => waiting !== undefined,
  /** Changes to it and loads the page anew. */
  change: (): void => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
    waiting?.postMessage('change-now');
  },
};
