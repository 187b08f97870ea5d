import { limitValue } from '../../boat/limit-value.ts';
import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { losesTooMuch, volts } from './feed-words.ts';

/** The whole boat is solved with the bank at its lowest and everything drawing: what sags anywhere is seen at the plug. */
export const voltsAtPlugTooLow: Rule = {
  id: 'power/volts-at-plug-too-low',
  level: 'fault',
  title: 'A unit gets fewer volts than it needs.',
  sources: ['choice-conductor-basis'],
  check: ({ index, plan }) => {
    const at = new Map(
      plan.supplies.flatMap((supply) => supply.at.map(({ node, volts: value }) => [node, value] as const)),
    );
    const busLeastV = limitValue(index.boat, 'nmea2000-device-volts-least');
    // A unit that the rule of its bus or of its own wire speaks of already is not told of twice.
    const told = new Set([
      ...plan.buses.flatMap((bus) => bus.volts.filter(({ lowestV }) => lowestV < busLeastV).map(({ port }) => port)),
      ...plan.feeds.filter(losesTooMuch).map(({ to }) => to),
    ]);
    return plan.loads.flatMap(({ port, minV, from }) => {
      const given = at.get(port);
      if (given === undefined || told.has(port) || within({ value: minV, limit: given })) return [];
      return [
        {
          about: [port, ...(from === undefined ? [] : [from])],
          says: `${unitName(index, port)} gets ${volts(given)} when ${from ?? 'its source'} is at its lowest and everything draws; it needs ${minV} V.`,
          measured: { value: given, unit: 'V' },
          limit: { value: minV, unit: 'V', source: `the sheet of ${unitName(index, port)}` },
          cure: 'Lay thicker wire on the way, from the battery on; the table of feeds says where most is lost.',
        },
      ];
    });
  },
};
