import { cardBoat } from '../cards/card-boat.ts';
import { offeredWiring } from '../kit/offered-wiring.ts';
import { printCount } from '../lists/print-figure.ts';
import { unfedRows } from '../lists/unfed-rows.ts';
import type { Look } from './next-thing.ts';
import { openAt, stepOfMost } from './open-findings.ts';

// What a first plan takes, in the order of the job.

export const places: Look = ({ boat }) =>
  boat.places.length > 0
    ? undefined
    : {
        id: 'places',
        step: 'boat',
        does: 'Add the places where things stand, or begin again from a hull pattern.',
        why: 'Every cable is laid from place to place.',
      };

export const kit: Look = ({ boat }) =>
  boat.kit.length > 0
    ? undefined
    : {
        id: 'kit',
        step: 'kit',
        does: 'Put the first unit aboard.',
        onPage: 'Type what you call it, press it, press where it goes.',
        why: 'What she has, what goes and what comes is all that the rest is worked out from.',
      };

export const needs: Look = ({ plan }) =>
  plan.readings.length > 0
    ? undefined
    : {
        id: 'needs',
        step: 'needs',
        does: 'Say what must be seen at which screen.',
        why: 'Only then can the plan tell what arrives there, and what does not and why.',
      };

export const wiring: Look = ({ boat, plan }) => {
  const offered = offeredWiring(boat, plan);
  return offered === undefined
    ? undefined
    : {
        id: 'wiring',
        step: 'kit',
        does: `When all that comes is aboard, wire her so: ${offered.says}.`,
        onPage: 'One press, and undo takes it back.',
        why: 'The plan proposes it as the cheapest that brings what must be seen.',
      };
};

export const mended = (level: 'danger' | 'fault', why: string): Look => {
  return ({ plan }) => {
    const open = openAt(plan, level);
    return open.length === 0
      ? undefined
      : {
          id: level,
          step: stepOfMost(open.map(({ rule }) => rule)),
          does: `Mend ${printCount(open.length, level)}; each says how.`,
          onPage: `${open.length === 1 ? 'It stands' : 'They stand'} in the notes.`,
          why,
        };
  };
};

export const missing: Look = ({ plan }) => {
  const count = plan.readings.filter(({ must, arrives }) => must && !arrives).length;
  return count === 0
    ? undefined
    : {
        id: 'missing',
        step: 'needs',
        does: `Bring ${printCount(count, 'reading')} to where ${count === 1 ? 'it' : 'they'} must be seen.`,
        why: 'Each says at which link it breaks, and the cheapest cure stands first.',
      };
};

export const unfed: Look = ({ boat, plan }) => {
  const count = unfedRows(cardBoat(boat), plan).length;
  return count === 0
    ? undefined
    : {
        id: 'unfed',
        step: 'power',
        does: `Give a feed to ${printCount(count, 'thing')} that none leads to.`,
        why: 'Wire and fuse can be sized only for what hangs on a circuit.',
      };
};
