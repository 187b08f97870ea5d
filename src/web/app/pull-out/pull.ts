import type { Failure } from '../../../core/blackouts-shape.ts';

/** What a person pulls out to see: the ids picked last, and the failure chosen about them. */
export interface Pull {
  readonly ids: readonly string[];
  readonly failure?: Failure;
}
