import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';

/** The circuit that feeds a target, by the target: `kit.port`, a bus, a panel or a converter. */
export type Circuits = ReadonlyMap<string, { readonly panel: string; readonly circuit: string }>;

/** The circuits by what they feed; a target that two circuits name has the first of them, by panel and circuit. */
export const circuitsByTarget = (index: BoatIndex): Circuits => {
  const found = new Map<string, { panel: string; circuit: string }>();
  for (const panel of [...index.panels.values()].sort((one, other) => byCodeUnit(one.id, other.id))) {
    for (const { id, feeds } of [...panel.circuits].sort((one, other) => byCodeUnit(one.id, other.id))) {
      for (const target of feeds) if (!found.has(target)) found.set(target, { panel: panel.id, circuit: id });
    }
  }
  return found;
};
