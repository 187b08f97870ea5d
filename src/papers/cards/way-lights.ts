import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from './card-boat.ts';
import { joinBetween, teesPassed, wayLines } from './way-lines.ts';

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));

/**
 * The ids that light a way on the drawing: every unit it passes, every line between
 * them, and the trunk between tees at one place. `ports` from source to screen.
 */
export const wayLights = (index: CardBoat, plan: Plan, ports: readonly string[]): string[] => [
  ...new Set([
    ...ports.map(unitOf),
    ...ports.flatMap((to, at) => {
      const from = ports[at - 1];
      if (from === undefined || unitOf(from) === unitOf(to)) return [];
      const lines = wayLines(index, plan, { from, to }).map(({ id }) => id);
      // what is joined by radio has no line: its join lights in place of one
      const radio = lines.length === 0 ? joinBetween(plan, { from, to }) : undefined;
      const join = radio?.kind === 'wifi' ? [radio.id] : [];
      return [...lines, ...join, ...teesPassed(plan, { from, to })];
    }),
  ]),
];
