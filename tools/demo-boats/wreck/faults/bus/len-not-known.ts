import type { Fault } from '../../fault.ts';

/** Nobody looked up the load of the instrument in the cockpit. */
export const busLenNotKnown: Fault = {
  rule: 'bus/len-not-known',
  about: ['nav'],
  plant: (boat) => ({
    ...boat,
    sheets: boat.sheets.map((sheet) =>
      sheet.id === 'instrument-4' ? { ...sheet, ports: sheet.ports.map(({ len: _, ...port }) => port) } : sheet,
    ),
  }),
};
