import { useCallback } from 'react';
import { inUnits, lengthUnits } from '../../../papers/lists/in-units.ts';
import { inWireUnits } from '../../../papers/lists/in-wire-units.ts';
import { keepUnits } from '../../../papers/lists/print-figure.ts';
import { keptChoice } from '../kept-choice.ts';

/** In which units the page says lengths and wires. */
export const unitsChoice = keptChoice('fairlead-units', lengthUnits);

/** Words as the page says them: lengths and wires in the units chosen, every figure on one line with its unit. */
export const useWords = (): ((words: string) => string) => {
  const units = unitsChoice.use();
  return useCallback((words: string) => keepUnits(inUnits(inWireUnits(words, units), units)), [units]);
};
