import { panelsUp } from '../backbone/panels-up.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { NegativeEntry } from '../isolation-shape.ts';

/** Which banks and converters share one negative, and whose it is. */
export interface Negatives {
  readonly entries: readonly NegativeEntry[];
  /** the conductor that is the negative of a bank or converter */
  readonly of: (source: string) => string | undefined;
}

const ties = (index: BoatIndex): [string, string][] => {
  const { banks, dcdc, panels, chargers = [] } = index.boat.supply;
  const alike = banks.flatMap((bank): [string, string][] => {
    const first = banks.find(({ nominalV }) => nominalV === bank.nominalV);
    return first === undefined || first === bank ? [] : [[first.id, bank.id]];
  });
  const through = dcdc
    .filter(({ isolated }) => !isolated)
    .flatMap(({ id }) =>
      panels
        .filter(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(id)))
        .map((panel): [string, string] => [panelsUp(index, panel).source, id]),
    );
  const charging = chargers.flatMap(({ is, charges }): [string, string][] =>
    is !== undefined && dcdc.some(({ id }) => id === is) ? charges.map((bank): [string, string] => [is, bank]) : [],
  );
  return [...alike, ...through, ...charging];
};

/**
 * Banks of one voltage share their negative, so does a converter that is not isolated with what feeds it, and one that
 * charges a bank with that bank; whatever is behind an isolated converter has a negative of its own. Sorted; its first
 * bank names it.
 */
export const negativesOf = (index: BoatIndex): Negatives => {
  const { banks, dcdc } = index.boat.supply;
  const volts = new Map([
    ...banks.map(({ id, nominalV }): [string, number] => [id, nominalV]),
    ...dcdc.map(({ id, outV }): [string, number] => [id, outV]),
  ]);
  const groupOf = new Map([...volts.keys()].map((id) => [id, id]));
  for (const [one, other] of ties(index)) {
    const [a, b] = [groupOf.get(one), groupOf.get(other)];
    if (a === undefined || b === undefined || a === b) continue;
    for (const [id, group] of groupOf) if (group === a || group === b) groupOf.set(id, byCodeUnit(a, b) < 0 ? a : b);
  }
  const nameOf = (group: string): string => banks.find(({ id }) => groupOf.get(id) === group)?.id ?? group;
  const entries = [...new Set(groupOf.values())]
    .map((group): NegativeEntry => {
      const sources = [...groupOf].flatMap(([id, of]) => (of === group ? [id] : [])).sort(byCodeUnit);
      return { id: `negative:${nameOf(group)}`, nominalV: volts.get(nameOf(group)) ?? 0, sources };
    })
    .sort((one, other) => byCodeUnit(one.id, other.id));
  return {
    entries,
    of: (source) => {
      const group = groupOf.get(source);
      return group === undefined ? undefined : `negative:${nameOf(group)}`;
    },
  };
};
