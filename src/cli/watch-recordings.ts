import type { Boat } from '../core/boat/boat-schema.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { Plan } from '../core/plan-shape.ts';
import { proofOf } from '../core/proof/compare/proof-of.ts';
import type { ProofReport, ProofWire } from '../core/proof/compare/proof-report.ts';
import { startWatch, type Watch } from '../core/proof/compare/watch.ts';
import type { Watched } from '../core/proof/compare/watched.ts';
import type { ReaderCounts } from '../core/proof/readers/recording-reader-shape.ts';
import { readInto } from './read-into.ts';

/** One recording, and the wire it is of where somebody said so. */
interface Log {
  readonly path: string;
  readonly wire?: string;
}

interface Planned {
  readonly boat: Boat;
  readonly plan: Plan;
}

const wiresOf = ({ traffic }: Plan): string[] => [
  ...traffic.buses.map(({ bus }) => bus),
  ...traffic.lines.map(({ talker }) => talker),
];

/** `nav=dock.log`: what stands in front is a wire of the boat, else it is part of the name of the file. */
const logOf = (plan: Plan, typed: string): Log => {
  const [, wire, path] = /^([a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)?)=(.+)$/.exec(typed) ?? [];
  if (wire === undefined || path === undefined) return { path: typed };
  if (wiresOf(plan).includes(wire)) return { path, wire };
  throw new UserError({
    says: `This boat has no bus or 0183 talker “${wire}”.`,
    place: typed,
    whatToDo: `She has ${wiresOf(plan).join(', ') || 'none'}.`,
  });
};

const startFor = ({ boat, plan }: Planned, wire: string | undefined): Watch =>
  startWatch({ boat, plan, ...(wire === undefined ? {} : wire.includes('.') ? { talker: wire } : { bus: wire }) });

/** Recordings of one wire are read one after the other into one watch. */
const watchedOf = async (planned: Planned, wire: string | undefined, paths: readonly string[]): Promise<Watched> => {
  const watch = startFor(planned, wire);
  const read: ReaderCounts[] = [];
  for (const path of paths) {
    const counts = await readInto(path, {
      onFrame: watch.takeFrame,
      onMessage: watch.takeMessage,
      onSentence: ({ text, timeUs }) => watch.takeSentence(text, timeUs),
    });
    read.push(counts);
  }
  return watch.watched(read);
};

/** Which wire each recording that nobody placed fits best. */
const placed = async (planned: Planned, logs: readonly Log[]): Promise<readonly Log[]> => {
  const open = logs.filter(({ wire }) => wire === undefined);
  if (logs.length < 2 || open.length === 0 || logs.some(({ path }) => path === '-')) return logs;
  return Promise.all(
    logs.map(async (log) => {
      if (log.wire !== undefined) return log;
      const alone = proofOf(planned, [await watchedOf(planned, undefined, [log.path])]);
      const [wire] = alone.wires;
      return wire === undefined || wire.known === 'unsure' ? log : { ...log, wire: wire.id };
    }),
  );
};

const grouped = (logs: readonly Log[]): [wire: string | undefined, paths: string[]][] => {
  const groups = new Map<string, [wire: string | undefined, paths: string[]]>();
  for (const { path, wire } of logs) {
    const key = wire ?? `alone ${path}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [wire, [path]]);
    else group[1].push(path);
  }
  return [...groups.values()];
};

/**
 * Holds recordings against a plan: each is given to the wire somebody said, as `BUS=FILE` or `KIT.PORT=FILE`, else to the
 * one it fits best; several of one wire count as one.
 *
 * @throws UserError for a wire the boat has not, or what is no recording
 */
export const watchRecordings = async (planned: Planned, typed: readonly string[]): Promise<ProofReport> => {
  const logs = await placed(
    planned,
    typed.map((one) => logOf(planned.plan, one)),
  );
  const watched: Watched[] = [];
  for (const [wire, paths] of grouped(logs)) watched.push(await watchedOf(planned, wire, paths));
  const report = proofOf(planned, watched);
  const told = new Set(typed.flatMap((one) => logOf(planned.plan, one).wire ?? []));
  // What was placed here by its fit was told by nobody.
  const wires = report.wires.map(
    (wire): ProofWire => (wire.known !== 'told' || told.has(wire.id) ? wire : { ...wire, known: 'fits' }),
  );
  return { ...report, wires };
};
