import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { Plug } from '../../boat/sheet.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

const plugAt = (index: BoatIndex, end: string): Plug | undefined => {
  const [kit = '', plug = ''] = end.split('.');
  return index.sheetOf.get(kit)?.plugs.find(({ id }) => id === plug.split('#')[0]);
};

/** A lead that is part of its unit ends where it ends; one that may not be extended must reach by itself. */
export const fixedLeadTooShort: Rule = {
  id: 'plugs/fixed-lead-too-short',
  level: 'fault',
  title: 'A fixed lead may not reach.',
  sources: ['geometry'],
  check: ({ index, plan }) =>
    plan.lines
      .filter(({ kept }) => kept === undefined)
      .flatMap((line) =>
        [line.from, line.to].flatMap((end) => {
          const plug = plugAt(index, end);
          if (plug?.fixedLead === undefined || plug.mayExtend === true) return [];
          const leadM = lengthMm(plug.fixedLead).shortestMm / 1000;
          if (line.longestM <= leadM) return [];
          const isSure = line.lengthM > leadM && plug.mayExtend === false;
          return [
            {
              about: [end.split('.')[0] ?? end],
              apart: [end === line.from ? line.to : line.from],
              level: isSure ? ('fault' as const) : ('doubt' as const),
              says: `The lead of ${unitName(index, end)} is ${metres(leadM)} long${plug.mayExtend === false ? ' and may not be extended' : ', and its sheet does not say whether it may be extended'}; the way is ${metres(line.lengthM)} and could be ${metres(line.longestM)}.`,
              measured: { value: line.longestM, unit: 'm' },
              limit: { value: leadM, unit: 'm', source: 'the lead as its sheet gives it' },
              cure: 'Order the longer lead, move one of the two units, or look up whether the maker sells an extension.',
            },
          ];
        }),
      ),
};
