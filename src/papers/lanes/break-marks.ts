import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan, ReadingEntry } from '../../core/plan-shape.ts';

/** A link of the network at which readings break off. */
export interface LaneBreak {
  readonly id: string;
  /** units on both sides of it, the far one last */
  readonly units: readonly string[];
  /** "depth at screen 12 in" for each reading that breaks off here */
  readonly readings: readonly string[];
}

type WhyNot = NonNullable<ReadingEntry['whyNot']>;

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/**
 * The id of the link at which a reading breaks off, so that its card and the diagram light each other.
 *
 * @example breakId({ broken: 'not-joined', from: 'log.out', to: 'mux.in' }, 'screen') // 'break:log.out~mux.in'
 */
export const breakId = ({ from, to }: WhyNot['link'], at: string): string =>
  `break:${[from, to ?? (from === undefined ? at : undefined)].flatMap((port) => port ?? []).join('~')}`;

/** Every link at which the way of a reading breaks, each once. */
export const laneBreaks = (plan: Plan, labels: ReadonlyMap<string, string>): LaneBreak[] => {
  const breaks = new Map<string, LaneBreak>();
  for (const entry of plan.readings) {
    if (entry.whyNot === undefined) continue;
    const { link } = entry.whyNot;
    const id = breakId(link, entry.at);
    const ports = [link.from, link.to].flatMap((port) => (port === undefined ? [] : unitOf(port)));
    const units = ports.length === 0 ? [entry.at] : [...new Set(ports)];
    const words = `${readingName(entry)} at ${labels.get(entry.at) ?? entry.at}`;
    breaks.set(id, { id, units, readings: [...(breaks.get(id)?.readings ?? []), words] });
  }
  return [...breaks.values()];
};
