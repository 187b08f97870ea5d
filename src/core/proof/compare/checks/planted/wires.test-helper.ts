import { watchFrames } from '../../../../../../tests/recordings/planned-boat.ts';
import { plannedDevice } from '../../../../../../tests/recordings/planned-bus.ts';
import { sentenceOf } from '../../../../../../tests/recordings/planned-line.ts';
import { emptyFrame } from '../../../readers/recorded-frame.ts';
import {
  addressOf,
  devicesBut,
  framesOf,
  type Planted,
  reportOf,
  reportOn,
  reportOnLine,
  reportOnSomeLine,
  watchGannet,
} from './on-gannet.test-helper.ts';

const damaged = {
  frames: 1,
  messages: 0,
  sentences: 0,
  comments: 0,
  broken: 2,
  brokenAt: [],
  recorderNotes: 0,
  noiseBytes: 0,
  cutShort: true,
};

const startUs = 1_700_000_000_000_000;

/** Faults of a wire as a whole, and of what recorded it. */
export const plantedWires: Readonly<Record<string, Planted>> = {
  'load-off-plan': {
    report: () =>
      reportOn([
        ...devicesBut(),
        plannedDevice({ kind: 'recorder', address: 200, sends: [{ pgn: 65_280, everyMs: 4 }] }),
      ]),
    finds: ['load-off-plan', 'unit-unknown'],
  },
  'wire-silent': { report: () => reportOf([]), finds: ['wire-silent'] },
  'error-frames': {
    report: () => {
      const watch = watchGannet();
      watchFrames(watch, framesOf(devicesBut()));
      watch.takeFrame({ ...emptyFrame(), error: true, timeUs: startUs + 9_000_000 });
      return watch.report();
    },
    finds: ['error-frames'],
  },
  'messages-lost': {
    report: () => {
      let dropped = 0;
      return reportOf(
        framesOf(devicesBut()).filter(({ id, data }) => {
          const isLong = (id & 0xff) === addressOf('gnss') && ((id >>> 8) & 0x1_ffff) === 129_540;
          if (!isLong || ((data[0] ?? 0) & 0x1f) !== 3 || dropped > 0) return true;
          dropped += 1;
          return false;
        }),
      );
    },
    finds: ['messages-lost'],
  },
  'recording-without-time': {
    report: () => {
      const watch = watchGannet();
      const taken = emptyFrame();
      for (const { id, data } of framesOf(devicesBut())) {
        Object.assign(taken, { id, length: data.length });
        taken.data.set(data);
        watch.takeFrame(taken);
      }
      return watch.report();
    },
    finds: ['recording-without-time'],
  },
  'clock-stepped': {
    report: () =>
      reportOf(
        framesOf(devicesBut()).map((frame) =>
          frame.timeUs > startUs + 5_000_000 ? { ...frame, timeUs: frame.timeUs + 3_600_000_000 } : frame,
        ),
      ),
    finds: ['clock-stepped'],
  },
  'recording-damaged': {
    report: () => reportOf(framesOf(devicesBut()), [damaged]),
    finds: ['recording-damaged'],
  },
  'wire-unsure': {
    report: () =>
      reportOnSomeLine(
        Array.from({ length: 10 }, (_unused, at) => ({
          timeUs: startUs + at * 500_000,
          text: sentenceOf('IIRSD,1.0'),
        })),
      ),
    finds: ['unit-silent', 'wire-unsure'],
  },
  'line-checksum': {
    report: () => reportOnLine((said) => [...said, { timeUs: startUs + 11_500_000, text: '$SDDPT,12.3,-1.5*00' }]),
    finds: ['line-checksum'],
  },
  'sentence-too-long': {
    report: () =>
      reportOnLine((said) => [...said, { timeUs: startUs + 11_500_000, text: sentenceOf(`IITXT,${'A'.repeat(80)}`) }]),
    finds: ['sentence-too-long'],
  },
  'line-too-full': {
    report: () =>
      reportOnLine((said) =>
        [
          ...said,
          ...Array.from({ length: 118 }, (_unused, at) => ({
            timeUs: startUs + at * 100_000 + 7000,
            text: sentenceOf(`IITXT,01,01,01,BLOCK ${at} OF NOTHING`),
          })),
        ].sort((a, b) => a.timeUs - b.timeUs),
      ),
    finds: ['line-too-full'],
  },
  'sentence-repeated': {
    report: () =>
      reportOnLine((said) =>
        said.flatMap((one, at) => {
          const text = sentenceOf(`SDDBT,26.9,f,${(8 + at / 10).toFixed(1)},M,4.5,F`);
          return one.text.includes('DBT')
            ? [
                { ...one, text },
                { timeUs: one.timeUs + 20_000, text },
              ]
            : [one];
        }),
      ),
    finds: ['message-too-often', 'sentence-repeated'],
  },
};
