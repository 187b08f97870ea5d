import type { BoatIndex } from '../boat/boat-index.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Plug } from '../boat/sheet.ts';
import { passageHours } from '../facts/buying.ts';
import { typicalPrices } from '../facts/prices.ts';
import type { LineEntry } from '../plan-shape.ts';
import { wayLengths } from '../ways/way-lengths.ts';
import { endPlugs, type FieldPlug, fieldPlug } from './cable-wants.ts';
import { cutLine, needsMouldedLead, type OrderInput, plugAt } from './line-cutter.ts';
import type { Want } from './want.ts';

/** What a plug fitted behind the hole costs, with the work, in hundredths of the currency, and the plugs to buy for it. */
export interface PlugFit {
  readonly cost: number;
  readonly wants: readonly Want[];
}

const why = 'The moulded plug of this cable does not pass a hole: it is cut off, and one fitted behind the hole.';

const fitted = ({ index }: OrderInput, plugs: readonly FieldPlug[]): PlugFit => {
  const { hour } = index.boat.prices ?? typicalPrices;
  const parts = plugs.reduce((sum, { weighs }) => sum + weighs, 0);
  return {
    cost: parts + Math.round(hour * passageHours.fitPlug.value * plugs.length),
    wants: plugs.map(({ want }) => want),
  };
};

/** The plugs of fixed leads that have to pass one of some ways, because their lead is longer than the cable before the first. */
const leadsThrough = (index: BoatIndex, line: LineEntry, stuck: readonly string[]): readonly Plug[] => {
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const reaches = (end: string, ways: readonly string[]): Plug[] => {
    const plug = plugAt(index, end);
    const before = ways.slice(
      0,
      Math.max(
        0,
        ways.findIndex((way) => stuck.includes(way)),
      ),
    );
    const beforeMm = before.reduce((sumMm, way) => sumMm + (lengths.get(way)?.mm ?? 0), 0);
    const isThrough = plug?.fixedLead !== undefined && lengthMm(plug.fixedLead).longestMm > beforeMm;
    return plug !== undefined && isThrough && plug.connector !== 'leads' ? [plug] : [];
  };
  return [...reaches(line.from, line.ways), ...reaches(line.to, line.ways.toReversed())];
};

/** Whether the cable of a line is there already, with its plugs on. */
const isHad = ({ boat }: BoatIndex, line: LineEntry): boolean => {
  const pins = boat.pins?.pieces;
  const pieces = pins !== undefined && Object.hasOwn(pins, line.id) ? pins[line.id] : undefined;
  return line.pinned === 'bought' || (pieces !== undefined && pieces.state !== 'fixed');
};

/**
 * The plug of a line fitted aboard, behind the ways it does not pass (`stuck`). One end is cut off, where a plug can be
 * bought for it; a fixed lead only where its sheet says that it may be cut. Cable by the metre is drawn before it has any
 * plug, and costs nothing more. Absent where it cannot be done.
 */
export const fitPlug = (input: OrderInput, line: LineEntry, stuck: readonly string[]): PlugFit | undefined => {
  const { index } = input;
  if (needsMouldedLead(index, line)) return undefined;
  const leads = leadsThrough(index, line, stuck);
  if (leads.length > 0) {
    const plugs = leads.flatMap(
      ({ connector, gender, mayCut }) =>
        (mayCut === true ? fieldPlug(input, line, { connector, gender, why }) : undefined) ?? [],
    );
    return plugs.length < leads.length ? undefined : fitted(input, plugs);
  }
  const cut = isHad(index, line) ? undefined : cutLine(input, line, Math.round(line.longestM * 1000));
  if (cut?.pieces.every(({ made }) => made) === true) return { cost: 0, wants: [] };
  const [plug] = endPlugs(input, line, why).sort((one, other) => one.weighs - other.weighs);
  return plug === undefined ? undefined : fitted(input, [plug]);
};
