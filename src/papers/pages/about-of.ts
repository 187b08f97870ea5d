import type { Shape } from '../drawing/shapes.ts';

/** Every id that shapes stand for, each once. */
export const aboutOf = (shapes: readonly Shape[]): string[] => [
  ...new Set(
    shapes.flatMap((shape) => [...(shape.about ?? []), ...(shape.kind === 'group' ? aboutOf(shape.shapes) : [])]),
  ),
];
