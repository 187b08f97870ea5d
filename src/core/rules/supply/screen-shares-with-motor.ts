import type { BoatIndex } from '../../boat/boat-index.ts';
import { motorKinds, screenKinds } from '../../facts/supply-figures.ts';
import type { CircuitEntry, PanelEntry } from '../../panels-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

const motors: readonly string[] = motorKinds.kinds;
const screens: readonly string[] = screenKinds.kinds;

const kindOf = (index: BoatIndex, target: string): string => index.sheetOf.get(unitOf(target))?.kind ?? '';

const isMotor = (index: BoatIndex, target: string): boolean =>
  target.includes('.') &&
  (index.sheetOf.get(unitOf(target))?.drive !== undefined || motors.includes(kindOf(index, target)));

const isScreen = (index: BoatIndex, target: string): boolean =>
  target.includes('.') && !isMotor(index, target) && screens.includes(kindOf(index, target));

/** Motors on a circuit: units that are, and what its name says. */
const motorsOn = (index: BoatIndex, { feeds, name = '' }: CircuitEntry): string[] => {
  const units = feeds.filter((target) => isMotor(index, target)).map((target) => fedName(index, target));
  const named = motorKinds.words.some((word) => name.toLowerCase().includes(word)) ? [name] : [];
  return units.length > 0 ? units : named;
};

const screensOn = (index: BoatIndex, { feeds }: CircuitEntry): string[] =>
  feeds.filter((target) => isScreen(index, target));

const onOneCircuit = (index: BoatIndex, { panel, circuits }: PanelEntry): Observation[] =>
  circuits.flatMap((circuit) => {
    const [motor, shown] = [motorsOn(index, circuit), screensOn(index, circuit)];
    if (motor.length === 0 || shown.length === 0) return [];
    return [
      {
        about: [circuit.circuit, panel, ...aFew(shown.map(unitOf))],
        says: `${someNames(shown.map((target) => fedName(index, target)))} and ${someNames(motor)} hang on one circuit, ${circuit.circuit}. Each start of the motor pulls the volts down and the screen starts anew; when the motor jams, the breaker takes both.`,
        cure: 'Give the motor a circuit of its own, from the bus bar by the battery.',
      },
    ];
  });

/** On a small panel behind another the thin feeder is shared, which sags as well. */
const onOneFeeder = (index: BoatIndex, entry: PanelEntry): Observation[] => {
  if (index.banks.has(entry.from)) return [];
  const turning = entry.circuits.filter((circuit) => motorsOn(index, circuit).length > 0);
  const shown = entry.circuits.filter((circuit) => !turning.includes(circuit)).flatMap((one) => screensOn(index, one));
  if (turning.length === 0 || shown.length === 0) return [];
  const motor = turning.flatMap((circuit) => motorsOn(index, circuit));
  return [
    {
      about: [entry.panel, ...turning.map(({ circuit }) => circuit)],
      level: 'doubt',
      says: `${someNames(motor)} ${motor.length === 1 ? 'hangs' : 'hang'} on the small panel ${entry.panel}, whose one feeder also serves ${someNames(shown.map((target) => fedName(index, target)))}. Each start pulls the volts of all down.`,
      cure: 'Feed the motor from the main panel or the bus bar by the battery.',
    },
  ];
};

/** Thruster, windlass and pilot drive are kept off the wires of the screens. */
export const screenSharesWithMotor: Rule = {
  id: 'supply/screen-shares-with-motor',
  level: 'fault',
  title: 'A screen shares its feed with a motor.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) =>
    plan.panels.flatMap((panel) => [...onOneCircuit(index, panel), ...onOneFeeder(index, panel)]),
};
