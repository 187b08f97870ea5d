/** A joint as the search sees it. */
export interface Joint {
  readonly id: string;
  readonly ends: readonly [string, string];
}

/** What a search starts from, what it must not get to, and what it may not pass through on the way. */
export interface SearchAsk<Edge extends Joint> {
  readonly joints: readonly Edge[];
  readonly from: ReadonlySet<string>;
  readonly to: string;
  readonly avoid?: ReadonlySet<string>;
}

const across = ({ ends: [a, b] }: Joint, node: string): string | undefined =>
  a === node ? b : b === node ? a : undefined;

/** Shortest way to every conductor that is in touch with a start without passing the target: its joints from the start on. */
const inTouch = <Edge extends Joint>({ joints, from, to, avoid = new Set() }: SearchAsk<Edge>) => {
  const ways = new Map<string, readonly Edge[]>([...from].map((node) => [node, []]));
  const queue = [...from];
  for (let node = queue.shift(); node !== undefined; node = queue.shift()) {
    const way = ways.get(node) ?? [];
    for (const joint of joints) {
      const next = across(joint, node);
      if (next === undefined || next === to || avoid.has(next) || ways.has(next)) continue;
      ways.set(next, [...way, joint]);
      queue.push(next);
    }
  }
  return ways;
};

/**
 * Every joint by which the target is touched from one of the starts, each with the shortest way there: its joints in order,
 * the touching one last. Parting all last joints parts the target from the starts; no other joint touches it. Joints are
 * taken in the order given, starts in theirs, so that equal boats give equal ways.
 */
export const strayBonds = <Edge extends Joint>(ask: SearchAsk<Edge>): (readonly Edge[])[] => {
  const touched = inTouch(ask);
  return ask.joints.flatMap((joint) => {
    const node = across(joint, ask.to);
    const way = node === undefined ? undefined : touched.get(node);
    return way === undefined ? [] : [[...way, joint]];
  });
};

/** Joints of a way that every other way to the same last joint takes as well: with one of them parted, that contact is gone. */
export const partingJoints = <Edge extends Joint>(ask: SearchAsk<Edge>, way: readonly Edge[]): readonly Edge[] => {
  const last = way.at(-1);
  return way.filter((cut) => {
    if (cut === last || last === undefined) return true;
    const touched = inTouch({ ...ask, joints: ask.joints.filter((joint) => joint !== cut) });
    return !last.ends.some((node) => node !== ask.to && touched.has(node));
  });
};
