import { useSyncExternalStore } from 'react';
import type { LiveCurve, LiveTold } from '../../../../../core/proof/live/live-snapshot.ts';

/** Where to listen, as the server takes it. */
export type WishedSource =
  | { readonly kind: 'udp'; readonly port: number }
  | { readonly kind: 'tcp'; readonly host: string; readonly port: number }
  | { readonly kind: 'serial'; readonly path: string; readonly baud?: number };

/** How the live bus of the open boat stands, as this page knows it. */
export interface LiveState {
  readonly boat: string | undefined;
  readonly told: LiveTold;
  /** the server does not answer */
  readonly isAway: boolean;
  /** why the last wish was not granted */
  readonly refused: string | undefined;
  /** the reading that is looked at closely */
  readonly picked: number | undefined;
}

const idle: LiveState = {
  boat: undefined,
  told: { listening: false },
  isAway: false,
  refused: undefined,
  picked: undefined,
};

let state = idle;
let flow: EventSource | undefined;
const listeners = new Set<() => void>();

const set = (more: Partial<LiveState>): void => {
  state = { ...state, ...more };
  for (const listener of listeners) listener();
};

const addressOf = (boat: string): string => `/api/boats/${encodeURIComponent(boat)}/live`;

const endFlow = (): void => {
  flow?.close();
  flow = undefined;
};

/** Looks on for as long as she is listened to; the browser comes back by itself where the link was lost. */
const beginFlow = (boat: string): void => {
  if (flow !== undefined) return;
  const made = new EventSource(`${addressOf(boat)}/flow`);
  flow = made;
  made.onmessage = ({ data }) => {
    // the server and this page are built together
    const told = JSON.parse(String(data)) as LiveTold;
    set({ told, isAway: false });
    if (!told.listening) endFlow();
  };
  made.onerror = () => set({ isAway: true });
};

const ask = async (method: string, at: string, body: unknown): Promise<boolean> => {
  try {
    const headers = { 'content-type': 'application/json' };
    const response = await fetch(at, { method, headers, body: JSON.stringify(body) });
    const { says, whatToDo = '' }: { says?: string; whatToDo?: string } = await response.json();
    set({ isAway: false, refused: response.ok ? undefined : `${says ?? ''} ${whatToDo}`.trim() });
    return response.ok;
  } catch {
    set({ isAway: true });
    return false;
  }
};

/** Takes up a boat of the folder: where she is listened to already, this page looks on. Gives what lets her go again. */
const openBoat = (boat: string): (() => void) => {
  set({ ...idle, boat });
  void fetch(addressOf(boat))
    .then(async (response) => {
      if (!response.ok || state.boat !== boat) return;
      const told = (await response.json()) as LiveTold;
      set({ told });
      if (told.listening) beginFlow(boat);
    })
    .catch(() => set({ isAway: true }));
  return () => {
    endFlow();
    set(idle);
  };
};

/** What a page can do with the live bus of a boat. */
export const live = {
  open: openBoat,
  begin: async (wish: { source: WishedSource; on?: string; record: boolean }): Promise<void> => {
    const { boat } = state;
    if (boat !== undefined && (await ask('POST', addressOf(boat), wish))) beginFlow(boat);
  },
  stop: async (): Promise<void> => {
    const { boat } = state;
    if (boat === undefined || !(await ask('DELETE', addressOf(boat), {}))) return;
    endFlow();
    set({ told: { listening: false }, picked: undefined });
  },
  /** Only to be called after a person said yes to what was shown. */
  askUnits: async (line: string, thorough: boolean): Promise<void> => {
    const { boat } = state;
    if (boat !== undefined) await ask('POST', `${addressOf(boat)}/ask`, { line, thorough, yes: true });
  },
  pick: (reading: number | undefined): void => set({ picked: reading }),
  ports: async (): Promise<readonly string[]> => {
    try {
      const response = await fetch('/api/live/ports');
      return response.ok ? ((await response.json()) as string[]) : [];
    } catch {
      return [];
    }
  },
  curve: async (reading: number): Promise<LiveCurve | undefined> => {
    const { boat } = state;
    if (boat === undefined) return undefined;
    try {
      const response = await fetch(`${addressOf(boat)}/curve/${reading}`);
      return response.ok ? ((await response.json()) as LiveCurve) : undefined;
    } catch {
      return undefined;
    }
  },
} as const;

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How the live bus stands now. */
export const liveState = (): LiveState => state;

/** How the live bus stands; the component is drawn again with each change. */
export const useLive = (): LiveState => useSyncExternalStore(subscribe, liveState);
