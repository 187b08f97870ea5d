import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import type { PlacedNode } from './strip-layout.ts';
import { stripLineMm, stripWords } from './strip-words.ts';

/** The nodes of one stop of the walk, bracketed together under the name of the place. */
export interface PlaceGroup {
  readonly place: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly middleMm: number;
  readonly words: readonly string[];
}

const bracketMm = 1.2;

const groupNodes = (nodes: readonly PlacedNode[]): PlacedNode[][] => {
  const stops = new Map<number, PlacedNode[]>();
  for (const node of nodes) {
    const before = stops.get(node.stop);
    if (before === undefined) stops.set(node.stop, [node]);
    else before.push(node);
  }
  return [...stops.values()];
};

/** The stops of a strip with the names of their places, as far as the names fit in two lines. */
export const placeGroups = (nodes: readonly PlacedNode[], sheetMm: number): PlaceGroup[] => {
  const bare = groupNodes(nodes).map((here) => {
    const xs = here.map((node) => node.xMm);
    const fromMm = Math.min(...xs) - 1.4;
    const toMm = Math.max(...xs) + 1.4;
    return { place: here[0]?.place ?? '', fromMm, toMm, middleMm: (fromMm + toMm) / 2 };
  });
  return bare.map((group, at) => {
    const before = bare[at - 1]?.middleMm ?? 4 - group.middleMm;
    const after = bare[at + 1]?.middleMm ?? 2 * sheetMm - 4 - group.middleMm;
    const roomMm = Math.min(group.middleMm - before, after - group.middleMm) - 1.4;
    const lines = wrapText(group.place.replaceAll('-', ' '), stripWords, roomMm);
    return { ...group, words: lines === undefined || lines.length > 2 ? [] : lines };
  });
};

/** Height the row takes. */
export const placeRowMm = (groups: readonly PlaceGroup[]): number =>
  Math.max(1, ...groups.map((group) => group.words.length)) * stripLineMm + bracketMm + 1.6;

/** Names of the places over brackets that open downwards over the tees of each. */
export const placeRow = (groups: readonly PlaceGroup[], topMm: number): Shape => {
  const bottomMm = topMm + placeRowMm(groups);
  const shapes = groups.flatMap((group): Shape[] => {
    const yMm = bottomMm - bracketMm;
    const bracket: Point[] = [
      [group.fromMm, bottomMm],
      [group.fromMm, yMm],
      [group.toMm, yMm],
      [group.toMm, bottomMm],
    ];
    return [
      pathShape(polyline(bracket), { stroke: { ink: 'quiet', widthMm: 0.15 }, about: [group.place] }),
      ...group.words.map(
        (line, order): Shape => ({
          kind: 'text',
          xMm: group.middleMm,
          yMm: yMm - 1.3 - (group.words.length - 1 - order) * stripLineMm,
          text: line,
          ...stripWords,
          anchor: 'middle',
          ink: 'quiet',
          about: [group.place],
        }),
      ),
    ];
  });
  return { kind: 'group', label: 'places of the tees', shapes };
};
