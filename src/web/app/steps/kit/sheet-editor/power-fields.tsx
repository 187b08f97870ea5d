import type { ReactNode } from 'react';
import type { Port, Power } from '../../../../../core/boat/sheet.ts';
import { ChoiceField, NumberField } from './fields.tsx';
import { words } from './words.ts';

const units = ['A', 'W'] as const;

const withFuse = ({ fuseA: _, ...power }: Power, fuseA: number | undefined): Power =>
  fuseA === undefined ? power : { ...power, fuseA };

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
  const [first] = ports.filter(({ protocol }) => protocol === 'dc' || protocol === 'nmea2000');
  return (
    <details className="sheet-part">
      <summary>{words.power}</summary>
      {power.map((one, at) => (
        <div key={one.port} className="sheet-fields">
          <ChoiceField
            label={words.powerAt}
            value={one.port}
            choices={ports.map(({ id }) => [id, id] as const)}
            onValue={(port) => set(at, { ...one, port })}
          />
          <ChoiceField
            label={words.unit}
            value={one.unit}
            choices={units.map((unit) => [unit, words.units[unit]] as const)}
            onValue={(unit) => set(at, { ...one, unit, behaves: unit === 'W' ? 'power' : one.behaves })}
          />
          <NumberField
            label={words.typicalDraw}
            value={one.typical}
            onValue={(typical = 0) => set(at, { ...one, typical })}
          />
          <NumberField label={words.mostDraw} value={one.max} onValue={(max = 0) => set(at, { ...one, max })} />
          <NumberField label={words.leastV} value={one.minV} onValue={(minV = 0) => set(at, { ...one, minV })} />
          <NumberField label={words.mostV} value={one.maxV} onValue={(maxV = 0) => set(at, { ...one, maxV })} />
          <NumberField label={words.fuseA} value={one.fuseA} onValue={(fuseA) => set(at, withFuse(one, fuseA))} />
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
