import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { SensorCheck, SensorInput } from '../../sensor-shape.ts';
import { told } from '../told.test-helper.ts';
import { sensorsRules } from './index.ts';
import { sensorCase } from './sensor-case.test-helper.ts';

const of = (id: string, ...checks: (Partial<SensorCheck> & Pick<SensorCheck, 'check'>)[]) =>
  told(sensorsRules, `sensors/${id}`, sensorCase({ checks: checks.map((own) => ({ verdict: 'bad', ...own })) }));
const name = 'Heading sensor at the mast';

test('beside the keel it is told how far off, ahead of its edge or behind it', () => {
  const cure = 'Put it ahead of the keel. A place beside it reads on one tack and not on the other.';
  const from = { check: 'from-keel', measured: 0.1, limit: 0.15, unit: 'm' } as const;
  const ahead = (measured: number) => ({ check: 'ahead-of-keel', measured, limit: 0.3, unit: 'm' }) as const;
  const wheel = (where: string, m: number) =>
    `doubt compass: ${name} sits ${where} of the keel; a paddle wheel goes 0.30 m ahead of it. [${m} m / 0.3] ${cure}`;
  expect(of('beside-the-keel', from, ahead(-0.5))).toEqual([
    wheel('0.50 m behind the forward edge', -0.5),
    `doubt compass: ${name} sits 0.10 m from the keel; 0.15 m is asked for. [0.1 m / 0.15] ${cure}`,
  ]);
  expect([...of('beside-the-keel', ahead(0)), ...of('beside-the-keel', ahead(0.2))]).toEqual([
    wheel('0.00 m ahead', 0),
    wheel('0.20 m ahead', 0.2),
  ]);
});

test('a core is told by how the sensor sits in it, and wood with plastic beside it', () => {
  const found = (sensor: { inHull?: true } | undefined) =>
    told(sensorsRules, 'sensors/hull-does-not-suit', {
      ...sensorCase({
        checks: [
          { check: 'material', verdict: 'bad' },
          { check: 'laminate', verdict: 'bad' },
        ],
      }),
      boat: aBoat().sheet('heading-sensor', (sheet) =>
        Object.assign(sheet, sensor && { sensor: { signals: [], ...sensor } }),
      ).boat,
    });
  const wood = `fault compass: ${name} has a housing of plastic and goes through a hull of wood. The wood swells when she is afloat, and cracks it below the waterline. [ / ] Fit one of bronze.`;
  const through = `fault compass: ${name} goes through a hull with a core, and round the hole the core is open: water creeps into it for years. [ / ] Ashore: cut the core back round the hole, fill a ring of it solid, and drill through that.`;
  expect(found({ inHull: true })).toEqual([
    `fault compass: ${name} looks through the hull, and where it sits the hull has a core: what sound gets into it does not come out again. [ / ] Find solid laminate of about 12 mm, most often near the keel, or fit one that goes through the hull.`,
    wood,
  ]);
  expect([found({}), found(undefined)]).toEqual([
    [through, wood],
    [through, wood],
  ]);
});

test('an input that does not fit is told with all that does not, each pair of ports by itself', () => {
  const misfits: SensorInput['misfits'] = [
    { what: 'power', gives: 'takes 600 W', takes: 'gives 1000 W' },
    { what: 'feed', gives: '5 V', takes: '12 V' },
    { what: 'pulses', gives: '4 a turn', takes: '8' },
    { what: 'vane', gives: 'sine', takes: 'counts' },
  ];
  const inputs = ['in', 'in-b'].map((port) => ({ port: 'compass.n2k', at: `converter.${port}`, misfits, unknown: [] }));
  const said =
    'doubt compass converter: Converter for the old radio cannot read Heading sensor at the mast: the element takes 600 W, the input gives 1000 W; the sensor wants 5 V, the input feeds it 12 V; the wheel gives 4 a turn, the input counts 8; the vane speaks sine, the input counts. [ / ] Look both up in their manuals. If they say the same, plan a new sensor that the input names, or an input that names this sensor.';
  expect(told(sensorsRules, 'sensors/input-does-not-fit', sensorCase({ inputs }))).toEqual([said, said]);
});

test('lean, propeller, headroom, housing and air are told with their figures', () => {
  expect(of('leans', { check: 'tilt', measured: 14, limit: 10, unit: '°' })).toEqual([
    `doubt compass: ${name} leans 14° where the hull rises; up to 10° is right without a block. [14 ° / 10] Fit a fairing block cut to the hull, or a housing whose element leans the other way, and bed both.`,
  ]);
  const screw = (measured: number) =>
    of('near-the-propeller', { check: 'ahead-of-propeller', measured, limit: 1, unit: 'm' });
  const sits = (where: string, m: number) => [
    `doubt compass: ${name} sits ${where} the propeller; a tenth of the waterline ahead, 1.00 m, is asked for. [${m} m / 1] Put it farther forward, where the hull is still in smooth water at every speed. Where it must stay, see at sea up to which speed it reads.`,
  ];
  expect([screw(0), screw(-0.4)]).toEqual([sits('0.00 m ahead of', 0), sits('0.40 m behind', -0.4)]);
  expect(of('old-housing', { check: 'housing' }, { check: 'tilt' })).toHaveLength(1);
  expect(of('wind-not-clear', { check: 'clear-air', measured: 0.3, limit: 0.5, unit: 'm', by: 'gnss' })).toEqual([
    `advice compass gnss: GNSS on the stern rail stands 0.30 m beside ${name} and as high or higher. [0.3 m / 0.5] Put the wind head on the longer arm, ahead and above, or lower the other.`,
  ]);
  const air = of('wind-not-clear', { check: 'clear-air', measured: 0.3, limit: 0.5, unit: 'm' });
  expect(air[0]).toMatch(/^advice compass: {2}stands 0\.30 m/);
});

test('figures are given beside each other only where all of them are known', () => {
  const over = { check: 'headroom', measured: 40, limit: 100, unit: 'mm' } as const;
  const said = (free: number, wanted: number, figures: string) => [
    `doubt compass: Over ${name} there are ${free} mm; ${wanted} mm are wanted to pull the insert and put in the plug. [${figures}] Choose a place with more room, or make a hatch in what lies over it.`,
  ];
  const { measured: _m, ...noMeasured } = over;
  const { limit: _l, ...noLimit } = over;
  const { unit: _u, ...noUnit } = over;
  expect([over, noMeasured, noLimit, noUnit].map((check) => of('no-headroom', check))).toEqual([
    said(40, 100, '40 mm / 100'),
    said(0, 100, ' / '),
    said(40, 0, ' / '),
    said(40, 100, ' / '),
  ]);
});

test('what is not measured is told of all sensors in one advice, and of a place without a sensor none', () => {
  const site = { is: 'depth', place: 'locker', aboveWaterM: -0.5 } as const;
  const ask = (unit: string, ...checks: SensorCheck['check'][]) => ({
    ...{ ...site, unit },
    sensor: { checks: checks.map((check) => ({ check, verdict: 'ask' as const })), inputs: [] },
  });
  const sites = [
    ask('compass', 'tilt', 'headroom'),
    { ...site, unit: 'radio' },
    ask('gnss'),
    ask('display', 'laminate'),
  ];
  expect(told(sensorsRules, 'sensors/not-measured', { plan: { sites } })).toEqual([
    `advice compass display: Before a hole is made nobody has said of ${name} how far the hull leans there, how much room is over it; of Helm display whether the hull is solid there or has a core. [ / ] Measure it while she is ashore, or ask the yard that last had her out, and enter it.`,
  ]);
});

test('two sounders at one frequency are told once by the first they share: to 2 % of the lower, whichever is listed first', () => {
  const found = (one: readonly number[], other: readonly number[]) => {
    const { boat } = aBoat()
      .sheet('heading-sensor', (sheet) => {
        sheet.sensor = { signals: [{ port: 'n2k', frequenciesKHz: [...one] }, { port: 'n2k' }] };
      })
      .sheet('gnss-receiver', (sheet) => {
        sheet.sensor = { signals: [{ port: 'n2k', frequenciesKHz: [...other] }] };
      });
    const site = { is: 'depth', place: 'locker', aboveWaterM: -0.5, sensor: { checks: [], inputs: [] } } as const;
    const sites = ['compass', 'display', 'gnss'].map((unit) => ({ ...site, unit, sensor: { checks: [], inputs: [] } }));
    return told(sensorsRules, 'sensors/one-frequency-twice', { boat, plan: { sites } });
  };
  const said = (kHz: number) => [
    `doubt compass gnss: ${name} and GNSS on the stern rail both work at ${kHz} kHz. With both on, each shows the other’s echoes as stripes or false depths. [ / ] Set one of them to another frequency, or keep one switched off unless the other fails; say on the settings sheet which.`,
  ];
  expect(found([50, 200], [200, 50])).toEqual(said(50));
  expect([found([200], [204]), found([204], [200])]).toEqual([said(200), said(204)]);
  expect(found([50, 50.5], [200])).toEqual([]);
  expect([...found([200], [205]), ...found([205], [200]), ...found([200], [204.05])]).toEqual([]);
});
