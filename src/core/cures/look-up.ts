import { splitDotted } from '../boat/ids.ts';
import { readingWords } from '../facts/reading-words.ts';
import type { Cure } from '../plan-shape.ts';
import type { Arrival } from '../readings/arrivals.ts';
import { heardAs } from '../readings/why-words.ts';
import type { CureContext } from './cure-context.ts';

type Page = readonly [port: string, question: string];

/** A screen that takes a reading at none of its ports shows it to nobody, whatever is bought to send it. */
const deafScreen = ({ network }: CureContext, { at, reading }: Arrival): Page | undefined => {
  const ports = network.nodesOf.get(at) ?? [];
  const [port] = ports;
  return port === undefined || ports.some(({ hears }) => hears.has(reading))
    ? undefined
    : [port.id, `whether it takes ${readingWords[reading]} at all`];
};

/** What to look up in the manual of the unit at one end of the broken link, where that alone may close the gap. */
const pageOf = (context: CureContext, missing: Arrival): Page | undefined => {
  const { from, to, broken } = missing.whyNot?.link ?? {};
  const reading = readingWords[missing.reading];
  const listener = context.network.nodes.get(to ?? '');
  if (broken === 'generation-unknown' && to !== undefined)
    return [to, "whether it understands this generation of its maker's language, and enter the answer on the join"];
  if (broken === 'too-slow' && from !== undefined) return [from, `how often it can send ${reading}`];
  if (broken === 'no-offset' && from !== undefined) return [from, 'whether it can send the offset with the depth'];
  if (broken === 'no-source') return deafScreen(context, missing);
  if (broken !== 'not-heard' || from === undefined || to === undefined || listener === undefined) return undefined;
  const heard = heardAs(listener, missing.reading);
  return heard === '' ? [to, `whether it takes ${reading} after all`] : [from, `whether it can send ${heard}`];
};

/** The one page of a manual that may show the gap to be none, while all that is known of the unit is a typical sheet. */
export const lookUp = (context: CureContext, missing: Arrival): Cure[] => {
  const [port, question] = pageOf(context, missing) ?? [];
  if (port === undefined) return [];
  const { kit } = splitDotted(port);
  if (context.index.sheetOf.get(kit)?.source !== 'typical') return [];
  return [{ says: `Look up in the manual of ${context.index.kit.get(kit)?.name ?? kit} ${question}.`, edits: [] }];
};
