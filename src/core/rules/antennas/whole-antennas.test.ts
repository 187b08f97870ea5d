import { expect, test } from 'vitest';
import type { CoaxRun, Spacing } from '../../aerial-shape.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat, Cable } from '../../boat/boat-schema.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { anAntenna, aRun, aSpacing } from './antenna-case.test-helper.ts';
import { antennasRules } from './index.ts';

const apart = (id: string, ...spacings: Partial<Spacing>[]) =>
  toldBy(antennasRules, `antennas/${id}`, { plan: { spacings: spacings.map((own) => aSpacing(own)) } });
const near = (...spacings: Partial<Spacing>[]) => apart('antennas-too-near', ...spacings);
const liveWith =
  'Live with it where there is no room: while the one sends, the other hears little. Best is one straight above the other by 2 m, or one on the masthead and one on the stern rail.';
const hurt = 'As they stand a receiver may be hurt when the other radio sends.';

test('antennas too near are told by whose distance it is, how they stand, and what one hears of the other', () => {
  expect(near({ verdict: 'advice', distanceM: 6 })).toEqual([
    `advice gnss radio: Old radio and GNSS on the stern rail stand 6.00 m apart on one level; the guideline for ships asks for 10 m. About 32 dB part them: 16 mW of one arrive at the set of the other. [6 m / 10] ${liveWith}`,
  ]);
  expect(near({ verdict: 'doubt', distanceM: 2, limitM: 3, how: 'slant', isEstimate: true, coupledDbm: 20 })).toEqual([
    `doubt gnss radio: Old radio and GNSS on the stern rail stand 2.00 m apart; installation books ask for 3 m. About 32 dB, an estimate, part them: 0.1 W of one arrive at the set of the other. [2 m / 3] Move one of them, best straight above or below the other by 2 m or more. ${hurt}`,
  ]);
  expect(near({ verdict: 'doubt', what: 'radios', distanceM: 1, limitM: 2, how: 'stacked' })[0]).toMatch(
    /^doubt gnss radio: .* 1\.00 m apart; the guideline for ships asks for 2 m\..* \[1 m \/ 2\] Move one of them\. As they/,
  );
});

test('what arrives is told in watts from a tenth of one on, below in milliwatts, with two figures under one of these', () => {
  const heard = (coupledDbm: number) =>
    near({ verdict: 'advice', coupledDbm })[0]?.match(/part them: (.*) of one/)?.[1];
  expect([30, 20, 19, 10, 0, -1, -10].map(heard)).toEqual([
    '1.0 W',
    '0.1 W',
    '79 mW',
    '10 mW',
    '1 mW',
    '0.79 mW',
    '0.10 mW',
  ]);
  const { isolationDb: _i, ...noIsolation } = aSpacing({ verdict: 'advice' });
  const { coupledDbm: _c, ...noPower } = aSpacing({ verdict: 'advice' });
  for (const spacing of [noIsolation, noPower])
    expect(toldBy(antennasRules, 'antennas/antennas-too-near', { plan: { spacings: [spacing] } })[0]).toContain(
      'asks for 10 m. [',
    );
});

test('of pairs that are only advice each antenna is told once, by the nearest; a doubt always', () => {
  const pairs = (verdict: Spacing['verdict']) =>
    near(
      { one: 'radio', other: 'gnss', distanceM: 8, verdict: 'advice' },
      { one: 'radio', other: 'compass', distanceM: 4, verdict },
      { one: 'display', other: 'gnss', distanceM: 9, verdict },
      { one: 'converter', other: 'display', distanceM: 9.5, verdict: 'ok' },
      { one: 'radio', other: 'display', distanceM: 1, what: 'position', verdict: 'advice' },
    ).map((one) => one.slice(0, one.indexOf(':')));
  expect(pairs('advice')).toEqual(['advice compass radio', 'advice display gnss']);
  expect(pairs('doubt')).toEqual(['doubt compass radio', 'doubt display gnss']);
  expect(
    near(
      { one: 'radio', other: 'gnss', distanceM: 2, verdict: 'doubt' },
      { one: 'gnss', other: 'radio', distanceM: 1, verdict: 'doubt', what: 'radios' },
      { one: 'gnss', other: 'compass', distanceM: 1.5, verdict: 'doubt' },
    ),
  ).toHaveLength(2);
});

test('position antennas near one that sends are advice together, with the nearest, or a doubt each', () => {
  const position = (...spacings: Partial<Spacing>[]) =>
    apart(
      'position-antenna-near-transmitter',
      ...spacings.map(
        (own): Partial<Spacing> => ({ what: 'position', other: 'radio', limitM: 5, verdict: 'advice', ...own }),
      ),
      { what: 'ais', one: 'compass', other: 'radio', verdict: 'advice' },
      { what: 'position', one: 'compass', other: 'radio', verdict: 'ok' },
    );
  const watch = 'Send at full power at the dock and watch whether the position holds; move it only if it does not.';
  const both: Partial<Spacing>[] = [
    { one: 'gnss', distanceM: 4.5 },
    { one: 'display', distanceM: 4 },
  ];
  expect(position(...both)).toEqual([
    `advice display gnss radio: GNSS on the stern rail and Helm display stand 4.00 m from Old radio, which sends; installation books ask for 5 m. [4 m / 5] ${watch}`,
  ]);
  expect(position(...both.slice(0, 1))).toEqual([
    `advice gnss radio: GNSS on the stern rail stands 4.50 m from Old radio, which sends; installation books ask for 5 m. [4.5 m / 5] ${watch}`,
  ]);
  const move = 'Move one of the two: position may be lost whenever the radio sends.';
  expect(position(...both.map((own): Partial<Spacing> => ({ ...own, limitM: 3, verdict: 'doubt' })))).toEqual([
    `doubt display radio: Helm display stands 4.00 m from Old radio, which sends; installation books ask for 3 m. [4 m / 3] ${move}`,
    `doubt gnss radio: GNSS on the stern rail stands 4.50 m from Old radio, which sends; installation books ask for 3 m. [4.5 m / 3] ${move}`,
  ]);
});

test('a position antenna is told of the deck over it, and of what stands wide before it', () => {
  const sky = (is: SiteEntry['is'], own: object, boat: Boat = aBoat().boat) =>
    toldBy(antennasRules, 'antennas/no-open-sky', {
      boat,
      plan: {
        sites: [
          anAntenna(is, { for: ['position'], topM: 2, ...own }),
          { ...anAntenna(is, { for: [], topM: 2 }), unit: 'radio' },
        ],
      },
    });
  const hull = (material: Boat['hull']['material']) =>
    aBoat().change((boat) => {
      boat.hull.material = material;
    }).boat;
  const metal = 'Move it into the open, clear of metal from 5 degrees over the horizon up.';
  expect(sky('position-antenna', { inOpen: false })).toEqual([
    'advice gnss: GNSS on the stern rail stands under cover at stern rail. [ / ] It may work under a deck of glass or wood without metal, carbon or wet sails over it: try it there before it is fixed, else move it into the open.',
  ]);
  for (const material of ['steel', 'aluminium'] as const)
    expect(sky('position-antenna', { inOpen: false }, hull(material))).toEqual([
      `doubt gnss: GNSS on the stern rail stands under cover at stern rail, in a boat of ${material}. [ / ] ${metal}`,
    ]);
  expect(sky('radio-antenna', { inOpen: false })).toEqual([]);
  const wide = (wideDeg: number, kind: 'mast' | 'unit', by: string) =>
    sky('position-antenna', { inOpen: true, sky: [{ by, kind, bearingDeg: 89.6, wideDeg, upDeg: 59.7 }] });
  expect(wide(30, 'mast', 'mast-base')).toEqual([]);
  expect(wide(30.4, 'mast', 'mast-base')).toEqual([
    'advice gnss mast-base: The mast at mast base stands over 30° of the horizon of GNSS on the stern rail, towards 90° from ahead, up to 60°. [30.4 ° / 30] Move the position antenna up or away from it.',
  ]);
  expect(wide(40, 'unit', 'display')[0]).toContain('Helm display stands over 40° of the horizon');
});

const piece: CoaxRun['pieces'][number] = {
  line: 'coax',
  by: 'thickness',
  cable: 'old',
  lengthM: 10,
  dbPer100M: 21,
  lossDb: 2.1,
};
const cable: Cable = {
  id: 'old',
  kind: 'coax',
  from: { place: 'helm' },
  to: { place: 'stern-rail' },
  ways: [],
  length: { valueM: 10, how: 'taped' },
  diameterMm: 6.2,
  condition: 'good',
  fate: 'stays',
};
const coax = (id: string, own: Partial<CoaxRun>, named: Partial<Cable> = {}) =>
  toldBy(antennasRules, `antennas/${id}`, {
    boat: aBoat().with({ cables: [{ ...cable, ...named }] }).boat,
    plan: { coax: [aRun(own)] },
  });

test('coax of unknown kind is told by its cable, and is a doubt where the run loses too much', () => {
  const read =
    'Read what is printed on its jacket, every half metre or so, and enter it; loss by the data sheet of the part is better still.';
  expect(coax('coax-kind-unknown', { pieces: [piece] })).toEqual([
    `advice old: What coax old is, is not known. As the worst of 6.2 mm it loses 21.0 dB in 100 m, here 2.1 dB. [21 dB for 100 m / ] ${read}`,
  ]);
  expect(coax('coax-kind-unknown', { pieces: [piece], verdict: 'advice' }, { name: 'mast coax' })[0]).toMatch(
    /^doubt old: What coax mast coax is/,
  );
  const { cable: _, ...fresh } = piece;
  expect(coax('coax-kind-unknown', { pieces: [fresh, { ...piece, by: 'name' }, { ...piece, cable: 'gone' }] })).toEqual(
    [],
  );
});

test('coax that loses too much is told with its kinds, its joints, what arrives and the limit it is held against', () => {
  const kinds: CoaxRun['pieces'] = [piece, { ...piece, kind: 'rg-58c-u' }];
  const kept =
    'A weak signal keeps about 92 % of its range; inside the horizon it hardly shows. Open each joint: where all are dry and bright, say so in the cable. Measure at the radio: an antenna that is a fault reads 2.1 there, not 3. Renew it when the mast is down.';
  const from = 'From Old radio to GNSS on the stern rail lead up to 10.00 m of';
  expect(coax('coax-loses-too-much', { verdict: 'doubt', weatheredDb: 3.4, pieces: kinds })).toEqual([
    `doubt gnss radio: ${from} unknown coax and RG-58C/U with 2 joints: of 25 W 19.4 W arrive with sound joints (1.1 dB), 17.7 W with weathered ones (3.4 dB). [3.4 dB / 3] ${kept}`,
  ]);
  const fresh = (own: Partial<CoaxRun>) =>
    coax('coax-loses-too-much', { use: 'new', judgedBy: 'sound', pieces: kinds.slice(1), ...own });
  expect(fresh({ verdict: 'fault', soundDb: 3.2 })).toEqual([
    `fault gnss radio: ${from} RG-58C/U with 2 joints: of 25 W 19.4 W arrive with sound joints (3.2 dB), 17.7 W with weathered ones (1.5 dB). [3.2 dB / 3] Settle on a thicker coax, a shorter way, or a place nearer for the radio or the antenna.`,
  ]);
  expect(fresh({ verdict: 'advice', soundDb: 2.5 })).toEqual([
    `advice gnss radio: ${from} RG-58C/U with 2 joints: of 25 W 19.4 W arrive with sound joints (2.5 dB), 17.7 W with weathered ones (1.5 dB). [2.5 dB / 2.2] A thicker coax or a shorter way brings it to the aim; no kind on the list does on this way.`,
  ]);
  expect(fresh({ verdict: 'ok' })).toEqual([]);
});

test('a run that only hears is told in decibels alone', () => {
  const { powerW: _p, ...noPower } = aRun({ verdict: 'advice' });
  const { soundW: _s, ...noSound } = aRun({ verdict: 'advice' });
  const { weatheredW: _w, ...noWeathered } = aRun({ verdict: 'advice' });
  for (const run of [noPower, noSound, noWeathered])
    expect(toldBy(antennasRules, 'antennas/coax-loses-too-much', { plan: { coax: [run] } })[0]).toContain(
      'joints: 1.1 dB with sound joints, 1.5 dB with weathered ones.',
    );
});
