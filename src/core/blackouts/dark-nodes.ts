import type { SupplyGraph } from './supply-graph.ts';

/** What power a failure takes, worked out over and over for one boat. */
export type DarkNodes = (hit: Iterable<string>) => ReadonlySet<string>;

/**
 * The nodes that go dark when some are hit: those, and all that lives on nothing but dark ones. First everything behind a hit
 * is taken, then what still has a live feed is lit again, and what lives on that, until no more is. Pure.
 */
export const darkNodesIn = (graph: SupplyGraph): DarkNodes => {
  const behind = new Map<string, string[]>();
  for (const [node, on] of graph) for (const one of on) behind.set(one, [...(behind.get(one) ?? []), node]);
  return (hit) => {
    const own = new Set(hit);
    const dark = new Set(own);
    for (const node of dark) for (const next of behind.get(node) ?? []) dark.add(next);
    const open = [...dark].filter((node) => !own.has(node));
    for (let grew = true; grew; ) {
      grew = false;
      for (const node of open) {
        if (!dark.has(node) || !(graph.get(node) ?? []).some((one) => !dark.has(one))) continue;
        dark.delete(node);
        grew = true;
      }
    }
    return dark;
  };
};
