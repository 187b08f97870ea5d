import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { Heard } from '../../core/proof/survey/heard.ts';
import type { PatternAsked } from '../../core/starting/boat-from-pattern.ts';
import type { Refusal } from './protocol.ts';

/**
 * What the page asks of the worker that boats are started in. A recording is read once and kept there, so that what tells one
 * very unit from all others never comes to the page but in a boat.
 */
export type StartingRequest =
  | { readonly kind: 'read'; readonly recording: Blob }
  /** a boat from a hull pattern, with what the recording heard aboard where one was read */
  | { readonly kind: 'make'; readonly asked: PatternAsked }
  /** the edits that put what was heard aboard a boat that is open */
  | { readonly kind: 'edits'; readonly boat: Boat };

export type StartingReply =
  | { readonly kind: 'progress'; readonly readBytes: number }
  | { readonly kind: 'heard'; readonly heard: Heard }
  | { readonly kind: 'made'; readonly boatText: string }
  | { readonly kind: 'edits'; readonly edits: readonly EditCall[]; readonly added: number; readonly known: number }
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  | { readonly kind: 'fault'; readonly detail: string };
