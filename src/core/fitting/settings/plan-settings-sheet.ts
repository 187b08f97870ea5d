import { byCodeUnit } from '../../boat/ids.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import { planSea } from '../sea/plan-sea.ts';
import { airDraftEntry } from './air-draft-entry.ts';
import { depthEntries } from './depth-entries.ts';
import { paperEntries } from './paper-entries.ts';
import { radioEntries } from './radio-entries.ts';
import { screenEntries } from './screen-entries.ts';
import { sensorEntries } from './sensor-entries.ts';
import type { SheetInput } from './sheet-input.ts';
import { withWhatStands } from './what-stands.ts';

/** What is typed into each unit by the boat's own measures, the papers that go before, her air draft, and what was tried at sea. */
export const planSettingsSheet = (
  input: SheetInput,
): Pick<PlanDraft, 'typed' | 'shipPapers' | 'airDraft' | 'atSea'> => {
  const { index } = input;
  const airDraft = airDraftEntry(index);
  const wanted = [
    ...depthEntries(input),
    ...radioEntries(input),
    ...sensorEntries(input),
    ...screenEntries(input, airDraft),
  ];
  const byId = new Map(wanted.map((entry) => [entry.id, entry]));
  return {
    typed: withWhatStands(
      [...byId.values()].sort((a, b) => byCodeUnit(a.id, b.id)),
      index.boat.measures?.typed ?? [],
    ),
    shipPapers: paperEntries(index),
    airDraft,
    atSea: planSea(index.boat, airDraft.mostM),
  };
};
