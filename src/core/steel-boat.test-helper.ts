import { aBoat, type BoatBuilder } from './boat/a-boat.test-helper.ts';
import type { Boat, Kit } from './boat/boat-schema.ts';
import type { Earthing } from './boat/earthing.ts';
import type { IsolationEntry } from './isolation-shape.ts';
import { plan } from './plan.ts';

/** The Tern of steel, her minus on the hull at the battery box. */
export const aSteelBoat = (): BoatBuilder =>
  aBoat().change((boat) => {
    boat.hull.material = 'steel';
    boat.supply.negativeAt = 'battery-box';
  });

/** A unit more, its case of metal unless said otherwise, fed by the breaker of the helm. */
export const withMetal = (
  builder: BoatBuilder,
  unit: {
    readonly id: string;
    readonly kind: string;
    readonly earthing?: Earthing;
    readonly place?: string;
    readonly mount?: Kit['mount'];
  },
): BoatBuilder =>
  builder
    .add({
      sheets: [
        {
          id: `${unit.id}-sheet`,
          name: `Sheet of ${unit.id}`,
          kind: unit.kind,
          source: 'manual',
          plugs: [{ id: 'supply', connector: 'leads', gender: 'none' }],
          ports: [{ id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' }],
          power: [{ port: 'dc', typical: 1, max: 1, unit: 'A', behaves: 'current', minV: 9, maxV: 32 }],
          earthing: { body: 'metal', ...unit.earthing },
        },
      ],
      kit: [
        {
          id: unit.id,
          name: unit.id,
          sheet: `${unit.id}-sheet`,
          fate: 'stays',
          place: unit.place ?? 'helm',
          ...(unit.mount === undefined ? {} : { mount: unit.mount }),
        },
      ],
    })
    .change((boat) => {
      for (const { circuits } of boat.supply.panels)
        for (const circuit of circuits) if (circuit.id === 'helm-circuit') circuit.feeds.push(`${unit.id}.dc`);
    });

/** What the plan of a boat says of its isolation. */
export const isolationOf = (boat: Boat): IsolationEntry => plan(boat, new Map()).isolation;
