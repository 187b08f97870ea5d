import type { Fault } from '../../fault.ts';
import { identitiesSameInstanceTwice } from './same-instance-twice.ts';
import { identitiesSeveralSources } from './several-sources.ts';

/** The faults of this area, one a rule. */
export const identitiesFaults: readonly Fault[] = [identitiesSameInstanceTwice, identitiesSeveralSources];
