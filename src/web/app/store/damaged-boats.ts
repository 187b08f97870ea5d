import type { Boat } from '../../../core/boat/boat-schema.ts';
import { datedId } from '../../../core/boat/free-state-id.ts';
import { NewerFile } from '../../../core/boat/newer-file.ts';
import { UserError } from '../../../core/boat/user-error.ts';
import type { BoatStore, DamagedBoat, Refused } from '../../../core/boat-store-shape.ts';
import { drawers } from './boat-base.ts';
import { type BrowserTools, factsOf, inBrowser, noBoat, orRefusal, textIn } from './kept-boats.ts';
import { withChange } from './kept-facts.ts';
import { words } from './words.ts';

const { boats, texts, states } = drawers;

/** The boat a text holds; undefined where it cannot be read. A newer one is no damage, and refused. */
const boatIn = (text: string, readBoat: (text: string) => Boat): Boat | undefined => {
  try {
    return readBoat(text);
  } catch (error) {
    if (error instanceof NewerFile || !(error instanceof UserError)) throw error;
    return undefined;
  }
};

const lookAtDamaged = async ({ at, checks }: BrowserTools, id: string): Promise<DamagedBoat | Refused> => {
  const { readBoat } = await checks();
  return at([boats, states], 'readonly', async (drawer): Promise<DamagedBoat | Refused> => {
    const facts = await factsOf(drawer(boats), id);
    if (facts === undefined) return noBoat(id);
    const found = { tag: facts.tag, folder: inBrowser };
    for (const state of facts.states.toReversed()) {
      const text = await textIn(drawer(states), [id, state.id]);
      if (text === undefined || boatIn(text, readBoat) === undefined) continue;
      return { ...found, good: { text, untilMs: state.untilMs } };
    }
    return found;
  });
};

const putOver = async (
  { at, checks, nowMs }: BrowserTools,
  { id, tag }: { id: string; tag: string },
  text: string,
): Promise<Refused | undefined> => {
  const { readBoat, listLine, tagOf } = await checks();
  const boat = readBoat(text);
  return at([boats, texts, states], 'readwrite', async (drawer): Promise<Refused | undefined> => {
    const [facts, before] = await Promise.all([factsOf(drawer(boats), id), textIn(drawer(texts), id)]);
    if (facts === undefined) return noBoat(id);
    const isChanged = facts.tag !== tag || (before !== undefined && boatIn(before, readBoat) !== undefined);
    if (isChanged) return { refusal: { says: words.isGood, whatToDo: words.openAgain } };
    // beside the states and none of them: never listed, never thinned out
    if (before !== undefined) drawer(states).put(before, [id, `${datedId(new Date(nowMs()))}.damaged`]);
    const now = { ...facts, name: boat.name, says: listLine(boat), tag: tagOf(text) };
    drawer(boats).put(withChange(now, nowMs()), id);
    drawer(texts).put(text, id);
    return undefined;
  });
};

/** Boats in this browser that cannot be read, and what takes their place. */
export const damagedBoats = (tools: BrowserTools): Pick<BoatStore, 'damaged' | 'putInPlace'> => ({
  damaged: (id) => orRefusal(() => lookAtDamaged(tools, id)),
  putInPlace: (boat, text) => orRefusal(() => putOver(tools, boat, text)),
});
