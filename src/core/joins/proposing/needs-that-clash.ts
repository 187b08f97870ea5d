import type { Need } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { chooseJoins, type JoinSetting } from './join-setting.ts';

/** Needs that cannot all be met though each of them can, and what there is too little of. */
export interface NeedsThatClash {
  readonly needs: readonly Need[];
  /** what joins take: `at kit.port`, `from kit.port`, `bus id` */
  readonly over: readonly string[];
}

/** Readings tried together before the search for a smallest set gives up. */
const mostTried = 60;

/**
 * For a need that must be met and is not, though it could be alone: the smallest set of needs that cannot be met together,
 * pairs before larger ones, and what would have to be there once more for them all to be met. Undefined where the need
 * cannot be met at all.
 */
export const needsThatClash = (setting: JoinSetting, missed: number): NeedsThatClash | undefined => {
  const musts = setting.needs.flatMap((need, at) => (need.must ? [at] : []));
  let tried = 0;
  const canAll = (only: readonly number[], room = setting.room): boolean => {
    tried += 1;
    return chooseJoins({ ...setting, room }, only).unmet.length === 0;
  };
  if (!canAll([missed])) return undefined;

  const others = musts.filter((at) => at !== missed);
  const rival = others.find((at) => tried < mostTried && !canAll([missed, at]));
  let set = rival === undefined ? [missed, ...others] : [missed, rival];
  if (rival === undefined)
    for (const at of others) {
      const without = set.filter((other) => other !== at);
      if (tried < mostTried && !canAll(without)) set = without;
    }
  const takes = new Set(setting.candidates.flatMap((join) => join.takes));
  const over = [...takes].filter((key) => {
    const room = setting.room.get(key);
    return room !== undefined && tried < 2 * mostTried && canAll(set, new Map([...setting.room, [key, room + 1]]));
  });
  return { needs: set.flatMap((at) => setting.needs[at] ?? []), over: over.sort(byCodeUnit) };
};
