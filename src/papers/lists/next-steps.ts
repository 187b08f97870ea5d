import { isOpen } from '../../core/accepted-findings.ts';
import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { printCount } from './print-figure.ts';

const mendStep = (plan: Plan): string[] => {
  const open = plan.findings.filter(isOpen);
  const dangers = open.filter((finding) => finding.level === 'danger').length;
  const faults = open.filter((finding) => finding.level === 'fault').length;
  if (dangers > 0) return [`Mend ${printCount(dangers, 'danger')} first, before anyone works on the boat.`];
  return faults > 0 ? [`Mend ${printCount(faults, 'fault')}; each says how.`] : [];
};

const needStep = (plan: Plan): string[] => {
  const missing = plan.readings.filter((reading) => reading.must && !reading.arrives).length;
  return missing > 0
    ? [`Bring ${printCount(missing, 'reading')} to where it is needed; the cheapest cure stands first.`]
    : [];
};

/** What a plan cannot do without, in the order of the job; a draft from a recording lacks most of it. */
const enterSteps = (boat: Boat, plan: Plan): string[] => [
  ...(boat.kit.length === 0 ? ['Enter what is aboard and what comes, or draft it from a recording of the bus.'] : []),
  ...(boat.ways.length === 0
    ? ['Enter the places of the boat and the ways a cable can take, and put each unit in its place.']
    : []),
  ...(plan.readings.length === 0 ? ['Enter which reading you want to see at which screen.'] : []),
];

/** Ways on which a cable that is yet to be bought will run. */
const waysToBuyFor = (boat: Boat, plan: Plan): Way[] => {
  const used = new Set(plan.lines.filter((line) => line.kept === undefined).flatMap((line) => line.ways));
  return boat.ways.filter((way) => used.has(way.id)).sort((a, b) => byCodeUnit(a.id, b.id));
};

const tapeStep = (boat: Boat, plan: Plan): string[] => {
  const guessed = waysToBuyFor(boat, plan).filter((way) => way.length.how === 'guessed');
  if (guessed.length === 0) return [];
  const nameOf = new Map(boat.places.map((place) => [place.id, place.name]));
  const names = guessed.map((way) => way.ends.map((end) => nameOf.get(end) ?? end).join(' to '));
  return [`Tape ${printCount(guessed.length, 'guessed length')} before ordering: ${names.join('; ')}.`];
};

const seeStep = (boat: Boat, plan: Plan): string[] => {
  const assumed = waysToBuyFor(boat, plan).filter((way) => way.known === 'assumed').length;
  return assumed > 0
    ? [`Open up and look at ${printCount(assumed, 'way')} that nobody has seen; lines are to run there.`]
    : [];
};

const sheetStep = (plan: Plan): string[] =>
  plan.readings.some((reading) => reading.arrives && reading.rests === 'typical')
    ? ['Read the makers’ own sheets of the units and enter what differs from the typical ones.']
    : [];

/** What a person should do next, the most pressing first, at most four things. */
export const nextSteps = (boat: Boat, plan: Plan): string[] => {
  const steps = [
    ...mendStep(plan),
    ...enterSteps(boat, plan),
    ...needStep(plan),
    ...tapeStep(boat, plan),
    ...seeStep(boat, plan),
    ...sheetStep(plan),
  ].slice(0, 4);
  return steps.length > 0 ? steps : ['Nothing is open here. Read the drawing aboard, then order.'];
};
