import type { Rule } from '../rule.ts';
import { bridgeWithoutDatum } from './bridge-without-datum.ts';
import { classBByOwner } from './class-b-by-owner.ts';
import { feetForMetres } from './feet-for-metres.ts';
import { higherThanAirDraft } from './higher-than-air-draft.ts';
import { measureInFeet } from './measure-in-feet.ts';
import { numberNotAbroad } from './number-not-abroad.ts';
import { numberNotReadBack } from './number-not-read-back.ts';
import { offsetInTwo } from './offset-in-two.ts';
import { offsetSign } from './offset-sign.ts';
import { papersNotStarted } from './papers-not-started.ts';
import { sizeBlockNotMoved } from './size-block-not-moved.ts';
import { twoShipNumbers } from './two-ship-numbers.ts';

/** The rules of this area. */
export const settingsRules: readonly Rule[] = [
  bridgeWithoutDatum,
  classBByOwner,
  feetForMetres,
  higherThanAirDraft,
  measureInFeet,
  numberNotAbroad,
  numberNotReadBack,
  offsetInTwo,
  offsetSign,
  papersNotStarted,
  sizeBlockNotMoved,
  twoShipNumbers,
];
