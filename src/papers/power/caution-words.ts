import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { cautions } from '../../core/facts/cautions.ts';
import type { Plan } from '../../core/plan-shape.ts';

/** A caution as it stands beside the step that wants it. */
export interface CautionWords {
  readonly id: string;
  /** "Battery short circuit" */
  readonly title: string;
  readonly says: string;
  /** what decides, by name */
  readonly decides?: string;
}

/** Cautions by their ids, in the order asked; an id that is none is left out. */
export const cautionWords = (ids: readonly string[]): CautionWords[] =>
  ids.flatMap((id) => {
    const caution = cautions.find((entry) => entry.id === id);
    if (caution === undefined) return [];
    const { hazard, text, deferTo } = caution;
    return [
      {
        id,
        title: `${hazard[0]?.toUpperCase()}${hazard.slice(1)}`,
        says: text,
        ...(deferTo === undefined ? {} : { decides: deferTo }),
      },
    ];
  });

/** What is said where somebody works at a bank, its bars or its main fuse: what its own entry asks for, each once. */
export const bankCautions = ({ banks }: Pick<Plan, 'banks'>): CautionWords[] => {
  const asked = new Set(banks.flatMap((bank) => bank.cautions));
  return banks.length === 0
    ? []
    : cautionWords(
        ['battery-short', 'short-energy', 'lithium', 'ac', 'stray'].filter(
          (id) => id === 'short-energy' || asked.has(id),
        ),
      );
};

/** What is said where a pilot can turn the rudder. */
export const steeringCautions = ({ drives }: Pick<Plan, 'drives'>): CautionWords[] =>
  drives.length === 0 ? [] : cautionWords(['pilot-drive']);

/** What is said where wires are led and joined. The boat file does not say what her engine burns, so petrol is always told of. */
export const wiringCautions = (): CautionWords[] => cautionWords(['petrol', 'licence', 'limits']);

/** What is said where a hole is cut or closed in a panel. */
export const panelCautions = (): CautionWords[] => cautionWords(['panel-cutting', 'laminate-dust']);

/** Kinds of unit that send from an antenna. */
const sendingKinds: ReadonlySet<string> = new Set(['ais', 'mfhf-radio', 'vhf-radio']);

/**
 * What units and places bring up, besides banks and pilots: what is said where the walk-round opens a place (`places`), then
 * radar, radio, mast and holes. What nobody can tell from the boat file (gas, a job longer than the berth) is always told of.
 */
export const aboardCautions = (boat: Boat, plan: Plan, places: readonly string[]): CautionWords[] => {
  const sheets = indexBoat(boat).sheetOf;
  const coming = boat.kit.filter(({ fate }) => fate !== 'goes');
  const kinds = coming.map(({ id }) => sheets.get(id)?.kind ?? '');
  const isHole = coming.some(({ id, fate }) => fate === 'comes' && sheets.get(id)?.kind === 'transducer');
  return cautionWords([
    ...new Set([
      ...places,
      'lpg',
      ...(kinds.includes('radar') ? ['radar'] : []),
      ...(kinds.some((kind) => sendingKinds.has(kind)) ? ['vhf-rf'] : []),
      ...(plan.masts.length > 0 ? ['aloft', 'lightning'] : []),
      ...(isHole ? ['hull'] : []),
      'stray',
      'navsafe',
    ]),
  ]);
};
