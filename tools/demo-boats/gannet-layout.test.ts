import { describe } from 'vitest';
import { gannet, gannetTable } from './gannet.ts';
import { testHandDrawnBus } from './hand-drawn-bus.test-helper.ts';

describe.each(gannetTable().goodDesign)(
  "Gannet's bus $bus: $trunkM m of trunk, $devices devices, LEN $len",
  (design) => {
    testHandDrawnBus(gannet(), design);
  },
);
