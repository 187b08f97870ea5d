import type { DrawnBoat } from '../sheet/drawn-boat.ts';
import type { StripNode, StripOfBus } from '../sheet/strip-nodes.ts';
import type { Lane } from './lane-tree.ts';
import { leastSheetMm } from './lying-lane.ts';

const cutNode = ({ place, stop, alongM }: StripNode): StripNode => ({ kind: 'end', place, stop, alongM });

/** The part of a strip from one node up to before another, with a cut where it goes on. */
const stripPart = (strip: StripOfBus, from: number, to: number): { strip: StripOfBus; cuts: Set<StripNode> } => {
  const own = strip.nodes.slice(from, to);
  const before = strip.nodes[from - 1];
  const after = strip.nodes[to];
  const start = before === undefined || own[0] === undefined ? [] : [cutNode(own[0])];
  const end = after === undefined ? [] : [cutNode(after)];
  return {
    strip: {
      ...strip,
      order: 'trunk',
      nodes: [...start, ...own, ...end],
      stretches: strip.stretches
        .filter(({ afterNode }) => afterNode >= from && afterNode < to)
        .map((stretch) => ({ ...stretch, afterNode: stretch.afterNode - from + start.length })),
    },
    cuts: new Set([...start, ...end]),
  };
};

const withPart = (lane: Lane, at: number, of: number): Lane => ({
  ...lane,
  title: of === 1 ? lane.title : [...lane.title, `part ${at + 1} of ${of}`],
});

/** The parts of a lane of a bus: as many nodes in each as find room, parted between two places where that can be. */
const busParts = (lane: Lane, strip: StripOfBus, fits: (part: Lane) => boolean): Lane[] => {
  const { nodes } = strip;
  const parts: Lane[] = [];
  const headsUpTo = (to: number): number => nodes.slice(0, to).filter(({ mark }) => mark !== undefined).length;
  const partOf = (from: number, to: number): Lane => ({
    ...lane,
    ...stripPart(strip, from, to),
    heads: lane.heads.slice(headsUpTo(from), headsUpTo(to)),
    ties: [],
  });
  let from = 0;
  while (from < nodes.length) {
    let to = from + 1;
    while (to < nodes.length && fits(partOf(from, to + 1))) to += 1;
    const isBetween = (at: number): boolean => nodes[at]?.stop !== nodes[at - 1]?.stop;
    let cut = to;
    while (to < nodes.length && cut > from + 1 && !isBetween(cut)) cut -= 1;
    const next = cut > from + 1 ? cut : to;
    parts.push(partOf(from, next));
    from = next;
  }
  return parts;
};

const headParts = (lane: Lane, fits: (part: Lane) => boolean): Lane[] => {
  const parts: Lane[] = [];
  let heads: Lane['heads'] = [];
  for (const head of lane.heads) {
    if (heads.length > 0 && !fits({ ...lane, heads: [...heads, head], ties: [] })) {
      parts.push({ ...lane, heads, ties: [] });
      heads = [];
    }
    heads = [...heads, head];
  }
  return [...parts, { ...lane, heads, ties: [] }];
};

/** A lane in parts that find room on a sheet of a width. */
export const splitLane = (lane: Lane, index: DrawnBoat, widthMm: number): Lane[] => {
  const fits = (part: Lane): boolean => leastSheetMm(part, index, new Set()) <= widthMm;
  if (fits(lane)) return [lane];
  const parts = lane.strip === undefined ? headParts(lane, fits) : busParts(lane, lane.strip, fits);
  return parts.map((part, at) => withPart(part, at, parts.length));
};
