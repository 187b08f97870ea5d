/** A NAME as it may be shown: what the device is stays, its maker and number do not. */
export const maskedName = (hex: string): string => `${hex.slice(0, 8)}********`;
