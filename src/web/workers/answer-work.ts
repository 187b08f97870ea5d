import type { WorkReply, WorkRequest } from './work-protocol.ts';
export function* answerWork(_: WorkRequest): Generator<WorkReply> {}
