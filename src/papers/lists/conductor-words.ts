import type { LineKind } from '../../core/boat/boat-schema.ts';
import { cableGrades } from '../../core/facts/cable-grades.ts';
import { coaxKinds } from '../../core/facts/coax.ts';
import { cableHolds, dcColours } from '../../core/facts/conductor-colours.ts';
import { busPins } from '../../core/facts/plugs.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { printWire } from './print-power.ts';

/** What other cables hold, as their kind says. */
const others: Readonly<Partial<Record<LineKind, string>>> = cableHolds;

const busColours = busPins.pins.map(({ signal, colour }) => `${signal} ${colour}`).join(', ');

const busOf = (plan: Plan, { from, to }: LineEntry): Plan['buses'][number] | undefined =>
  plan.buses.find(({ id }) => [from, to].some((end) => end === id || end.startsWith(`${id}/`)));

/** The conductors of one grade of bus cable: "data 24 AWG, power 22 AWG: shield bare, +12 V red, …". */
const busWords = (plan: Plan, line: LineEntry): string => {
  const grade = busOf(plan, line)?.grade;
  if (grade === undefined) return busColours;
  const { dataAwg, powerAwg } = cableGrades[grade];
  return `data ${dataAwg.value} AWG, power ${powerAwg.value} AWG: ${busColours}`;
};

/** Wire of a feed: "2 × 2.5 mm² (14 AWG): plus red, minus black or yellow". */
const feedWire = (plan: Plan, { id }: LineEntry): string => {
  const colours = `plus ${dcColours.plus}, minus ${dcColours.minus}`;
  const feed = plan.feeds.find(({ line }) => line === id);
  const lead = plan.feeds.flatMap(({ leads = [] }) => leads).find(({ line }) => line === id);
  const { areaMm2, awg } = feed ?? lead ?? {};
  return areaMm2 === undefined ? colours : `2 × ${printWire({ areaMm2, awg })}: ${colours}`;
};

/** The conductors of a line and their colours, in words; nothing where nobody knows them. */
export const conductorWords = (plan: Plan, line: LineEntry): string | undefined => {
  if (line.kind === 'trunk' || line.kind === 'drop') return busWords(plan, line);
  if (line.kind === 'feed' || line.kind === 'feeder') return feedWire(plan, line);
  if (line.coax !== undefined) return `${coaxKinds[line.coax].name}, ${coaxKinds[line.coax].outsideMm} mm`;
  return others[line.kind];
};
