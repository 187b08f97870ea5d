import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit, Place, Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import { unitQuestions } from './unit-questions.ts';
import type { WalkQuestion, WalkStop } from './walk-question.ts';

const isAloft = ({ reach }: Place): boolean => reach === 'aloft';

/** From the bow aft and port before starboard; what is aloft comes last, in one climb. */
const walkOrder = (one: Place, other: Place): number =>
  Number(isAloft(one)) - Number(isAloft(other)) ||
  other.xM - one.xM ||
  one.yM - other.yM ||
  byCodeUnit(one.id, other.id);

const hasBore = ({ kind }: Way): boolean => kind === 'conduit' || kind === 'gland' || kind === 'mast';

const wayQuestions = (way: Way): WalkQuestion[] => {
  const about = { subject: 'way', about: way.id } as const;
  return [
    { kind: 'way-seen', ...about, known: way.known !== 'assumed' },
    { kind: 'way-length', ...about, known: way.length.how === 'taped' },
    ...(hasBore(way)
      ? [{ kind: 'way-bore', ...about, known: way.bore !== undefined && way.bore.how !== 'guessed' } as const]
      : []),
    { kind: 'way-holds', ...about, known: way.counted === true },
  ];
};

const supplyQuestions = ({ supply }: Boat, place: string): WalkQuestion[] => [
  ...supply.banks
    .filter((bank) => bank.place === place)
    .flatMap((bank): WalkQuestion[] => {
      const about = { subject: 'bank', about: bank.id } as const;
      return [
        { kind: 'bank-plate', ...about, known: bank.seen === true || bank.coldCrankingA !== undefined },
        { kind: 'bank-fuse', ...about, known: bank.main !== undefined },
        { kind: 'bank-switch', ...about, known: bank.isolator !== undefined },
        ...(bank.for === 'start'
          ? [{ kind: 'bank-parted', ...about, known: bank.partedBy !== undefined } as const]
          : []),
        ...(bank.for === 'start'
          ? []
          : [{ kind: 'negative', ...about, known: supply.negativeAt !== undefined } as const]),
      ];
    }),
  ...supply.panels
    .filter((panel) => panel.place === place)
    .flatMap((panel): WalkQuestion[] => {
      const about = { subject: 'panel', about: panel.id } as const;
      const isTaped = panel.feeder?.length.how === 'taped' && panel.feeder.areaMm2 !== undefined;
      return [
        { kind: 'panel-feeder', ...about, known: isTaped },
        { kind: 'panel-circuits', ...about, known: panel.freeWays !== undefined },
      ];
    }),
];

const unitsAt = (index: BoatIndex, place: string): readonly (readonly [Kit, Sheet])[] =>
  index.boat.kit
    .filter((unit) => unit.place === place && unit.fate !== 'comes')
    .flatMap((unit) => {
      const sheet = index.sheetOf.get(unit.id);
      return sheet === undefined ? [] : [[unit, sheet] as const];
    });

/** Cautions for what one handles at a place. */
const cautionsAt = ({ supply, ways }: Boat, place: Place, units: readonly Sheet[]): string[] => [
  ...(supply.banks.some((bank) => bank.place === place.id) ? ['battery-short'] : []),
  ...(supply.panels.some((panel) => panel.place === place.id) ||
  ways.some(({ ends, near }) => ends.includes(place.id) && near?.includes('mains') === true)
    ? ['licence', 'ac']
    : []),
  ...(isAloft(place) ? ['aloft'] : []),
  ...(units.some(({ kind }) => kind === 'radar') ? ['radar'] : []),
  ...(units.some(({ kind }) => kind === 'steering-drive' || kind === 'pilot-computer') ? ['pilot-drive'] : []),
  ...(place.exposure === 'engine' ? ['petrol'] : []),
];

/**
 * The walk round the boat: place by place, what the file does not know from the boat herself and what it does. Each way is asked
 * about once, at the first of its ends. Units that only come are not aboard yet.
 *
 * @example walkRound(boat)[0] // { place: 'bow-locker', questions: […], cautions: [] }
 */
export const walkRound = (boat: Boat): readonly WalkStop[] => {
  const index = indexBoat(boat);
  const asked = new Set<string>();
  return [...boat.places].sort(walkOrder).map((place): WalkStop => {
    const ways = boat.ways.filter(({ id, ends }) => ends.includes(place.id) && !asked.has(id));
    for (const { id } of ways) asked.add(id);
    const units = unitsAt(index, place.id);
    const own = { subject: 'place', about: place.id } as const;
    return {
      place: place.id,
      questions: [
        { kind: 'place-is-so', ...own, known: place.seen === true },
        ...units.flatMap(([unit, sheet]) => unitQuestions(index, unit, sheet)),
        { kind: 'other-boxes', ...own, known: place.counted === true },
        ...supplyQuestions(boat, place.id),
        ...ways.flatMap(wayQuestions),
      ],
      cautions: cautionsAt(
        boat,
        place,
        units.map(([, sheet]) => sheet),
      ),
    };
  });
};
