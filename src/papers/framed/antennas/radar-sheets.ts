import { asSentences, radarBrief } from '../../antennas/aerial-words.ts';
import { polarPicture } from '../../antennas/polar-picture.ts';
import { moveShapes } from '../../drawing/move-shapes.ts';
import type { Drawing, Shape } from '../../drawing/shapes.ts';
import type { SheetContent } from '../framed-sheet.ts';
import { type KnownBoat, lengthText } from '../known-boat.ts';
import { sheetLines, sheetText } from '../sheet-text.ts';

const columnMm = 92;
const gapMm = 6;
const headMm = 6;
const lineMm = 3.4;

/** One radar: its number and name, the picture, and what there is to say of it below. */
const column = (known: KnownBoat, unit: string, picture: Drawing): { shapes: Shape[]; heightMm: number } => {
  const mark = known.marks.find(({ kit }) => kit.id === unit);
  const name = `${mark === undefined ? '' : `${mark.number} `}${mark?.kit.name ?? unit}`;
  const says = asSentences(radarBrief(known.index, known.plan, unit, (lengthM) => lengthText(known, lengthM)));
  const lines = says.flatMap((words) => sheetLines(words, sheetText.small, columnMm));
  const topMm = headMm + picture.heightMm + 4;
  return {
    shapes: [
      { kind: 'text', xMm: 0, yMm: 4, text: name, ...sheetText.name, ink: 'ink', about: [unit] },
      ...moveShapes(picture.shapes, { xMm: 0, yMm: headMm }),
      ...lines.map(
        (text, row): Shape => ({
          kind: 'text',
          xMm: 0,
          yMm: topMm + row * lineMm,
          text,
          ...sheetText.small,
          ink: 'ink',
          about: [unit],
        }),
      ),
    ],
    heightMm: topMm + lines.length * lineMm,
  };
};

/** What each radar does not see, from above with the bow up, as many beside each other as the paper has room for. */
export const radarSheets = (known: KnownBoat): SheetContent[] => {
  const radars = known.plan.sites.flatMap(({ unit }) => {
    const { boat, plan, index } = known;
    const picture = polarPicture({ boat, plan, names: index, unit, widthMm: columnMm });
    return picture === undefined ? [] : [{ unit, ...column(known, unit, picture) }];
  });
  const each = Math.max(1, Math.floor((known.area.content.widthMm + gapMm) / (columnMm + gapMm)));
  return Array.from({ length: Math.ceil(radars.length / each) }, (_, page) => {
    const shown = radars.slice(page * each, (page + 1) * each);
    return {
      title: 'what each radar does not see, from above',
      about: shown.map(({ unit }) => unit),
      shapes: shown.flatMap(({ shapes }, at) => moveShapes(shapes, { xMm: at * (columnMm + gapMm), yMm: 0 })),
    };
  });
};
