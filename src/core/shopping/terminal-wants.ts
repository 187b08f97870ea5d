import { smallPartPrices } from '../facts/buying.ts';
import { crimpPulls } from '../facts/cable-work.ts';
import type { LineEntry } from '../plan-shape.ts';
import { feedCable } from './feed-cable.ts';
import { type OrderInput, plugAt } from './line-cutter.ts';
import type { Want } from './want.ts';

/** Conductors of a feed: out and back. */
const conductors = 2;

const pullWords = (gauge: string | undefined): string => {
  const newtons = crimpPulls.find(({ awg }) => awg === gauge)?.pull?.newtons;
  return newtons === undefined ? '' : ` A crimp of this size stands a pull of ${newtons} N for a minute.`;
};

/**
 * What the conductors of a new feed end in: a ring or captive spade each at the panel, and a joint each where the unit has
 * bare leads of its own. Wire nuts and solder alone are not for boats. Empty where the wire was not sized.
 */
export const terminalWants = (input: OrderInput, line: LineEntry): Want[] => {
  const cable = feedCable(input, line);
  if (cable === undefined) return [];
  const own = [line.from, line.to].flatMap((end) => plugAt(input.index, end) ?? []);
  const joints = own.filter(({ connector, fixedLead }) => connector === 'leads' && fixedLead !== undefined).length;
  const atPanel = 2 - own.length;
  const shared = { kind: 'power', by: 'piece', for: [line.id] } as const;
  const want = (part: { id: string; item: string; ends: number; why: string }): Want[] =>
    part.ends === 0
      ? []
      : [
          {
            ...shared,
            id: `${part.id}-${cable.sizeId}`,
            item: `${part.item} for ${cable.size} mm²`,
            count: conductors * part.ends,
            each: input.prices.each(`${part.id}-${cable.sizeId}`, smallPartPrices.crimpTerminal),
            why: `${part.why}${pullWords(cable.gauge)}`,
          },
        ];
  return [
    ...want({
      id: 'crimp-terminal',
      item: 'crimp terminal, ring or captive spade,',
      ends: atPanel + own.filter(({ connector }) => connector === 'leads').length - joints,
      why: 'Every conductor of a feed ends in a crimped terminal that cannot slip off.',
    }),
    ...want({
      id: 'crimp-joint',
      item: 'crimp joint with adhesive sleeve,',
      ends: joints,
      why: 'The unit has a lead of its own that the feed is joined to.',
    }),
  ];
};
