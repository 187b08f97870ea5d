import { typicalSheets } from '../../../../../src/core/facts/sheets/index.ts';
import { read } from '../../base.ts';
import type { Fault } from '../../fault.ts';

const listeners = ['ear-a', 'ear-b', 'ear-c', 'ear-d', 'ear-e'];
const sheets = typicalSheets
  .filter(({ id }) => id === 'gnss-antenna-0183' || id === 'plotter-0183')
  .map((sheet) => ({ ...read(sheet), id: `ear-${sheet.id}` }));

/** One old antenna feeds five old plotters. */
export const wiringTooManyListeners: Fault = {
  rule: 'wiring/too-many-listeners',
  about: ['mouth.out'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, ...sheets],
    kit: [
      ...boat.kit,
      { id: 'mouth', name: 'antenna that feeds five', sheet: 'ear-gnss-antenna-0183', fate: 'stays', place: 'roof' },
      ...listeners.map((id) => ({
        id,
        name: `old plotter ${id}`,
        sheet: 'ear-plotter-0183',
        fate: 'stays' as const,
        place: 'helm',
      })),
    ],
    joins: [
      ...boat.joins,
      {
        id: 'pair-ears',
        kind: 'nmea0183',
        members: [
          { kit: 'mouth', port: 'out', as: 'talk' },
          ...listeners.map((kit) => ({ kit, port: 'in', as: 'listen' as const })),
        ],
        hold: 'fixed',
      },
    ],
  }),
};
