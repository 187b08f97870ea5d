import { portOf } from '../../boat/boat-index.ts';
import type { Port } from '../../boat/sheet.ts';
import { howPairsJoin } from '../../facts/nmea0183.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

type Line = NonNullable<Port['line']>;
interface End {
  readonly port: string;
  readonly line: Line;
}

const isSerial = ({ line }: End): boolean => line === 'rs232';

const howToJoin = (talker: End, listener: End): string | undefined => {
  if (talker.line === 'differential' && listener.line === 'single-ended') {
    const { joins } = howPairsJoin['pair to single wire'];
    return `${joins.join(', ')}; leave B open and insulated: tied to ground it drives current at every bit and joins two grounds.`;
  }
  if (talker.line === 'single-ended' && listener.line === 'differential') {
    return `${howPairsJoin['single wire to pair'].joins.join(', ')}.`;
  }
  return undefined;
};

/** A computer's RS-232 joined bare to a pair is luck; a pair and a single wire have one right way to be joined. */
const meeting = (about: readonly string[], names: string, talker: End, listener: End): Observation[] => {
  if (isSerial(talker) !== isSerial(listener)) {
    return [
      {
        about,
        says: `${names} are joined bare, one an RS-232 port, the other not. That it works is luck, and it can hurt the port.`,
        cure: 'Put an isolator or a proper converter between the two.',
      },
    ];
  }
  const how = howToJoin(talker, listener);
  if (how === undefined) return [];
  return [
    {
      about,
      level: 'advice',
      says: `${names} meet with different lines: one a pair, the other a single wire. There is one right way to join them.`,
      cure: how,
    },
  ];
};

export const lineKindsMeet: Rule = {
  id: 'wiring/line-kinds-meet',
  level: 'fault',
  title: 'Two kinds of 0183 line meet.',
  sources: ['practice-0183-pairs'],
  check: ({ index, plan }) =>
    plan.joins
      .filter(({ kind }) => kind === 'nmea0183')
      .flatMap(({ id, members }) => {
        const ends = members.flatMap(({ kit, port, as }) => {
          const line = portOf(index, `${kit}.${port}`)?.line;
          return line === undefined ? [] : [{ port: `${kit}.${port}`, line, as }];
        });
        const talker = ends.find(({ as }) => as === 'talk');
        if (talker === undefined) return [];
        return ends
          .filter(({ as }) => as === 'listen')
          .flatMap((listener) =>
            meeting(
              [id, talker.port, listener.port],
              `${unitName(index, talker.port)} and ${unitName(index, listener.port)}`,
              talker,
              listener,
            ),
          );
      }),
};
