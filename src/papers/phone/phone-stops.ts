import { type BoatIndex, indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import type { Measure } from '../../core/boat/measure.ts';
import type { Photo } from '../../core/boat/photo.ts';
import type { WalkQuestion } from '../../core/walk-round/walk-question.ts';
import { walkRound } from '../../core/walk-round/walk-round.ts';
import { lengthInWords } from './length-in-words.ts';

/** A way that begins or ends at a place, as it is looked at and taped there. */
export interface PhoneWay {
  readonly id: string;
  /** where it leads to */
  readonly to: string;
  readonly known: Way['known'];
  readonly isTaped: boolean;
  /** its length as the file has it, in both units, and how it is known */
  readonly length: string;
}

/** A unit that hangs at a place, and what of it is wanted. */
export interface PhoneUnit {
  readonly id: string;
  readonly name: string;
  readonly wantsSerial: boolean;
  /** the cable from its place to its plug as the file has it, where it has one, and whether that was taped */
  readonly tail?: Pick<PhoneWay, 'isTaped' | 'length'>;
  /** photos that are not there yet */
  readonly wantsPhotos: readonly Photo['shows'][];
}

/** A place on the walk round her, with all that is found there. */
export interface PhoneStop {
  readonly place: string;
  readonly name: string;
  readonly isSeen: boolean;
  readonly ways: readonly PhoneWay[];
  readonly units: readonly PhoneUnit[];
  /** by id */
  readonly cautions: readonly string[];
}

const askedPhotos = ['front', 'back', 'label'] as const;

const wayOf = ({ ways, places }: BoatIndex, place: string, id: string): PhoneWay[] => {
  const way = ways.get(id);
  if (way === undefined) return [];
  const other = way.ends[0] === place ? way.ends[1] : way.ends[0];
  return [
    {
      id,
      to: places.get(other)?.name ?? other,
      known: way.known,
      isTaped: way.length.how === 'taped',
      length: lengthInWords(way.length),
    },
  ];
};

const tailOf = (tail: Measure | undefined): Pick<PhoneUnit, 'tail'> =>
  tail === undefined ? {} : { tail: { isTaped: tail.how === 'taped', length: lengthInWords(tail) } };

const unitOf = ({ boat, kit }: BoatIndex, id: string, questions: readonly WalkQuestion[]): PhoneUnit => ({
  id,
  name: kit.get(id)?.name ?? id,
  ...tailOf(kit.get(id)?.tail),
  wantsSerial: questions.some(({ about, kind, known }) => about === id && kind === 'serial' && !known),
  wantsPhotos: askedPhotos.filter(
    (shows) => !(boat.photos ?? []).some((photo) => photo.of === id && photo.shows === shows),
  ),
});

const aboutOf = (questions: readonly WalkQuestion[], subject: WalkQuestion['subject']): string[] => [
  ...new Set(questions.filter((question) => question.subject === subject).map(({ about }) => about)),
];

/** The places of a boat in the order of the walk round her, each way once, at the first of its ends. */
export const phoneStops = (boat: Boat): PhoneStop[] => {
  const index = indexBoat(boat);
  return walkRound(boat).map(({ place, questions, cautions }): PhoneStop => {
    const found = index.places.get(place);
    return {
      place,
      name: found?.name ?? place,
      isSeen: found?.seen === true,
      ways: aboutOf(questions, 'way').flatMap((id) => wayOf(index, place, id)),
      units: aboutOf(questions, 'unit').map((id) => unitOf(index, id, questions)),
      cautions,
    };
  });
};
