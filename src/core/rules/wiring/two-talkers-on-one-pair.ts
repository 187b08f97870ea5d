import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Two talkers on one listener's pair garble each other; a multiplexer or a second input is needed. */
export const twoTalkersOnOnePair: Rule = {
  id: 'wiring/two-talkers-on-one-pair',
  level: 'fault',
  title: 'Two talkers end at one 0183 input.',
  sources: ['practice-0183'],
  check: ({ index, plan }) => {
    const talkersAt = new Map<string, Set<string>>();
    for (const join of plan.joins) {
      if (join.kind !== 'nmea0183' && join.kind !== 'single-wire') continue;
      const talkers = join.members.filter((member) => member.as !== 'listen').map((m) => `${m.kit}.${m.port}`);
      for (const member of join.members.filter((one) => one.as === 'listen')) {
        const port = `${member.kit}.${member.port}`;
        talkersAt.set(port, new Set([...(talkersAt.get(port) ?? []), ...talkers]));
      }
    }
    return [...talkersAt]
      .filter(([, talkers]) => talkers.size > 1)
      .map(([listener, talkers]) => ({
        about: [listener, ...talkers],
        says: `${[...talkers].map((talker) => unitName(index, talker)).join(' and ')} both talk into the same input of ${unitName(index, listener)}; both arrive garbled.`,
        cure: 'Use a second input, or a multiplexer that joins the two.',
      }));
  },
};
