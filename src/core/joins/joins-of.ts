import type { BoatIndex } from '../boat/boat-index.ts';
import type { Join } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { phaseBefore } from '../readings/before-and-after.ts';
import { isProposed } from './is-proposed.ts';

type Member = Join['members'][number];

const byPort = (a: Member, b: Member): number => byCodeUnit(a.kit, b.kit) || byCodeUnit(a.port, b.port);

/**
 * The joins that stand in a phase, sorted by id, each with the members that are aboard then, sorted by unit and port.
 * A join that is forbidden is left out, and before the refit one that is proposed; one whose members are not aboard yet, or no longer, is listed without them.
 * The layout problems and the plan both ask here, so that they speak of the same joins.
 */
export const joinsOf = (index: BoatIndex, phase: number): StandingJoin[] => {
  const aboard = ({ kit }: Member): boolean => {
    const unit = index.kit.get(kit);
    return unit !== undefined && isAboard(unit, phase);
  };
  return index.boat.joins
    .filter((join) => join.hold === 'fixed' && (phase > phaseBefore || !isProposed(join)))
    .map((join) => ({
      id: join.id,
      kind: join.kind,
      ...(join.bus === undefined ? {} : { bus: join.bus }),
      members: join.members.filter(aboard).sort(byPort),
      from: isProposed(join) ? ('proposed' as const) : ('file' as const),
    }))
    .sort((a, b) => byCodeUnit(a.id, b.id));
};
