import type { Rule } from '../rule.ts';
import { sameInstanceTwice } from './same-instance-twice.ts';
import { severalSources } from './several-sources.ts';

/** The rules of this area. */
export const identitiesRules: readonly Rule[] = [sameInstanceTwice, severalSources];
