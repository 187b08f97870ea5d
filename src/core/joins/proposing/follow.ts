import type { Derivations } from './derivations.ts';

/** What follows from the joins chosen so far; joins can be added, and taken back if they were not kept. */
export interface Following {
  readonly holds: (fact: number) => boolean;
  /** adds facts, and all that follows */
  readonly add: (facts: readonly number[]) => void;
  /** adds facts only if `fact` does not follow then; tells whether they were added */
  readonly addWithout: (facts: readonly number[], fact: number) => boolean;
}

/** Steps by the facts they wait for, once for all who follow them. */
export const followerOf = ({ facts, steps }: Derivations): (() => Following) => {
  const waiting: number[][] = Array.from({ length: facts }, () => []);
  steps.forEach(({ from }, at) => {
    for (const fact of new Set(from)) waiting[fact]?.push(at);
  });
  const lengths = steps.map(({ from }) => new Set(from).size);
  const free = steps.flatMap(({ from, to }) => (from.length === 0 ? [to] : []));

  return () => {
    const held = new Uint8Array(facts);
    const missing = Int32Array.from(lengths);
    const trail: number[] = [];

    const run = (added: readonly number[]): void => {
      const queue: number[] = [];
      const note = (fact: number): void => {
        if (held[fact] === 1) return;
        held[fact] = 1;
        trail.push(fact);
        queue.push(fact);
      };
      for (const fact of added) note(fact);
      for (let fact = queue.pop(); fact !== undefined; fact = queue.pop())
        for (const at of waiting[fact] ?? []) {
          missing[at] = (missing[at] ?? 0) - 1;
          const step = steps[at];
          if (missing[at] === 0 && step !== undefined) note(step.to);
        }
    };
    const backTo = (height: number): void => {
      for (const fact of trail.splice(height)) {
        held[fact] = 0;
        for (const at of waiting[fact] ?? []) missing[at] = (missing[at] ?? 0) + 1;
      }
    };

    run(free);
    return {
      holds: (fact) => held[fact] === 1,
      add: run,
      addWithout: (added, fact) => {
        const height = trail.length;
        run(added);
        if (held[fact] !== 1) return true;
        backTo(height);
        return false;
      },
    };
  };
};
