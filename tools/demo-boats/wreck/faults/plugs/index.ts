import type { Fault } from '../../fault.ts';
import { plugsFixedLeadTooShort } from './fixed-lead-too-short.ts';
import { plugsPlugTooBigForTheWay } from './plug-too-big-for-the-way.ts';
import { plugsSameGenderMeets } from './same-gender-meets.ts';

/** The faults of this area, one a rule. */
export const plugsFaults: readonly Fault[] = [plugsFixedLeadTooShort, plugsPlugTooBigForTheWay, plugsSameGenderMeets];
