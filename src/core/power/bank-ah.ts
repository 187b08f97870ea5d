/**
 * Capacity a bank needs for so many days without charge, Ah: daily Ah x days / usable share.
 *
 * @example bankAh({ dailyAh: 9.38, days: 2, usableShare: 0.5 }) // 37.5
 */
export const bankAh = ({
  dailyAh,
  days,
  usableShare,
}: {
  readonly dailyAh: number;
  readonly days: number;
  readonly usableShare: number;
}): number => (dailyAh * days) / usableShare;

/** Charge that must go in for what was taken out, Ah: taken / what the battery gives back of each Ah (0.85 lead). */
export const rechargeAh = ({
  takenAh,
  coulombicShare,
}: {
  readonly takenAh: number;
  readonly coulombicShare: number;
}): number => takenAh / coulombicShare;
