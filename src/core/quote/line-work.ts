import type { BoatIndex } from '../boat/boat-index.ts';
import { splitDotted } from '../boat/ids.ts';
import type { LineEntry, Plan } from '../plan-shape.ts';
import type { Work } from './quote-shape.ts';

/** The length that pulling one cable stands for. */
const pulledM = 10;

const hairM = 1e-6;

/** The unit at an end of a line: `radio.dc`, or a tee of a bus, `nav/radio.n2k`. */
export const unitAt = ({ kit }: BoatIndex, end: string) =>
  kit.get(splitDotted(end.slice(end.lastIndexOf('/') + 1)).kit);

const endUnits = (index: BoatIndex, { from, to }: LineEntry) => [from, to].flatMap((end) => unitAt(index, end) ?? []);

/** The phase in which both ends of a line are aboard. */
export const phaseOfLine = (index: BoatIndex, line: LineEntry): number =>
  Math.max(1, ...endUnits(index, line).map(({ fate, phase = 1 }) => (fate === 'comes' ? phase : 1)));

/** How a cable is got into place: in a mast, through a pipe that is full, or by the ten metres; not at all where it stays in one place. */
const pullOf = (
  index: BoatIndex,
  full: ReadonlySet<string>,
  { ways, longestM }: LineEntry,
): Pick<Work, 'task' | 'count'>[] => {
  if (ways.length === 0) return [];
  const mast = index.boat.quote?.mast === 'down' ? 'mast-cable-down' : 'mast-cable-up';
  if (ways.some((way) => index.ways.get(way)?.kind === 'mast')) return [{ task: mast, count: 1 }];
  if (ways.some((way) => full.has(way))) return [{ task: 'pull-full', count: 1 }];
  return [{ task: 'pull-10m', count: Math.max(1, Math.ceil(longestM / pulledM - hairM)) }];
};

const isRadarCable = (index: BoatIndex, line: LineEntry): boolean =>
  endUnits(index, line).some(({ id, fate }) => fate === 'comes' && index.sheetOf.get(id)?.kind === 'radar');

/**
 * The work on one new line. A feed and a drop have their cable in their task, and a new radar has its own, unless it takes a
 * mast or a full pipe; other cables are pulled.
 */
const workOf = (index: BoatIndex, full: ReadonlySet<string>, line: LineEntry): Pick<Work, 'task' | 'count'>[] => {
  const pull = pullOf(index, full, line);
  const hard = pull.filter(({ task }) => task !== 'pull-10m');
  switch (line.kind) {
    case 'feed':
    case 'feeder':
      return [{ task: 'power-feed', count: 1 }, ...(isRadarCable(index, line) ? [] : hard)];
    case 'drop':
      return [{ task: 'backbone-10', count: 1 }, ...hard];
    default:
      return isRadarCable(index, line) ? [] : pull;
  }
};

/** Ways that the file gives hours to open, once each, in the first phase that leads a cable through. */
const openWork = (index: BoatIndex, lines: readonly { readonly line: LineEntry; readonly phase: number }[]): Work[] =>
  [...index.ways.values()].flatMap((way): Work[] => {
    const phases = lines.filter(({ line }) => line.ways.includes(way.id)).map(({ phase }) => phase);
    if (way.hours === undefined || way.hours === 0 || phases.length === 0) return [];
    return [{ task: 'open-way', count: 1, phase: Math.min(...phases), of: way.id, eachH: way.hours }];
  });

/** The work on lines: those that do not lie aboard already, the ways opened for them, and holes bored wider. */
export const lineWork = (index: BoatIndex, plan: Pick<Plan, 'lines' | 'ways' | 'passages'>): Work[] => {
  const full = new Set(
    plan.ways.filter(({ verdict, reasons }) => verdict !== 'fits' && reasons.includes('fill')).map(({ id }) => id),
  );
  const fresh = plan.lines
    .filter(({ kept }) => kept === undefined)
    .map((line) => ({ line, phase: phaseOfLine(index, line) }));
  const phaseBy = new Map(fresh.map(({ line, phase }) => [line.id, phase]));
  const holes = plan.passages
    .filter(({ takes, line }) => takes === 'wider-hole' && phaseBy.has(line))
    .map(({ way, line }): Work => ({ task: 'widen-hole', count: 1, phase: phaseBy.get(line) ?? 1, of: way }));
  return [
    ...fresh.flatMap(({ line, phase }) =>
      workOf(index, full, line).map((work): Work => ({ ...work, phase, of: line.id })),
    ),
    ...openWork(index, fresh),
    ...new Map(holes.map((hole) => [hole.of, hole])).values(),
  ];
};
