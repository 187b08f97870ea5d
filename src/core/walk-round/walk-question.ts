/** What may be asked on a walk round the boat, and of what kind of thing. */
export const walkKinds = {
  place: ['place-is-so', 'other-boxes'],
  way: ['way-seen', 'way-length', 'way-bore', 'way-holds'],
  unit: ['photos', 'serial', 'plugs', 'wire-colours', 'terminator', 'breaker', 'settings'],
  bank: ['bank-plate', 'bank-fuse', 'bank-switch', 'bank-parted', 'negative'],
  panel: ['panel-feeder', 'panel-circuits'],
} as const;

/** The sorts of thing that are asked about. */
export type WalkSubject = keyof typeof walkKinds;
export type WalkKind = (typeof walkKinds)[WalkSubject][number];

/** One question at one place. */
export interface WalkQuestion {
  readonly kind: WalkKind;
  readonly subject: WalkSubject;
  /** the place, way, unit, bank or panel it is about */
  readonly about: string;
  /** the file holds an answer from the boat, the papers or the maker already */
  readonly known: boolean;
}

/** One place of the walk, with what to look for there. */
export interface WalkStop {
  readonly place: string;
  readonly questions: readonly WalkQuestion[];
  /** cautions for what is opened there, by id (facts) */
  readonly cautions: readonly string[];
}
