import { type BoatIndex, indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Place } from '../../core/boat/boat-schema.ts';
import { cautions } from '../../core/facts/cautions.ts';
import { printLength } from '../../core/units/print-length.ts';
import type { WalkStop } from '../../core/walk-round/walk-question.ts';
import { walkRound } from '../../core/walk-round/walk-round.ts';
import { safeHtml } from '../safe-html.ts';
import { type QuestionWords, questionWords } from './question-words.ts';

const style = `
@page { size: A4; margin: 14mm; }
body { font: 10.5pt/1.35 "Source Sans 3", "Liberation Sans", Arial, sans-serif; color: #17232f; max-width: 182mm; margin: 0 auto; }
h1 { font-size: 17pt; margin: 0 0 2mm; }
h2 { font-size: 12.5pt; margin: 6mm 0 1mm; border-bottom: 0.4mm solid #17232f; break-after: avoid; }
p { margin: 0 0 2mm; }
.where, .file { color: #58626c; }
.caution { border-left: 1mm solid #17232f; padding-left: 2mm; break-inside: avoid; }
table { width: 100%; border-collapse: collapse; }
tr { break-inside: avoid; }
td { border-bottom: 0.2mm solid #c9c2b0; padding: 1.4mm 2mm 1.4mm 0; vertical-align: top; }
td.of { width: 30%; }
td.answer { width: 34%; }
.box { display: inline-block; width: 3mm; height: 3mm; border: 0.3mm solid #17232f; margin-right: 1.2mm; }
.choice { white-space: nowrap; margin-right: 3mm; }
.blank { display: block; border-bottom: 0.25mm dotted #17232f; min-height: 6mm; padding-top: 1.6mm; margin-bottom: 0.6mm; font-size: 8.5pt; color: #58626c; }
.line { display: block; border-bottom: 0.25mm dotted #17232f; height: 6mm; }
`;

/** Classes of the three columns. */
const columns = ['of', 'asks', 'answer'] as const;

const box = '<span class="box"></span>';
const line = '<span class="line"></span>';

const blankLine = (name: string): string => `<span class="blank">${safeHtml(name)}</span>`;

const answerSpace = ({ space, blanks = [] }: QuestionWords): string => {
  if (space === 'settings') return `${blanks.map(blankLine).join('')}${box}all is copied`;
  if (space === 'line') return line + line;
  if (space === 'length') return line;
  return space.map((choice) => `<span class="choice">${box}${safeHtml(choice)}</span> `).join('');
};

/** The rows of a place; what a row is about is said where it changes. */
const questionRows = (index: BoatIndex, { place, questions }: WalkStop): string[] => {
  let before = '';
  return questions
    .filter(({ known }) => !known)
    .map((question) => {
      const words = questionWords(index, question, place);
      const { of, asks, file } = words;
      const says = file === undefined ? '' : ` <span class="file">In the file: ${safeHtml(file)}.</span>`;
      const cells = [of === before ? '' : safeHtml(of), `${safeHtml(asks)}${says}`, answerSpace(words)];
      before = of;
      return `<tr>${cells.map((cell, at) => `<td class="${columns[at]}">${cell}</td>`).join('')}</tr>`;
    });
};

const whereWords = ({ xM, yM, zM }: Place): string => {
  const side = yM === 0 ? 'on the centreline' : yM > 0 ? 'to starboard' : 'to port';
  const up = zM < 0 ? 'below the waterline' : 'above the waterline';
  const both = (valueM: number): string =>
    `${printLength({ valueM: Math.abs(valueM), as: 'metres' })} (${printLength({ valueM: Math.abs(valueM), as: 'feet' })})`;
  const across = yM === 0 ? side : `${both(yM)} ${side}`;
  return `${both(xM)} ${xM < 0 ? 'aft' : 'forward'} of the transom, ${across}, ${both(zM)} ${up}`;
};

const cautionLines = (ids: readonly string[]): string =>
  cautions
    .filter(({ id }) => ids.includes(id))
    .map(
      ({ hazard, text, deferTo }) =>
        `<p class="caution"><strong>Caution, ${safeHtml(hazard)}.</strong> ${safeHtml(text)}${deferTo === undefined ? '' : ` What decides: ${safeHtml(deferTo)}.`}</p>`,
    )
    .join('\n');

const stopPart = (index: BoatIndex, stop: WalkStop, number: number): string => {
  const place = index.places.get(stop.place);
  return [
    `<h2>${number}. ${safeHtml(place?.name ?? stop.place)}</h2>`,
    ...(place === undefined ? [] : [`<p class="where">${safeHtml(whereWords(place))}.</p>`]),
    cautionLines(stop.cautions),
    '<table>',
    ...questionRows(index, stop),
    '</table>',
  ].join('\n');
};

/**
 * The walk-round as a page to print, A4, and to take aboard with a pen: place by place from the bow aft, aloft last, what to look
 * for, what the file says so far and room for the answer. It stands alone: no script, no picture, nothing fetched.
 */
export const walkRoundPage = (boat: Boat): string => {
  const index = indexBoat(boat);
  const stops = walkRound(boat);
  const open = stops.flatMap(({ questions }) => questions).filter(({ known }) => !known).length;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Walk-round, ${safeHtml(boat.name)}</title>
<style>${style}</style>
</head>
<body>
<h1>Walk-round, ${safeHtml(boat.name)}</h1>
<p>${stops.length} places from the bow aft, what is aloft last; ${open} questions are open; what the file knows already is left out. Take a tape, a torch, a camera and a pencil. Write lengths in metres or in feet and inches, as your tape has them. Switch nothing off before its settings are copied.</p>
<p>Date ________________ Who ________________________________</p>
${stops.map((stop, at) => stopPart(index, stop, at + 1)).join('\n')}
</body>
</html>
`;
};
