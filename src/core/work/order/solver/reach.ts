/** Which jobs come after which, by whatever many steps: `reach[a][b]` is 1 where b waits for a. Absent where jobs wait for each other in a circle. */
export const reachOf = (succs: readonly (readonly number[])[]): Uint8Array[] | undefined => {
  const order = orderOf(succs);
  if (order === undefined) return undefined;
  const reach = succs.map(() => new Uint8Array(succs.length));
  for (const job of [...order].reverse()) {
    const own = reach[job];
    if (own === undefined) continue;
    for (const next of succs[job] ?? []) {
      own[next] = 1;
      const further = reach[next];
      if (further !== undefined) for (let n = 0; n < own.length; n += 1) if (further[n] === 1) own[n] = 1;
    }
  }
  return reach;
};

/** The jobs in an order in which each stands behind all it waits for, else as numbered; absent where there is a circle. */
export const orderOf = (succs: readonly (readonly number[])[]): number[] | undefined => {
  const waits = new Int32Array(succs.length);
  for (const list of succs) for (const job of list) waits[job] = (waits[job] ?? 0) + 1;
  const open = succs.flatMap((_, job) => (waits[job] === 0 ? [job] : []));
  const order: number[] = [];
  for (let job = open.shift(); job !== undefined; job = open.shift()) {
    order.push(job);
    for (const next of succs[job] ?? []) {
      waits[next] = (waits[next] ?? 0) - 1;
      if (waits[next] === 0) open.push(next);
    }
  }
  return order.length === succs.length ? order : undefined;
};
