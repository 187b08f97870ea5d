import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import type { Refusal } from './protocol.ts';

/** What the page asks of the worker that recordings are held against the plan in; what it watched stays there for what follows. */
export type ProofRequest =
  | { readonly kind: 'prove'; readonly recordings: readonly Blob[]; readonly boat: Boat; readonly plan: Plan }
  /** the edits that take over who the units are */
  | { readonly kind: 'take-over'; readonly boat: Boat; readonly plan: Plan }
  /** the edits that note which readings were proved */
  | { readonly kind: 'note-proved'; readonly on: string };

export type ProofReply =
  | { readonly kind: 'progress'; readonly readBytes: number }
  | { readonly kind: 'proved'; readonly report: ProofReport }
  | { readonly kind: 'edits'; readonly of: 'take-over' | 'note-proved'; readonly edits: readonly EditCall[] }
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  | { readonly kind: 'fault'; readonly detail: string };
