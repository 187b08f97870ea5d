import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { Circuits } from './circuits-by-target.ts';

/** The dc port by which a unit is fed from a panel. */
const fedPort = (index: BoatIndex, circuits: Circuits, kit: string): string | undefined =>
  (index.sheetOf.get(kit)?.power ?? []).map(({ port }) => `${kit}.${port}`).find((port) => circuits.has(port));

interface Lead {
  readonly kit: string;
  readonly port: string;
  /** units at the other end, the talker's first, then by id */
  readonly others: readonly string[];
}

/** Every port that lives on a lead to other units, buses aside: they have a feed. */
const leadsOf = (joins: readonly StandingJoin[]): readonly Lead[] =>
  joins
    .filter(({ bus }) => bus === undefined)
    .flatMap(({ members }) => {
      const ranked = [...members].sort(
        (one, other) => Number(other.as === 'talk') - Number(one.as === 'talk') || byCodeUnit(one.kit, other.kit),
      );
      return members.map(({ kit, port }) => ({
        kit,
        port: `${kit}.${port}`,
        others: ranked.map((other) => other.kit).filter((other) => other !== kit),
      }));
    });

/**
 * For each port that lives on the lead to another unit, the dc port of the unit that draws for both: a drive on its computer,
 * a head on the maker's own wire, a camera on a socket that gives power. A unit that itself lives on such a lead hands it on.
 */
export const giversByPort = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  circuits: Circuits,
): ReadonlyMap<string, string> => {
  const leads = leadsOf(joins);
  const found = new Map<string, string>();
  const giverOf = new Map<string, string>();
  for (const { id } of index.boat.kit) {
    const fed = fedPort(index, circuits, id);
    if (fed !== undefined) giverOf.set(id, fed);
  }
  for (let grew = true; grew; ) {
    grew = false;
    for (const { kit, port, others } of leads) {
      if (circuits.has(port) || found.has(port)) continue;
      const giver = others.map((other) => giverOf.get(other)).find((fed) => fed !== undefined);
      if (giver === undefined) continue;
      found.set(port, giver);
      if (!giverOf.has(kit)) giverOf.set(kit, giver);
      grew = true;
    }
  }
  return found;
};
