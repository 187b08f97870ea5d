import { byCodeUnit } from '../boat/ids.ts';
import type { PortNetwork, PortNode } from '../readings/port-network.ts';

/** A converter that may turn the heading fields of a log without a compass into a heading. */
export interface LogHeading {
  /** `kit.port` of the log, of the converter’s input, and of what it passes on to */
  readonly log: string;
  readonly input: string;
  readonly to: string;
}

const hasSentence = (list: PortNode['port']['sends'] | PortNode['port']['hears'], letters: string): boolean =>
  list?.some(({ sentence }) => sentence === letters) === true;

/**
 * Inputs that take VHW from a unit which has no heading to give, and carry heading on: VHW has a field for heading that a log
 * without a compass leaves empty, sets to nothing, or fills with its course. Pure; sorted by input.
 */
export const logHeadings = ({ nodes }: PortNetwork): LogHeading[] =>
  [...nodes.values()]
    .filter(({ port }) => hasSentence(port.hears, 'VHW'))
    .flatMap((node) => {
      const ends = node.turnsFrom.filter(({ turn }) => turn.carries.some(({ reading }) => reading === 'heading'));
      const talkers = node.memberships.flatMap(({ net }) => net.members.filter(({ talks }) => talks));
      if (talkers.some((talker) => talker.node.gives.has('heading'))) return [];
      return talkers
        .filter((talker) => hasSentence(talker.node.port.sends, 'VHW'))
        .flatMap((talker) => ends.map(({ to }) => ({ log: talker.node.id, input: node.id, to: to.id })));
    })
    .sort((a, b) => byCodeUnit(a.input, b.input) || byCodeUnit(a.to, b.to) || byCodeUnit(a.log, b.log));
