import { blackoutTable } from './blackouts/blackout-table.ts';
import { keptFor } from './boat/kept-for.ts';
import { mendBuses } from './cures/mend-bus.ts';
import { withCures } from './cures/with-cures.ts';
import { withReserves } from './cures/with-reserves.ts';
import { planFitting } from './fitting/plan-fitting.ts';
import { planSettingsSheet } from './fitting/settings/plan-settings-sheet.ts';
import { wiredBoat } from './joins/wired-boat.ts';
import { planEnergy } from './plan-energy.ts';
import { planLaid } from './plan-laid.ts';
import { planPanels } from './plan-panels.ts';
import { planPhases } from './plan-phases.ts';
import { planPower } from './plan-power.ts';
import type { Finding } from './plan-shape.ts';
import { planStray } from './plan-stray.ts';
import { planTraffic } from './plan-traffic.ts';
import { type LateParts, planWith, withoutLateParts } from './plan-with.ts';
import { dockSheet } from './proof/dock/dock-sheet.ts';
import { planRemote } from './remote/plan-remote.ts';
import { rules } from './rules/index.ts';
import type { LaidInput, RuleInput } from './rules/rule.ts';
import { inOrder, runLaidRules, runRules } from './rules/run-rules.ts';
import { planLighting } from './screens/plan-lighting.ts';
import { busChoices } from './shopping/bus-choices.ts';
import { ledRound, orderOf } from './shopping/order-of.ts';
import { planSources } from './sources/plan-sources.ts';
import { planWork } from './work/plan-work.ts';

const laidRules = rules.filter((rule) => rule.looksAt === undefined);
const otherRules = rules.filter((rule) => rule.looksAt === 'whole-plan');

/** What rules find that look at what is laid, for as long as she lies so. */
const laidFindings = keptFor((laid: LaidInput) => runLaidRules(laidRules, laid));

const findings = (input: RuleInput, laid: LaidInput): Finding[] =>
  inOrder([...laidFindings(laid), ...runRules(otherRules, input)]);

/** Every late part, as a whole plan has them. */
export const lateParts: LateParts = {
  wire: wiredBoat,
  stray: planStray,
  fitting: planFitting,
  cures: withCures,
  power: planPower,
  panels: planPanels,
  energy: planEnergy,
  traffic: planTraffic,
  order: orderOf,
  ledRound,
  choices: busChoices,
  mends: mendBuses,
  sources: planSources,
  sheet: planSettingsSheet,
  blackouts: withReserves,
  phases: planPhases,
  remote: planRemote,
  lighting: planLighting,
  tests: dockSheet,
  work: planWork,
  findings,
};

const laidOf = planLaid(lateParts);

/** The plan of a boat, whole: see `planWith`. */
export const plan = planWith(lateParts, laidOf);

/** The same but for what tries many boats, cures of single points and each phase as a boat of its own, and the order of the work. For the moment after an edit. */
export const nearPlan = planWith(
  { ...lateParts, blackouts: blackoutTable, phases: () => undefined, work: () => undefined },
  laidOf,
);

/** The plan of a boat while its layouts are still looked for: checked by every rule, without what takes time. */
export const checkedPlan = planWith({
  ...withoutLateParts,
  wire: wiredBoat,
  stray: planStray,
  fitting: planFitting,
  power: planPower,
  panels: planPanels,
  energy: planEnergy,
  traffic: planTraffic,
  sources: planSources,
  sheet: planSettingsSheet,
  blackouts: blackoutTable,
  remote: planRemote,
  lighting: planLighting,
  findings,
});
