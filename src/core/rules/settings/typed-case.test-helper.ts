import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Measures } from '../../boat/measures.ts';
import { readBoat } from '../../boat/read-boat.ts';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { planSettingsSheet } from '../../fitting/settings/plan-settings-sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import type { Finding } from '../../plan-shape.ts';
import type { SettingEntry } from '../../sources-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

const radioSheets = typicalSheets.filter(({ id }) => ['ais-class-b', 'ais-class-a'].includes(id));

/** The Tern with an AIS of class B that comes, and whatever of measures, papers and trials a case says. */
export const ternWithAis = (parts: Partial<Pick<Boat, 'measures' | 'papers' | 'sea' | 'hull'>> = {}): Boat =>
  readBoat(
    JSON.stringify(
      aBoat()
        .add({
          sheets: radioSheets,
          kit: [{ id: 'ais', name: 'AIS', sheet: 'ais-class-b', fate: 'comes', place: 'helm' }],
        })
        .with(parts).boat,
    ),
  );

const depthSettings: readonly SettingEntry[] = [
  {
    id: 'o',
    kit: 'compass',
    does: 'offset',
    readings: ['depth'],
    at: ['display'],
    source: 'compass.n2k',
    reference: 'keel',
  },
  { id: 'n', kit: 'display', does: 'no-offset', readings: ['depth'], at: ['display'], source: 'compass.n2k' },
];

/** What a rule finds where these things stand in the units of the Tern; her heading sensor measures depth here, from the keel at the display. */
export const foundWith = (
  rule: Rule,
  typed: NonNullable<Measures['typed']>,
  parts: Partial<Pick<Boat, 'papers' | 'sea'>> = {},
): Finding[] => {
  const boat = ternWithAis({
    measures: { typed, transducers: [{ unit: 'compass', below: { valueM: 0.4, how: 'taped' } }] },
    ...parts,
  });
  const withNeed: Boat = {
    ...boat,
    needs: [...boat.needs, { reading: 'depth', at: 'display', must: true, reference: 'keel' }],
  };
  const index = indexBoat(withNeed);
  const sheet = planSettingsSheet({ index, joins: joinsOf(index, 1), settings: depthSettings });
  return findingsOf(rule, { boat: withNeed, plan: { ...sheet, settings: [...depthSettings] } });
};
