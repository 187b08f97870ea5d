import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';

/** Takes what is gone out of what was settled of the work: a unit, a place, a cable, a bank, a panel with its circuits. */
export const leaveWork = (boat: Draft<Boat>, isGone: (id: string) => boolean): void => {
  const { work } = boat;
  if (work === undefined) return;
  if (work.leaving !== undefined) {
    work.leaving = work.leaving.filter(({ unit }) => !isGone(unit));
    for (const leaving of work.leaving) {
      const cables = leaving.with?.filter((cable) => !isGone(cable)) ?? [];
      if (cables.length > 0) leaving.with = cables;
      else delete leaving.with;
    }
    if (work.leaving.length === 0) delete work.leaving;
  }
  for (const own of work.own ?? []) if (own.place !== undefined && isGone(own.place)) delete own.place;
  if (work.essentials !== undefined) {
    for (const essential of work.essentials) {
      if (essential.on !== undefined) essential.on = essential.on.filter((on) => !isGone(on));
    }
    work.essentials = work.essentials.filter(({ on, none }) => none === true || (on ?? []).length > 0);
    if (work.essentials.length === 0) delete work.essentials;
  }
  if (Object.keys(work).length === 0) delete boat.work;
};
