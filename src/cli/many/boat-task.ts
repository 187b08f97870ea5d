import type { BoatSummary } from '../../papers/many/boat-summary.ts';
import type { LabelsTyped } from '../labels-at-terminal.ts';

/** What is wanted of every one of many boats. */
export interface ManyWish {
  readonly of: 'check' | 'plan';
  /** whether the findings, or the plan, are wanted as JSON */
  readonly json: boolean;
  /** how papers are wanted, as it was typed; absent where none are */
  readonly papers?: LabelsTyped & { readonly paper?: string; readonly date?: string };
}

/** One boat to be worked on. */
export interface BoatTask {
  readonly file: string;
  /** folder of its papers, where papers are wanted */
  readonly folder?: string;
}

/** What a thread says of one boat: what was found, or the one sentence why it could not be. */
export type BoatAnswer =
  | { readonly summary: BoatSummary; readonly wantsMending: boolean; readonly json?: string; readonly notes: string[] }
  | { readonly refused: string };
