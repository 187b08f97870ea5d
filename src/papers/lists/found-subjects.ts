import type { Boat } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { endWords } from './end-words.ts';
import { labelOf } from './label-of.ts';

/** Something that can be found otherwise than planned, and what it is called. */
export interface FoundSubject {
  readonly id: string;
  readonly says: string;
}

/** What can be found otherwise, by what of it differs. */
export interface FoundSubjects {
  readonly units: readonly FoundSubject[];
  /** by the label each bears, in their order */
  readonly lines: readonly FoundSubject[];
  /** those of them whose copper the plan chooses */
  readonly wires: readonly FoundSubject[];
  readonly circuits: readonly FoundSubject[];
  readonly places: readonly FoundSubject[];
}

const byWords = (a: FoundSubject, b: FoundSubject): number => (a.says < b.says ? -1 : 1);

const circuitsOf = ({ supply }: Boat): FoundSubject[] =>
  supply.panels.flatMap((panel) =>
    panel.circuits.map(({ id, name, ratingA }) => ({
      id: `${panel.id}.${id}`,
      says: `${name ?? id}, ${ratingA} A, panel ${panel.id}`,
    })),
  );

/**
 * Everything of a boat that can be found otherwise than planned: units as they are called, lines by their labels, circuits by
 * name and rating.
 *
 * @example foundSubjects(boat, plan).lines[0]?.says // 'C01: wind sensor (net) to navigation bus'
 */
export const foundSubjects = (boat: Boat, { lines, feeds }: Pick<Plan, 'lines' | 'feeds'>): FoundSubjects => {
  const names = cardBoat(boat);
  const lineOf = (line: LineEntry): FoundSubject => ({
    id: line.id,
    says: `${labelOf(line)}: ${endWords(names, line.from)} to ${endWords(names, line.to)}`,
  });
  const copper = new Set(feeds.flatMap(({ line, leads = [] }) => [line, ...leads.map((lead) => lead.line)]));
  return {
    units: boat.kit.filter(({ fate }) => fate !== 'goes').map(({ id, name }) => ({ id, says: name })),
    lines: lines.map(lineOf).sort(byWords),
    wires: lines
      .filter(({ id }) => copper.has(id))
      .map(lineOf)
      .sort(byWords),
    circuits: circuitsOf(boat),
    places: boat.places.map(({ id, name }) => ({ id, says: name })),
  };
};
