import type { ReactNode } from 'react';
import type { Signal } from '../../../../../core/boat/sensor.ts';
import type { Port, Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Sensor = NonNullable<Sheet['sensor']>;

const sensorFields: readonly FieldOf<Sensor>[] = [
  { key: 'north', label: words.north, ask: 'choice', choices: words.norths },
  { key: 'inHull', label: words.inHull, ask: 'whether' },
];

const feedFields: readonly FieldOf<NonNullable<Signal['feed']>>[] = [
  { key: 'leastV', label: words.leastV, ask: 'number', must: true },
  { key: 'mostV', label: words.mostV, ask: 'number', must: true },
];

const pulseFields: readonly FieldOf<NonNullable<Signal['pulses']>>[] = [
  { key: 'least', label: words.leastPulses, ask: 'number', must: true },
  { key: 'most', label: words.mostPulses, ask: 'number', must: true },
];

const signalFields = (ports: readonly Port[]): readonly FieldOf<Signal>[] => [
  {
    key: 'port',
    label: words.signalPort,
    ask: 'choice',
    choices: Object.fromEntries(ports.map(({ id }) => [id, id])),
    must: true,
  },
  { key: 'frequenciesKHz', label: words.frequencies, ask: 'numbers' },
  { key: 'powerW', label: words.signalPower, ask: 'number' },
  { key: 'vanes', label: words.vanes, ask: 'several', choices: words.vaneCodes },
];

/** What one analog port gives or takes. */
const SignalFields = ({
  signal,
  ports,
  onSignal,
}: {
  signal: Signal;
  ports: readonly Port[];
  onSignal: (signal: Signal | undefined) => void;
}): ReactNode => (
  <fieldset className="form-part">
    <legend>{words.signal(signal.port)}</legend>
    <div className="form-fields">
      <DescribedFields<Signal> of={signal} fields={signalFields(ports)} onOf={onSignal} />
    </div>
    <OptionalPart
      heading={words.signalFeed}
      add={words.addSignalFeed}
      of={signal.feed}
      first={{ leastV: 5, mostV: 12 }}
      fields={feedFields}
      onOf={(feed) => onSignal(withPart(signal, 'feed', feed))}
    />
    <OptionalPart
      heading={words.pulses}
      add={words.addPulses}
      of={signal.pulses}
      first={{ least: 5, most: 6 }}
      fields={pulseFields}
      onOf={(pulses) => onSignal(withPart(signal, 'pulses', pulses))}
    />
    <button type="button" className="press-link" onClick={() => onSignal(undefined)}>
      {words.takeOut}
      <span className="unseen"> {words.signal(signal.port)}</span>
    </button>
  </fieldset>
);

/** What is said of a sensor, and of the inputs that take a bare one: by these a sensor and a converter are matched. */
export const SensorFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const { sensor = {}, ports } = sheet;
  const signals = sensor.signals ?? [];
  const analog = ports.filter(({ protocol }) => protocol === 'analog');
  const free = analog.find(({ id }) => !signals.some(({ port }) => port === id));
  const put = (next: Sensor): void =>
    onSheet(withPart(sheet, 'sensor', Object.keys(next).length === 0 ? undefined : next));
  const putSignals = (next: Signal[]): void => put(withPart(sensor, 'signals', next.length === 0 ? undefined : next));
  return (
    <details className="form-part">
      <summary>{words.sensor}</summary>
      <div className="form-fields">
        <DescribedFields<Sensor> of={sensor} fields={sensorFields} onOf={put} />
      </div>
      {signals.map((signal, at) => (
        <SignalFields
          key={signal.port}
          signal={signal}
          ports={analog.filter(({ id }) => id === signal.port || !signals.some(({ port }) => port === id))}
          onSignal={(next) => putSignals(signals.flatMap((one, i) => (i === at ? (next ?? []) : one)))}
        />
      ))}
      {free === undefined ? null : (
        <button type="button" className="press-link" onClick={() => putSignals([...signals, { port: free.id }])}>
          {words.addSignal}
        </button>
      )}
    </details>
  );
};
