import { backupsToDrop } from '../../../core/boat/backups-to-drop.ts';
import { boatFileName } from '../../../core/boat/boat-file-name.ts';
import { freeStateId, stateMs } from '../../../core/boat/free-state-id.ts';
import type { BoatNow, BoatStore, Refused, SaveOutcome, Shelf, StoredBoat } from '../../../core/boat-store-shape.ts';
import { type AtDrawers, answerOf, drawers } from './boat-base.ts';
import { browserRefusal } from './browser-refusal.ts';
import type { DemoShelf } from './demo-shelf.ts';
import { type KeptFacts, withChange } from './kept-facts.ts';
import { words } from './words.ts';

/** What the stores of a browser work with. */
export interface BrowserTools {
  readonly at: AtDrawers;
  readonly demos: DemoShelf;
  readonly nowMs: () => number;
  /** reads, checks and tags what is to be kept; brought when the first thing is, for it is large */
  readonly checks: () => Promise<typeof import('./boat-checks.ts')>;
}

/** Tells boats of this browser from those of a folder, for whoever keeps something of both. */
export const inBrowser = 'browser';

export const noBoat = (id: string): Refused => ({ refusal: { says: words.noBoat(id), whatToDo: words.goBack } });

/** The facts of a boat; undefined where there is none of that id. */
export const factsOf = (drawer: IDBObjectStore, id: string): Promise<KeptFacts | undefined> =>
  // reason: only this program writes to its drawers
  answerOf(drawer.get(id) as IDBRequest<KeptFacts | undefined>);

/** A text of a boat, or of one of her states. */
export const textIn = (drawer: IDBObjectStore, key: IDBValidKey): Promise<string | undefined> =>
  answerOf(drawer.get(key) as IDBRequest<string | undefined>);

const { boats, texts, states, gone } = drawers;

const readOwn = async ({ at }: BrowserTools, id: string): Promise<StoredBoat | Refused> => {
  const [facts, text] = await at([boats, texts], 'readonly', (drawer) =>
    Promise.all([factsOf(drawer(boats), id), textIn(drawer(texts), id)]),
  );
  return facts === undefined || text === undefined ? noBoat(id) : { text, tag: facts.tag, folder: inBrowser };
};

const lookAt = async (tools: BrowserTools, { id, tag }: { id: string; tag: string }): Promise<BoatNow> => {
  const facts = await tools.at([boats], 'readonly', (drawer) => factsOf(drawer(boats), id));
  if (facts?.tag === tag) return { kind: 'same' };
  const found = await readOwn(tools, id);
  return 'refusal' in found ? { kind: 'gone' } : { kind: 'changed', ...found };
};

const addNew = async ({ at, checks, nowMs }: BrowserTools, text: string): Promise<{ id: string }> => {
  const { readBoat, listLine, tagOf } = await checks();
  const boat = readBoat(text);
  return at([boats, texts, gone], 'readwrite', async (drawer) => {
    const taken = await Promise.all([boats, gone].map((one) => answerOf(drawer(one).getAllKeys())));
    const id = boatFileName(boat.name, new Set(taken.flat().map(String)));
    const facts: KeptFacts = { name: boat.name, says: listLine(boat), tag: tagOf(text), states: [], changes: 0 };
    drawer(boats).put(withChange(facts, nowMs()), id);
    drawer(texts).put(text, id);
    return { id };
  });
};

/** Keeps what a boat was as an earlier state, and lets go those that are thinned out with age. */
const withState = async (
  drawer: IDBObjectStore,
  { id, facts, before, nowMs }: { id: string; facts: KeptFacts; before: string; nowMs: number },
): Promise<KeptFacts> => {
  const newest = facts.states.at(-1);
  if (newest !== undefined && (await textIn(drawer, [id, newest.id])) === before) return facts;
  const taken = facts.states.map((state) => state.id);
  const stateId = freeStateId(taken, new Date(nowMs));
  const state = { id: stateId, untilMs: stateMs(stateId), size: before.length };
  drawer.put(before, [id, state.id]);
  const all = [...facts.states, state];
  const described = all.map(({ id: name, untilMs, size }) => ({ name, keptMs: untilMs, bytes: size }));
  const old = new Set(backupsToDrop(described, nowMs));
  for (const name of old) drawer.delete([id, name]);
  return { ...facts, states: all.filter((one) => !old.has(one.id)) };
};

const saveOver = async (
  { at, checks, nowMs }: BrowserTools,
  { id, tag }: { id: string; tag: string },
  text: string,
): Promise<SaveOutcome> => {
  const { readBoat, listLine, tagOf } = await checks();
  const boat = readBoat(text);
  const next = tagOf(text);
  return at([boats, texts, states], 'readwrite', async (drawer): Promise<SaveOutcome> => {
    const [facts, before] = await Promise.all([factsOf(drawer(boats), id), textIn(drawer(texts), id)]);
    if (facts === undefined || before === undefined) return { kind: 'changed', says: words.noBoat(id) };
    // a save that was made, and whose answer was lost, is asked for again
    if (facts.tag === next) return { kind: 'saved', tag: next };
    if (facts.tag !== tag) return { kind: 'changed', says: words.changed };
    const kept = await withState(drawer(states), { id, facts, before, nowMs: nowMs() });
    drawer(boats).put(withChange({ ...kept, name: boat.name, says: listLine(boat), tag: next }, nowMs()), id);
    drawer(texts).put(text, id);
    return { kind: 'saved', tag: next };
  });
};

/** What `work` gives, or what the browser has against it. */
export const orRefusal = async <Value>(work: () => Promise<Value>): Promise<Value | Refused> => {
  try {
    return await work();
  } catch (error) {
    return browserRefusal(error);
  }
};

type Boats = Pick<BoatStore, 'list' | 'read' | 'look' | 'add' | 'save' | 'states' | 'state'>;

const listOwn = ({ at }: BrowserTools) =>
  at([boats], 'readonly', async (drawer) => {
    const [keys, all] = await Promise.all([
      answerOf(drawer(boats).getAllKeys()),
      answerOf(drawer(boats).getAll() as IDBRequest<KeptFacts[]>),
    ]);
    return { boats: all.map(({ name, says }, place) => ({ id: String(keys[place]), name, says })) };
  });

/** The boats in this browser, with their earlier states; the demo boats are read from beside the page. */
export const keptBoats = (tools: BrowserTools): Boats => ({
  list: (shelf: Shelf) => (shelf === 'demos' ? tools.demos.list() : orRefusal(() => listOwn(tools))),
  read: (shelf, id) => (shelf === 'demos' ? tools.demos.read(id) : orRefusal(() => readOwn(tools, id))),
  look: async (boat) => {
    const now = await orRefusal(() => lookAt(tools, boat));
    return 'refusal' in now ? { kind: 'away' } : now;
  },
  add: (text) => orRefusal(() => addNew(tools, text)),
  save: async (boat, text) => {
    const done = await orRefusal(() => saveOver(tools, boat, text));
    return 'refusal' in done ? { kind: 'failed', says: `${done.refusal.says} ${done.refusal.whatToDo}` } : done;
  },
  states: (id) =>
    orRefusal(async () => {
      const facts = await tools.at([boats], 'readonly', (drawer) => factsOf(drawer(boats), id));
      if (facts === undefined) return noBoat(id);
      return { states: facts.states.toReversed().map((state) => ({ id: state.id, untilMs: state.untilMs })) };
    }),
  state: (id, state) =>
    orRefusal(async () => {
      const text = await tools.at([states], 'readonly', (drawer) => textIn(drawer(states), [id, state]));
      return text === undefined ? { refusal: { says: words.noState, whatToDo: words.loadList } } : { text };
    }),
});
