import { mastWork } from '../facts/mast-work.ts';

/** What a length of cable weighs, kg: m = w L, w in grams a metre, L in metres. */
export const weightKg = ({ gramsPerM, lengthM }: { readonly gramsPerM: number; readonly lengthM: number }): number =>
  (gramsPerM * lengthM) / 1000;

/** About what a metre of a cable weighs by its outside diameter, g: 2 g for each mm² of its section (from memory). */
export const gramsPerM = (outsideMm: number): number =>
  mastWork.gramsPerMetreAndMm2.value * (Math.PI / 4) * outsideMm ** 2;
