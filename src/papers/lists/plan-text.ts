import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { BusEntry, Finding, Plan, ReadingEntry } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { antennasText } from '../antennas/antennas-text.ts';
import { energyText } from '../energy/energy-text.ts';
import { nextText } from '../next/next-text.ts';
import type { NextAsked } from '../next/next-thing.ts';
import { settingsSheetText } from '../settings-sheet/settings-sheet-text.ts';
import { sourcesText } from '../sources/sources-text.ts';
import { trafficText } from '../traffic/traffic-text.ts';
import { workText } from '../work/work-text.ts';
import { backboneFigures } from './backbone-figures.ts';
import { beforeAndAfter } from './before-and-after.ts';
import { blackoutText } from './blackout-text.ts';
import { compassRows } from './compass-rows.ts';
import { cureWords, currencyOf } from './cure-words.ts';
import { driveText } from './drive-text.ts';
import { findingsText } from './findings-text.ts';
import { isolationRows } from './isolation-rows.ts';
import { lightingText } from './lighting-text.ts';
import { mastRows } from './mast-rows.ts';
import { networkRows } from './network-rows.ts';
import { nextBestWords } from './next-best-words.ts';
import { printMoney } from './order-words.ts';
import { panelText } from './panel-text.ts';
import { phasesText } from './phases-text.ts';
import { powerText } from './power-text.ts';
import { keepUnits, printCount } from './print-figure.ts';
import { proposalRows, proposalSays } from './proposal-rows.ts';
import { remoteText } from './remote-text.ts';
import { orderSum } from './shopping-list.ts';
import { tapeRows } from './tape-rows.ts';
import { wayRows } from './way-rows.ts';

const width = 80;

/** How many pipes the plan tells of; the others are emptier. */
const fullestTold = 5;

const boatLines = (boat: Boat): string[] => {
  const { kind, lengthM, beamM, draftM } = boat.hull;
  const count = (fate: string): number => boat.kit.filter((unit) => unit.fate === fate).length;
  return [
    boat.name,
    ...textLines(
      `${lengthM} m ${kind.replaceAll('-', ' ')}, beam ${beamM} m, draft ${draftM} m. ${printCount(boat.places.length, 'place')}, ${printCount(boat.ways.length, 'way')}. ${printCount(boat.kit.length, 'unit')}: ${count('comes')} come, ${count('stays')} stay, ${count('goes')} go.`,
      { width, lead: '' },
    ),
  ];
};

const missingLines = (boat: Boat, { reading, instance, at, whyNot }: ReadingEntry): string[] => {
  const screen = boat.kit.find((unit) => unit.id === at)?.name ?? at;
  const which = readingName({ reading, instance });
  return [
    ...textLines(`${which} at ${screen}: ${whyNot?.says ?? ''}`, { width, lead: '- ' }),
    ...(whyNot?.cures ?? []).flatMap((cure) =>
      textLines(cureWords(cure, currencyOf(boat)), { width, lead: '  Cure: ' }),
    ),
  ];
};

const needsLines = (boat: Boat, plan: Plan): string[] => {
  const { readings } = plan;
  if (readings.length === 0)
    return ['NEEDS', 'No needs are entered: say which reading you want to see at which screen.'];
  const missing = readings.filter((entry) => !entry.arrives);
  const typical = readings.filter((entry) => entry.rests === 'typical').length;
  const rests =
    typical === 0
      ? ''
      : ` ${typical} of them ${typical === 1 ? 'rests' : 'rest'} on typical sheets: check the makers’ own.`;
  return [
    'NEEDS',
    ...textLines(
      `${readings.length - missing.length} of ${readings.length} readings arrive where they are needed.${rests}`,
      {
        width,
        lead: '',
      },
    ),
    ...missing.flatMap((entry) => missingLines(boat, entry)),
  ];
};

const proposalLines = (boat: Boat, plan: Plan): string[] => {
  if (plan.proposal === undefined) return [];
  return [
    'JOINS PROPOSED',
    ...(plan.proposal.joins.length === 0 ? [] : textLines(proposalSays(boat, plan.proposal), { width, lead: '' })),
    ...proposalRows(boat, plan).flatMap(({ says, cost }) => textLines(`${says}: ${cost}.`, { width, lead: '- ' })),
    ...plan.proposal.clashes.flatMap(({ says }) => textLines(says, { width, lead: '! ' })),
  ];
};

const beforeLines = (boat: Boat, plan: Plan): string[] => {
  if (plan.before.length === 0) return [];
  const { kept, gained, lost } = beforeAndAfter(boat, plan);
  const met = `Of the needs that are met, ${kept} ${kept === 1 ? 'was' : 'were'} aboard before and ${gained} ${gained === 1 ? 'is' : 'are'} new.`;
  const gone = lost.length === 0 ? 'Nothing is lost.' : `${printCount(lost.length, 'reading')} lost:`;
  return [
    'BEFORE AND AFTER',
    ...textLines(`${met} ${gone}`, { width, lead: '' }),
    ...lost.flatMap((line) => textLines(line, { width, lead: '- ' })),
  ];
};

const busLinesOf = (boat: Boat, bus: BusEntry): string[] => {
  const figures = backboneFigures({ boat, bus });
  const widest = Math.max(...figures.map(({ name }) => name.length));
  const placeName = (id: string): string => boat.places.find((place) => place.id === id)?.name ?? id;
  return [
    `BUS ${boat.buses.find(({ id }) => id === bus.id)?.name ?? bus.id}`,
    ...figures.flatMap(({ name, value, over }) =>
      textLines(`${value}${over ? '  <- over the limit' : ''}`, { width, lead: `${name.padEnd(widest)}  ` }),
    ),
    ...nextBestWords({ places: new Map(boat.places.map((place) => [place.id, place])) }, bus, currencyOf(boat))
      .slice(1)
      .flatMap((says) => textLines(keepUnits(says), { width, lead: `${''.padEnd(widest)}  ` })),
    ...textLines(bus.walk.map(({ place }) => placeName(place)).join(' > '), {
      width,
      lead: `${'walk'.padEnd(widest)}  `,
    }),
    ...(bus.feedPlace === undefined
      ? []
      : textLines(placeName(bus.feedPlace), { width, lead: `${'fed at'.padEnd(widest)}  ` })),
  ];
};

const linesLines = ({ lines }: Plan): string[] => {
  const kept = lines.filter((line) => line.kept !== undefined).length;
  const guessed = lines.filter((line) => line.guessed).length;
  if (lines.length === 0) return [];
  return [
    'LINES',
    ...textLines(
      `${printCount(lines.length, 'line')}: ${lines.length - kept} new, ${kept} aboard already. ${guessed === 0 ? 'No length is guessed.' : `${guessed} of them rest in part on a guessed length.`}`,
      { width, lead: '' },
    ),
  ];
};

const networkLines = (boat: Boat, plan: Plan): string[] => {
  const rows = networkRows(indexBoat(boat), plan);
  return rows.length === 0
    ? []
    : [
        'NETWORK',
        ...rows.flatMap(({ what, fact }) => textLines(keepUnits(`${what}: ${fact}.`), { width, lead: '- ' })),
      ];
};

const mastLines = (boat: Boat, plan: Plan): string[] => {
  const rows = mastRows(indexBoat(boat).places, plan);
  return rows.length === 0
    ? []
    : [
        'IN THE MAST',
        ...rows.flatMap(({ what, fact }) => textLines(keepUnits(`${what} ${fact}`), { width, lead: '- ' })),
      ];
};

const isolationLines = (boat: Boat, plan: Plan): string[] => {
  const rows = isolationRows(indexBoat(boat), plan, currencyOf(boat));
  return rows.length === 0
    ? []
    : [
        'METAL AND SHIELDS',
        ...rows.flatMap(({ what, fact }) => textLines(keepUnits(`${what}: ${fact}.`), { width, lead: '- ' })),
      ];
};

const compassLines = (boat: Boat, plan: Plan): string[] => {
  const rows = compassRows(indexBoat(boat), plan);
  return rows.length === 0
    ? []
    : [
        'COMPASSES',
        ...rows.flatMap(({ what, fact }) => textLines(keepUnits(`${what}: ${fact}.`), { width, lead: '- ' })),
      ];
};

/** The pipes that are to be looked at before cable is bought, fullest first. */
const wayLines = (boat: Boat, plan: Plan): string[] => {
  const rows = wayRows(boat, plan).slice(0, fullestTold);
  return rows.length === 0
    ? []
    : [
        'HOW FULL THE PIPES ARE',
        ...rows.flatMap(({ what, fact }) => textLines(keepUnits(`${what}: ${fact}.`), { width, lead: '- ' })),
      ];
};

const buyLines = (boat: Boat, plan: Plan): string[] => {
  if (plan.shopping.length === 0) return [];
  const [first, second] = tapeRows(indexBoat(boat), plan, { currency: currencyOf(boat) });
  const before = [first, second].flatMap((row) =>
    row === undefined ? [] : [`${row.todo}: ${printMoney(row.atStake)} ${currencyOf(boat)} at stake.`],
  );
  return [
    'BUY',
    ...textLines(keepUnits(orderSum(boat, plan)), { width, lead: '' }),
    ...before.flatMap((words) => textLines(keepUnits(words), { width, lead: '- ' })),
  ];
};

/** The cures of a missing reading stand with the needs. */
const withOneCure = (finding: Finding): Finding => {
  const { cures: _, ...own } = finding;
  return finding.rule === 'readings/needed-but-missing' ? own : finding;
};

/** The plan in 80 columns of plain text: the boat, what arrives, each bus beside its limits, the lines, the order, what is wrong, what to do next; `file` names the boat file in what is to be typed. */
export const planText = ({ boat, plan, tested, done, file }: NextAsked & { readonly file: string }): string =>
  [
    boatLines(boat),
    needsLines(boat, plan),
    proposalLines(boat, plan),
    beforeLines(boat, plan),
    ...plan.buses.map((bus) => busLinesOf(boat, bus)),
    trafficText(boat, plan),
    linesLines(plan),
    networkLines(boat, plan),
    sourcesText(boat, plan),
    antennasText(boat, plan),
    mastLines(boat, plan),
    wayLines(boat, plan),
    powerText(boat, plan),
    panelText(boat, plan),
    driveText(boat, plan),
    settingsSheetText(boat, plan),
    energyText(boat, plan),
    isolationLines(boat, plan),
    compassLines(boat, plan),
    blackoutText(boat, plan),
    remoteText(boat, plan),
    lightingText(boat, plan),
    buyLines(boat, plan),
    phasesText(boat, plan),
    workText(boat, plan),
    ['FINDINGS', findingsText(boat, plan.findings.map(withOneCure)).trimEnd()],
    nextText({ boat, plan, tested, done }, file),
  ]
    .filter((part) => part.length > 0)
    .map((part) => `${part.join('\n')}\n`)
    .join('\n');
