import type { ReactNode } from 'react';
import type { Port, Power } from '../../../../../core/boat/sheet.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

const fieldsFor = (ports: readonly Port[]): readonly FieldOf<Power>[] => [
  {
    key: 'port',
    label: words.powerAt,
    ask: 'choice',
    choices: Object.fromEntries(ports.map(({ id }) => [id, id])),
    must: true,
  },
  { key: 'unit', label: words.unit, ask: 'choice', choices: words.units, must: true },
  { key: 'typical', label: words.typicalDraw, ask: 'number', must: true },
  { key: 'max', label: words.mostDraw, ask: 'number', must: true },
  { key: 'peak', label: words.peakDraw, ask: 'number' },
  { key: 'behaves', label: words.behaves, ask: 'choice', choices: words.behaviours, must: true },
  { key: 'atV', label: words.atV, ask: 'number' },
  { key: 'minV', label: words.leastV, ask: 'number', must: true },
  { key: 'maxV', label: words.mostV, ask: 'number', must: true },
  { key: 'fuseA', label: words.fuseA, ask: 'number' },
];

/** What is said in watts keeps its power, whatever the volts, as long as nobody says otherwise. */
const asSaid = (before: Power, next: Power): Power =>
  next.unit === 'W' && before.unit === 'A' ? { ...next, behaves: 'power' } : next;

const firstDraw = (port: string): Power => ({
  port,
  typical: 0,
  max: 0,
  unit: 'A',
  behaves: 'current',
  minV: 9,
  maxV: 16,
});

/** What a unit draws at each of its ports, and the volts it stands. */
export const PowerFields = ({
  power,
  ports,
  onPower,
}: {
  power: readonly Power[];
  ports: readonly Port[];
  onPower: (power: Power[]) => void;
}): ReactNode => {
  const set = (at: number, next: Power): void => onPower(power.map((one, index) => (index === at ? next : one)));
  const fields = fieldsFor(ports);
  const [first] = ports.filter(({ protocol }) => protocol === 'dc' || protocol === 'nmea2000');
  return (
    <details className="form-part">
      <summary>{words.power}</summary>
      {power.map((one, at) => (
        <div key={one.port} className="form-fields">
          <DescribedFields of={one} fields={fields} onOf={(next) => set(at, asSaid(one, next))} />
          <button
            type="button"
            className="press-link"
            onClick={() => onPower(power.filter((_, index) => index !== at))}
          >
            {words.takeOut}
          </button>
        </div>
      ))}
      {first === undefined || power.some(({ port }) => port === first.id) ? null : (
        <button type="button" className="press-link" onClick={() => onPower([...power, firstDraw(first.id)])}>
          {words.addPower}
        </button>
      )}
    </details>
  );
};
