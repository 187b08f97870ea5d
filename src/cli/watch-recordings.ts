import type { Boat } from '../core/boat/boat-schema.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { Plan } from '../core/plan-shape.ts';
import { type WatchedLog, watchLogs } from '../core/proof/compare/watch-logs.ts';
import { readInto } from './read-into.ts';

const wiresOf = ({ traffic }: Plan): string[] => [
  ...traffic.buses.map(({ bus }) => bus),
  ...traffic.lines.map(({ talker }) => talker),
];

const logAt = (path: string, wire?: string): WatchedLog => ({
  read: (sink) => readInto(path, sink),
  isOnce: path === '-',
  ...(wire === undefined ? {} : { wire }),
});

/** `nav=dock.log`: what stands in front is a wire of the boat. */
const logOf = (plan: Plan, typed: string): WatchedLog => {
  const [, wire, path] = /^([a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)?)=(.+)$/.exec(typed) ?? [];
  if (wire === undefined || path === undefined) return logAt(typed);
  if (wiresOf(plan).includes(wire)) return logAt(path, wire);
  throw new UserError({
    says: `This boat has no bus or 0183 talker “${wire}”.`,
    place: typed,
    whatToDo: `She has ${wiresOf(plan).join(', ') || 'none'}.`,
  });
};

/**
 * Holds recordings against a plan; `BUS=FILE` or `KIT.PORT=FILE` says of which wire one is.
 *
 * @throws UserError for a wire the boat has not, or what is no recording
 */
export const watchRecordings = async (
  planned: { readonly boat: Boat; readonly plan: Plan },
  typed: readonly string[],
): ReturnType<typeof watchLogs> => {
  const logs = typed.map((one) => logOf(planned.plan, one));
  return watchLogs(planned, logs);
};
