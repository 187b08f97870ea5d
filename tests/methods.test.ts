import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { aDevice, aPlace, aProblem, aWay } from '../src/core/backbone/a-problem.test-helper.ts';
import { effectiveLength } from '../src/core/backbone/effective-length.ts';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import { busState } from '../src/core/blackouts/bus-trunk.ts';
import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import type { Way } from '../src/core/boat/boat-schema.ts';
import { guessedLength } from '../src/core/boat/guessed-length.ts';
import { lengthMm } from '../src/core/boat/measure.ts';
import type { KitRemote } from '../src/core/boat/remote.ts';
import type { Underlay } from '../src/core/boat/underlay.ts';
import { aboardOf, firstFixes, underlayPlacement } from '../src/core/boat/underlay-placement.ts';
import { dbPer100M, rangeShare, wattsAfter } from '../src/core/coax/coax-loss.ts';
import { swrAtRadio } from '../src/core/coax/swr.ts';
import { bankEndurance } from '../src/core/energy/bank-endurance.ts';
import { unitDay } from '../src/core/energy/unit-day.ts';
import type { QuoteTask } from '../src/core/facts/quote-figures.ts';
import { sources } from '../src/core/facts/sources.ts';
import { horizonNm } from '../src/core/fitting/antennas/horizon.ts';
import { coupledDbm, sideBySideDb, stackedDb } from '../src/core/fitting/antennas/isolation.ts';
import { peopleDistanceM } from '../src/core/fitting/antennas/people-distance.ts';
import { depthAtSoundSpeed } from '../src/core/fitting/depth/depth-at-sound-speed.ts';
import { depthBelow } from '../src/core/fitting/depth/depth-below.ts';
import { depthOffsets } from '../src/core/fitting/depth/depth-offsets.ts';
import { heelFactor } from '../src/core/fitting/depth/heel-factor.ts';
import { offsetTwice } from '../src/core/fitting/depth/offset-twice.ts';
import { rawDepthOffset } from '../src/core/fitting/depth/raw-depth-offset.ts';
import { deviationOf } from '../src/core/fitting/heading/deviation.ts';
import { boxRiseK } from '../src/core/fitting/openings/box-heat.ts';
import { leastWebMm } from '../src/core/fitting/openings/least-web.ts';
import { letterFloorMm, letterHeightMm } from '../src/core/fitting/openings/letter-height.ts';
import { traceHole } from '../src/core/fitting/openings/trace-hole.ts';
import { heeledBeam } from '../src/core/fitting/radar/heeled-beam.ts';
import { nearZoneM } from '../src/core/fitting/radar/near-zone.ts';
import { opticalDeg } from '../src/core/fitting/radar/shadow-sectors.ts';
import { clearanceAt, highestTide } from '../src/core/fitting/sea/bridge-clearance.ts';
import { deviationAt } from '../src/core/fitting/sea/deviation-curve.ts';
import { logFactor } from '../src/core/fitting/sea/log-factor.ts';
import { meanOfMeans } from '../src/core/fitting/sea/mean-of-means.ts';
import { windOffset } from '../src/core/fitting/sea/wind-offset.ts';
import { leastAheadM } from '../src/core/fitting/sensors/least-ahead.ts';
import { aisDraughtField, aisSize } from '../src/core/fitting/settings/ais-size.ts';
import { safeDepthM } from '../src/core/fitting/settings/safe-depth.ts';
import { strayBonds } from '../src/core/isolation/stray-bonds.ts';
import { charsPerSecond, lineLoad } from '../src/core/joins/line-load.ts';
import { cheapestChoice } from '../src/core/joins/proposing/cheapest-choice.ts';
import { copperOhmPerM } from '../src/core/network/copper-ohm.ts';
import { solveDc } from '../src/core/network/dc-solve.ts';
import { lenOf } from '../src/core/network/len-of.ts';
import { ruleOfThumb } from '../src/core/network/rule-of-thumb.ts';
import { phaseOrders } from '../src/core/phases/phase-orders.ts';
import { ampacity } from '../src/core/power/ampacity.ts';
import { bankAh, rechargeAh } from '../src/core/power/bank-ah.ts';
import { bankShortCircuitA } from '../src/core/power/bank-short-circuit.ts';
import { compassDeviation } from '../src/core/power/compass-deviation.ts';
import { compassSafeDistance } from '../src/core/power/compass-safe-distance.ts';
import { ohmPerKmAt } from '../src/core/power/conductor-ohm.ts';
import { constantPower } from '../src/core/power/constant-power.ts';
import { dayAh } from '../src/core/power/day-ah.ts';
import { currentByOhmA, dropByOhmV } from '../src/core/power/drop-by-ohm.ts';
import { areaByRuleMm2, circularMilsForDrop, currentByRuleA, dropByRuleV } from '../src/core/power/drop-rules.ts';
import { fusePlace } from '../src/core/power/fuse-place.ts';
import { fuseVerdict } from '../src/core/power/fuse-verdict.ts';
import { interruptNeeded } from '../src/core/power/interrupt-needed.ts';
import { pathDrop } from '../src/core/power/path-drop.ts';
import { peukert, peukertExponent } from '../src/core/power/peukert.ts';
import { pickConductor } from '../src/core/power/pick-conductor.ts';
import { pickFuse } from '../src/core/power/pick-fuse.ts';
import { sizeByDrop } from '../src/core/power/size-by-drop.ts';
import { faultCurrentA } from '../src/core/power/source-side/fault-current.ts';
import { standardFromSteering } from '../src/core/power/standard-from-steering.ts';
import { steadyCurrentA } from '../src/core/power/steady-current.ts';
import { tailLoopFieldUt, wireFieldUt } from '../src/core/power/wire-field.ts';
import { turnDeg } from '../src/core/proof/compare/turn-deg.ts';
import { aisBits } from '../src/core/proof/decode/ais-bits.ts';
import { decodeAisBits } from '../src/core/proof/decode/decode-ais-bits.ts';
import { decodeSentence } from '../src/core/proof/decode/decode-sentence.ts';
import { exactBits } from '../src/core/proof/decode/frame-bits.ts';
import { ladderOhm } from '../src/core/proof/dock/ladder-ohm.ts';
import { hourLines } from '../src/core/quote/hour-lines.ts';
import type { HourLine } from '../src/core/quote/quote-shape.ts';
import { gatewayAndPilot, remoteBoat, remoteOf } from '../src/core/remote/remote-boat.test-helper.ts';
import { madeUpCost, piecesFor } from '../src/core/shopping/pieces-for.ts';
import { placeSum } from '../src/core/sources/place-sum.ts';
import { suggestedMeasures } from '../src/core/starting/suggested-measures.ts';
import { ladenKg } from '../src/core/steering/laden-kg.ts';
import { outputWanted } from '../src/core/steering/output-wanted.ts';
import { longestWait } from '../src/core/traffic/longest-wait.ts';
import { messageLoadPct } from '../src/core/traffic/message-load.ts';
import { sufficientWait } from '../src/core/traffic/sufficient-wait.ts';
import { awgAreaMm2 } from '../src/core/units/awg.ts';
import { ohmPerMOfPer1000Ft } from '../src/core/units/ohm-per-1000-ft.ts';
import { circleRound, fillVerdictOf } from '../src/core/ways/fill-verdict.ts';
import { wayCostMm } from '../src/core/ways/way-cost.ts';
import { sharedOut } from '../src/core/work/jobs/shared-out.ts';
import { plainOrder } from '../src/core/work/order/plain-order.ts';
import type { WorkProblem } from '../src/core/work/order/problem.ts';
import { solveWork } from '../src/core/work/order/solve-work.ts';
import { boxesFor } from '../src/core/work/order/solver/least-days.ts';
import { anItem, someWork } from '../src/core/work/order/some-work.test-helper.ts';

/** Cost of the cheapest layout of a bus whose prices and limits are the usual ones of the tests. */
const cheapestLayout = ({
  places,
  ways,
  devices,
}: {
  places: string[];
  ways: [a: string, b: string, mm: number][];
  devices: string[];
}): number | undefined => {
  const problem = aProblem({
    places: places.map((id) => aPlace(id)),
    ways: ways.map(([a, b, mm]) => aWay({ id: `${a}-${b}`, a, b, mm })),
    devices: devices.map((place) => aDevice(`at-${place}.n2k`, place)),
  });
  const layout = [...solveLayout(problem, fullWork)].at(-1);
  return layout?.status === 'proven' ? layout.cost : undefined;
};

/** How many pilots the wifi of a gateway reaches on its bus. */
const pilotsReached = (owner: KitRemote): number | undefined =>
  remoteOf(remoteBoat(gatewayAndPilot, { gate: { kind: 'gateway', owner }, pilot: { steers: true } }))[0]?.commands
    .length;

/** An old sounder taken out and a new one mounted and connected, with a survey besides, by one hand of six hours a day. */
const sounderWork = (hours: { surveyH: number; outH: number; mountH: number; connectH: number }): WorkProblem =>
  someWork({
    jobs: [
      anItem('a-survey', { slots: hours.surveyH * 2 }),
      anItem('b-out', { slots: hours.outH * 2 }),
      anItem('c-mount', { slots: hours.mountH * 2, after: [{ job: 'b-out', wait: 0 }] }),
      anItem('d-connect', { slots: hours.connectH * 2, after: [{ job: 'c-mount', wait: 0 }] }),
    ],
    days: 5,
    hands: [{ id: 'owner', can: [] }],
    functions: [
      {
        id: 'depth',
        hard: false,
        ways: [
          { from: [], until: ['b-out'] },
          { from: ['d-connect'], until: [] },
        ],
      },
    ],
    perDay: 12,
  });

/** Dark hours of the best order, once it is proven. */
const leastDarkH = (hours: Parameters<typeof sounderWork>[0]): number | undefined => {
  const last = [...solveWork(sounderWork(hours), { work: 100_000 })].at(-1);
  return last?.status === 'proven' ? last.cost.dark / 2 : undefined;
};

const plainDarkH = (hours: Parameters<typeof sounderWork>[0]): number =>
  (plainOrder(sounderWork(hours))?.dark ?? 0) / 2;

/** What a metre of a way of the small boat counts as for a pair, in mm of cable, once the way is as is said. */
const wayCost = (own: Partial<Way>): number => {
  const { boat } = aBoat();
  const way = boat.ways.find(({ id }) => id === 'locker-helm');
  if (way === undefined) throw new Error('The small boat has no ways.');
  return wayCostMm({ index: indexBoat(boat), way: { ...way, ...own }, kind: 'pair', mm: 1000 });
};

/** Hours and labour of one task by a professional. */
const labourOf = ({ task, count, rate }: { task: QuoteTask; count: number; rate: number }): HourLine | undefined =>
  hourLines([{ task, count, phase: 1 }], {}, rate)[0];

/** A picture as it lies under a boat when it is new. */
const picture = (size: Parameters<typeof firstFixes>[0]): Underlay => ({
  view: 'side',
  picture: { hash: '0'.repeat(64), type: 'jpeg', widthPx: size.widthPx, heightPx: size.heightPx },
  ...firstFixes(size),
});

const methods = {
  aboardOf,
  circleRound,
  fillVerdictOf,
  labourOf,
  lengthMm,
  madeUpCost,
  picture,
  piecesFor,
  traceHole,
  underlayPlacement,
  wayCost,
  aisBits,
  aisDraughtField,
  decodeAisBits,
  decodeSentence,
  exactBits,
  aisSize,
  clearanceAt,
  deviationAt,
  highestTide,
  logFactor,
  meanOfMeans,
  safeDepthM,
  windOffset,
  ampacity,
  areaByRuleMm2,
  awgAreaMm2,
  bankAh,
  boxesFor,
  leastDarkH,
  plainDarkH,
  bankEndurance,
  bankShortCircuitA,
  boxRiseK,
  charsPerSecond,
  cheapestChoice,
  cheapestLayout,
  circularMilsForDrop,
  compassDeviation,
  compassSafeDistance,
  constantPower,
  copperOhmPerM,
  coupledDbm,
  currentByOhmA,
  currentByRuleA,
  dayAh,
  dbPer100M,
  depthAtSoundSpeed,
  depthBelow,
  depthOffsets,
  deviationOf,
  dropByOhmV,
  dropByRuleV,
  effectiveLength,
  faultCurrentA,
  fusePlace,
  fuseVerdict,
  guessedLength,
  heelFactor,
  heeledBeam,
  horizonNm,
  interruptNeeded,
  ladderOhm,
  ladenKg,
  leastWebMm,
  letterFloorMm,
  letterHeightMm,
  leastAheadM,
  lenOf,
  nearZoneM,
  opticalDeg,
  peopleDistanceM,
  rangeShare,
  sideBySideDb,
  stackedDb,
  swrAtRadio,
  wattsAfter,
  lineLoad,
  longestWait,
  messageLoadPct,
  ohmPerKmAt,
  offsetTwice,
  ohmPerMOfPer1000Ft,
  outputWanted,
  pathDrop,
  peukert,
  peukertExponent,
  pickConductor,
  pickFuse,
  pilotsReached,
  placeSum,
  rawDepthOffset,
  rechargeAh,
  ruleOfThumb,
  sizeByDrop,
  solveDc,
  standardFromSteering,
  steadyCurrentA,
  strayBonds,
  turnDeg,
  suggestedMeasures,
  busState,
  phaseOrders,
  sharedOut,
  sufficientWait,
  tailLoopFieldUt,
  unitDay,
  wireFieldUt,
};
const folder = new URL('../docs/methods/', import.meta.url);
const pages = readdirSync(folder).filter((name) => name !== 'README.md');

const list = readFileSync(new URL('README.md', folder), 'utf8');

/** The examples of a page, each `call; // figure`. */
const examples = (text: string): readonly { call: string; figure: string }[] =>
  [...text.matchAll(/```ts\n([\s\S]*?)```/g)].flatMap(([, code = '']) =>
    [...code.matchAll(/(\S[\s\S]*?); \/\/ (\S+)\n/g)].map(([, call = '', figure = '']) => ({ call, figure })),
  );

/** The part of a page under one of its headings. */
const partOf = (text: string, heading: string): string =>
  new RegExp(`^## ${heading}\\n([\\s\\S]*?)(?=\\n## |$(?![\\s\\S]))`, 'm').exec(text)?.[1]?.trim() ?? '';

/** The cells of the table of symbols, a row a symbol: symbol, meaning, unit. */
const symbolsOf = (text: string): readonly (readonly string[])[] => {
  const [, table = ''] = /^\| symbol .*\n\|[ |-]*\n((?:\|.*\n?)*)/m.exec(text) ?? [];
  return table
    .split('\n')
    .filter((line) => line !== '')
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
};

describe.each(pages)('the method page %s', (page) => {
  const text = readFileSync(new URL(page, folder), 'utf8');

  it('says what the formula is for, its symbols with their units, its source, an example and its limits', () => {
    const headings = [...text.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    expect(headings).toEqual(['What it is for', 'Formula', 'Source', 'Worked example', 'Limits']);
    for (const heading of headings) expect(partOf(text, heading ?? ''), heading).not.toBe('');
    expect(text).toMatch(/^\| symbol +\| meaning +\| unit +\|$/m);
    expect(symbolsOf(text)).not.toEqual([]);
    for (const row of symbolsOf(text)) expect(row.slice(0, 3), page).not.toContain('');
  });

  it('names a source of the ledger, or says that it is mathematics', () => {
    expect(partOf(text, 'Source')).toMatch(/`[a-z0-9-]+`|[Cc]omputed|[Gg]eometry|mathematics|arithmetic/);
  });

  it('stands in the list of methods by its title', () => {
    const [, title] = /^# (.*)$/m.exec(text) ?? [];
    expect(list).toContain(`[${title}](${page})`);
  });

  it('has examples that come out as printed, to the last digit shown', () => {
    expect(examples(text)).not.toEqual([]);
    for (const { call, figure } of examples(text)) {
      // The pages are our own, and these lines are code by intention.
      const value: unknown = new Function(...Object.keys(methods), `return ${call}`)(...Object.values(methods));
      const digits = figure.split('.')[1]?.length ?? 0;
      expect(`${call} // ${Number(value).toFixed(digits)}`).toBe(`${call} // ${figure}`);
    }
  });

  it('names only sources that are in the ledger', () => {
    const [, part = ''] = /## Source\n([\s\S]*?)\n## /.exec(text) ?? [];
    for (const [, key = ''] of part.matchAll(/`([a-z0-9-]+)`/g)) expect(sources).toHaveProperty(key);
  });
});
