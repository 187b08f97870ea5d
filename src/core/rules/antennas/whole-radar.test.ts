import { expect, test } from 'vitest';
import { sources } from '../../facts/sources.ts';
import type { PersonAtRadar, Radar, Shadow } from '../../radar-shape.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { anAntenna, antennaFindings, aRadar, personAtRadar } from './antenna-case.test-helper.ts';
import { antennasRules } from './index.ts';
import { peopleInTheBeam } from './people-in-the-beam.ts';

const withRadar = (id: string, own: Partial<Radar>) =>
  toldBy(antennasRules, `antennas/${id}`, {
    plan: { sites: [aRadar(own), anAntenna('radio-antenna', { for: [], topM: 3 })] },
  });

test('a head in the beam is told with heights, the distance people keep off, and what says so', () => {
  const found = (own: Partial<PersonAtRadar>, radar: Partial<Radar>) =>
    withRadar('people-in-the-beam', { people: [personAtRadar(own)], ...radar });
  const said =
    'Who stands at helm dash has the beam of Helm display at the head: 1.50 m off the beam reaches from 2.20 m to 2.80 m over the water, the head is at 2.40 m;';
  const higher = 'Mount the scanner higher, so that its beam passes over every head';
  const until = 'Until then it does not send while people stand there.';
  expect(found({}, {})).toEqual([
    `fault display helm: ${said} its plate wants people 2 m off. [1.5 m / 2] ${higher}. ${until}`,
  ]);
  expect(found({}, { peopleBy: 'size' })).toEqual([
    `fault display helm: ${said} one of its power wants people 2 m off. [1.5 m / 2] ${higher}. ${until}`,
  ]);
  expect(found({ soleKnown: false }, { peopleBy: 'typical' })).toEqual([
    `doubt display helm: ${said} such scanners usually want people 2 m off. [1.5 m / 2] ${higher}; enter how high the sole is there, it was taken from what stands in front. ${until}`,
  ]);
});

test('at the distance of its plate a head in the beam is only advice; where none is known a doubt, however far off', () => {
  const level = (distanceM: number, radar: Partial<Radar> = {}) =>
    withRadar('people-in-the-beam', { people: [personAtRadar({ distanceM })], ...radar })[0]?.split(' ')[0];
  expect([level(1.99), level(2)]).toEqual(['fault', 'advice']);
  expect([level(1.99, { peopleBy: 'size' }), level(2, { peopleBy: 'typical' })]).toEqual(['fault', 'advice']);
  const { peopleM: _, ...unknown } =
    aRadar({ people: [personAtRadar({ distanceM: 9 })], peopleBy: 'unknown' }).radar ?? {};
  expect(
    toldBy(antennasRules, 'antennas/people-in-the-beam', {
      plan: { sites: [{ ...aRadar({}), radar: unknown as Radar }] },
    }),
  ).toEqual([
    'doubt display helm: Who stands at helm dash has the beam of Helm display at the head: 9.00 m off the beam reaches from 2.20 m to 2.80 m over the water, the head is at 2.40 m; how far people keep off is not known. [9 m / ] Mount the scanner higher, so that its beam passes over every head. Until then it does not send while people stand there.',
  ]);
});

test('what says how far people keep off is the source of the limit', () => {
  const sourceOf = (peopleBy: Radar['peopleBy']) =>
    antennaFindings(peopleInTheBeam, { sites: [aRadar({ people: [personAtRadar({})], peopleBy })] })[0]?.limit?.source;
  expect(sourceOf('plate')).toBe('the plate of the radar');
  expect(sourceOf('size')).toContain(sources['maker-radar-distance'].text);
  expect(sourceOf('typical')).toContain(sources['memory-scanners'].text);
  const { peopleM: _, ...unknown } = aRadar({ people: [personAtRadar({})], peopleBy: 'unknown' }).radar ?? {};
  const [finding] = antennaFindings(peopleInTheBeam, { sites: [{ ...aRadar({}), radar: unknown as Radar }] });
  expect(finding).not.toHaveProperty('limit');
});

test('who stands near an antenna is told with the watts of the radio and the distance to keep', () => {
  const sends = { radio: 'radio', powerW: 25, peopleM: 0.8 };
  const near = [{ place: 'helm', distanceM: 0.5 }];
  const found = (aerial: object) =>
    toldBy(antennasRules, 'antennas/people-near-antenna', {
      plan: { sites: [anAntenna('radio-antenna', { for: [], topM: 3, ...aerial }), aRadar({})] },
    });
  expect(found({ near, sends })).toEqual([
    'advice gnss helm: Who stands at helm dash is 0.50 m from GNSS on the stern rail; at the 25 W of Old radio people keep 0.80 m off. [0.5 m / 0.8] Move the antenna up or away, or send at low power and briefly while somebody stands there.',
  ]);
  expect(found({ near })).toEqual([]);
  expect(found({ sends })).toEqual([]);
});

const shadow = (own: Partial<Shadow>): Shadow => ({
  by: 'mast-base',
  kind: 'mast',
  distanceM: 2,
  acrossM: 0.2,
  fromDeg: 350,
  toDeg: 10,
  blankFromDeg: 345,
  blankToDeg: 15,
  isTotal: true,
  ...own,
});

test('shadows are told by their arcs over north too, a narrow one by its middle, each thing once', () => {
  const radar: Partial<Radar> = {
    guidelineMet: false,
    isAhead: true,
    largestDeg: 20,
    sectors: [
      { fromDeg: 350, toDeg: 10 },
      { fromDeg: 119.4, toDeg: 121 },
      { fromDeg: 200, toDeg: 202 },
      { fromDeg: 359.5, toDeg: 1 },
    ],
    shadows: [shadow({}), shadow({ blankFromDeg: 119, blankToDeg: 122 }), shadow({ by: 'gnss', kind: 'unit' })],
  };
  expect(withRadar('shadow-sectors', radar)).toEqual([
    'advice display: Helm display is shadowed at 350° to 10° and about 120° and 200° to 202° and about 0°, counted clockwise from ahead, by the mast at mast base, GNSS on the stern rail; ships want none from ahead to 112.5° on either side. [20 ° / 5] Blank 345° to 15° and 119° to 122° and 345° to 15° in the set if it can; look that way yourself, or swing the bow now and then.',
  ]);
  expect(withRadar('shadow-sectors', { ...radar, isAhead: false })[0]).toContain(
    'ships want none over 5° and 20° together',
  );
  expect(withRadar('shadow-sectors', { ...radar, guidelineMet: true })).toEqual([]);
});

test('what stands in the circle of a scanner or in its plane is told with the room it wants', () => {
  const neighbour = { unit: 'gnss', distanceM: 0.4, offPlaneDeg: 12, inPlane: true, inTurn: true };
  expect(
    withRadar('scanner-has-no-room', { neighbours: [neighbour, { ...neighbour, unit: 'radio', inTurn: false }] }),
  ).toEqual([
    'doubt display gnss: GNSS on the stern rail stands 0.40 m from the middle of Helm display; its circle and 200 mm want 0.50 m. [0.4 m / 0.5] Move one of the two, and turn the array by hand once before it is switched on.',
  ]);
  const inPlane = (own: Partial<typeof neighbour>) =>
    withRadar('in-the-scanner-plane', { neighbours: [{ ...neighbour, ...own }] });
  const cure =
    'Move the antenna higher or lower, so that it stands more than 20 degrees over or under the plane of the scanner.';
  expect(inPlane({})).toEqual([
    `doubt display gnss: GNSS on the stern rail stands 0.40 m from Helm display, 12° over the plane it turns in. [12 ° / 20] ${cure}`,
  ]);
  expect(inPlane({ offPlaneDeg: -12 })).toEqual([
    `doubt display gnss: GNSS on the stern rail stands 0.40 m from Helm display, 12° under the plane it turns in. [12 ° / 20] ${cure}`,
  ]);
  expect(inPlane({ offPlaneDeg: 0.4 })[0]).toContain('from Helm display, in the plane it turns in');
  expect(inPlane({ offPlaneDeg: 0.5 })[0]).toMatch(/, [01]° over the plane/);
  expect([inPlane({ distanceM: 1.99 }), inPlane({ distanceM: 2 })].map(([one]) => one?.split(' ')[0])).toEqual([
    'doubt',
    'advice',
  ]);
});

test('two scanners are told by their height over each other', () => {
  const pair = { one: 'display', other: 'gnss', acrossM: 1, upM: 0.3, verdict: 'advice' } as const;
  expect(toldBy(antennasRules, 'antennas/scanners-too-near', { plan: { scanners: [pair] } })).toEqual([
    'advice display gnss: Helm display and GNSS on the stern rail stand 1.00 m apart and 0.30 m one over the other; books ask for 0.5 m in height or 2 m across. [0.3 m / 0.5] Ask the makers of both what they want; else mount one at least half a metre higher.',
  ]);
});
