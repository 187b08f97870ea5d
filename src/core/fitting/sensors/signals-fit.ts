import type { Signal } from '../../boat/sensor.ts';
import { sensorSiting } from '../../facts/sensor-figures.ts';
import type { SensorInput } from '../../sensor-shape.ts';

type Fit = Pick<SensorInput, 'misfits' | 'unknown'>;
type What = SensorInput['unknown'][number];

const overlap = (one: readonly [number, number], other: readonly [number, number]): boolean =>
  one[0] <= other[1] && other[0] <= one[1];

const range = ([least, most]: readonly [number, number], unit: string): string =>
  least === most ? `${least} ${unit}` : `${least} to ${most} ${unit}`;

const isOne = (aKHz: number, bKHz: number): boolean => Math.abs(aKHz / bKHz - 1) <= sensorSiting.sameFrequency.value;

const kilohertz = (frequencies: readonly number[]): string => `${frequencies.join(' and ')} kHz`;
const volts = ({ feed }: Signal): [number, number] | undefined => feed && [feed.leastV, feed.mostV];
const hertz = ({ pulses }: Signal): [number, number] | undefined => pulses && [pulses.least, pulses.most];

/** One property of both ends: whether it fits, in words what each says; undefined on a side that says nothing. */
interface Both {
  readonly what: What;
  readonly gives?: string | undefined;
  readonly takes?: string | undefined;
  readonly fits: boolean;
}

const frequency = (talk: Signal, listen: Signal): Both => {
  const [gives = [], takes = []] = [talk.frequenciesKHz, listen.frequenciesKHz];
  return {
    what: 'frequency',
    gives: talk.frequenciesKHz && kilohertz(gives),
    takes: listen.frequenciesKHz && kilohertz(takes),
    fits: gives.some((one) => takes.some((other) => isOne(one, other))),
  };
};

/** What an input drives an element with must not be more than that bears. */
const power = (talk: Signal, listen: Signal): Both => ({
  what: 'power',
  gives: talk.powerW === undefined ? undefined : `bears ${talk.powerW} W`,
  takes: listen.powerW === undefined ? undefined : `drives it with ${listen.powerW} W`,
  fits: (listen.powerW ?? 0) <= (talk.powerW ?? 0),
});

const ranges =
  (what: What, unit: string, of: (signal: Signal) => [number, number] | undefined) =>
  (talk: Signal, listen: Signal): Both => {
    const [gives, takes] = [of(talk), of(listen)];
    return {
      what,
      gives: gives && range(gives, unit),
      takes: takes && range(takes, unit),
      fits: gives !== undefined && takes !== undefined && overlap(gives, takes),
    };
  };

const vane = (talk: Signal, listen: Signal): Both => ({
  what: 'vane',
  gives: talk.vanes?.join(' or '),
  takes: listen.vanes?.join(' or '),
  fits: (talk.vanes ?? []).some((coding) => listen.vanes?.includes(coding)),
});

const properties = [frequency, power, ranges('feed', 'V', volts), ranges('pulses', 'Hz per knot', hertz), vane];

/**
 * Whether an input can read a bare sensor, by what their two sheets say. A property that only one of the two speaks of is not
 * known; one that neither speaks of is none of theirs.
 */
export const signalsFit = (talk: Signal, listen: Signal): Fit => {
  const both = properties.map((property) => property(talk, listen));
  return {
    misfits: both.flatMap(({ what, gives, takes, fits }) =>
      gives === undefined || takes === undefined || fits ? [] : [{ what, gives, takes }],
    ),
    unknown: both.flatMap(({ what, gives, takes }) => ((gives === undefined) === (takes === undefined) ? [] : [what])),
  };
};
