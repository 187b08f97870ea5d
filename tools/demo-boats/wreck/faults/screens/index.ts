import type { Fault } from '../../fault.ts';
import { screensAlarmNotQuietenedTogether } from './alarm-not-quietened-together.ts';
import { screensDimApart } from './dim-apart.ts';

/** The faults of this area, one a rule. */
export const screensFaults: readonly Fault[] = [screensAlarmNotQuietenedTogether, screensDimApart];
