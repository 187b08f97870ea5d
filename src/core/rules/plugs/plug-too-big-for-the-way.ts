import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Way } from '../../boat/boat-schema.ts';
import { plugPassage } from '../../facts/cable-work.ts';
import type { PassageEntry } from '../../plan-shape.ts';
import { plugPasses } from '../../ways/fill-verdict.ts';
import { drawnCable } from '../../ways/way-fills.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { passageCures, passagesWords } from './passage-words.ts';

const words = (index: BoatIndex, ends: readonly string[]): string =>
  ends.map((id) => index.places.get(id)?.name ?? id).join(' to ');

const inPlaceOf = (index: BoatIndex, way: Way): readonly number[] =>
  index.boat.cables
    .filter(({ fate, ways }) => fate === 'stays' && ways.includes(way.id))
    .map(({ diameterMm }) => diameterMm);

interface Tight {
  readonly way: Way;
  readonly boreMm: number;
  readonly plugMm: number;
  readonly count: number;
  readonly inPlaceMm: readonly number[];
  readonly passages: readonly PassageEntry[];
}

/** Cable by the metre, which has no plug yet when it is drawn. */
const isFree = ({ takes, choices: [first] }: PassageEntry): boolean => takes === 'fit-plug' && first?.cost === 0;

/** The cables that the plan leads round a hole their plug does not pass. */
const ledRound = (index: BoatIndex, way: Way, boreMm: number, passages: readonly PassageEntry[]): Observation[] => {
  const count = passages.length;
  if (count === 0) return [];
  return [
    {
      about: [way.id],
      apart: ['round'],
      level: 'advice',
      says: `The way from ${words(index, way.ends)} is ${boreMm} mm wide, too little for a moulded plug. ${count === 1 ? 'A cable that would go through it is' : `${count} cables that would go through it are`} led another way, which costs less than a wider hole or a plug fitted behind it.`,
      measured: { value: boreMm, unit: 'mm' },
      cures: passageCures(index, passages),
      cure: passagesWords(index, passages),
    },
  ];
};

const observed = (index: BoatIndex, { way, boreMm, plugMm, count, inPlaceMm, passages }: Tight): Observation[] => {
  const cures = passageCures(index, passages);
  const passes = plugPasses({ boreMm, inPlaceMm, plugMm });
  if (passes === 'yes') return [];
  const beside = inPlaceMm.length === 0 ? '' : ` beside the ${inPlaceMm.length === 1 ? 'cable' : 'cables'} in it`;
  const goes = count === 1 ? 'A cable goes' : `${count} cables go`;
  return [
    {
      about: [way.id],
      ...(passes === 'no' && passages.length > 0 && passages.every(isFree) ? { level: 'advice' as const } : {}),
      says: `The way from ${words(index, way.ends)} is ${boreMm} mm wide. ${goes} through it whose moulded plug needs ${plugMm} mm${passes === 'no' ? ` and does not pass${beside}` : `; whether it passes${beside}, only a trial tells`}.`,
      measured: { value: boreMm, unit: 'mm' },
      limit: {
        value: plugMm,
        unit: 'mm',
        source: sourceWords(inPlaceMm.length === 0 ? 'practice-plug-holes' : plugPassage.source),
      },
      ...(cures.length === 0 ? {} : { cures }),
      cure:
        passes === 'no'
          ? passagesWords(index, passages) ||
            'Order cable without a plug at this end and a plug to fit on the spot, or widen the hole.'
          : 'Pull a dummy of the plug’s size through first; else order cable without a plug at this end and fit one on the spot.',
    },
  ];
};

/** A moulded plug is twice as thick as its cable; where it does not pass, the cable goes alone and gets its plug behind. */
export const plugTooBigForTheWay: Rule = {
  id: 'plugs/plug-too-big-for-the-way',
  level: 'doubt',
  title: 'A moulded plug does not pass a way its cable is to go through.',
  sources: ['practice-plug-holes', 'geometry-plug-passage', 'choice-cable-sizes'],
  check: ({ index, plan }) =>
    index.boat.ways.flatMap((way) => {
      const { bore } = way;
      if (bore === undefined) return [];
      const plugs = plan.lines
        .filter(({ kept, pinned, ways }) => kept === undefined && pinned !== 'fitted' && ways.includes(way.id))
        .flatMap((line) => drawnCable(line, plan.buses).plugMm ?? []);
      const plugMm = Math.max(0, ...plugs);
      const inPlaceMm = inPlaceOf(index, way);
      const count = plugs.filter((mm) => plugPasses({ boreMm: bore.mm, inPlaceMm, plugMm: mm }) !== 'yes').length;
      const ofWay = plan.passages.filter((passage) => passage.way === way.id);
      const round = ofWay.filter(({ takes }) => takes === 'other-way');
      const passages = ofWay.filter(({ takes }) => takes !== 'other-way');
      return [
        ...(plugs.length === 0 ? [] : observed(index, { way, boreMm: bore.mm, plugMm, count, inPlaceMm, passages })),
        ...ledRound(index, way, bore.mm, round),
      ];
    }),
};
