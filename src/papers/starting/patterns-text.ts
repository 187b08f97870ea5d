import { boatPatterns } from '../../core/starting/patterns/index.ts';
import { textLines } from '../../core/units/text-lines.ts';

const width = 80;
const idWidth = Math.max(...boatPatterns.map(({ id }) => id.length)) + 2;

/** The hull patterns there are, one a line, in 80 columns. */
export const patternsText = (): string =>
  `${boatPatterns.flatMap(({ id, name }) => textLines(name, { width, lead: id.padEnd(idWidth) })).join('\n')}\n`;
