import { readCountedText } from './counted-text.ts';
import { bitsAt } from './read-field.ts';

/** One waypoint of a route as it is sent. */
export interface RouteWaypoint {
  readonly id: number;
  readonly name?: string;
  /** degrees; absent = not available */
  readonly latitude?: number;
  readonly longitude?: number;
}

/** A route as it is sent (PGN 129285). */
export interface RouteInformation {
  readonly routeId: number;
  readonly name?: string;
  /** waypoints the sender says are in this message; fewer may have come */
  readonly announced: number;
  readonly waypoints: readonly RouteWaypoint[];
}

const headBytes = 9;
const spareBytes = 1;
const placeBytes = 8;
const stepDeg = 1e-7;
const mostWaypoints = 64;

const degreesAt = (payload: Uint8Array, from: number, most: number): number | undefined => {
  const raw = bitsAt(payload, { firstBit: from * 8, bits: 32 }) | 0;
  const value = raw * stepDeg;
  return Math.abs(value) > most ? undefined : value;
};

const number16 = (payload: Uint8Array, from: number): number => (payload[from] ?? 0) | ((payload[from + 1] ?? 0) << 8);

const readWaypoint = (payload: Uint8Array, from: number): { point: RouteWaypoint; end: number } | undefined => {
  const name = readCountedText(payload, from + 2);
  if (name === undefined || name.end + placeBytes > payload.length) return undefined;
  const latitude = degreesAt(payload, name.end, 90);
  const longitude = degreesAt(payload, name.end + 4, 180);
  const point = {
    id: number16(payload, from),
    ...(name.text === undefined ? {} : { name: name.text }),
    ...(latitude === undefined ? {} : { latitude }),
    ...(longitude === undefined ? {} : { longitude }),
  };
  return { point, end: name.end + placeBytes };
};

/** Reads a route and its waypoints (source: pgn-database); undefined when the message ends within its head. */
export const readRouteInformation = (payload: Uint8Array): RouteInformation | undefined => {
  const name = readCountedText(payload, headBytes);
  if (name === undefined) return undefined;
  const announced = number16(payload, 2);
  const waypoints: RouteWaypoint[] = [];
  let at = name.end + spareBytes;
  while (waypoints.length < Math.min(announced, mostWaypoints)) {
    const next = readWaypoint(payload, at);
    if (next === undefined) break;
    waypoints.push(next.point);
    at = next.end;
  }
  return {
    routeId: number16(payload, 6),
    ...(name.text === undefined ? {} : { name: name.text }),
    announced,
    waypoints,
  };
};
