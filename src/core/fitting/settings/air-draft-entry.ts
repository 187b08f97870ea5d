import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { AirDraftEntry } from '../../settings-sheet-shape.ts';
import { airDraft, worstHow } from './air-draft.ts';

/** The air draft when the work is done: from its named parts, or as one figure where nobody has named them. */
export const airDraftEntry = ({ boat, kit }: BoatIndex): AirDraftEntry => {
  const parts = boat.measures?.airDraftParts ?? [];
  if (parts.length === 0) {
    const whole = boat.hull.airDraft;
    return { valueM: whole.valueM, mostM: lengthMm(whole).longestMm / 1000, how: whole.how, parts: [] };
  }
  const last = lastPhase(boat);
  const after = airDraft(parts, (id) => {
    const unit = kit.get(id);
    return unit !== undefined && isAboard(unit, last);
  });
  const before = airDraft(parts, (id) => kit.get(id)?.fate !== 'comes');
  const used = [...after.stack, ...(after.top === undefined ? [] : [after.top])];
  return {
    valueM: after.sumM,
    mostM: used.reduce((sum, { length }) => sum + lengthMm(length).longestMm, 0) / 1000,
    how: worstHow(used.map(({ length }) => length.how)),
    parts: used.map(({ name, length, unit }) => ({ name, length, ...(unit === undefined ? {} : { unit }) })),
    ...(before.sumM === after.sumM ? {} : { beforeM: before.sumM }),
  };
};
