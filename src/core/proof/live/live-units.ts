import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Plan } from '../../plan-shape.ts';
import type { ProofReport, ProofUnit } from '../compare/proof-report.ts';
import type { KnownUnits } from './live-senders.ts';
import type { HowSure, LiveSender, LiveUnit } from './live-snapshot.ts';

const howOf = ({ state, by }: ProofUnit): HowSure | undefined => {
  if (state === 'found') return by === 'identity' ? 'identity' : 'sure';
  return state === 'alike' || state === 'doubtful' ? state : undefined;
};

/** Which unit of the plan speaks from which address now, as the comparison has it; of two that used one the surer. */
export const knownUnits = ({ units }: ProofReport): KnownUnits => {
  const known = new Map<number, { unit: string; how: HowSure }>();
  const order: readonly HowSure[] = ['doubtful', 'alike', 'sure', 'identity'];
  for (const wanted of order) {
    for (const unit of units) {
      const address = unit.addresses.at(-1);
      if (howOf(unit) === wanted && address !== undefined) known.set(address, { unit: unit.unit, how: wanted });
    }
  }
  return known;
};

/**
 * Which unit says a sentence: the one talker of the plan that sends it. A multiplexer passes on what others say, so it
 * counts only where nobody else can have said it. Undefined where several can.
 */
export const sentenceSayer = (
  index: BoatIndex,
  plan: Plan,
): ((talker: string, formatter: string) => string | undefined) => {
  const sayers = new Map<string, { own: Set<string>; passing: Set<string> }>();
  const talkers = plan.joins.flatMap(({ kind, members }) =>
    kind === 'nmea0183' ? members.filter((one) => one.as !== 'listen') : [],
  );
  for (const { kit, port } of talkers) {
    const sheet = index.sheetOf.get(kit);
    const passes = sheet?.turns?.some(({ toPort }) => toPort === port) === true;
    for (const { sentence } of sheet?.ports.find(({ id }) => id === port)?.sends ?? []) {
      if (sentence === undefined) continue;
      const of = sayers.get(sentence) ?? { own: new Set(), passing: new Set() };
      sayers.set(sentence, of);
      (passes ? of.passing : of.own).add(kit);
    }
  }
  return (_talker, formatter) => {
    const { own, passing } = sayers.get(formatter) ?? { own: new Set<string>(), passing: new Set<string>() };
    const can = own.size > 0 ? own : passing;
    return can.size === 1 ? [...can][0] : undefined;
  };
};

const stateOf = (unit: ProofUnit, senders: readonly LiveSender[]): Pick<LiveUnit, 'state' | 'ageMs'> => {
  const mine = senders.filter((sender) => sender.unit === unit.unit);
  const [latest] = [...mine].sort((a, b) => a.ageMs - b.ageMs);
  if (latest === undefined) return { state: unit.state === 'not-due' ? 'not-due' : 'unheard' };
  return { state: latest.silent === true ? 'silent' : 'speaking', ageMs: latest.ageMs };
};

/** Every planned unit of the watched wires, and whether it speaks. */
export const liveUnits = ({ units }: ProofReport, senders: readonly LiveSender[]): LiveUnit[] => {
  const each = new Map(units.map((unit) => [unit.unit, unit]));
  return [...each.values()]
    .map((unit) => ({ unit: unit.unit, ...stateOf(unit, senders) }))
    .sort((a, b) => byCodeUnit(a.unit, b.unit));
};
