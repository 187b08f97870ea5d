import { type Choice, cheapestChoice, type Effort } from './cheapest-choice.ts';
import type { Derivations } from './derivations.ts';
import { followerOf } from './follow.ts';

/** Which candidates to choose: by their place in `joins`. Costs in hundredths of the currency, whole numbers. */
export interface JoinsAsk {
  readonly derivations: Derivations;
  readonly joins: readonly {
    readonly cost: number;
    /** places in `units` */
    readonly on: readonly number[];
    readonly takes: readonly string[];
  }[];
  /** what each unit that would have to be bought costs */
  readonly units: readonly number[];
  readonly room: ReadonlyMap<string, number>;
  /** for each need of the derivations, what it is worth to have it */
  readonly worth: readonly number[];
  /** for each need, whether it is left unmet only where there is no help for it */
  readonly must: readonly boolean[];
  /** sets of chosen joins that may not stand together, for limits that only show in the whole */
  readonly clashes: (chosen: readonly number[]) => readonly (readonly number[])[];
  readonly budget: JoinsBudget;
}

/** How much work may be spent: rounds of choosing, on a round that only looks for cuts, and on one that has to prove. */
export interface JoinsBudget {
  readonly rounds: number;
  readonly quick: Effort;
  readonly full: Effort;
}

/** What to choose, the needs that are left unmet so, and what it costs with what is left unmet counted at its worth. */
export interface JoinsAnswer {
  readonly chosen: readonly number[];
  readonly unmet: readonly number[];
  readonly cost: number;
  readonly bound: number;
  readonly work: number;
}

/** A list of joins at least one of which must be chosen if a need is to be met. */
interface Cut {
  readonly need: number;
  readonly joins: readonly number[];
}

const priceOf = ({ joins, units }: JoinsAsk, join: number): number => {
  const { cost, on } = joins[join] ?? { cost: 0, on: [] };
  return on.reduce((sum, unit) => sum + (units[unit] ?? 0), cost);
};

/**
 * Looks for joins that are wanting: with the ones chosen in place, every other is put in place too as long as the need
 * stays unmet, the cheapest first. Those that could not be are a cut: at least one of them must be chosen.
 */
const cutterOf = (ask: JoinsAsk) => {
  const start = followerOf(ask.derivations);
  const order = ask.joins.map((_, at) => at).sort((a, b) => priceOf(ask, a) - priceOf(ask, b) || a - b);

  const cutFor = (need: number, chosen: readonly number[]): Cut | undefined => {
    const met = ask.derivations.met[need] ?? 0;
    const following = start();
    following.add(chosen);
    if (following.holds(met)) return undefined;
    return { need, joins: order.filter((join) => !following.holds(join) && !following.addWithout([join], met)) };
  };

  /** Cuts one after another, each answered by the cheapest of its joins, until the need is met. */
  const cutsFor = (need: number, chosen: readonly number[]): Cut[] => {
    const cuts: Cut[] = [];
    const taken = [...chosen];
    for (let cut = cutFor(need, taken); cut !== undefined; cut = cutFor(need, taken)) {
      cuts.push(cut);
      const [cheapest] = cut.joins;
      if (cheapest === undefined) break;
      taken.push(cheapest);
    }
    return cuts;
  };

  /** Needs that the chosen joins leave unmet, of those not to be missed. */
  const unmetBy = (chosen: readonly number[], missed: readonly number[]): number[] => {
    const following = start();
    following.add(chosen);
    return ask.derivations.met.flatMap((met, need) => (following.holds(met) || missed.includes(need) ? [] : [need]));
  };
  return { cutsFor, unmetBy };
};

const limitsOf = ({ joins, room }: JoinsAsk): Choice['limits'] => {
  const takers = new Map<string, number[]>();
  joins.forEach(({ takes }, at) => {
    for (const key of takes) takers.set(key, [...(takers.get(key) ?? []), at]);
  });
  return [...takers].flatMap(([key, of]) => {
    const most = room.get(key) ?? Number.POSITIVE_INFINITY;
    return of.length <= most ? [] : [{ of, most }];
  });
};

/**
 * The cheapest joins that meet the needs, or leave unmet what would cost more than it is worth. Each round chooses the
 * cheapest joins it quickly can that hit every cut known so far; where a need is still unmet new cuts are found, where a limit is broken
 * that set is forbidden, until nothing is left to say. Then no other choice is cheaper: every cut holds for all of them. Pure.
 */
export const cheapestJoins = (ask: JoinsAsk): JoinsAnswer => {
  const count = ask.joins.length;
  const { cutsFor, unmetBy } = cutterOf(ask);
  const limits = limitsOf(ask);
  const items = [
    // a hundredth each, so that of equal answers the one with fewer joins is taken
    ...ask.joins.map(({ cost, on }) => ({ cost: cost + 1, on })),
    ...ask.worth.map((cost) => ({ cost, on: [] })),
  ];
  const cuts: Cut[] = ask.worth.flatMap((_, need) => cutsFor(need, []));
  const never: (readonly number[])[] = [];
  // while nothing shows that some cannot be met together, none that must be met may be missed: that leaves far less to search
  let allCanBeMet = cuts.every(({ need, joins }) => joins.length > 0 || ask.must[need] !== true);
  let work = 0;
  let answer: JoinsAnswer = { chosen: [], unmet: [], cost: 0, bound: 0, work };

  let effort = ask.budget.quick;
  for (let round = 0; round < ask.budget.rounds; round += 1) {
    const choose = (canMiss: (need: number) => boolean) => {
      const wanted = cuts.map(({ need, joins }) => (canMiss(need) ? [...joins, count + need] : joins));
      return cheapestChoice({ items, bases: ask.units, wanted, limits, never }, effort);
    };
    const strict = allCanBeMet ? choose((need) => ask.must[need] !== true) : undefined;
    allCanBeMet = strict !== undefined;
    const found = strict ?? choose(() => true);
    if (found === undefined) break;
    work += found.work;
    const chosen = found.chosen.filter((item) => item < count);
    const unmet = found.chosen.filter((item) => item >= count).map((item) => item - count);
    const more = unmetBy(chosen, unmet).flatMap((need) => cutsFor(need, chosen));
    const clashes = ask.clashes(chosen);
    const isWhole = more.length === 0 && clashes.length === 0;
    answer = { chosen, unmet, cost: found.cost, bound: found.bound, work };
    if (isWhole && (effort === ask.budget.full || found.bound === found.cost)) return answer;
    // any choice shows cuts; the cheapest is only needed once none is left to show
    effort = isWhole ? ask.budget.full : ask.budget.quick;
    cuts.push(...more);
    never.push(...clashes);
  }
  return stoppedAt(ask, answer, unmetBy);
};

/** The last answer when the budget ran out: what breaks a limit is left out, and what is unmet then is said. */
const stoppedAt = (ask: JoinsAsk, last: JoinsAnswer, unmetBy: ReturnType<typeof cutterOf>['unmetBy']): JoinsAnswer => {
  const out = new Set(ask.clashes(last.chosen).map((clash) => clash[0]));
  const chosen = last.chosen.filter((join) => !out.has(join));
  const unmet = unmetBy(chosen, []);
  const units = new Set(chosen.flatMap((join) => ask.joins[join]?.on ?? []));
  const cost =
    chosen.reduce((sum, join) => sum + (ask.joins[join]?.cost ?? 0) + 1, 0) +
    [...units].reduce((sum, unit) => sum + (ask.units[unit] ?? 0), 0) +
    unmet.reduce((sum, need) => sum + (ask.worth[need] ?? 0), 0);
  return { chosen, unmet, cost, bound: last.bound, work: last.work };
};
