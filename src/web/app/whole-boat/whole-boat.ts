import type { StoredPicture } from '../../../core/boat-store-shape.ts';

/** A boat with all that lies beside her. */
export interface WholeBoat {
  /** her id where she was kept: the name of her files */
  readonly id: string;
  readonly text: string;
  /** the lines of her log; empty where she has none */
  readonly log: string;
  /** by hash */
  readonly pictures: ReadonlyMap<string, StoredPicture>;
}
