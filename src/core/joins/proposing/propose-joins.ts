import { type BoatIndex, indexBoat } from '../../boat/boat-index.ts';
import type { Boat, Join, Need } from '../../boat/boat-schema.ts';
import { lastPhase } from '../../boat/phase.ts';
import { arrivedIn, needKey } from '../../readings/arrivals.ts';
import type { PortNetwork } from '../../readings/port-network.ts';
import type { Reaches } from '../../readings/reaches.ts';
import { joinedRefit } from '../joined-refit.ts';
import { joinsOf } from '../joins-of.ts';
import { unmetNeeds } from '../unmet-needs.ts';
import type { CandidateJoin } from './candidate-joins.ts';
import { chooseJoins, joinSetting } from './join-setting.ts';
import { joinsMade } from './joins-made.ts';
import { type NeedsThatClash, needsThatClash } from './needs-that-clash.ts';

/** Joins that bring what is needed and does not arrive, at least cost. */
export interface Proposal {
  readonly joins: readonly Join[];
  /** the candidates they are made of */
  readonly chosen: readonly CandidateJoin[];
  /** hundredths of the currency: cable, and tees on a bus */
  readonly cost: number;
  /** below this nothing meets as much */
  readonly bound: number;
  /** whether nothing cheaper meets as much */
  readonly proven: boolean;
  /** readings that must arrive and cannot all */
  readonly clashes: readonly NeedsThatClash[];
  readonly work: number;
}

/** Readings that are missed and could arrive alone are looked into up to this many. */
const mostClashes = 3;

/** Whether anything aboard says a reading at all: where nothing does, no join brings it. */
const isSaid = ({ nodes }: PortNetwork, { reading }: Need): boolean =>
  [...nodes.values()].some(({ gives }) => gives.has(reading));

/** A boat with more joins. */
export const withJoins = (boat: Boat, joins: readonly Join[]): Boat => ({ ...boat, joins: [...boat.joins, ...joins] });

/** Whether every need that a choice meets on paper is met on the boat itself. */
const holdsAboard = (boat: Boat, met: readonly Need[]): boolean => {
  const index = indexBoat(boat);
  const arrived = arrivedIn(joinedRefit(index), lastPhase(boat));
  return met.every((need) => arrived.has(needKey(need)));
};

/**
 * The joins to add to those of the file so that every reading that must arrive does, at least cost, and one that would be
 * nice where it costs less than it is worth: between units that are aboard when the refit is done, within the ports that are
 * free. Where not all can arrive, as many as can, and which of them are in each other's way. Undefined where nothing is
 * wanting or nothing helps. Pure.
 *
 * `reaches`: where readings get to by the joins of the file, when the refit is done.
 */
export const proposeJoins = (index: BoatIndex, reaches: Reaches): Proposal | undefined => {
  const needs = unmetNeeds(index, reaches).filter((need) => isSaid(reaches.network, need));
  if (needs.length === 0) return undefined;
  const standing = joinsOf(index, lastPhase(index.boat));
  const setting = joinSetting({ index, standing, needs });
  if (setting.candidates.length === 0) return undefined;
  const answer = chooseJoins(setting);
  const chosen = answer.chosen.flatMap((at) => setting.candidates[at] ?? []);
  const missed = answer.unmet.filter((at) => needs[at]?.must === true);
  const clashes = missed.slice(0, mostClashes).flatMap((at) => needsThatClash(setting, at) ?? []);
  if (chosen.length === 0 && clashes.length === 0) return undefined;
  const joins = joinsMade(index, standing, chosen);
  const met = needs.filter((_, at) => !answer.unmet.includes(at));
  const cost = chosen.reduce((sum, one) => sum + one.cost, 0);
  return {
    joins,
    chosen,
    cost,
    bound: cost - (answer.cost - answer.bound),
    proven: answer.bound === answer.cost && holdsAboard(withJoins(index.boat, joins), met),
    clashes,
    work: answer.work,
  };
};
