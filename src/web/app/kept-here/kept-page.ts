import { useSyncExternalStore } from 'react';

/** How the app itself is kept on this machine. */
export interface KeptPage {
  /** `barred` where the browser keeps no page, as over plain http */
  readonly state: 'fetching' | 'kept' | 'barred';
  /** takes a new version that has come, and loads the page anew; absent where none has */
  readonly take?: () => void;
}

let page: KeptPage = { state: 'fetching' };
const listeners = new Set<() => void>();

const set = (next: KeptPage): void => {
  page = next;
  for (const listener of listeners) listener();
};

/** Offers a version that waits. It begins only when a person says so: no page is changed under anybody’s hands. */
const offer = (waiting: ServiceWorker): void =>
  set({
    state: 'kept',
    take: () => {
      navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true });
      waiting.postMessage({ type: 'SKIP_WAITING' });
    },
  });

const watch = (coming: ServiceWorker | null): void => {
  const look = (): void => {
    if (coming?.state !== 'installed' && coming?.state !== 'activated') return;
    // the first one of all takes nobody’s place
    if (navigator.serviceWorker.controller === null) set({ state: 'kept' });
    else if (coming.state === 'installed') offer(coming);
  };
  coming?.addEventListener('statechange', look);
  look();
};

const hourMs = 3_600_000;

/** Asks the host for a new version at once, as browsers themselves take their time, and then by the hour while the page is seen. */
const lookForNew = (registration: ServiceWorkerRegistration): void => {
  let askedMs = Number.NEGATIVE_INFINITY;
  const look = (): void => {
    if (document.visibilityState !== 'visible' || performance.now() - askedMs < hourMs) return;
    askedMs = performance.now();
    // with no network there is none to be had
    registration.update().catch(() => undefined);
  };
  document.addEventListener('visibilitychange', look);
  setInterval(look, hourMs);
  look();
};

/** Has the browser keep the whole app on this machine. Only for pages that come from a host of files. */
export const keepPage = async (): Promise<void> => {
  if (!('serviceWorker' in navigator)) return set({ state: 'barred' });
  try {
    const registration = await navigator.serviceWorker.register('./sw.js', { scope: './' });
    if (registration.active !== null) set({ state: 'kept' });
    if (registration.waiting !== null && navigator.serviceWorker.controller !== null) offer(registration.waiting);
    watch(registration.installing);
    registration.addEventListener('updatefound', () => watch(registration.installing));
    lookForNew(registration);
  } catch {
    set({ state: 'barred' });
  }
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How the app is kept on this machine now. */
export const useKeptPage = (): KeptPage => useSyncExternalStore(subscribe, () => page);
