import type { Fault } from '../../fault.ts';
import { settingsBridgeWithoutDatum } from './bridge-without-datum.ts';
import { settingsClassBByOwner } from './class-b-by-owner.ts';
import { settingsFeetForMetres } from './feet-for-metres.ts';
import { settingsHigherThanAirDraft } from './higher-than-air-draft.ts';
import { settingsMeasureInFeet } from './measure-in-feet.ts';
import { settingsNumberNotAbroad } from './number-not-abroad.ts';
import { settingsNumberNotReadBack } from './number-not-read-back.ts';
import { settingsOffsetInTwo } from './offset-in-two.ts';
import { settingsOffsetSign } from './offset-sign.ts';
import { settingsPapersNotStarted } from './papers-not-started.ts';
import { settingsSizeBlockNotMoved } from './size-block-not-moved.ts';
import { settingsTwoShipNumbers } from './two-ship-numbers.ts';

/** The faults of this area, one a rule. */
export const settingsFaults: readonly Fault[] = [
  settingsBridgeWithoutDatum,
  settingsClassBByOwner,
  settingsFeetForMetres,
  settingsHigherThanAirDraft,
  settingsMeasureInFeet,
  settingsNumberNotAbroad,
  settingsNumberNotReadBack,
  settingsOffsetInTwo,
  settingsOffsetSign,
  settingsPapersNotStarted,
  settingsSizeBlockNotMoved,
  settingsTwoShipNumbers,
];
