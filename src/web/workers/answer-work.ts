import { indexBoat } from '../../core/boat/boat-index.ts';
import { wiredBoat } from '../../core/joins/wired-boat.ts';
import { workParts } from '../../core/work/plan-work.ts';
import { searchWork } from '../../core/work/search-work.ts';
import type { PlanWork } from '../../core/work-shape.ts';
import type { WorkReply, WorkRequest } from './work-protocol.ts';

/** The work with better and better orders; the last is told twice, for only then is it known to be the last. */
export function* answerWork({ boat, plan, done, today }: WorkRequest): Generator<WorkReply> {
  const index = indexBoat(wiredBoat(boat).boat);
  const state = { done, ...(today === undefined ? {} : { today }) };
  let last: PlanWork | undefined;
  for (const work of searchWork({ ...workParts({ index, plan }), state })) {
    last = work;
    yield { kind: 'work', work, isLast: false };
  }
  if (last !== undefined) yield { kind: 'work', work: last, isLast: true };
}
