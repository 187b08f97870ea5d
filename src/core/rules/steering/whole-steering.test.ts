import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import type { DriveCheck, DriveEntry, SteeringEntry } from '../../drives-shape.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import { aFeed } from '../power/power-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { steeringRules } from './index.ts';

const { boat } = aPilotBoat();

/** What one rule says of the pump and its computer when these checks went so. */
const of = (rule: string, checks: readonly DriveCheck[], plan: Partial<PlanDraft> = {}) => {
  const entry: DriveEntry = { drive: 'pump.motor', computer: 'pilot.motor', checks: [...checks], verdict: 'fails' };
  return told(steeringRules, `steering/${rule}`, { boat, plan: { drives: [entry], ...plan } });
};

const fails = (check: DriveCheck['check'], own: Partial<DriveCheck> = {}): DriveCheck => ({
  check,
  verdict: 'fails',
  ...own,
});
const otherPair = 'Take a computer and a drive that are made for each other.';

test('a clutch is told with what it lacks: an output, its volts, its current', () => {
  const never = 'The pilot never bites, or the helm is never free.';
  const figures = { asked: 12, given: 24, unit: 'V' } as const;
  expect(
    (['clutch-output', 'clutch-volts', 'clutch-current'] as const).flatMap((check) =>
      of('clutch-not-served', [fails(check, check === 'clutch-output' ? {} : figures)]),
    ),
  ).toEqual([
    `fault pilot.motor pump.motor: Pump has a clutch or a bypass, and Pilot computer has no output for it. ${never} [ / ] ${otherPair}`,
    `fault pilot.motor pump.motor: The clutch of Pump is made for 12 V, and Pilot computer gives it 24 V. ${never} [12 V / 24] ${otherPair}`,
    `fault pilot.motor pump.motor: The clutch of Pump draws 12 A, and Pilot computer gives it 24 A. ${never} [12 V / 24] ${otherPair}`,
  ]);
});

test('a clutch that stays engaged is a danger, told by what is lost', () => {
  expect(of('clutch-stays-engaged', [fails('power-lost')])).toEqual([
    'danger pilot.motor pump.motor: Pump holds the helm when its power is lost, and not every steering place has a lever within reach to free it. [ / ] Take a drive whose clutch or bypass lets go without current, or fit a lever or hand valve within reach of every steering place.',
  ]);
  expect(of('clutch-stays-engaged', [fails('bus-lost')])).toEqual([
    'danger pilot.motor pump.motor: Pilot computer keeps the clutch of Pump engaged when its bus is lost: the keys are dead and the helm is not free. [ / ] Set the computer to let go when the bus is lost, or take one that does; try it at the berth by pulling the bus.',
  ]);
});

test('a drive draws too much as it runs or at its peak', () => {
  const figures = { asked: 12, given: 10, unit: 'A' } as const;
  expect(of('drive-draws-too-much', [fails('run-current', figures), fails('peak-current', figures)])).toEqual([
    `fault pilot.motor pump.motor: Pump draws 12 A at its peak, and the output of Pilot computer gives 10 A. [12 A / 10] ${otherPair}`,
    `fault pilot.motor pump.motor: Pump draws 12 A as it runs, and the output of Pilot computer gives 10 A for long. [12 A / 10] ${otherPair}`,
  ]);
});

test('what is not known is listed, and what fits or fails is not; a drive without a computer is told as that', () => {
  const lookUp = 'Look it up on the plates and in the manuals, and enter it.';
  const some: DriveCheck[] = [
    { check: 'motor-volts', verdict: 'unknown' },
    { check: 'run-current', verdict: 'fits' },
    { check: 'output-kind', verdict: 'unknown' },
  ];
  expect(of('drive-not-known', some)).toEqual([
    `doubt pilot.motor pump.motor: Pilot computer with Pump could not be looked at in everything. Not known: volts of the output; kind of the output. [ / ] ${lookUp}`,
  ]);
  expect(of('drive-not-known', [{ check: 'motor-volts', verdict: 'fits' }, fails('run-current')])).toEqual([]);
  const alone = (check: DriveCheck['check']) =>
    told(steeringRules, 'steering/drive-not-known', {
      boat,
      plan: { drives: [{ drive: 'pump.motor', checks: [{ check, verdict: 'unknown' }], verdict: 'unknown' }] },
    });
  expect([...alone('output-kind'), ...alone('motor-volts')]).toEqual([
    'doubt pump.motor: No pilot computer is joined to Pump, so it is not known whether anything works it. [ / ] Join the drive to the output of its computer, or say that it goes.',
    `doubt pump.motor: Pump could not be looked at in everything. Not known: volts of the output. [ / ] ${lookUp}`,
  ]);
});

test('a drive too small is told with the weight in whole kilograms', () => {
  expect(of('drive-too-small', [fails('boat-weight', { asked: 9000.4, given: 8000, unit: 'kg' })])[0]).toContain(
    'Pump is rated for boats up to 8000 kg laden, and this one weighs 9000 kg.',
  );
});

test('what feed and lead lose is told with the length and the copper of the lead of this drive', () => {
  const lead = (to: string, lengthM: number, areaMm2: number) => ({
    line: `lead-${to}`,
    to,
    runA: 5,
    peakA: 15,
    lengthM,
    areaMm2,
  });
  const leads = [lead('other.motor', 9, 9), lead('pump.motor', 3.456, 2.5)];
  const plan = { feeds: [{ ...aFeed(), leads }] };
  const cure = 'Thicker wire for feed and lead together, or the computer nearer to the drive.';
  const slow = 'The rudder turns slowly and the pilot sounds its alarm.';
  const way = 'its lead of 3.46 m of 2.5 mm² counted with the feed of its computer.';
  const asked = [fails('leads-run', { asked: 12.34 }), fails('leads-peak', { asked: 12.34 })];
  expect(of('leads-lose-too-much', asked, plan)).toEqual([
    `fault pilot.motor pump.motor: From the panel to Pump 12.3 % of the volts are lost at its peak, ${way} ${slow} [12.34 % / 10] ${cure}`,
    `fault pilot.motor pump.motor: From the panel to Pump 12.3 % of the volts are lost as it runs, ${way} ${slow} [12.34 % / 3] ${cure}`,
  ]);
});

test('a rudder sensor that is not heard is told with the kinds that are', () => {
  const given = { askedKind: 'frequency', givenKinds: ['resistance', 'voltage'] };
  expect(of('rudder-sensor-not-heard', [fails('rudder-kind', given)])).toEqual([
    'fault pilot.motor pump.motor: Pilot computer is given a rudder sensor of the kind frequency, and hears resistance or voltage. [ / ] Fit a sensor of a kind it hears: resistance or voltage.',
  ]);
  expect(of('rudder-sensor-not-heard', [fails('rudder-kind', { askedKind: 'frequency' })])).toEqual([
    'fault pilot.motor pump.motor: Pilot computer is given a rudder sensor of the kind frequency, and hears none. [ / ] Fit a sensor of a kind it hears.',
  ]);
});

test('a steering place that nothing frees is told with every way there is and why it does not count', () => {
  const fit =
    'Fit a hard-wired switch in the clutch or power lead of the pilot, or a lever, within reach of whoever steers there.';
  const at = (...ways: SteeringEntry['ways']) =>
    of('no-way-to-let-go', [], { steering: [{ place: 'helm', by: 'wheel', ways, free: false }] });
  expect(at()).toEqual([
    `danger helm: At the wheel, helm dash, nothing within reach frees the helm from the pilot by hand: nothing is entered. [ / ] ${fit}`,
  ]);
  const key = { how: 'pilot-head', at: 'helm', awayM: 0.2, counts: false, whyNot: 'needs-the-network' } as const;
  const lever = { how: 'lever', at: 'locker', awayM: 3.2, counts: false, whyNot: 'out-of-reach' } as const;
  expect(at(key, lever)).toEqual([
    `danger helm: At the wheel, helm dash, nothing within reach frees the helm from the pilot by hand: the key on the pilot head needs the network; the lever is 3.20 m away. [3.2 m / 1] ${fit}`,
  ]);
});
