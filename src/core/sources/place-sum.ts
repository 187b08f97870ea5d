/**
 * How far back a source stands at all screens together: S = sum of p over the screens, p its place in the order there, 0 the
 * best, or the number of all sources where it does not come in. The source with the least S is proposed for the boat (source:
 * choice-source-order).
 *
 * @example placeSum({ orders: [['gnss', 'plotter'], ['plotter']], source: 'gnss' }) // 0 + 2 = 2
 */
export const placeSum = ({
  orders,
  source,
}: {
  /** the sources that come in at each screen, best first */
  readonly orders: readonly (readonly string[])[];
  readonly source: string;
}): number => {
  const all = new Set(orders.flat()).size;
  return orders.reduce((sum, order) => sum + (order.includes(source) ? order.indexOf(source) : all), 0);
};
