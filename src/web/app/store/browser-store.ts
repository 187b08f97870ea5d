import type { BoatStore } from '../../../core/boat-store-shape.ts';
import { answerOf, boatBase, drawers } from './boat-base.ts';
import { damagedBoats } from './damaged-boats.ts';
import { demoShelf } from './demo-shelf.ts';
import { keptBeside, ofBoat } from './kept-beside.ts';
import { type BrowserTools, factsOf, keptBoats, orRefusal } from './kept-boats.ts';
import { type KeptFacts, withExport } from './kept-facts.ts';

/** Boats in this browser’s own storage, and what only it needs: nobody but this page can delete them or take them away. */
export interface BrowserStore extends BoatStore {
  readonly kind: 'browser';
  /** what is known of each boat, by id */
  readonly facts: () => Promise<ReadonlyMap<string, KeptFacts>>;
  /** tells that an export holds all of a boat, her first `held` changes included */
  readonly noteExported: (id: string, held: number) => Promise<void>;
}

const { boats, texts, states, logs, pictures, gone } = drawers;

const removed = ({ at, nowMs }: BrowserTools, id: string): Promise<void> =>
  at([boats, texts, states, logs, pictures, gone], 'readwrite', async (drawer) => {
    for (const one of [boats, texts, logs] as const) drawer(one).delete(id);
    for (const one of [states, pictures] as const) drawer(one).delete(ofBoat(id));
    await answerOf(drawer(gone).put(nowMs(), id));
  });

/** Boats kept in a browser’s own storage. `demo` brings a file of the demo boats, by its name. */
export const browserStore = ({
  factory,
  demo,
  nowMs,
}: {
  factory: () => IDBFactory;
  demo: (path: string) => Promise<Response>;
  nowMs: () => number;
}): BrowserStore => {
  const checks: BrowserTools['checks'] = () => import('./boat-checks.ts');
  const tools: BrowserTools = { at: boatBase(factory), demos: demoShelf(demo, checks), nowMs, checks };
  return {
    kind: 'browser',
    ...keptBoats(tools),
    ...damagedBoats(tools),
    ...keptBeside(tools),
    facts: async () => {
      const found = await orRefusal(async () => ({
        all: await tools.at([boats], 'readonly', async (drawer) => {
          const [keys, all] = await Promise.all([
            answerOf(drawer(boats).getAllKeys()),
            // reason: only this program writes to its drawers
            answerOf(drawer(boats).getAll() as IDBRequest<KeptFacts[]>),
          ]);
          return new Map(all.map((facts, place) => [String(keys[place]), facts]));
        }),
      }));
      return 'refusal' in found ? new Map() : found.all;
    },
    remove: (id) =>
      orRefusal(async () => {
        await removed(tools, id);
        return {};
      }),
    noteExported: async (id, held) => {
      await orRefusal(() =>
        tools.at([boats], 'readwrite', async (drawer) => {
          const facts = await factsOf(drawer(boats), id);
          if (facts !== undefined) drawer(boats).put(withExport(facts, { held, nowMs: nowMs() }), id);
        }),
      );
    },
  };
};
