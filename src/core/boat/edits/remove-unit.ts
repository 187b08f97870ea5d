import type { Draft } from 'mutative';
import * as z from 'zod';
import type { Boat } from '../boat-schema.ts';
import { membersHold } from '../checks/check-joins.ts';
import { idSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveMeasures } from './leave-measures.ts';
import { leaveWork } from './leave-work.ts';
import { nameInBoat } from './name-in-boat.ts';
import { withoutPhotos } from './without-photos.ts';

const belongsTo = (dotted: string | undefined, unit: string): boolean =>
  dotted?.includes('.') === true && splitDotted(dotted).kit === unit;

/** Takes a unit out of its joins; a join that no longer is one without it goes too. */
const leaveJoins = (boat: Draft<Boat>, unit: string): void => {
  const left = boat.joins.flatMap((join) => {
    const members = join.members.filter((member) => member.kit !== unit);
    if (members.length === join.members.length) return [join];
    return members.length > 0 && membersHold(join.kind, members) ? [{ ...join, members }] : [];
  });
  const gone = new Set(boat.joins.map((join) => join.id));
  for (const join of left) gone.delete(join.id);
  boat.joins = left;
  for (const cable of boat.cables) if (gone.has(cable.serves ?? '')) delete cable.serves;
};

/** Takes a unit off the circuits that feed it and the cables that end at it; the cables stay. */
const leaveCables = (boat: Draft<Boat>, unit: string): void => {
  for (const panel of boat.supply.panels) {
    for (const circuit of panel.circuits) circuit.feeds = circuit.feeds.filter((fed) => !belongsTo(fed, unit));
  }
  for (const end of boat.cables.flatMap((cable) => [cable.from, cable.to])) {
    if (belongsTo(end.at, unit)) delete end.at;
  }
};

/** Takes what the days say of a unit out of them. */
const leaveDays = (boat: Draft<Boat>, unit: string): void => {
  for (const day of boat.days ?? []) day.hours = day.hours.filter((running) => running.unit !== unit);
};

/** Takes back what was chosen to come from a unit, or chosen at it. */
const leaveSources = (boat: Draft<Boat>, unit: string): void => {
  if (boat.sources === undefined) return;
  boat.sources = boat.sources.filter(({ at, primary }) => at !== unit && !belongsTo(primary, unit));
  if (boat.sources.length === 0) delete boat.sources;
};

/** What was proved of a unit goes with it. */
const leaveProof = (boat: Draft<Boat>, unit: string): void => {
  if (boat.proof === undefined) return;
  boat.proof.proved = boat.proof.proved.filter(({ from }) => !belongsTo(from, unit));
  if (boat.proof.proved.length === 0) delete boat.proof;
};

/**
 * Takes a unit out of the boat, with its needs, what was proved of it, its part in sources, its part in joins, its hours in the days, its place on circuits and in openings, and what was measured of it. Its sheet, its labels and
 * the tees of a pinned bus stay: what was bought or fitted is still there.
 */
export const removeUnit = defineEdit({
  id: 'remove-unit',
  params: z.strictObject({ unit: idSchema }),
  title: ({ unit }, boat) => `Take ${nameInBoat(boat.kit, unit)} out of the boat.`,
  change: (boat, { unit }) => {
    findInBoat(boat.kit, unit, 'unit');
    boat.kit = boat.kit.filter((entry) => entry.id !== unit);
    boat.needs = boat.needs.filter((need) => need.at !== unit);
    leaveJoins(boat, unit);
    leaveCables(boat, unit);
    leaveDays(boat, unit);
    leaveSources(boat, unit);
    leaveProof(boat, unit);
    for (const opening of boat.openings ?? []) if (opening.for === unit) delete opening.for;
    leaveMeasures(boat, unit);
    leaveWork(boat, (id) => id === unit);
    withoutPhotos(boat, (of) => of === unit);
  },
});
