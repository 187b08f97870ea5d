import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { canonicalBoat } from '../../boat/canonical-boat.ts';
import { lastPhase } from '../../boat/phase.ts';
import type { Bank, Panel } from '../../boat/supply.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { planPanels } from '../../plan-panels.ts';
import type { Finding } from '../../plan-shape.ts';
import { unitLoads } from '../../power/unit-loads.ts';
import type { Rule } from '../rule.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';

/** A length known to the millimetre. */
export const exactly = (valueM: number) => ({ valueM, how: 'taped', lessM: 0, moreM: 0 }) as const;

/** The Tern with her supply changed: her bank, her panel, and the boat itself. */
export const withSupply = (change: (bank: Bank, panel: Panel, boat: Boat) => void = () => undefined): Boat =>
  aBoat().change((draft) => {
    const [bank] = draft.supply.banks;
    const [panel] = draft.supply.panels;
    // reason: a draft is the boat itself, open to change
    if (bank !== undefined && panel !== undefined) change(bank as Bank, panel as Panel, draft as Boat);
  }).boat;

/** What a rule of supply looks at: a boat with its source side and its loads. */
const caseOf = (boat: Boat): RuleCase => {
  const own = canonicalBoat(boat);
  const index = indexBoat(own);
  const phase = lastPhase(own);
  const joins = joinsOf(index, phase);
  const loads = unitLoads(index, phase, joins);
  return {
    boat: own,
    plan: {
      phase,
      joins: joins.map((join) => ({ ...join, lines: [] })),
      loads,
      ...planPanels({ index, joinsAt: () => joins }),
    },
  };
};

/** What one rule finds on a boat, with the source side and the loads of that boat. */
export const supplyFindings = (rule: Rule, boat: Boat): Finding[] => findingsOf(rule, caseOf(boat));

/** The same, each whole as text. */
export const supplyTold = (rule: Rule, boat: Boat): readonly string[] => told([rule], rule.id, caseOf(boat));

/** A starting bank of the same volts, parted from the house as given. */
export const startBank = (partedBy?: NonNullable<Bank['partedBy']>): Bank => ({
  id: 'engine',
  place: 'battery-box',
  chemistry: 'flooded',
  nominalV: 12,
  capacityAh: 70,
  for: 'start',
  coldCrankingA: 600,
  ...(partedBy === undefined ? {} : { partedBy }),
});

/** A small panel behind another, with one circuit. */
export const subPanel = (id: string, from: string, feeds: readonly string[]): Panel => ({
  id,
  place: 'helm',
  from,
  circuits: [{ id: `${id}-circuit`, ratingA: 10, kind: 'fuse', feeds: [...feeds] }],
});

/** A converter of 5 A at 12 V. */
export const converter = (id: string) =>
  ({ id, place: 'locker', outV: 12.5, ratedA: 5, efficiencyPct: 80, isolated: true }) as const;
