import type { Place } from '../../../core/boat/boat-schema.ts';
import { pathShape } from '../../drawing/marks.ts';
import { rectangle } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import type { KnownBoat } from '../known-boat.ts';
import { sheetLines, sheetText } from '../sheet-text.ts';
import { boxHeightMm, setBoxes } from './place-boxes.ts';
import { acrossEntries, acrossHeightMm, acrossLines, type Outline, sideEntries } from './place-entries.ts';
import type { Entry, Heading, PlaceBox, TrunkPass } from './place-facts.ts';
import { type PictureRoom, pictureLineMm, pictureLines } from './place-text.ts';
import { passingWords, trunkShapes } from './trunk-row.ts';

/** A picture, and what found no room in it. */
export interface PlacePicture {
  readonly shapes: readonly Shape[];
  readonly rest: readonly PlaceBox[];
  readonly restPasses: readonly TrunkPass[];
  /** whether ways or trunks reach beyond the room */
  readonly isOver: boolean;
}

const wideSideMm = 28;
const narrowSideMm = 23;
/** Boxes need so much room across, their air counted. */
const leastInnerMm = 34;
const leastSideMm = 3;

/** How many of the heights fit under each other. */
const countFitting = (heights: readonly number[], roomMm: number): number => {
  let usedMm = 0;
  for (const [at, heightMm] of heights.entries()) {
    usedMm += heightMm;
    if (usedMm > roomMm) return at;
  }
  return heights.length;
};

const inward = (entries: readonly Entry[], headings: readonly Heading[]): Entry[] =>
  headings.flatMap((heading) => entries.filter((entry) => entry.heading === heading));

/**
 * A place as seen from above with the bow to the right: its outline, the ways where they come in, its boxes with their plugs and
 * cables, the joints of each trunk in order.
 */
export const placePicture = (
  known: KnownBoat,
  place: Place,
  facts: {
    readonly entries: readonly Entry[];
    readonly boxes: readonly PlaceBox[];
    readonly passes: readonly TrunkPass[];
  },
  room: PictureRoom,
): PlacePicture => {
  const { entries, boxes, passes } = facts;
  const aft = inward(entries, ['aft']);
  const forward = inward(entries, ['forward']);
  const above = inward(entries, ['port', 'up']);
  const below = inward(entries, ['starboard', 'down']);
  const sideMm = room.widthMm < 100 ? narrowSideMm : wideSideMm;
  const leftMm = room.leftMm + (aft.length === 0 ? leastSideMm : sideMm);
  const rightMm = room.leftMm + room.widthMm - (forward.length === 0 ? leastSideMm : sideMm);
  const aboveLines = acrossLines(known, above, rightMm - leftMm);
  const belowLines = acrossLines(known, below, rightMm - leftMm);
  const outline: Outline = {
    leftMm,
    rightMm,
    topMm: room.topMm + acrossHeightMm(aboveLines),
    bottomMm: room.topMm + room.heightMm - acrossHeightMm(belowLines),
  };
  const innerMm = { leftMm: leftMm + 3.5, widthMm: rightMm - leftMm - 7 };
  const through = passingWords(passes).flatMap((words) => sheetLines(words, sheetText.small, innerMm.widthMm));
  const boxTopMm = outline.topMm + 3.5;
  const throughTopMm = outline.bottomMm - 2.5 - through.length * pictureLineMm;
  const passing = pictureLines(through, [innerMm.leftMm, throughTopMm], [place.id], false);
  const joined = passes.filter(({ joints }) => joints.length > 0);
  const heights = joined.map((pass) => trunkShapes(pass, { ...innerMm, topMm: 0 }).heightMm);
  // the first box of the place stands in the picture before the trunks take the rest
  const firstBoxMm = boxes.slice(0, 1).reduce((sum, box) => sum + boxHeightMm(box, innerMm.widthMm), 0);
  const shown = countFitting(heights, throughTopMm - boxTopMm - 1 - firstBoxMm);
  let trunkMm = throughTopMm - heights.slice(0, shown).reduce((sum, heightMm) => sum + heightMm, 0);
  const trunkTopMm = trunkMm;
  const trunks = joined.slice(0, shown).flatMap((pass, at) => {
    const { shapes } = trunkShapes(pass, { ...innerMm, topMm: trunkMm });
    trunkMm += heights[at] ?? 0;
    return shapes;
  });
  const set = setBoxes(boxes, { ...innerMm, topMm: boxTopMm, heightMm: trunkTopMm - boxTopMm - 1 });
  const sides = [
    sideEntries(known, aft, { outline, side: 'aft', sideMm }),
    sideEntries(known, forward, { outline, side: 'forward', sideMm }),
  ];
  const shapes: Shape[] = [
    pathShape(
      rectangle({
        leftMm,
        topMm: outline.topMm,
        widthMm: rightMm - leftMm,
        heightMm: outline.bottomMm - outline.topMm,
      }),
      { stroke: { ink: 'ink', widthMm: 0.5 }, about: [place.id] },
    ),
    ...sides.flatMap((side) => side.shapes),
    ...acrossEntries(above, aboveLines, { outline, side: 'above' }),
    ...acrossEntries(below, belowLines, { outline, side: 'below' }),
    ...trunks,
    ...passing,
    ...set.shapes,
  ];
  const lowestMm = room.topMm + room.heightMm;
  const isOver =
    trunkTopMm < boxTopMm - 1 ||
    sides.some(({ bottomMm }) => bottomMm > lowestMm) ||
    outline.bottomMm - outline.topMm < 12 ||
    rightMm - leftMm < leastInnerMm;
  return { shapes, rest: set.rest, restPasses: joined.slice(shown), isOver };
};
