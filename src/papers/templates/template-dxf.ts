import { DxfWriter, LWPolylineFlags, type LWPolylineVertex, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { MmShape } from '../../core/fits-shape.ts';
import type { Template } from './template.ts';
import { templateExtent } from './template-extent.ts';

/** Layers by what is done there, with the colour number each has in drawings of this kind. */
export const dxfLayers = { cut: 'CUT', engrave: 'ENGRAVE', drill: 'DRILL', refused: 'NOT_FOR_CUTTING' } as const;
const colours = { CUT: 1, ENGRAVE: 5, DRILL: 3, NOT_FOR_CUTTING: 8 } as const;

type Layer = keyof typeof colours;

/** A quarter of a circle to the left, as DXF says it: the tangent of a quarter of its angle. */
const quarterBulge = Math.tan(Math.PI / 8);

const roundedVertices = ({ xMm, yMm, widthMm, heightMm, cornerMm: r = 0 }: MmShape): LWPolylineVertex[] => {
  const [left, right] = [xMm - widthMm / 2, xMm + widthMm / 2];
  const [below, above] = [yMm - heightMm / 2, yMm + heightMm / 2];
  if (r === 0)
    return [
      [left, below],
      [right, below],
      [right, above],
      [left, above],
    ].map(([x = 0, y = 0]) => ({ point: point2d(x, y) }));
  const turns: readonly (readonly [number, number, number, number])[] = [
    [right - r, below, right, below + r],
    [right, above - r, right - r, above],
    [left + r, above, left, above - r],
    [left, below + r, left + r, below],
  ];
  return turns.flatMap(([fromX, fromY, toX, toY]) => [
    { point: point2d(fromX, fromY), bulge: quarterBulge },
    { point: point2d(toX, toY) },
  ]);
};

const addOutline = (dxf: DxfWriter, shape: MmShape, layerName: Layer): void => {
  const { xMm, yMm, widthMm, outlineMm } = shape;
  if (shape.shape === 'round') {
    dxf.addCircle(point3d(xMm, yMm, 0), widthMm / 2, { layerName });
    return;
  }
  const vertices =
    outlineMm === undefined
      ? roundedVertices(shape)
      : outlineMm.map(([x, y]) => ({ point: point2d(xMm + x, yMm + y) }));
  dxf.addLWPolyline(vertices, { flags: LWPolylineFlags.Closed, layerName });
};

/**
 * A template as DXF in millimetres, with a layer for what is cut, what is engraved and what is drilled. Where nothing may be cut
 * by it, all of it lies on a layer that says so, and no machine finds anything to cut.
 */
export const templateDxf = (template: Template): string => {
  const isRefused = template.notForCutting.length > 0;
  const layerOf = (layer: Layer): Layer => (isRefused ? dxfLayers.refused : layer);
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const name of isRefused ? [dxfLayers.refused] : [dxfLayers.cut, dxfLayers.engrave, dxfLayers.drill])
    dxf.addLayer(name, colours[name], 'CONTINUOUS');
  for (const { shape } of template.cut) addOutline(dxf, shape, layerOf(dxfLayers.cut));
  for (const { shape } of template.mark) addOutline(dxf, shape, layerOf(dxfLayers.engrave));
  for (const { xMm, yMm, holeMm } of template.drill)
    dxf.addCircle(point3d(xMm, yMm, 0), holeMm / 2, { layerName: layerOf(dxfLayers.drill) });
  const { leftMm, belowMm } = templateExtent(template);
  const says = isRefused ? `NOT FOR CUTTING: ${template.notForCutting.join('; ')}` : template.title;
  dxf.addText(point3d(leftMm, belowMm - 8, 0), 4, says, { layerName: layerOf(dxfLayers.engrave) });
  return dxf.stringify();
};
