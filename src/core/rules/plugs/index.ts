import type { Rule } from '../rule.ts';
import { adapterToTheBus } from './adapter-to-the-bus.ts';
import { fixedLeadTooShort } from './fixed-lead-too-short.ts';
import { noRoomToBend } from './no-room-to-bend.ts';
import { plugTooBigForTheWay } from './plug-too-big-for-the-way.ts';
import { sameGenderMeets } from './same-gender-meets.ts';

/** The rules of this area. */
export const plugsRules: readonly Rule[] = [
  adapterToTheBus,
  fixedLeadTooShort,
  noRoomToBend,
  plugTooBigForTheWay,
  sameGenderMeets,
];
