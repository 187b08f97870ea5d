import type { Boat } from '../boat/boat-schema.ts';
import { addUnit } from '../boat/edits/add-unit.ts';
import { removeUnit } from '../boat/edits/remove-unit.ts';
import { setFate } from '../boat/edits/set-fate.ts';
import { freeId } from '../boat/every-id.ts';
import { joiningKinds } from '../joins/proposing/offers.ts';
import type { WiringEntry } from '../proposal-shape.ts';

/** Units that come only to join others: each way of wiring buys its own. */
const joiningUnits = ({ kit, sheets }: Boat): string[] => {
  const kinds = new Map(sheets.map(({ id, kind }) => [id, kind]));
  return kit
    .filter(({ fate, sheet }) => fate === 'comes' && joiningKinds.has(kinds.get(sheet) ?? ''))
    .map(({ id }) => id);
};

/** The old unit goes, and another comes to its place and shows what was wanted of it. */
const replaced = (boat: Boat, { kit, sheet }: WiringEntry['replaces'][number]): Boat => {
  const old = boat.kit.find(({ id }) => id === kit);
  if (old === undefined) return boat;
  const id = freeId(boat, `new-${kit}`);
  const gone = setFate.apply(boat, { unit: kit, fate: 'goes' });
  const { name, place } = old;
  const both = addUnit.apply(gone, { id, name, sheet, fate: 'comes', place });
  return { ...both, needs: both.needs.map((need) => (need.at === kit ? { ...need, at: id } : need)) };
};

const withBought = (boat: Boat, { sheet, name, place }: WiringEntry['buys'][number]): Boat =>
  addUnit.apply(boat, { id: freeId(boat, `new-${sheet}`), name, sheet, fate: 'comes', place });

/** The boat as one way of wiring her has it: old units replaced, and what joins them bought; joins are left to the plan. */
export const wiredAs = (boat: Boat, { replaces, buys }: WiringEntry): Boat => {
  const bare = joiningUnits(boat).reduce((left, unit) => removeUnit.apply(left, { unit }), boat);
  return buys.reduce(withBought, replaces.reduce(replaced, bare));
};
