/** How far the middle of a screw must lie from any edge of a hole, mm: so many of its diameters. */
export const screwNeedMm = (holeMm: number, diameters: number): number => holeMm * diameters;
