import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Need } from '../../boat/boat-schema.ts';
import { lastPhase } from '../../boat/phase.ts';
import { needWorth } from '../../facts/need-worth.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { type Membership, portNetworkOf } from '../../readings/port-network.ts';
import { type CandidateJoin, candidateJoins } from './candidate-joins.ts';
import { cheapestJoins, type JoinsAnswer, type JoinsBudget } from './cheapest-joins.ts';
import { clashesOf } from './clashes-of.ts';
import { type Derivations, derivationsOf } from './derivations.ts';

/** Units that stand in the index and are only aboard if they are bought, with what each costs. */
export type Offers = ReadonlyMap<string, number>;

/** What a choice of joins is looked for in. */
export interface JoinSetting {
  readonly index: BoatIndex;
  readonly standing: readonly StandingJoin[];
  readonly candidates: readonly CandidateJoin[];
  readonly room: ReadonlyMap<string, number>;
  readonly derivations: Derivations;
  readonly needs: readonly Need[];
  readonly offers: Offers;
}

/** Work enough for any boat that was tried; beyond it an answer is not proven. */
const fullBudget: JoinsBudget = {
  rounds: 400,
  quick: { branches: 10, firstSteps: 150, steps: 10 },
  full: { branches: 20_000, firstSteps: 1500, steps: 30 },
};

const standingOf = ({ id, kind, bus, members }: CandidateJoin): StandingJoin => ({
  id,
  kind,
  ...(bus === undefined ? {} : { bus }),
  members: [...members],
  from: 'proposed',
});

/** The candidate by which a member is on a net: the net's own, or that of the port on its bus. */
const candidateFinder = (candidates: readonly CandidateJoin[]): ((member: Membership) => number | undefined) => {
  const at = new Map(candidates.map(({ id }, place) => [id, place]));
  return ({ net, node }) => at.get(net.id) ?? at.get(`nmea2000:${net.id}~${node.id}`);
};

/** Candidates that some need could hang on, found by going back from the needs. */
const usefulOf = ({ joins, facts, steps, met }: Derivations): ReadonlySet<number> => {
  const leadingTo = new Map<number, (typeof steps)[number][]>();
  for (const step of steps) {
    const known = leadingTo.get(step.to);
    if (known === undefined) leadingTo.set(step.to, [step]);
    else known.push(step);
  }
  const seen = new Uint8Array(facts);
  const queue = [...met];
  for (let fact = queue.pop(); fact !== undefined; fact = queue.pop()) {
    if (seen[fact] === 1) continue;
    seen[fact] = 1;
    for (const { from } of leadingTo.get(fact) ?? []) queue.push(...from);
  }
  return new Set(Array.from({ length: joins }, (_, at) => at).filter((at) => seen[at] === 1));
};

const derive = (
  index: BoatIndex,
  standing: readonly StandingJoin[],
  { candidates, needs }: { readonly candidates: readonly CandidateJoin[]; readonly needs: readonly Need[] },
): Derivations =>
  derivationsOf({
    network: portNetworkOf(index, lastPhase(index.boat), [...standing, ...candidates.map(standingOf)]),
    candidateOf: candidateFinder(candidates),
    joins: candidates.length,
    needs,
  });

/** Everything that a choice for some needs has to know, with the candidates left out that no need could hang on. */
export const joinSetting = ({
  index,
  standing,
  needs,
  offers = new Map(),
}: {
  readonly index: BoatIndex;
  readonly standing: readonly StandingJoin[];
  readonly needs: readonly Need[];
  readonly offers?: Offers;
}): JoinSetting => {
  const network = portNetworkOf(index, lastPhase(index.boat), standing);
  const { joins: all, room } = candidateJoins({ index, network, standing, offers });
  const first = derive(index, standing, { candidates: all, needs });
  const useful = usefulOf(first);
  const candidates = all.filter((_, at) => useful.has(at));
  const derivations = useful.size === all.length ? first : derive(index, standing, { candidates, needs });
  return { index, standing, candidates, room, derivations, needs, offers };
};

/** The cheapest choice in a setting, for all its needs or for some of them by their place. */
export const chooseJoins = (
  { index, standing, candidates, room, derivations, needs, offers }: JoinSetting,
  only: readonly number[] = needs.map((_, at) => at),
): JoinsAnswer => {
  const units = [...offers.keys()];
  const unitAt = new Map(units.map((kit, at) => [kit, at]));
  const asked = only.flatMap((at) => needs[at] ?? []);
  return cheapestJoins({
    derivations: { ...derivations, met: only.flatMap((at) => derivations.met[at] ?? []) },
    joins: candidates.map(({ cost, takes, members }) => ({
      cost,
      takes,
      on: [...new Set(members.flatMap(({ kit }) => unitAt.get(kit) ?? []))],
    })),
    units: units.map((kit) => offers.get(kit) ?? 0),
    room,
    worth: asked.map(({ must }) => (must ? needWorth.must.value : needWorth.nice.value)),
    must: asked.map(({ must }) => must),
    clashes: (chosen) =>
      clashesOf(index, [
        ...standing.map((join) => ({ join, candidate: undefined })),
        ...chosen.flatMap((candidate) => {
          const one = candidates[candidate];
          return one === undefined ? [] : [{ join: standingOf(one), candidate }];
        }),
      ]),
    budget: fullBudget,
  });
};
