import type { BoatIndex } from '../boat/boat-index.ts';
import type { Circuit } from '../boat/supply.ts';
import type { LineEntry } from '../plan-shape.ts';

/** The two ends of a feed: its panel, and what it feeds: a bus, a converter, or a plug of a unit (`kit.plug`, `kit.plug#port`). */
export interface FeedEnds {
  readonly panel: string;
  readonly fed: string;
}

/** Which end of a feed is the panel. */
export const feedEnds = (index: BoatIndex, { from, to }: Pick<LineEntry, 'from' | 'to'>): FeedEnds =>
  index.panels.has(from) ? { panel: from, fed: to } : { panel: to, fed: from };

/** What a feed serves as circuits name it: the bus or converter, or the ports of the plug. */
export const servedBy = (index: BoatIndex, fed: string): readonly string[] => {
  const [kit = '', rest] = fed.split('.');
  if (rest === undefined) return [fed];
  const [plug, port] = rest.split('#');
  return (index.sheetOf.get(kit)?.ports ?? [])
    .filter((entry) => entry.onPlug === plug && (port === undefined || entry.id === port))
    .map(({ id }) => `${kit}.${id}`);
};

/** The circuits of a panel that feed one of the targets. */
export const circuitsServing = (index: BoatIndex, panel: string, served: readonly string[]): readonly Circuit[] =>
  (index.panels.get(panel)?.circuits ?? []).filter(({ feeds }) => feeds.some((target) => served.includes(target)));
