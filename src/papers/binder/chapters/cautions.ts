import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { walkRound } from '../../../core/walk-round/walk-round.ts';
import {
  aboardCautions,
  bankCautions,
  type CautionWords,
  steeringCautions,
  wiringCautions,
} from '../../power/caution-words.ts';
import type { Chapter } from '../binder-shape.ts';

/** Every caution that this boat or this job brings up, each once, those on every report last. */
export const boatCautions = (boat: Boat, plan: Plan): CautionWords[] => {
  const places = walkRound(boat).flatMap(({ cautions }) => cautions);
  const all = [
    ...bankCautions(plan),
    ...steeringCautions(plan),
    ...aboardCautions(boat, plan, places),
    ...wiringCautions(),
  ];
  return [...new Map(all.map((caution) => [caution.id, caution])).values()];
};

/** What can hurt somebody at this work, with the text or the person whose word decides. */
export const cautionsChapter = (boat: Boat, plan: Plan): Chapter => ({
  id: 'cautions',
  title: 'Before you start',
  blocks: [
    { kind: 'words', text: 'Read these before a tool is taken in hand. Each stands for a step of this job.' },
    ...boatCautions(boat, plan).map(({ title, says, decides }) => ({
      kind: 'caution' as const,
      hazard: title,
      text: says,
      ...(decides === undefined ? {} : { deferTo: decides }),
    })),
  ],
});
