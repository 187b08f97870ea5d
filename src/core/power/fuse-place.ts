import { type FusePlaceRow, fusePlaceRow } from '../facts/fuse-places.ts';
import { within } from './within.ts';

/** The rules a fuse's place may be held against: this project's own, the American law, the trade's wording, the older ISO. */
export type FusePlaceRule = 'project' | 'cfr' | 'trade' | 'iso';

/** A fuse on its wire; engine cranking is left out of all the rules. */
export interface FusePlaceAsk {
  /** along the wire from the source */
  readonly distanceMm: number;
  /** in sheath or conduit all the way to the fuse */
  readonly sheathed: boolean;
  readonly fromBattery: boolean;
  /** whether it could well be fitted at the source itself */
  readonly practicalAtSource: boolean;
  readonly rule: FusePlaceRule;
}

/** Whether a fuse is near enough to its source, and how far it might be. */
export interface FusePlaceVerdict {
  readonly allowed: boolean;
  readonly row: FusePlaceRow;
}

/**
 * How near its source a fuse must be: within 178 mm by the rule of this project; by 33 CFR 183.455(b) at the source where
 * that is practical, else within 178 mm, else within 1016 mm in a sheath; in trade wording 1829 mm in a sheath from a
 * battery.
 *
 * @example fusePlace({ distanceMm: 600, sheathed: false, fromBattery: false, practicalAtSource: false, rule: 'cfr' }).allowed // false
 */
export const fusePlace = (ask: FusePlaceAsk): FusePlaceVerdict => {
  const row = fusePlaceRow(rowFor[ask.rule](ask));
  return { allowed: within({ value: ask.distanceMm, limit: row.mostMm }), row };
};

type RowId = Parameters<typeof fusePlaceRow>[0];

const byLaw = ({ practicalAtSource, sheathed }: FusePlaceAsk): RowId => {
  if (practicalAtSource) return 'cfr-at-source';
  return sheathed ? 'cfr-sheathed' : 'cfr-near';
};

const rowFor: Readonly<Record<FusePlaceRule, (ask: FusePlaceAsk) => RowId>> = {
  project: () => 'project',
  cfr: byLaw,
  trade: (ask) => (ask.fromBattery && ask.sheathed ? 'trade-battery' : byLaw(ask)),
  iso: ({ fromBattery, sheathed }) => (fromBattery && sheathed ? 'iso-battery' : 'iso-source'),
};
