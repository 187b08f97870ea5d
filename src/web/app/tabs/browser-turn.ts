import { type BoatTurn, boatTurn, type TurnHooks, type TurnTools } from './boat-turn.ts';

/** For a browser that lends no locks: every page is the only one. */
const alone: TurnTools['locks'] = {
  request: (_: string, ...rest: unknown[]) => {
    const grant = rest.at(-1);
    return Promise.resolve(typeof grant === 'function' ? grant({}) : undefined);
  },
};

const tools: TurnTools = {
  // only a page of this very machine, or one over https, has them
  locks: typeof navigator === 'object' && 'locks' in navigator ? navigator.locks : alone,
  channel: (name) => {
    const channel = new BroadcastChannel(name);
    return {
      post: (said) => channel.postMessage(said),
      onSaid: (listener) => channel.addEventListener('message', ({ data }) => listener(data)),
      close: () => channel.close(),
    };
  },
  later: (run, ms) => {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

/** Takes a turn at a boat among the tabs of this browser. */
export const browserTurn = (key: string, hooks: TurnHooks): BoatTurn => boatTurn(key, tools, hooks);
