import { type DockTest, dockTests } from '../../facts/dock-tests.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { TestEntry, TestKind, TestSpot, TestWindow } from '../../tests-shape.ts';

const byTurn = (n: number): DockTest => {
  const found = dockTests.find((test) => test.n === n);
  if (found === undefined) throw new Error(`There is no test ${n} at the dock.`);
  return found;
};
/** The published tests of a bus, by what they measure. */
export const busFacts = {
  ohm: byTurn(1),
  wires: byTurn(2),
  shield: byTurn(3),
  volts: byTurn(4),
  idle: byTurn(5),
  count: byTurn(6),
  lifted: byTurn(7),
};

/** The id of one test of a bus; what is to come before another names it so. */
export const busTestId = (bus: string, test: TestKind, spot?: TestSpot): string =>
  `dock/${test}:${bus}${spot === undefined ? '' : `:${spot}`}`;

export const windowOf = ({ least, most }: { readonly least?: number; readonly most?: number }): TestWindow => ({
  ...(least === undefined ? {} : { least }),
  ...(most === undefined ? {} : { most }),
});

type Rest = Omit<TestEntry, 'id' | 'group' | 'test' | 'about' | 'spot'>;

/** One test of a bus. */
export const busTest = (bus: BusEntry, test: TestKind, spot: TestSpot | undefined, rest: Rest): TestEntry => ({
  id: busTestId(bus.id, test, spot),
  group: 'bus',
  test,
  about: [bus.id],
  ...(spot === undefined ? {} : { spot }),
  ...rest,
});

export const endSpots = ['end-1', 'end-2'] as const;
