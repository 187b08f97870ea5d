import type { LineKind } from '../../boat/boat-schema.ts';
import { disturbers, segregation } from '../../facts/segregation.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';

const data: ReadonlySet<LineKind> = new Set([
  'trunk',
  'drop',
  'ethernet',
  'pair',
  'single-wire',
  'analog',
  'engine-can',
  'modbus',
  'video',
  'audio',
  'usb',
]);

/** New data cable in a way beside what disturbs it: the distance that keeps it quiet, and how the two may cross. */
export const besideWhatDisturbs: Rule = {
  id: 'ways/beside-what-disturbs',
  level: 'advice',
  title: 'New data cable runs beside a lead that disturbs it.',
  sources: ['practice-segregation'],
  check: ({ index, plan }) => {
    const used = new Set(
      plan.lines.filter(({ kept, kind }) => kept === undefined && data.has(kind)).flatMap(({ ways }) => ways),
    );
    return [...disturbers].flatMap(([near, { words, other }]): Observation[] => {
      const apart = segregation.find((entry) => entry.one === 'data cable' && entry.other === other);
      const beside = index.boat.ways.filter((way) => used.has(way.id) && way.near?.includes(near));
      if (apart === undefined || beside.length === 0) return [];
      const told = beside.map(({ ends }) => ends.map((end) => index.places.get(end)?.name ?? end).join(' to '));
      const cross = apart.crossDeg === undefined ? '' : ` Where they must cross, cross at ${apart.crossDeg} degrees.`;
      return [
        {
          about: beside.map(({ id }) => id),
          apart: [near],
          says: `New data cable runs beside ${words}: ${told.join('; ')}.`,
          limit: { value: apart.leastM, unit: 'm', source: sourceWords(apart.source) },
          cure: `Keep the two ${apart.leastM} m apart, on opposite sides if need be.${cross}`,
        },
      ];
    });
  },
};
