import type { Cable, Kit } from '../../core/boat/boat-schema.ts';
import type { Plug, Sheet } from '../../core/boat/sheet.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { endWords } from '../lists/end-words.ts';
import { wiresWords } from '../lists/wire-words.ts';
import { codeOf } from '../sheet/line-code.ts';
import type { CardBoat } from './card-boat.ts';
import { connectorWords } from './connector-words.ts';
import { lineWords } from './line-words.ts';

/** One thing that is to be plugged in, or unplugged. */
export interface PlugLine {
  readonly says: string;
  /** places it passes, in words, from this plug on */
  readonly route?: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

/** One plug of a unit and where everything in it goes. */
export interface PlugCard {
  readonly plug: string;
  readonly what: string;
  readonly lines: readonly PlugLine[];
}

/** Two feeds on one plug are told apart after a number sign. */
const isAt = (end: string, plug: string): boolean => end === plug || end.startsWith(`${plug}#`);

const placeName = (index: CardBoat, id: string): string => index.places.get(id)?.name ?? id;

/** The far end in words: a drop goes to its tee, which stands at a place. */
const farWords = (index: CardBoat, far: string, places: readonly string[]): string => {
  const bus = index.buses.get(far);
  const last = places.at(-1);
  if (bus === undefined || last === undefined) return endWords(index, far);
  return `its tee on ${bus.name}, ${placeName(index, last)}`;
};

const plannedLine = (index: CardBoat, line: LineEntry, plug: string): PlugLine => {
  const isFrom = isAt(line.from, plug);
  const places = isFrom ? line.places : [...line.places].reverse();
  const far = isFrom ? line.to : line.from;
  const wires = wiresWords(index, line);
  const route = places.map((place) => placeName(index, place)).join(' > ');
  return {
    says: `${lineWords(line)}, to ${farWords(index, far, places)}${wires === '' ? '' : `. Wires ${wires}.`}`,
    ...(places.length > 1 ? { route } : {}),
    lights: [line.id],
  };
};

const leavingCable = (index: CardBoat, cable: Cable, plug: string): PlugLine => {
  const far = cable.from.at === plug ? cable.to : cable.from;
  const where = far.at === undefined ? placeName(index, far.place) : endWords(index, far.at);
  return { says: `old ${codeOf(cable.kind).words}, ${cable.id}, to ${where}: leaves`, lights: [cable.id] };
};

const plugCard = ({ index, plan, unit, plug }: { index: CardBoat; plan: Plan; unit: Kit; plug: Plug }): PlugCard => {
  const id = `${unit.id}.${plug.id}`;
  const planned = plan.lines.filter(({ from, to }) => isAt(from, id) || isAt(to, id));
  const gaps = plan.gaps.filter(({ from, to }) => isAt(from, id) || isAt(to, id));
  const leaving = index.boat.cables.filter(({ from, to, fate }) => fate === 'goes' && (from.at === id || to.at === id));
  return {
    plug: plug.id,
    what: connectorWords(plug),
    lines: [
      ...planned.map((line) => plannedLine(index, line, id)),
      ...gaps.map(({ kind, from, to }) => ({
        says: `${codeOf(kind).words} to ${endWords(index, isAt(from, id) ? to : from)}: no way leads there`,
        lights: [unit.id],
      })),
      ...leaving.map((cable) => leavingCable(index, cable, id)),
    ],
  };
};

/** Every plug of a unit with the lines in it: the planned ones with their route, those no way leads for, the old ones that leave. */
export const unitPlugs = ({
  index,
  plan,
  unit,
  sheet,
}: {
  index: CardBoat;
  plan: Plan;
  unit: Kit;
  sheet: Sheet;
}): PlugCard[] => sheet.plugs.map((plug) => plugCard({ index, plan, unit, plug }));
