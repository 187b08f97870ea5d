import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anOpening } from '../../boat/an-opening.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Opening } from '../../boat/opening.ts';
import type { FitEntry, MmShape } from '../../fits-shape.ts';
import type { Finding, PlanDraft } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

const rectangle = (widthMm: number, heightMm: number): MmShape => ({
  shape: 'rectangle',
  xMm: 0,
  yMm: 0,
  widthMm,
  heightMm,
});

/** A display over an old hole that it hides, for rules that look at one figure of it. */
export const soundFit: FitEntry = {
  opening: 'hole',
  place: 'helm',
  unit: 'display',
  verdict: 'enlarge',
  case: 'inside-cutout',
  hole: rectangle(200, 120),
  cut: rectangle(225, 140),
  bezel: rectangle(250, 160),
  setOffMm: [0, 0],
};

/** The small boat with one hole, and what its entry in the boat file says besides. */
export const aHoledBoat = (own: Partial<Opening> = {}): Boat =>
  aBoat().with({ openings: [anOpening({ for: 'display', ...own })] }).boat;

/** What a rule finds of one opening whose fit differs so from a sound one. */
export const fitFindings = (
  rule: Rule,
  fit: Partial<FitEntry> = {},
  { boat = aHoledBoat(), plan = {} }: { readonly boat?: Boat; readonly plan?: Partial<PlanDraft> } = {},
): Finding[] => findingsOf(rule, { boat, plan: { fits: [{ ...soundFit, ...fit }], ...plan } });
