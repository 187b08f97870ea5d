import type { Place, Way } from '../../../core/boat/boat-schema.ts';
import { pathShape } from '../../drawing/marks.ts';
import { direction, distanceMm, type Point, stepFrom } from '../../drawing/point.ts';
import { polyline, rectangle } from '../../drawing/polyline.ts';
import type { Shape, TextShape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { printCount } from '../../lists/print-figure.ts';
import { briefPlace, type KnownBoat } from '../known-boat.ts';
import type { Note, NoteForm, PlacedNote } from '../place-notes.ts';
import { fewLines, sheetText } from '../sheet-text.ts';
import { partedHere } from './parted-here.ts';

/** A note with how it is drawn where it was set down. */
export interface DrawnNote {
  readonly note: Note;
  /** ids it lights */
  readonly about: readonly string[];
  /** where its leader ends, and how far off the middle of that; else at the edge of the note */
  readonly hook?: (placed: PlacedNote) => { readonly at: Point; readonly radiusMm: number };
  readonly draw: (placed: PlacedNote) => Shape[];
}

const rowMm = 4.2;
const lineMm = 3.2;
const nameMm = 38;
/** Not to name a place costs so much leader. */
const unnamedMm = 16;

/** Paper under a row of a note, so that it reads over the boat's own lines. */
const backed = ([leftMm, topMm]: Point, widthMm: number, heightMm: number): Shape =>
  pathShape(rectangle({ leftMm, topMm, widthMm, heightMm }), { fill: 'paper' });

/** Whether a note stands so far left of its anchor that its words end at their right edge. */
export const isMirrored = ({ box, anchor }: PlacedNote): boolean => anchor[0] > (box.leftMm + box.rightMm) / 2 + 1;

/** A leader shorter than this only smears the mark. */
const leastLeaderMm = 1.5;

const leaderOf = (placed: PlacedNote, { hook, about }: DrawnNote): Shape[] => {
  const stroke = { ink: 'ink', widthMm: 0.15 } as const;
  if (hook === undefined) {
    return placed.leader === undefined ? [] : [pathShape(polyline(placed.leader), { stroke, about })];
  }
  const { at, radiusMm } = hook(placed);
  const lengthMm = distanceMm(placed.anchor, at) - radiusMm;
  if (lengthMm < leastLeaderMm) return [];
  const heading = direction(placed.anchor, at);
  return [
    pathShape(polyline([placed.anchor, stepFrom(placed.anchor, heading, { alongMm: lengthMm, acrossMm: 0 })]), {
      stroke,
      about,
    }),
  ];
};

/** Notes where they were set down: all leaders under all words. */
export const notesDrawn = (notes: readonly DrawnNote[], placed: readonly PlacedNote[]): Shape[] => {
  const byId = new Map(notes.map((drawn) => [drawn.note.id, drawn]));
  const found = placed.flatMap((one) => {
    const drawn = byId.get(one.id);
    return drawn === undefined ? [] : [{ one, drawn }];
  });
  return [
    ...found.flatMap(({ one, drawn }) => leaderOf(one, drawn)),
    ...found.flatMap(({ one, drawn }) => drawn.draw(one)),
  ];
};

/** The first and the last number of the units at a place; they follow each other. */
const numbersText = (known: KnownBoat, place: string): string => {
  const marks = known.marksAt.get(place) ?? [];
  const [first, last] = [marks[0]?.number, marks.at(-1)?.number];
  if (first === undefined) return '';
  return first === last ? String(first) : `${first}–${last ?? first}`;
};

const boxWidthMm = (code: string): number => textWidthMm(code, sheetText.label) + 1.6;
const pillWidthMm = (numbers: string): number =>
  numbers === '' ? 0 : Math.max(rowMm, textWidthMm(numbers, sheetText.name) + 2.4);

const pillSteps = (leftMm: number, topMm: number, widthMm: number): Parameters<typeof pathShape>[0] => {
  const radiusMm = rowMm / 2;
  const bendMm = radiusMm * 0.5523;
  const [fromMm, toMm, rightMm] = [leftMm + radiusMm, leftMm + widthMm - radiusMm, leftMm + widthMm];
  const [middleMm, bottomMm] = [topMm + radiusMm, topMm + rowMm];
  return [
    ['M', fromMm, topMm],
    ['L', toMm, topMm],
    ['C', toMm + bendMm, topMm, rightMm, middleMm - bendMm, rightMm, middleMm],
    ['C', rightMm, middleMm + bendMm, toMm + bendMm, bottomMm, toMm, bottomMm],
    ['L', fromMm, bottomMm],
    ['C', fromMm - bendMm, bottomMm, leftMm, middleMm + bendMm, leftMm, middleMm],
    ['C', leftMm, middleMm - bendMm, fromMm - bendMm, topMm, fromMm, topMm],
    ['Z'],
  ];
};

/** The code of a place in a box. */
export const codeBox = (code: string, [leftMm, topMm]: Point, about: readonly string[]): Shape[] => [
  pathShape(rectangle({ leftMm, topMm: topMm + 0.2, widthMm: boxWidthMm(code), heightMm: rowMm - 0.4 }), {
    stroke: { ink: 'ink', widthMm: 0.25 },
    fill: 'paper',
    about,
  }),
  { kind: 'text', xMm: leftMm + 0.8, yMm: topMm + 2.95, text: code, ...sheetText.label, ink: 'ink', about },
];

/** The code of a place in a box and the numbers of its units in a balloon, its top left corner at `at`. */
export const placeBadge = (known: KnownBoat, place: string, at: Point): { shapes: Shape[]; widthMm: number } => {
  const [leftMm, topMm] = at;
  const code = known.codes.get(place) ?? place;
  const numbers = numbersText(known, place);
  const about = [place, ...(known.marksAt.get(place) ?? []).flatMap((mark) => mark.about)];
  const codeMm = boxWidthMm(code);
  const pillMm = pillWidthMm(numbers);
  const stroke = { ink: 'ink', widthMm: 0.25 } as const;
  const shapes = codeBox(code, at, about);
  if (numbers === '') return { shapes, widthMm: codeMm };
  return {
    shapes: [
      ...shapes,
      pathShape(pillSteps(leftMm + codeMm + 0.6, topMm, pillMm), { stroke, fill: 'paper', about }),
      {
        kind: 'text',
        xMm: leftMm + codeMm + 0.6 + pillMm / 2,
        yMm: topMm + 3,
        text: numbers,
        ...sheetText.name,
        anchor: 'middle',
        ink: 'ink',
        about,
      },
    ],
    widthMm: codeMm + 0.6 + pillMm,
  };
};

/** The note of a place: its code, the numbers of its units, and its brief name where there is room. */
export const placeNote = (known: KnownBoat, place: Place, at: Point): DrawnNote => {
  const { widthMm: badgeMm } = placeBadge(known, place.id, [0, 0]);
  const facts = partedHere(known, place.id).flatMap((fact) =>
    fewLines(fact, sheetText.small, { widthMm: nameMm, most: 2 }),
  );
  const name = fewLines(briefPlace(place.name), sheetText.small, { widthMm: nameMm, most: 2 });
  const formOf = (lines: readonly string[], costMm: number): NoteForm => ({
    widthMm: Math.max(badgeMm, ...lines.map((line) => textWidthMm(line, sheetText.small))),
    heightMm: rowMm + lines.length * lineMm,
    costMm,
    hookMm: badgeMm / 2,
  });
  const texts = [[...name, ...facts], facts];
  const about = [place.id];
  return {
    note: { id: place.id, anchors: [at], forms: [formOf(texts[0] ?? [], 0), formOf(facts, unnamedMm)] },
    about,
    draw: (placed) => {
      const { leftMm, rightMm, topMm } = placed.box;
      const isRight = isMirrored(placed);
      const lines = texts[placed.form] ?? [];
      return [
        ...lines.map((line, row) => {
          const widthMm = textWidthMm(line, sheetText.small);
          return backed([isRight ? rightMm - widthMm : leftMm, topMm + rowMm + row * lineMm], widthMm, lineMm);
        }),
        ...placeBadge(known, place.id, [isRight ? rightMm - badgeMm : leftMm, topMm]).shapes,
        ...lines.map(
          (line, row): TextShape => ({
            kind: 'text',
            xMm: isRight ? rightMm : leftMm,
            yMm: topMm + rowMm + 2.3 + row * lineMm,
            text: line,
            ...sheetText.small,
            ...(isRight ? { anchor: 'end' as const } : {}),
            ink: 'ink',
            about,
          }),
        ),
      ];
    },
  };
};

const throughWords = { deck: 'deck', watertight: 'watertight', fire: 'fire bulkhead', plain: '' } as const;

/** Joints that lie somewhere inside a way, where lines of that way alone are made of several pieces. */
const jointsIn = (known: KnownBoat, way: string): number =>
  (known.linesIn.get(way) ?? [])
    .filter(({ ways }) => ways.length === 1)
    .reduce((sum, { pieces = [] }) => sum + Math.max(0, pieces.length - 1), 0);

/** "5 lines, deck, 1 joint". */
export const wayWords = (known: KnownBoat, way: Way): string => {
  const joints = jointsIn(known, way.id);
  return [
    printCount((known.linesIn.get(way.id) ?? []).length, 'line'),
    ...(way.through === undefined || way.through === 'plain' ? [] : [throughWords[way.through]]),
    ...(joints === 0 ? [] : [printCount(joints, 'joint')]),
  ].join(', ');
};

/** The note of a way: its id and how many lines run through it. */
export const wayNote = (known: KnownBoat, way: Way, anchors: readonly Point[]): DrawnNote => {
  const words = wayWords(known, way);
  const idMm = textWidthMm(way.id, sheetText.label) + 1.2;
  const about = [way.id];
  return {
    note: {
      id: `way ${way.id}`,
      anchors,
      forms: [{ widthMm: idMm + textWidthMm(words, sheetText.small), heightMm: 3, costMm: 0 }],
    },
    about,
    draw: (placed) => {
      const { leftMm, topMm } = placed.box;
      return [
        backed([leftMm, topMm], placed.box.rightMm - leftMm, placed.box.bottomMm - topMm),
        { kind: 'text', xMm: leftMm, yMm: topMm + 2.3, text: way.id, ...sheetText.label, ink: 'ink', about },
        { kind: 'text', xMm: leftMm + idMm, yMm: topMm + 2.3, text: words, ...sheetText.small, ink: 'ink', about },
      ];
    },
  };
};
