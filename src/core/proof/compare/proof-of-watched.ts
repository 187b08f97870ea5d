import { byCodeUnit } from '../../boat/ids.ts';
import { sortedBy } from '../../boat/sorted-by.ts';
import { messagesOnBus, messagesOnLine } from './find-messages.ts';
import { readingsHeard } from './find-readings.ts';
import { strangersOn, talkerOnLine, unitsOnWire } from './find-units.ts';
import type { Planned } from './planned-sends.ts';
import type { ProofReport } from './proof-report.ts';
import { runChecks } from './run-checks.ts';
import { seeBus } from './see-bus.ts';
import { seeLine } from './see-line.ts';
import type { Seen } from './seen.ts';
import type { Watched } from './watched.ts';

const seenOf = (planned: Planned, all: readonly Watched[]): Seen => {
  const buses = all.flatMap((watched) =>
    watched.wires.flatMap((wire) => (wire.kind === 'bus' ? [seeBus(planned, wire, watched)] : [])),
  );
  const lines = all.flatMap((watched) =>
    watched.wires.flatMap((wire) => (wire.kind === 'line' ? [seeLine(planned, wire, watched)] : [])),
  );
  const messages = [...buses.flatMap(messagesOnBus), ...lines.flatMap(messagesOnLine)];
  const found = { planned, buses, lines, messages };
  return {
    ...found,
    units: [...buses.flatMap(unitsOnWire), ...lines.flatMap(talkerOnLine)],
    readings: readingsHeard(found),
    strangers: buses.flatMap(strangersOn),
  };
};

/** Rounded as a plan is, to a millionth. */
const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Math.round(value * 1e6) / 1e6;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, rounded(one)]));
};

/** Everything that was watched of one boat, held against her plan. Pure but for reading what the watches have counted. */
export const proofReport = (planned: Planned, all: readonly Watched[]): ProofReport => {
  const seen = seenOf(planned, all);
  const report: ProofReport = {
    format: 1,
    boat: planned.index.boat.name,
    wires: sortedBy(
      [...seen.buses, ...seen.lines].map(({ wire }) => wire),
      ({ kind, id }) => [kind, id],
    ),
    units: sortedBy(seen.units, ({ unit, on }) => [unit, on]),
    messages: sortedBy(seen.messages, ({ on, port, message }) => [on, port, String(message)]),
    readings: sortedBy(seen.readings, ({ reading, instance, from }) => [reading, instance, from]),
    strangers: sortedBy(seen.strangers, ({ on, address, what }) => [on, address, what]),
    findings: [...runChecks(seen)].sort((a, b) => byCodeUnit(a.id, b.id)),
  };
  // The same shape, with shorter numbers.
  return rounded(report) as ProofReport;
};
