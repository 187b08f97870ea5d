import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { csvText } from './csv.ts';
import { feedRows } from './feed-rows.ts';
import { loadRows, loadSumRows } from './load-rows.ts';

const two = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(2))));
const volts = (value: number | undefined): string => (value === undefined ? '' : value.toFixed(2));
const share = (value: number | undefined): string => (value === undefined ? '' : value.toFixed(1));

const feedHeader = [
  'feeds',
  'panel',
  'circuit',
  'typical A',
  'draws A',
  'for moments A',
  'length m',
  'length ft',
  'wire mm2',
  'wire AWG',
  'decided by',
  'drop asks mm2',
  'current asks mm2',
  'least mm2',
  'may lose V',
  'lost by rule V',
  'lost by rule %',
  'lost in cable V',
  'lost in cable %',
  'wire carries A',
  'fuse A',
  'fuse is',
  'at its end V',
  'needs V',
  'lost from bank %',
  'why',
  'line id',
] as const;

/** The feeds as CSV, a row a feed in the order of the panels, then a row for each thing that has none. */
export const feedsCsv = (boat: Boat, plan: Plan): string => {
  const { fed, unfed } = feedRows(cardBoat(boat), plan);
  return csvText([
    feedHeader,
    // what no circuit names stands among the unfed
    ...fed.flatMap(({ what, panel, circuit, fuse, why, key, feed }) =>
      feed === undefined
        ? []
        : [
            [
              what,
              panel,
              circuit,
              two(feed.typicalA),
              two(feed.loadA),
              two(feed.peakA),
              volts(feed.lengthM),
              printLength({ valueM: feed.lengthM, as: 'feet' }),
              two(feed.areaMm2),
              feed.awg ?? '',
              feed.decidedBy ?? feed.wire ?? '',
              feed.asked?.drop ?? '',
              feed.asked?.ampacity ?? '',
              feed.asked?.least ?? '',
              volts(feed.allowedV),
              volts(feed.dropV),
              share(feed.dropPct),
              volts(feed.realDropV),
              share(feed.realDropPct),
              two(feed.ampacityA),
              two(feed.fuseA),
              fuse,
              volts(feed.atEndV),
              two(feed.leastV),
              share(feed.lostPct),
              why.join(' '),
              key,
            ],
          ],
    ),
    ...unfed.map(({ what, fact, key }) => [what, ...feedHeader.slice(1, -2).map(() => ''), fact, key]),
  ]);
};

const loadHeader = [
  'draws',
  'typical before A',
  'most before A',
  'for moments before A',
  'typical after A',
  'most after A',
  'for moments after A',
  'fed by',
  'lowest V',
  'needs V',
  'port',
] as const;

/** What every unit drew and draws as CSV, then what each bank and converter gives with everything drawing. */
export const loadsCsv = (boat: Boat, plan: Plan): string => {
  const index = cardBoat(boat);
  const sums = loadSumRows(index, plan);
  const sumOf = (phase: string, source: string) => sums.find((row) => row.phase === phase && row.source === source);
  const figure = (words: string | undefined): string => words?.replace(' A', '') ?? '';
  const phases = [...new Set(sums.map(({ phase }) => phase))].filter((phase) => phase !== 'before');
  const sources = [...new Set(sums.map(({ source }) => source))];
  return csvText([
    loadHeader,
    ...loadRows(index, plan).map(({ what, before, after, fedBy, lowestV, key }) => [
      what,
      two(before?.typicalA),
      two(before?.mostA),
      two(before?.peakA),
      two(after?.typicalA),
      two(after?.mostA),
      two(after?.peakA),
      fedBy,
      volts(lowestV),
      two(after?.minV),
      key,
    ]),
    ...sources.flatMap((source) =>
      phases.map((phase) => [
        `all on ${source}${phases.length === 1 ? '' : `, ${phase}`}`,
        figure(sumOf('before', source)?.typical),
        figure(sumOf('before', source)?.most),
        '',
        figure(sumOf(phase, source)?.typical),
        figure(sumOf(phase, source)?.most),
        '',
        '',
        '',
        '',
        '',
      ]),
    ),
  ]);
};
