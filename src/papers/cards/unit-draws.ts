import type { Kit } from '../../core/boat/boat-schema.ts';
import type { Power, Sheet } from '../../core/boat/sheet.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { circuitKinds } from '../lists/circuit-kinds.ts';
import { printAmps, printLost, printVolts, printWire } from '../lists/print-power.ts';
import { voltsAtLoad } from '../power/volts-at-load.ts';
import type { CardBoat } from './card-boat.ts';

const amountWords = ({ typical, max, unit, atV }: Power): string => {
  const at = unit === 'A' && atV !== undefined ? ` at ${atV} V` : '';
  return typical === max ? `${max} ${unit}${at}` : `${typical} ${unit} typical, ${max} ${unit} at most${at}`;
};

/** The circuits that feed one DC port, by name where they have one. */
const feedWords = ({ boat }: CardBoat, port: string): string => {
  const found = boat.supply.panels.flatMap((panel) =>
    panel.circuits
      .filter((circuit) => circuit.feeds.includes(port))
      .map(
        ({ id, name, ratingA, kind }) =>
          `circuit ${name ?? id} of panel ${panel.id}, ${ratingA} A ${circuitKinds[kind]}`,
      ),
  );
  return found.length === 0 ? 'No circuit feeds it yet.' : `Fed by ${found.join('; and by ')}.`;
};

/** The volts at a plug: those of the one solve with everything drawing; where there is none, those of its bus alone. */
const voltsWords = (plan: Plan, port: string): string[] => {
  const onBus = plan.buses.flatMap((bus) => bus.volts).find((entry) => entry.port === port);
  const load = plan.loads.find((entry) => entry.port === port);
  const volts = (load === undefined ? undefined : voltsAtLoad(plan, load)) ?? onBus?.lowestV;
  if (volts === undefined) return [];
  const tooFew = load !== undefined && volts < load.minV ? ', which is too few' : '';
  const lost = onBus === undefined ? '' : `; ${printVolts(onBus.dropV)} of what is lost are lost on the bus`;
  return [
    `With everything drawing and the bank at its lowest it has ${printVolts(volts)} at its plug${tooFew}${lost}.`,
  ];
};

/** Wire, length and fuse of its feed, as the plan has sized it. */
const sizeWords = (plan: Plan, port: string): string[] =>
  plan.feeds
    .filter(({ to }) => to === port)
    .map(({ areaMm2, awg, lengthM, fuseA, fuseBy, dropV, dropPct = 0 }) => {
      const wire = areaMm2 === undefined ? 'of a size nobody has looked up' : printWire({ areaMm2, awg });
      const fuse = fuseBy === 'in-line' && fuseA !== undefined ? `, a ${printAmps(fuseA)} fuse of its own` : '';
      const lost = dropV === undefined ? '' : `; it loses ${printLost({ lostV: dropV, lostPct: dropPct })} by the rule`;
      return `Its feed is ${wire}, ${lengthM.toFixed(2)} m${fuse}${lost}.`;
    });

const needsWords = ({ minV, maxV }: Power): string => `It wants ${minV} to ${maxV} V.`;

const fuseWords = ({ fuseA }: Power): string[] =>
  fuseA === undefined ? [] : [`Its maker asks for a ${fuseA} A fuse.`];

const powerLines = (index: CardBoat, plan: Plan, unit: Kit, sheet: Sheet, power: Power): string[] => {
  const port = sheet.ports.find(({ id }) => id === power.port);
  const dotted = `${unit.id}.${power.port}`;
  if (port?.protocol === 'dc') {
    return [
      `From a feed of its own: ${amountWords(power)}.`,
      ...(unit.fate === 'goes' ? [] : [feedWords(index, dotted), ...sizeWords(plan, dotted)]),
      ...voltsWords(plan, dotted),
      needsWords(power),
      ...fuseWords(power),
    ];
  }
  const from = port?.protocol === 'nmea2000' ? 'the bus' : `port ${power.port}`;
  const len = port?.len === undefined ? '' : `, entered as ${port.len} LEN`;
  return [
    `From ${from}: ${amountWords(power)}${len}.`,
    needsWords(power),
    ...voltsWords(plan, dotted),
    ...fuseWords(power),
  ];
};

/** What a unit draws, from where, and what it gets at its plug: one sentence each; amperes or watts as its sheet has them. */
export const unitDraws = ({
  index,
  plan,
  unit,
  sheet,
}: {
  index: CardBoat;
  plan: Plan;
  unit: Kit;
  sheet: Sheet;
}): string[] => {
  const powered = new Set((sheet.power ?? []).map((power) => power.port));
  const lines = (sheet.power ?? []).flatMap((power) => powerLines(index, plan, unit, sheet, power));
  const loads = sheet.ports
    .filter((port) => port.len !== undefined && !powered.has(port.id))
    .flatMap((port) => [`From the bus: entered as ${port.len} LEN.`, ...voltsWords(plan, `${unit.id}.${port.id}`)]);
  const drive =
    sheet.drive === undefined
      ? []
      : [
          `Its drive takes ${sheet.drive.runA} A running and ${sheet.drive.peakA} A at its peak, at ${sheet.drive.motorV} V.`,
        ];
  const all = [...lines, ...loads, ...drive];
  return all.length === 0 ? ['Its sheet says nothing of power.'] : all;
};
