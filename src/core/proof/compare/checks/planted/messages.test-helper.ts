import { plannedDevice } from '../../../../../../tests/recordings/planned-bus.ts';
import {
  addressOf,
  devicesBut,
  framesOf,
  otherwise,
  type Planted,
  reportOf,
  reportOn,
  without,
} from './on-gannet.test-helper.ts';

const conv = (): number => addressOf('conv-pilot');

/** Heading and course that are one and the same, and turn a little every 2.5 s. */
const turning = (everyMs: number) => (count: number) => 1 + Math.floor((count * everyMs) / 2500) * 0.05;

/** Faults of what comes, how often, and what is in it. */
export const plantedMessages: Readonly<Record<string, Planted>> = {
  'message-silent': {
    report: () => reportOn(devicesBut('gnss', without(129_029))),
    finds: ['message-silent'],
  },
  'message-empty': {
    report: () => reportOn(devicesBut('heading', otherwise(127_251, { values: { rate: Number.NaN } }))),
    finds: ['message-empty'],
  },
  'message-too-seldom': {
    report: () => reportOn(devicesBut('heading', otherwise(127_250, { everyMs: 500 }))),
    finds: ['message-too-seldom'],
  },
  'message-too-often': {
    report: () => reportOn(devicesBut('heading', otherwise(127_250, { everyMs: 40 }))),
    finds: ['message-too-often'],
  },
  'message-gap': {
    report: () => {
      const frames = framesOf(devicesBut());
      const [first] = frames;
      return reportOf(
        frames.filter(({ id, timeUs }) => {
          const atS = (timeUs - (first?.timeUs ?? 0)) / 1_000_000;
          return (id & 0xff) !== addressOf('heading') || atS < 4 || atS > 6;
        }),
      );
    },
    finds: ['message-gap'],
  },
  'readings-disagree': {
    report: () => reportOn(devicesBut('heading', otherwise(127_250, { values: { heading: 1.4 } }))),
    finds: ['readings-disagree'],
  },
  'variation-differs': {
    report: () => reportOn(devicesBut('gnss', otherwise(127_258, { values: { variation: -0.02 } }))),
    finds: ['variation-differs'],
  },
  'variation-zero': {
    report: () => reportOn(devicesBut('gnss', otherwise(127_258, { values: { variation: 0 } }))),
    finds: ['variation-differs', 'variation-zero'],
  },
  'variation-missing': {
    report: () =>
      reportOn(
        devicesBut('gnss', without(127_258)).map((device) => {
          const kind = device.address === conv() ? 'converter' : 'heading-sensor';
          if (device.address !== conv() && device.address !== addressOf('heading')) return device;
          const values = { variation: Number.NaN };
          const bare = plannedDevice({
            kind,
            address: device.address,
            sends: [{ pgn: 127_250, everyMs: 100, values }],
          });
          return { ...device, sends: [...device.sends.filter(({ pgn }) => pgn !== 127_250), ...bare.sends] };
        }),
      ),
    finds: ['message-silent', 'variation-missing'],
  },
  'true-marked-magnetic': {
    report: () => reportOn(devicesBut('heading', otherwise(127_250, { values: { reference: 0 } }))),
    finds: ['true-marked-magnetic'],
  },
  'heading-from-course': {
    report: () => {
      const course = devicesBut(
        'gnss',
        otherwise(129_026, { valuesAt: (count) => ({ cog: turning(250)(count) }), values: {} }),
      );
      const heading = devicesBut(
        'heading',
        otherwise(127_250, { valuesAt: (count) => ({ heading: turning(100)(count) }), values: {} }),
      );
      const at = new Map([
        ...course.filter(({ address }) => address === addressOf('gnss')).map((one) => [one.address, one] as const),
        ...heading.filter(({ address }) => address === addressOf('heading')).map((one) => [one.address, one] as const),
      ]);
      // The other compass is left out of it: it would not agree with a course that turns.
      return reportOn(devicesBut('conv-pilot', without(127_250)).map((device) => at.get(device.address) ?? device));
    },
    finds: ['heading-from-course', 'message-silent'],
  },
  'heading-invented': {
    report: () => reportOn(devicesBut('conv-fly', (sends) => [...sends, { pgn: 127_250, everyMs: 1000 }])),
    finds: ['heading-invented'],
  },
  echo: {
    report: () => {
      const frames = framesOf(
        devicesBut('shunt', otherwise(127_508, { valuesAt: (count) => ({ voltage: 12 + count * 0.01 }), values: {} })),
      );
      const said = frames.filter(({ id }) => (id & 0xff) === addressOf('shunt') && ((id >>> 8) & 0x1_ffff) === 127_508);
      const back = said.map(({ timeUs, id, data }) => ({
        timeUs: timeUs + 5000,
        id: (id - (id & 0xff) + 200) >>> 0,
        data,
      }));
      return reportOf([...frames, ...back].sort((a, b) => a.timeUs - b.timeUs));
    },
    finds: ['echo', 'instance-shared', 'sender-unclaimed', 'unit-unknown'],
  },
};
