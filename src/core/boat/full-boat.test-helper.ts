import { aBoat } from './a-boat.test-helper.ts';
import type { Boat } from './boat-schema.ts';

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
      boat.waters = 'coast';
      boat.measures = {
        airDraftParts: [
          { id: 'rail', name: 'rail over the water', length: guessed(1.1) },
          { id: 'antenna', name: 'antenna on it', length: { valueM: 0.3, how: 'taped' }, unit: 'gnss' },
        ],
        transducers: [
          { unit: 'radio', below: guessed(0.4) },
          { unit: 'compass', below: { valueM: 0.5, how: 'papers' } },
        ],
        wavesM: 0.4,
        doubtM: 0.6,
        overheadM: 1.5,
        screens: [
          { unit: 'radio', depth: 'fm', height: 'ft', speed: 'km/h', wind: 'm/s', temperature: '°F' },
          { unit: 'display', depth: 'ft' },
        ],
        typed: [
          { unit: 'display', what: 'safety-depth', figure: 8, in: 'ft', on: '2027-05-02' },
          { unit: 'display', what: 'depth-alarm', figure: 2.4, in: 'm' },
        ],
      };
      boat.papers = {
        flag: 'GB',
        goesAbroad: true,
        workBy: 'owner',
        shipName: 'TERN',
        callSign: 'ZZ99',
        number: { digits: '000123456', from: 'state', readBackBy: 'the mate' },
        paperwork: [
          { paper: 'ship-radio-licence', state: 'asked', on: '2027-02-01', waitDays: 30 },
          { paper: 'beacon-registration', state: 'not-needed' },
        ],
      };
      boat.sea = {
        logs: ['log-b', 'log-a'].map((id) => ({
          id,
          unit: 'compass',
          on: '2027-06-01',
          by: 'the mate',
          distanceNm: 1,
          runs: [
            { seconds: 600, indicatedKn: 6 },
            { seconds: 500, indicatedKn: 6.1 },
          ],
          factorBefore: 1.1,
        })),
        winds: [{ id: 'wind-a', unit: 'compass', on: '2027-06-01', tacks: [{ onPortDeg: 35, onStarboardDeg: 25 }] }],
        leads: [{ id: 'lead-a', unit: 'compass', on: '2027-06-01', leadM: 4.6, shownM: 4, offsetM: -0.1 }],
        swings: [
          {
            id: 'swing-a',
            unit: 'compass',
            on: '2027-06-01',
            electronics: 'on',
            points: [
              { magneticDeg: 90, compassDeg: 88 },
              { magneticDeg: 0, compassDeg: 1 },
            ],
          },
        ],
        bridges: [
          { id: 'road', on: '2027-06-01', name: 'road bridge', chartedM: 17, datum: 'hat', datumAboveM: 5.6 },
          { id: 'rail-bridge', on: '2027-06-01', name: 'railway bridge', chartedM: 20 },
        ],
      };
      boat.buses.push({ id: 'aft-bus', name: 'Second bus', protocol: 'nmea2000', shieldAt: ['locker', 'helm'] });
      for (const join of boat.joins) if (join.id === 'radio-position') join.shieldAt = ['radio', 'converter'];
      boat.supply.banks.push({
        id: 'engine-bank',
        place: 'battery-box',
        chemistry: 'agm',
        nominalV: 12,
        capacityAh: 70,
        for: 'start',
        coldCrankingA: 600,
        shortCircuitA: 2000,
        main: {
          kind: 'fuse',
          family: 'class-t',
          distance: guessed(0.2),
          sheathed: true,
          interruptA: 20000,
          ratingA: 110,
        },
        isolator: true,
        partedBy: 'relay',
        seen: true,
      });
      boat.supply.chargers = [
        { id: 'shore-charger', place: 'locker', kind: 'mains', charges: ['house', 'engine-bank'], ratedA: 30 },
        { id: 'aft-charger', place: 'locker', kind: 'dcdc', charges: ['engine-bank'], is: 'aft-supply' },
      ];
      boat.supply.negativeAt = 'battery-box';
      const [mainPanel] = boat.supply.panels;
      if (mainPanel !== undefined) {
        mainPanel.main = { kind: 'breaker', family: 'panel-breaker', distance: guessed(3), interruptA: 3000 };
        mainPanel.freeWays = 2;
        for (const circuit of mainPanel.circuits)
          Object.assign(circuit, { interruptA: 1500, fusedEach: true, laid: 'pair' });
      }
      boat.supply.panels.push({ id: 'aft-panel', place: 'helm', from: 'house', tapV: 6, circuits: [] });
      for (const id of ['radio-supply', 'aft-supply']) {
        boat.supply.dcdc.push({ id, place: 'locker', outV: 12, ratedA: 10, efficiencyPct: 90, isolated: true });
      }
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
      boat.openings = [
        {
          id: 'old-plotter-hole',
          name: 'hole of the old plotter',
          place: 'helm',
          hole: { shape: 'rectangle', widthMm: 160, heightMm: 90, cornerMm: 6 },
          atMm: [0, 0],
          screws: [
            { xMm: 84, yMm: 50, holeMm: 4 },
            { xMm: -84, yMm: 50, holeMm: 4 },
          ],
          panel: {
            material: 'grp',
            thicknessMm: 6,
            core: { material: 'plywood', thicknessMm: 12 },
            edgesMm: { left: 80, above: 45 },
            unevenMm: 0.5,
          },
          behind: {
            depthMm: 180,
            how: 'taped',
            widthMm: 400,
            heightMm: 300,
            air: 'closed',
            obstacles: [
              { what: 'rib', xMm: 120, yMm: 0, widthMm: 20, heightMm: 300 },
              { what: 'hose', xMm: 0, yMm: -90, widthMm: 300, heightMm: 40, fromMm: 60 },
            ],
          },
          how: 'taped',
          for: 'display',
          plate: { id: 'dash-plate', overlapMm: 25, material: 'grp', thicknessMm: 5 },
          instead: { verdict: 'plate', reason: 'The edge of the hole is ragged.' },
          viewed: { distanceM: 0.8, eyeAboveM: 0.3, reachM: 0.6, gloves: true },
          toCut: true,
        },
        {
          id: 'old-log-hole',
          name: 'hole of the old log',
          place: 'helm',
          hole: {
            shape: 'traced',
            widthMm: 60,
            heightMm: 40,
            outlineMm: [
              [-30, -20],
              [30, -20],
              [0, 20],
            ],
          },
          atMm: [220, 0],
          panel: { material: 'plywood', thicknessMm: 12 },
          how: 'guessed',
          traced: {
            picture: { hash: '12'.repeat(32), type: 'jpeg', widthPx: 900, heightPx: 900 },
            from: { xPx: 100, yPx: 800 },
            to: { xPx: 800.5, yPx: 800 },
            apartMm: 100,
          },
          throughHull: false,
        },
      ];
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
        { item: 'unit-gnss', state: 'ordered', supplier: 'the chandler', leadDays: 10, orderBy: '2027-03-31' },
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
      const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 2000, heightPx: 900 } as const;
      boat.underlays = [
        {
          view: 'top',
          picture: { ...picture, hash: 'cd'.repeat(32) },
          from: { xPx: 100, yPx: 450, alongM: 0, acrossM: 0 },
          to: { xPx: 1900, yPx: 450, alongM: 8.4, acrossM: 0 },
          hidden: true,
        },
        {
          view: 'side',
          picture,
          from: { xPx: 1900.5, yPx: 640, alongM: 0, acrossM: 0.2 },
          to: { xPx: 100, yPx: 640.25, alongM: 8.4, acrossM: 0.2 },
          mirrored: true,
        },
      ];
      boat.photos = [
        { of: 'display', shows: 'label', picture: { ...picture, hash: 'ef'.repeat(32) } },
        { of: 'display', shows: 'front', picture },
        { of: 'helm', shows: 'other', picture: { ...picture, type: 'png' } },
      ];
      boat.fitted = [
        {
          id: 'd1',
          about: 'main-panel.helm-circuit',
          what: 'fuse',
          was: '15 A',
          is: '10 A',
          on: '2027-05-02',
          by: 'the yard',
          note: 'None of 15 A was at hand.',
        },
        { id: 'd2', about: 'locker', what: 'other', is: 'a second grommet in its back', on: '2027-05-03' },
      ];
      boat.revisions = [
        { mark: 'A', standing: 'planned', on: '2027-03-01', by: 'the owner', says: 'For the yard.', boat: '030000' },
        { mark: 'B', standing: 'fitted', on: '2027-05-04', says: 'As she went back in.', boat: '030000' },
      ];
      const walk = [
        { place: 'locker', tees: ['feed', 'converter.n2k', 'gnss.n2k'] },
        { place: 'helm', via: 'locker-helm', tees: ['spare@helm#1', 'display.n2k'] },
        { place: 'mast-base', via: 'helm-mast', tees: ['compass.n2k'] },
      ];
      boat.pins = {
        layouts: { nav: { grade: 'mid', walk, state: 'fixed' } },
        wires: { 'feed:display.supply~main-panel': { areaMm2: 2.5, state: 'fitted' } },
        coax: { 'coax:aerial.coax~radio.rf': { kind: 'rg-8x', state: 'fixed' } },
        fuses: { 'main-panel.helm-circuit': { ratingA: 10, state: 'fixed' } },
        routes: {
          'pair:converter.wires~radio.wires': { ways: ['helm-mast', 'locker-mast'], state: 'fixed' },
          'feed:radio.supply~main-panel': { ways: ['locker-helm', 'locker-stern'], state: 'bought' },
        },
      };
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
