import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import type { OwnDay } from '../../../../../src/core/boat/own-day.ts';

/** The boat with one more day of the person's own. */
export const withDay = (boat: Boat, day: OwnDay): Boat => ({ ...boat, days: [...(boat.days ?? []), day] });
