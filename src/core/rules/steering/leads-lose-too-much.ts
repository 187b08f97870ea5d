import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { eachCheck } from './drive-words.ts';

export const leadsLoseTooMuch: Rule = {
  id: 'steering/leads-lose-too-much',
  level: 'fault',
  title: 'Feed and lead of a steering drive lose too much together.',
  sources: ['abyc-e11', 'choice-drive-drop'],
  check: (input) =>
    eachCheck(input, ['leads-run', 'leads-peak'], ({ entry, check, drive }) => {
      const lead = input.plan.feeds.flatMap(({ leads = [] }) => leads).find(({ to }) => to === entry.drive);
      const isPeak = check.check === 'leads-peak';
      const way = `${(lead?.lengthM ?? 0).toFixed(2)} m of ${lead?.areaMm2 ?? 0} mm²`;
      return {
        says: `From the panel to ${drive} ${(check.asked ?? 0).toFixed(1)} % of the volts are lost ${isPeak ? 'at its peak' : 'as it runs'}, its lead of ${way} counted with the feed of its computer. The rudder turns slowly and the pilot sounds its alarm.`,
        measured: { value: check.asked ?? 0, unit: '%' },
        limit: limitPart(limitOf(input.index.boat, isPeak ? 'drive-peak-drop' : 'feed-drop')),
        cure: 'Thicker wire for feed and lead together, or the computer nearer to the drive.',
      };
    }),
};
