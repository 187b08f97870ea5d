import type { Fault } from '../../fault.ts';
import { plugsAdapterToTheBus } from './adapter-to-the-bus.ts';
import { plugsFixedLeadTooShort } from './fixed-lead-too-short.ts';
import { plugsNoRoomToBend } from './no-room-to-bend.ts';
import { plugsPlugTooBigForTheWay } from './plug-too-big-for-the-way.ts';
import { plugsSameGenderMeets } from './same-gender-meets.ts';

/** The faults of this area, one a rule. */
export const plugsFaults: readonly Fault[] = [
  plugsNoRoomToBend,
  plugsAdapterToTheBus,
  plugsFixedLeadTooShort,
  plugsPlugTooBigForTheWay,
  plugsSameGenderMeets,
];
