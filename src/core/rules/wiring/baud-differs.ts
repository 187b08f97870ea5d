import { portOf } from '../../boat/boat-index.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** The usual speed of an old 0183 port whose sheet says nothing. */
const usualBaud = 4800;

/** A listener at another speed hears nothing and shows no error. */
export const baudDiffers: Rule = {
  id: 'wiring/baud-differs',
  level: 'fault',
  title: 'Talker and listener of one 0183 pair run at different speeds.',
  sources: ['iec-61162'],
  check: ({ index, plan }) =>
    plan.joins
      .filter((join) => join.kind === 'nmea0183')
      .flatMap((join) => {
        const at = (member: { kit: string; port: string }): number =>
          portOf(index, `${member.kit}.${member.port}`)?.baud ?? usualBaud;
        const talker = join.members.find((member) => member.as === 'talk');
        if (talker === undefined) return [];
        return join.members
          .filter((member) => member.as === 'listen' && at(member) !== at(talker))
          .map((listener) => ({
            about: [join.id, `${talker.kit}.${talker.port}`, `${listener.kit}.${listener.port}`],
            says: `${unitName(index, talker.kit)} talks at ${at(talker)} baud and ${unitName(index, listener.kit)} listens at ${at(listener)}; nothing is heard, and no error is shown.`,
            measured: { value: at(listener), unit: 'baud' },
            limit: { value: at(talker), unit: 'baud', source: 'the talker’s own speed' },
            cure: 'Set both to the same speed, or put a converter between them.',
          }));
      }),
};
