import type { AtSea } from '../../boat/at-sea.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { settingFigures } from '../../facts/setting-figures.ts';
import type { SeaEntry } from '../../settings-sheet-shape.ts';
import { deviationOf } from '../heading/deviation.ts';
import { highestTide } from './bridge-clearance.ts';
import { deviationCard } from './deviation-card.ts';
import { deviationCurve } from './deviation-curve.ts';
import { leadLine } from './lead-line.ts';
import { logFactor } from './log-factor.ts';
import { logRuns } from './log-runs.ts';
import { windOffset } from './wind-offset.ts';

type Trial<Kind extends keyof AtSea> = NonNullable<AtSea[Kind]>[number];

const logEntry = (trial: Trial<'logs'>): SeaEntry['logs'] => {
  const runs = logRuns(trial);
  if (runs === undefined) return [];
  const { speedsKn, trueKn, indicatedKn } = runs;
  const factor = logFactor({ factorBefore: trial.factorBefore, trueKn, indicatedKn });
  return [{ id: trial.id, on: trial.on, kit: trial.unit, speedsKn: [...speedsKn], trueKn, indicatedKn, factor }];
};

const windEntry = ({ id, on, unit: kit, tacks }: Trial<'winds'>): SeaEntry['winds'] => {
  const found = windOffset(
    tacks.map(({ onPortDeg, onStarboardDeg }) => ({ portDeg: onPortDeg, starboardDeg: onStarboardDeg })),
  );
  return found === undefined ? [] : [{ id, on, kit, ...found }];
};

/** The curve through a swing takes longest of all, and no edit of anything else changes it. */
const swingEntry = keptFor(
  ({ id, on, unit: kit, electronics, points }: Trial<'swings'>): SeaEntry['swings'][number] => {
    const found = points
      .map(({ magneticDeg, compassDeg }) => ({
        headingDeg: magneticDeg,
        deviationDeg: deviationOf({ magneticDeg, compassDeg }).deviationDeg,
      }))
      .sort((a, b) => a.headingDeg - b.headingDeg);
    const curve = deviationCurve(found);
    return {
      id,
      on,
      kit,
      electronics,
      points: found,
      ...(curve === undefined ? {} : { curve }),
      card: curve === undefined ? [] : deviationCard(curve),
    };
  },
);

const bridgeEntry = (boat: Boat, airDraftM: number) => {
  const margin = boat.measures?.overheadM ?? settingFigures['overhead-margin'].value;
  return ({ id, on, name, chartedM, datum, datumAboveM = 0 }: Trial<'bridges'>): SeaEntry['bridges'][number] => {
    const level = datum === undefined ? {} : { datum };
    const tide = highestTide({ charted: chartedM, ...level, datumAbove: datumAboveM, airDraft: airDraftM, margin });
    return { id, on, name, ...level, ...(tide === undefined ? {} : { highestTideM: tide }) };
  };
};

const byId = (a: { readonly id: string }, b: { readonly id: string }): number => byCodeUnit(a.id, b.id);

/** What follows from everything that was tried at sea; `airDraftM` the air draft at its most. */
export const planSea = (boat: Boat, airDraftM: number): SeaEntry => {
  const { logs = [], winds = [], leads = [], swings = [], bridges = [] } = boat.sea ?? {};
  const { draftM } = boat.hull;
  return {
    logs: logs.flatMap(logEntry).sort(byId),
    winds: winds.flatMap(windEntry).sort(byId),
    leads: leads
      .map(({ id, on, unit: kit, ...lead }) => ({ id, on, kit, ...leadLine({ ...lead, draftM }) }))
      .sort(byId),
    swings: swings.map(swingEntry).sort(byId),
    bridges: bridges.map(bridgeEntry(boat, airDraftM)).sort(byId),
  };
};
