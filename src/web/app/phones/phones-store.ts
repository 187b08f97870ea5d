import { useSyncExternalStore } from 'react';
import { store } from '../store/the-store.ts';

/** A paired phone. */
export interface PairedPhone {
  readonly id: string;
  readonly name: string;
  readonly pairedAtMs: number;
  readonly lastSeenMs: number;
}

/** How phones stand, as the server tells it. */
export interface PhonesTold {
  readonly on: boolean;
  readonly addresses: readonly string[];
  readonly code?: { readonly code: string; readonly leftMs: number };
  readonly devices: readonly PairedPhone[];
  readonly connections: { readonly turnedAway: number };
}

export interface PhonesState {
  /** undefined until the server has answered */
  readonly told: PhonesTold | undefined;
  /** by this page’s own clock, when the code that stands runs out */
  readonly codeUntilMs: number;
  /** nobody answers, or whoever serves this page lets no phones in */
  readonly isAway: 'away' | 'without' | undefined;
  /** why the last wish was not granted */
  readonly refused: string | undefined;
}

const at = '/api/phones';
const lookEveryMs = 2000;

let state: PhonesState = { told: undefined, codeUntilMs: 0, isAway: undefined, refused: undefined };
let timer: number | undefined;
/** Counts what was asked, so that an answer that was overtaken does not turn the clock back. */
let asked = 0;
const listeners = new Set<() => void>();

const set = (more: Partial<PhonesState>): void => {
  state = { ...state, ...more };
  for (const listener of listeners) listener();
};

const take = (told: PhonesTold): void =>
  set({ told, codeUntilMs: performance.now() + (told.code?.leftMs ?? 0), isAway: undefined });

const troubleIn = ({ says = '', whatToDo = '' }: { says?: string; whatToDo?: string }): string =>
  `${says} ${whatToDo}`.trim();

const ask = async (path: string, request: RequestInit): Promise<void> => {
  asked += 1;
  const mine = asked;
  try {
    const response = await fetch(`${at}${path}`, { ...request, headers: { 'content-type': 'application/json' } });
    const isJson = response.headers.get('content-type')?.startsWith('application/json') === true;
    if (mine !== asked) return;
    if (!isJson || (response.status === 404 && path === '')) return set({ isAway: 'without' });
    // the server and this page are built together
    const json = await response.json();
    if (mine !== asked) return;
    if (!response.ok) return set({ refused: troubleIn(json), isAway: undefined });
    if (request.method !== 'GET') set({ refused: undefined });
    take(json as PhonesTold);
  } catch {
    if (mine === asked) set({ isAway: 'away' });
  }
};

const look = (): void => {
  if (store.kind === 'browser') set({ isAway: 'without' });
  else if (document.visibilityState === 'visible') void ask('', { method: 'GET' });
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  if (timer === undefined) {
    look();
    timer = window.setInterval(look, lookEveryMs);
  }
  return () => {
    listeners.delete(listener);
    if (listeners.size > 0) return;
    window.clearInterval(timer);
    timer = undefined;
  };
};

/** What the laptop can wish of phones. */
export const phones = {
  letIn: (on: boolean): Promise<void> => ask('/lan', { method: 'POST', body: JSON.stringify({ on }) }),
  newCode: (): Promise<void> => ask('/code', { method: 'POST', body: '{}' }),
  revoke: (id: string): Promise<void> => ask(`/${id}`, { method: 'DELETE' }),
} as const;

/** How phones stand now; looked at again every two seconds while anybody wants to know. */
export const usePhones = (): PhonesState => useSyncExternalStore(subscribe, () => state);
