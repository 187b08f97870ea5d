import type { Rule } from '../rule.ts';
import { fedName } from './feed-words.ts';

/** Without its size nothing is known of the drop in a wire that stays, nor of the fuse it needs. */
export const wireSizeUnknown: Rule = {
  id: 'power/wire-size-unknown',
  level: 'advice',
  title: 'A feed rests on a wire whose size nobody has read.',
  sources: ['choice-conductor-basis'],
  check: ({ index, plan }) => {
    const unread = plan.feeds.filter(({ wire, areaMm2 }) => wire === 'aboard' && areaMm2 === undefined);
    if (unread.length === 0) return [];
    const told = [...new Set(unread.map(({ to }) => fedName(index, to)))];
    return [
      {
        about: unread.map(({ to }) => to),
        says: `Nobody has said how thick the wire aboard is that feeds ${told.join(', ')}: drop and fuse are reckoned as if it lost just what it may.`,
        cure: 'Read the size off its sheath or measure a strand, and enter it as areaMm2 of the cable.',
      },
    ];
  },
};
