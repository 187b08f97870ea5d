import type { Boat, Place } from '../boat/boat-schema.ts';
import { guessedLength } from '../boat/guessed-length.ts';
import { straightLineM } from '../boat/straight-line.ts';
import type { Circuit, Panel } from '../boat/supply.ts';
import { hullMeasures, usualCircuits, usualConverters } from '../facts/hull-measures.ts';
import type { BoatPattern } from './pattern.ts';

/** The one bus a new boat has, so that what comes aboard has something to join. */
export const startBusId = 'nav';
const houseId = 'house';
type Side = (typeof usualCircuits.rows)[number]['side'];

const circuitsOf = (...sides: readonly Side[]): Circuit[] =>
  usualCircuits.rows
    .filter(({ side }) => sides.includes(side))
    .map(({ side: _side, ...row }) => ({ ...row, feeds: row.id === 'nav-bus' ? [startBusId] : [] }));

/** One panel on 12 V; on 24 V panels of their own behind converters, because no bus stands more than 16 V. */
const panelsOf = ({ supply }: BoatPattern, feeder: NonNullable<Panel['feeder']>): Panel[] => {
  const main = { id: 'main-panel', place: supply.panelAt, from: houseId, feeder };
  if (supply.nominalV === 12) return [{ ...main, circuits: circuitsOf('electronics', 'radio', 'boat') }];
  const { rows, circuit } = usualConverters;
  return [
    {
      ...main,
      circuits: [
        ...circuitsOf('boat'),
        ...rows.map(({ id, name }) => ({ id: `${id}-feed`, name, ...circuit, feeds: [id] })),
      ],
    },
    ...rows.map(({ id, panel, side }) => ({
      id: panel,
      place: supply.panelAt,
      from: id,
      circuits: circuitsOf(side),
    })),
  ];
};

/**
 * House and start bank and a panel with the usual circuits: enough that power can be planned. Nobody has looked at any of it,
 * so what guards it is left out and the plan asks for it. Source: practice-hull-measures (common practice).
 */
export const guessedSupply = ({
  pattern,
  lengthM,
  places,
}: {
  readonly pattern: BoatPattern;
  readonly lengthM: number;
  readonly places: ReadonlyMap<string, Place>;
}): Boat['supply'] => {
  const { houseAhPerM, startAh } = hullMeasures[pattern.id];
  const { houseAt, startAt, panelAt, nominalV } = pattern.supply;
  const [panel, house] = [places.get(panelAt), places.get(houseAt)];
  if (panel === undefined || house === undefined) throw new Error(`${pattern.id} has its supply at no place.`);
  const bank = { chemistry: 'flooded', nominalV } as const;
  const houseAh = Math.max(60, Math.round((houseAhPerM * lengthM) / 10) * 10);
  return {
    banks: [
      { id: houseId, place: houseAt, ...bank, capacityAh: houseAh, for: 'house' },
      { id: 'start', place: startAt, ...bank, capacityAh: startAh, for: 'start' },
    ],
    panels: panelsOf(pattern, { length: guessedLength(straightLineM(panel, house), 'open') }),
    dcdc:
      nominalV === 12
        ? []
        : usualConverters.rows.map(({ id, ratedA }) => ({ id, place: panelAt, ratedA, ...usualConverters.plate })),
  };
};
