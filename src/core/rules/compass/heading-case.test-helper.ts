import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { HeadingSite } from '../../heading-shape.ts';
import type { Finding } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

export const soundHeading: HeadingSite = {
  north: 'fluxgate',
  magnetic: true,
  verdict: 'good',
  near: [],
  feeds: [],
  sumDeg: 0,
  allowedDeg: 1.2,
};

/** What a rule finds where the heading sensor of the Tern stands as said. */
export const headingFindings = (rule: Rule, heading: Partial<HeadingSite>, boat: Boat = aBoat().boat): Finding[] =>
  findingsOf(rule, {
    boat,
    plan: {
      sites: [
        { unit: 'compass', is: 'heading', place: 'locker', aboveWaterM: 0.5, heading: { ...soundHeading, ...heading } },
      ],
    },
  });
