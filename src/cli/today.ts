/** Today as a day of the calendar where this machine stands, like 2026-11-26. */
export const today = (): string => {
  const now = new Date();
  const two = (count: number): string => String(count).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};
