import type { PortNetwork } from '../../readings/port-network.ts';
import type { NumberEntry } from '../../sources-shape.ts';
import type { Setting } from './port-settings.ts';

/** Numbers to set: those the file gives its units, those of the inputs of an adapter, and what is proposed in place of what stands. */
export const numberSettings = ({ nodes, index }: PortNetwork, numbers: readonly NumberEntry[]): Setting[] => {
  const rows = numbers.filter(({ why, setBy }) => why !== 'stands' || setBy === 'input');
  const isTold = (port: string, reading: string): boolean =>
    rows.some((entry) => entry.port === port && entry.reading === reading);
  const own = index.boat.kit.flatMap((unit) =>
    (unit.instances ?? [])
      .map((entry) => ({ ...entry, port: `${unit.id}.${entry.port}` }))
      .filter(({ port, reading }) => nodes.get(port)?.port.protocol === 'nmea2000' && !isTold(port, reading))
      .map(
        ({ port, reading, instance }): Setting => ({
          kit: unit.id,
          port,
          does: 'number',
          readings: [reading],
          at: [],
          instance,
        }),
      ),
  );
  return [
    ...own,
    ...rows.map(
      ({ reading, source, port, now, proposed: instance }): Setting => ({
        kit: nodes.get(port)?.kit ?? port,
        port,
        does: 'number',
        readings: [reading],
        at: [],
        instance,
        ...(source === port ? {} : { source }),
        ...(now === undefined || now === instance ? {} : { was: now }),
      }),
    ),
  ];
};
