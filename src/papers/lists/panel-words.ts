import type { PanelEntry } from '../../core/panels-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { mainWords } from '../power/power-words.ts';
import { endWords } from './end-words.ts';
import { printCount, printPct } from './print-figure.ts';
import { printAmps, printLost } from './print-power.ts';

const guardWords: Readonly<Record<NonNullable<PanelEntry['guardBy']>, string>> = {
  'bank-main': 'the main of its bank',
  'panel-main': 'its own main',
  circuit: 'the circuit before it',
  'panel-above': 'what guards the panel above',
  converter: 'its converter, which limits itself',
};

const hangsWords = (index: CardBoat, { from, nominalV, tap, main }: PanelEntry): string => {
  const source = index.panels.has(from) || index.banks.has(from) ? endWords(index, from) : `converter ${from}`;
  const tapped = tap === true ? ', from between its batteries' : '';
  return `${nominalV} V from ${source}${tapped}; ${mainWords(main).words}.`;
};

const feederWords = ({ feeder, guardA, guardBy }: PanelEntry): string[] => {
  const guard =
    guardA === undefined || guardBy === undefined
      ? 'nothing is known to guard it'
      : `${guardWords[guardBy]} guards it with ${printAmps(guardA)}`;
  if (feeder === undefined) return [`Its feeder has not been measured; ${guard}.`];
  const { areaMm2, longestM, ampacityA, dropAtA, dropV, dropPct, engineSpace } = feeder;
  const size = areaMm2 === undefined ? 'of unknown size' : `${areaMm2} mm²`;
  const carries =
    ampacityA === undefined
      ? ''
      : `, carries ${Math.floor(ampacityA + 1e-9)} A${engineSpace ? ' in the engine space' : ''}`;
  const lost =
    dropAtA === undefined || dropV === undefined || dropPct === undefined
      ? ''
      : `; at ${printAmps(dropAtA)} it loses ${printLost({ lostV: dropV, lostPct: dropPct })}`;
  return [`Its feeder is ${size}, ${longestM.toFixed(2)} m at its longest${carries}${lost}; ${guard}.`];
};

const drawsWords = ({ mostA, typicalA, main }: PanelEntry): string[] => {
  if (mostA === 0) return [];
  const share = main.ratingA === undefined ? '' : `, ${printPct((100 * mostA) / main.ratingA)} of its main`;
  return [`Draws ${printAmps(typicalA)} typical, ${printAmps(mostA)} with everything drawing${share}.`];
};

const faultWords = ({ faultA, branchA }: PanelEntry): string[] => {
  if (branchA === 0) return [];
  const gives = faultA === undefined ? '' : `A short at its bars drives up to ${Math.round(faultA)} A; `;
  const asks = `${faultA === undefined ? 'By' : 'by'} the table a circuit must break ${Math.round(branchA)} A.`;
  return [`${gives}${asks}`];
};

const roomWords = ({ room, circuits, freeWays, takes }: PanelEntry): string => {
  const last = room.at(-1);
  const free = circuits.filter((circuit) => circuit.free).length;
  const counted =
    freeWays === undefined ? `${free} free, and nobody has counted the places without one` : `${free + freeWays} free`;
  const short = Math.max(0, ...room.map((phase) => phase.short ?? 0));
  const wanted = last === undefined || last.wanted.length === 0 ? '' : `, ${last.wanted.length} wanted`;
  const block =
    short === 0 || takes === undefined
      ? ''
      : `: ${short} short. A fuse block of ${printCount(takes.circuits, 'circuit')} would do${takes.feedA === undefined ? '' : `, behind ${printAmps(takes.feedA)} or more`}`;
  return `${printCount(circuits.length, 'circuit')}, ${counted}${wanted}${block}.`;
};

/** What there is to say of a panel beside its circuits, a sentence each. */
export const panelFacts = (index: CardBoat, entry: PanelEntry): string[] => [
  hangsWords(index, entry),
  ...drawsWords(entry),
  ...feederWords(entry),
  ...faultWords(entry),
  roomWords(entry),
];
