import { type LaidBoat, modelIn } from '../blackouts/blackout-table.ts';
import { withTee } from '../blackouts/bus-trunk.ts';
import { type FailureModel, failureModel } from '../blackouts/effect.ts';
import { plugOf } from '../blackouts/line-between.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { isAboard } from '../boat/phase.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { JoinEntry, LineEntry } from '../plan-shape.ts';
import { feedLines } from '../ways/feed-lines.ts';
import { joinLines } from '../ways/join-lines.ts';
import { laidLine } from '../ways/line-entry.ts';
import type { Router } from '../ways/routes.ts';
import { tailOf } from '../ways/tails.ts';

interface NewTee {
  readonly bus: string;
  readonly port: string;
  /** place in the row of tees behind which it is put */
  readonly behind: number;
  readonly line: LineEntry;
}

/** The tee of a port that joins a bus as it lies: where the trunk passes nearest, with its drop. */
const newTee = (laid: LaidBoat, router: Router, bus: LaidBoat['buses'][number], port: string): NewTee | undefined => {
  const [kit = ''] = port.split('.');
  const unit = laid.index.kit.get(kit);
  if (unit === undefined) return undefined;
  let passed = -1;
  const stops = bus.walk.flatMap(({ place, tees }) => {
    passed += tees.length;
    const route =
      laid.index.places.get(place)?.tees === true
        ? router.between({ kind: 'drop', from: place, to: unit.place })
        : undefined;
    return route === undefined || passed < 0 ? [] : [{ place, behind: passed, route }];
  });
  const [best] = stops.sort((a, b) => a.route.mm - b.route.mm || a.behind - b.behind);
  if (best === undefined) return undefined;
  const ends = [
    { name: bus.id, place: best.place },
    { name: plugOf(laid.index, port), place: unit.place },
  ] as const;
  const tails = [tailOf({ index: laid.index, kit, kind: 'drop' })];
  const line = laidLine({ index: laid.index, kind: 'drop', ends, route: best.route, tails });
  return { bus: bus.id, port, behind: best.behind, line };
};

/**
 * A boat with edits in it, laid out as she is: what lies keeps its route, what is new is led by the shortest way, and a unit
 * that joins a bus gets a tee where the trunk passes nearest. So a cure is tried in milliseconds, and the whole plan is made
 * once it is taken.
 */
export const graft = (
  before: LaidBoat,
  boat: Boat,
  { router, phase }: { readonly router: Router; readonly phase: number },
): FailureModel => {
  const index = indexBoat(boat);
  const joinsAt = (at: number) => joinsOf(index, at);
  const standing = joinsAt(phase);
  const ofJoins = joinLines({ index, router, joins: standing });
  const wanted = [...ofJoins.lines, ...feedLines({ index, router }).lines];
  const wantedIds = new Set(wanted.map(({ id }) => id));
  const isBusFeed = ({ kind, from, to }: LineEntry): boolean =>
    kind === 'feed' && [from, to].some((end) => index.buses.has(end));
  const stays = before.lines.filter(
    (line) => line.kind === 'trunk' || line.kind === 'drop' || isBusFeed(line) || wantedIds.has(line.id),
  );
  const known = new Set(stays.map(({ id }) => id));
  const laid = { ...before, index, joinsAt };
  const tees = standing.flatMap(({ bus, members }) => {
    const own = before.buses.find(({ id }) => id === bus);
    if (own === undefined) return [];
    const on = new Set(own.walk.flatMap((step) => step.tees));
    return members
      .filter(({ kit, port }) => {
        const unit = index.kit.get(kit);
        return !on.has(`${kit}.${port}`) && unit !== undefined && isAboard(unit, phase);
      })
      .flatMap(({ kit, port }) => newTee(laid, router, own, `${kit}.${port}`) ?? []);
  });
  const lines = [...stays, ...wanted.filter(({ id }) => !known.has(id)), ...tees.map(({ line }) => line)];
  const joins: JoinEntry[] = standing.map((join) => ({ ...join, lines: [...(ofJoins.linesOf.get(join.id) ?? [])] }));
  const model = modelIn({ ...laid, lines, joins }, phase);
  if (tees.length === 0) return model;
  const trunks = new Map(model.trunks);
  for (const { bus, port, behind } of tees) {
    const trunk = trunks.get(bus);
    if (trunk !== undefined) trunks.set(bus, withTee(trunk, port, behind));
  }
  return failureModel({ ...model, trunks });
};
