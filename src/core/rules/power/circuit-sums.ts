import type { FeedEntry } from '../../plan-shape.ts';

/** One circuit with what all its feeds draw together. */
export interface CircuitSum {
  readonly panel: string;
  readonly circuit: string;
  readonly ratingA: number;
  readonly loadA: number;
  readonly feeds: readonly FeedEntry[];
}

/** Feeds by the circuit they hang on, in the order of the feeds. */
export const circuitSums = (feeds: readonly FeedEntry[]): CircuitSum[] => {
  const groups = new Map<string, FeedEntry[]>();
  for (const feed of feeds) {
    const key = `${feed.panel}.${feed.circuit}`;
    groups.set(key, [...(groups.get(key) ?? []), feed]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { panel, circuit, circuitA } = first;
    return [
      { panel, circuit, ratingA: circuitA, loadA: group.reduce((sum, { loadA }) => sum + loadA, 0), feeds: group },
    ];
  });
};
