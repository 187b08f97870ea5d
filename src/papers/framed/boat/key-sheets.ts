import type { Place, Way } from '../../../core/boat/boat-schema.ts';
import { labelsText } from '../../lists/labels-text.ts';
import { printCount } from '../../lists/print-figure.ts';
import type { SheetContent } from '../framed-sheet.ts';
import { type KnownBoat, labelOf, lengthText } from '../known-boat.ts';
import { type FlowPart, keyColumnMm, textFlow } from '../text-flow.ts';
import { byWayId } from './by-way-id.ts';

const reachWords: Readonly<Record<Place['reach'], string>> = {
  open: 'open to the hand',
  panel: 'behind a panel',
  hard: 'hard to reach',
  aloft: 'aloft',
};

const codeNumber = (code: string): number => Number(code.slice(1));

const numbersAt = ({ marksAt }: KnownBoat, place: string): string => {
  const numbers = (marksAt.get(place) ?? []).map(({ number }) => number);
  return numbers.length === 0 ? '' : `; ${numbers.length === 1 ? 'unit' : 'units'} ${numbers.join(', ')}`;
};

/** Where the sheet of a place is, by place id; absent where it has none. */
export type DetailOf = ReadonlyMap<string, number>;

const placeParts = (known: KnownBoat, details: DetailOf): FlowPart[] => {
  const keyMm = keyColumnMm([...known.codes.values()]);
  const coded = [...known.codes].sort(([, a], [, b]) => codeNumber(a) - codeNumber(b));
  return coded.flatMap(([id, code]): FlowPart[] => {
    const place = known.index.places.get(id);
    if (place === undefined) return [];
    const detail = details.get(id);
    const sheet = detail === undefined ? '' : `; sheet ${detail}`;
    return [
      {
        look: 'plain',
        key: code,
        keyMm,
        text: `${place.name} (${place.exposure}, ${reachWords[place.reach]}${numbersAt(known, id)}${sheet})`,
        about: [id],
      },
    ];
  });
};

const wayKind = ({ kind, bore, through }: Way): string =>
  [
    bore === undefined ? kind : `${kind} ${bore.how === 'guessed' ? 'about ' : ''}${bore.mm} mm`,
    ...(through === undefined || through === 'plain'
      ? []
      : [`through ${through === 'deck' ? 'the deck' : `a ${through} bulkhead`}`]),
  ].join(', ');

const wayLength = (known: KnownBoat, { length }: Way): string =>
  `${length.how === 'guessed' ? 'about ' : ''}${lengthText(known, length.valueM)}`;

/** Joints in lines that lie wholly in one way: hidden somewhere inside it. */
const hiddenJoints = (known: KnownBoat, way: Way): string[] =>
  (known.linesIn.get(way.id) ?? []).flatMap((line) => {
    const count = Math.max(0, (line.pieces ?? []).length - 1);
    return count === 0
      ? []
      : [
          `${labelOf(known, line.id)} ${printCount(count, 'joint')}${line.ways.length === 1 ? ' inside' : ' on its way'}`,
        ];
  });

const wayParts = (known: KnownBoat): FlowPart[] => {
  const keyMm = keyColumnMm([...known.index.ways.keys()]);
  return [...known.index.ways.values()]
    .sort((a, b) => byWayId(a.id, b.id))
    .map((way): FlowPart => {
      const ends = way.ends.map((end) => known.codes.get(end) ?? end).join(' to ');
      const lines = known.linesIn.get(way.id) ?? [];
      const labels = lines.length === 0 ? 'no line' : `lines ${labelsText(lines.map(({ id }) => labelOf(known, id)))}`;
      const joints = hiddenJoints(known, way);
      return {
        look: 'plain',
        key: way.id,
        keyMm,
        text: `${ends}: ${wayKind(way)}, ${wayLength(known, way)}; ${labels}${joints.length === 0 ? '' : `; ${joints.join(', ')}`}`,
        about: [way.id, ...lines.map(({ id }) => id)],
      };
    });
};

const unitParts = (known: KnownBoat): FlowPart[] =>
  known.marks.map(
    ({ number, kit, place }): FlowPart => ({
      look: 'plain',
      key: String(number),
      keyMm: 8,
      text: `${kit.name}, ${known.codes.get(place.id) ?? place.name}`,
      about: [kit.id],
    }),
  );

/** What the codes, numbers and ids on the drawings stand for: places, ways with their lines, units. */
export const keySheets = (known: KnownBoat, details: DetailOf): SheetContent[] => {
  const { widthMm, heightMm } = known.area.content;
  const parts: FlowPart[] = [
    { look: 'head', text: 'Places, from the stern forward' },
    ...placeParts(known, details),
    { look: 'head', text: 'Ways with their lines' },
    ...wayParts(known),
    { look: 'head', text: 'Units by number' },
    ...unitParts(known),
  ];
  const columns = Math.max(2, Math.floor(widthMm / 84));
  const pages = textFlow(parts, { leftMm: 1, topMm: 0, widthMm: widthMm - 2, heightMm, columns });
  return pages.map((shapes, at) => ({
    title: `places, ways and units by code and number${pages.length === 1 ? '' : `, part ${at + 1} of ${pages.length}`}`,
    about: [],
    shapes,
  }));
};
