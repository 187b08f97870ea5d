import type { Boat, Place, Way } from '../boat/boat-schema.ts';
import { guessedLength } from '../boat/guessed-length.ts';
import type { Measure } from '../boat/measure.ts';
import { straightLineM } from '../boat/straight-line.ts';
import type { HullMeasuresId } from '../facts/hull-measures.ts';
import { type HullSize, hullHeightM } from '../facts/hull-patterns.ts';
import { centimetres } from './centimetres.ts';
import { checkMeasures } from './check-measures.ts';
import { guessedSupply, startBusId } from './guessed-supply.ts';
import type { PatternPlace, PatternWay } from './pattern.ts';
import { patternOf } from './pattern-of.ts';
import { type HullMeasuresM, suggestedMeasures } from './suggested-measures.ts';

/** What a boat is made of: a hull pattern, her name, her length, and what else of her measures is known. */
export interface PatternAsked extends Partial<HullMeasuresM> {
  readonly pattern: HullMeasuresId;
  readonly name: string;
}

const placeFrom = (size: HullSize, { at, aloft, outside: _outside, tees, ...place }: PatternPlace): Place => {
  const [along, across, up] = at;
  return {
    ...place,
    xM: centimetres(along * size.lengthM),
    yM: centimetres((across * size.beamM) / 2),
    zM: centimetres(aloft === true ? up * size.airDraft.valueM : hullHeightM(size, up)),
    tees: tees === true,
  };
};

const wayFrom = (places: ReadonlyMap<string, Place>, row: PatternWay, number: number): Way => {
  const [one, other] = row.ends.map((id) => places.get(id));
  if (one === undefined || other === undefined)
    throw new Error(`A pattern leads a way from or to no place: ${row.ends}.`);
  const { kind = 'open', through = 'plain', boreMm, near, ends } = row;
  return {
    id: `w${number}`,
    ends,
    length: guessedLength(straightLineM(one, other), kind),
    kind,
    known: 'assumed',
    ...(boreMm === undefined ? {} : { bore: { mm: boreMm, how: 'guessed' as const } }),
    through,
    ...(near === undefined ? {} : { near: [...near] }),
  };
};

/** To the centimetre: 39 ft is 11.89 m. */
const measuresOf = ({ pattern, lengthM, ...given }: PatternAsked): HullMeasuresM => {
  const suggested = suggestedMeasures({ pattern, ...(lengthM === undefined ? {} : { lengthM }) });
  return checkMeasures({
    lengthM: centimetres(suggested.lengthM),
    beamM: centimetres(given.beamM ?? suggested.beamM),
    draftM: centimetres(given.draftM ?? suggested.draftM),
    airDraftM: centimetres(given.airDraftM ?? suggested.airDraftM),
  });
};

/**
 * A boat to start from: the pattern’s hull, usual places, ways and supply at her measures; what is not given is suggested from
 * the length. Every way is assumed and its length guessed, and there is no kit aboard yet.
 *
 * @throws UserError for a measure that no boat file takes
 * @example boatFromPattern({ pattern: 'ketch', name: 'Kittiwake', lengthM: 12 })
 */
export const boatFromPattern = (asked: PatternAsked): Boat => {
  const { name } = asked;
  const pattern = patternOf(asked.pattern);
  const { lengthM, beamM, draftM, airDraftM } = measuresOf(asked);
  const airDraft: Measure = { valueM: airDraftM, how: asked.airDraftM === undefined ? 'guessed' : 'papers' };
  const size: HullSize = { kind: pattern.kind, lengthM, beamM, draftM, airDraft };
  const places = pattern.places.map((place) => placeFrom(size, place));
  const byId = new Map(places.map((place) => [place.id, place]));
  return {
    format: 'fairlead-boat',
    version: 1,
    name,
    hull: {
      kind: pattern.kind,
      material: pattern.material,
      lengthM,
      beamM,
      draftM,
      airDraft,
      ...(pattern.masts === undefined ? {} : { masts: pattern.masts.map((mast) => ({ ...mast })) }),
    },
    places,
    ways: pattern.ways.map((row, at) => wayFrom(byId, row, at + 1)),
    cables: [],
    sheets: [],
    kit: [],
    needs: [],
    buses: [{ id: startBusId, name: 'Navigation bus', protocol: 'nmea2000' }],
    joins: [],
    supply: guessedSupply({ pattern, lengthM, places: byId }),
  };
};
