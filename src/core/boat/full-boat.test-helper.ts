import { aBoat } from './a-boat.test-helper.ts';
import type { Boat } from './boat-schema.ts';
import { fillMeasured } from './fill-measured.test-helper.ts';
import { fillOpenings } from './fill-openings.test-helper.ts';
import { fillPapers } from './fill-papers.test-helper.ts';
import { fillSupply } from './fill-supply.test-helper.ts';
import { fillWork } from './fill-work.test-helper.ts';

const guessed = (valueM: number): Boat['ways'][number]['length'] => ({ valueM, how: 'guessed' });

/** The Tern with something in every list and optional part of the file, so that what is said of every list can be tried. */
export const aFullBoat = (): Boat =>
  aBoat()
    .sheet('converter-0183', (sheet) => {
      sheet.together = [
        ['out', 'n2k'],
        ['n2k', 'air'],
      ];
      sheet.inLine = ['out', 'n2k'];
      sheet.plugs[1]?.conductors?.[0]?.ports.push('n2k');
      sheet.ports.push({ id: 'air', protocol: 'wifi', role: 'both' });
      sheet.ports[0]?.hears?.push({ reading: 'depth', wants: { everyMs: 500, reference: 'keel', withOffset: true } });
      sheet.ports[0]?.hears?.push({ reading: 'depth', wants: { reference: 'waterline' } });
      sheet.turns?.push({ fromPort: 'n2k', toPort: 'air', carries: [{ reading: 'depth', loses: ['rate', 'offset'] }] });
    })
    .sheet('fixed-radio', (sheet) => {
      sheet.drive = { type: 'wheel', motorV: 12, runA: 2, peakA: 5, whenPowerIsLost: 'holds', boatKg: 7000 };
      sheet.rudderSensor = 'frequency';
      sheet.ownBattery = true;
      sheet.driveOutput = {
        port: 'gps-in',
        works: ['solenoid-valves', 'reversing-motor'],
        motorV: [24, 12],
        runA: 5,
        peakA: 10,
        clutch: { fitted: true, clutchV: [24, 12], clutchA: 2 },
        rudder: { hears: ['potentiometer', 'frequency'], needed: false },
        whenBusIsLost: 'lets-go',
      };
    })
    .sheet('fixed-radio', (sheet) => {
      sheet.earthing = { shieldTo: 'nothing', body: 'metal', bodyTo: 'negative', braidTo: 'body' };
    })
    .sheet('fixed-radio', (sheet) => {
      sheet.remote = { writes: 'listen-only', givesAddresses: false };
      sheet.antenna = { for: ['voice', 'ais'], gainDbi: 3, lengthM: 1 };
      sheet.transmits = { powerW: 25, mhz: 156.8, dutyPct: 50 };
      sheet.scanner = {
        kind: 'dome',
        sends: 'pulses',
        peakKw: 2,
        verticalBeamDeg: 25,
        acrossM: 0.5,
        leastRangeM: 20,
        peopleM: 1,
      };
      sheet.lighting = { dims: 'with-group', dialect: 'maker-a/2', quietens: true };
    })
    .sheet('converter-0183', (sheet) => {
      sheet.sensor = {
        signals: [
          { port: 'out', frequenciesKHz: [200, 50], powerW: 300, vanes: ['sine-cosine', 'potentiometer'] },
          { port: 'n2k', feed: { leastV: 5, mostV: 8 }, pulses: { least: 5, most: 6 } },
        ],
      };
    })
    .unit('radio', { mount: 'isolated', site: { tiltDeg: 3, headroomMm: 120, laminate: 'solid' } })
    .unit('converter', {
      remote: {
        writes: 'unknown',
        password: 'changed',
        heldBy: ['yard', 'owner'],
        givesAddresses: true,
        guests: 'air',
      },
    })
    .unit('compass', {
      instances: [
        { port: 'n2k', reading: 'rate-of-turn', instance: 2 },
        { port: 'n2k', reading: 'heading', instance: 1 },
      ],
      changes: [
        { path: 'ports.n2k.len', value: 2, how: 'manual' },
        { path: 'body', value: { heightMm: 40, widthMm: 50 }, how: 'seen' },
        { path: 'ports.n2k.len', value: 3, how: 'seen' },
      ],
    })
    .unit('display', {
      aboard: {
        serial: '0042-117',
        software: '3.1',
        settings: [
          { name: 'keel offset', value: '-1.2 m' },
          { name: 'alarm limits', value: 'shallow 3 m' },
        ],
        copied: true,
      },
    })
    .change((boat) => {
      for (const way of boat.ways.slice(0, 2)) {
        way.near = ['starter-cable', 'mains'];
        way.allows = ['trunk', 'drop', 'feed'];
        way.counted = true;
      }
      for (const place of boat.places.slice(0, 1)) Object.assign(place, { seen: true, counted: true, soleZM: 0.2 });
      boat.hull.outline = {
        side: [
          [0, 0],
          [8.4, 1],
          [8.4, 0],
        ],
        top: [
          [0, -1],
          [8.4, 0],
          [0, 1],
        ],
      };
      for (const id of ['old-log', 'old-pair']) {
        boat.cables.push({
          id,
          kind: 'pair',
          from: { place: 'stern-rail' },
          to: { place: 'mast-base' },
          ways: ['locker-stern', 'locker-helm', 'helm-mast'],
          length: guessed(9),
          diameterMm: 6,
          coax: {
            kind: 'rg-8x',
            losses: [
              { mhz: 150, dbPer100M: 15 },
              { mhz: 100, dbPer100M: 12 },
            ],
            joints: 'dry',
          },
          condition: 'doubtful',
          fate: 'stays',
        });
      }
      boat.needs.push(
        { reading: 'depth', at: 'display', must: false },
        { reading: 'depth', at: 'display', must: true },
      );
      boat.sources = [
        { reading: 'position', at: 'radio', primary: 'gnss.n2k' },
        { reading: 'heading', instance: 1, primary: 'compass.n2k' },
        { reading: 'heading', primary: 'compass.n2k' },
      ];
      fillMeasured(boat);
      fillSupply(boat);
      boat.days = [
        {
          id: 'weekend',
          name: 'Weekend in the bay',
          like: 'anchor',
          hours: [
            { kind: 'vhf-radio', hours: 10 },
            { unit: 'radio', hours: 4 },
            { unit: 'display', hours: 3 },
          ],
          chargedAfter: 2,
        },
        { id: 'passage', name: 'Night passage', like: 'under-way-night', hours: [] },
      ];
      fillOpenings(boat);
      boat.hull.displacement = { valueKg: 3600, of: 'light' };
      boat.steering = [
        {
          place: 'stern-rail',
          by: 'tiller',
          letsGo: [{ how: 'lever' }, { how: 'breaker', circuit: 'main-panel.helm-circuit' }],
        },
        { place: 'helm', by: 'wheel', letsGo: [{ how: 'pilot-head' }, { how: 'hard-wired-switch', at: 'locker' }] },
      ];
      boat.limits = { 'drop-pct': { value: 2, reason: 'Old radio.' }, 'bus-devices': { value: 40, reason: 'Margin.' } };
      boat.labels = { 'feed:nav~main-panel': 'C02', 'drop:nav~gnss.bus': 'C01' };
      boat.orders = [
        {
          item: 'unit-gnss',
          state: 'ordered',
          supplier: 'the chandler',
          leadDays: 10,
          orderBy: '2027-03-31',
          due: '2027-04-09',
        },
        { item: 'micro-tee', state: 'have', count: 2 },
      ];
      boat.quote = {
        by: 'professional',
        mast: 'down',
        contingencyPct: 20,
        hours: [
          { task: 'survey', eachH: 1.5, reason: 'A small boat.' },
          { task: 'commission', eachH: 8, reason: 'Two helms.' },
        ],
        includes: ['rig', 'mains'],
        exclusions: ['Painting the dash.', 'New cushions.'],
        validDays: 21,
        terms: 'Half on order, half when every reading is proved.',
      };
      boat.accepted = [
        { finding: 'ways/assumed helm-mast', reason: 'Seen from the other side.' },
        { finding: 'needs/missing depth', reason: 'No transducer yet.' },
      ];
      fillPapers(boat);
      fillWork(boat);
      boat.prices = {
        currency: 'EUR',
        trunkPerM: 500,
        dropPerM: 400,
        tee: 2500,
        terminator: 1500,
        feed: 3000,
        feedLeadPerM: 300,
        hour: 6000,
        byGrade: { mid: { trunkPerM: 700, dropPerM: 500 }, light: { trunkPerM: 400, dropPerM: 350 } },
      };
    }).boat;
