import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { planOpenings } from '../src/core/fitting/openings/plan-openings.ts';
import { shapeAreaMm2 } from '../src/core/fitting/openings/shape-area.ts';
import { binderPdf } from '../src/node/binder-pdf.ts';
import type { Template } from '../src/papers/templates/template.ts';
import { templateDrawing } from '../src/papers/templates/template-drawing.ts';
import { templateDxf } from '../src/papers/templates/template-dxf.ts';
import { templatePages } from '../src/papers/templates/template-pages.ts';
import { tileEdges, tilingOf } from '../src/papers/templates/template-tiles.ts';
import { templatesOf } from '../src/papers/templates/templates-of.ts';
import { greyPicture, hasReaders, readPages } from './pdf/read-pdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'fairlead-templates-'));
afterAll(() => rmSync(folder, { recursive: true }));

const bonxie = readBoat(readFileSync(new URL('../examples/bonxie/bonxie.boat.json', import.meta.url), 'utf8'));

/** The boat as if somebody had read every drawing: rounded corners, four screws a unit, one hole traced from a photo. */
const read = (boat: Boat): Boat => ({
  ...boat,
  sheets: boat.sheets.map((sheet) =>
    sheet.cutout === undefined || sheet.body === undefined
      ? sheet
      : {
          ...sheet,
          source: 'manual',
          cutout: {
            ...sheet.cutout,
            ...(sheet.cutout.shape === 'round' ? {} : { cornerMm: 6 }),
            screws: [-1, 1].flatMap((x) =>
              [-1, 1].map((y) => ({
                xMm: x * ((sheet.cutout?.widthMm ?? 0) / 2 - 4),
                yMm: y * ((sheet.cutout?.heightMm ?? 0) / 2 + 10),
                holeMm: 4,
              })),
            ),
          },
        },
  ),
});

const templates = (boat: Boat): Template[] =>
  templatesOf(boat, planOpenings({ index: indexBoat(boat), lines: [], buses: [] }));
const readTemplates = templates(read(bonxie));

const hasEzdxf = spawnSync('/usr/bin/python3', ['-c', 'import ezdxf'], { stdio: 'ignore' }).status === 0;

/** Reads files of DXF by a library that shares nothing with what wrote them: units, layers, and the area of every closed outline. */
const reader = `
import json, math, sys, ezdxf
def area(e):
    if e.dxftype() == 'CIRCLE': return math.pi * e.dxf.radius ** 2
    p = [(x, y, b) for x, y, b in e.get_points('xyb')]
    total = 0
    for (x, y, b), (u, v, _) in zip(p, p[1:] + p[:1]):
        total += (x * v - u * y) / 2
        if b:
            chord, angle = math.hypot(u - x, v - y), 4 * math.atan(b)
            radius = chord / 2 / math.sin(angle / 2)
            total += radius ** 2 * (angle - math.sin(angle)) / 2
    return abs(total)
found = []
for name in sys.argv[1:]:
    doc = ezdxf.readfile(name)
    found.append({'units': doc.header['$INSUNITS'], 'faults': len(doc.audit().errors), 'things': [
        {'layer': e.dxf.layer, 'kind': e.dxftype(), **({} if e.dxftype() == 'TEXT' else {'areaMm2': area(e)})}
        for e in doc.modelspace()]})
print(json.dumps(found))
`;

interface ReadDxf {
  readonly units: number;
  readonly faults: number;
  readonly things: readonly { readonly layer: string; readonly kind: string; readonly areaMm2?: number }[];
}

const readDxf = (all: readonly Template[]): ReadDxf[] => {
  const files = all.map((template) => {
    const file = join(folder, `${template.id}.dxf`);
    writeFileSync(file, templateDxf(template));
    return file;
  });
  const { stdout, stderr } = spawnSync('/usr/bin/python3', ['-c', reader, ...files], { encoding: 'utf8' });
  if (stdout === '') throw new Error(stderr);
  return JSON.parse(stdout) as ReadDxf[];
};

const areasOn = ({ things }: ReadDxf, layer: string): number[] =>
  things.flatMap((thing) => (thing.layer === layer && thing.areaMm2 !== undefined ? [thing.areaMm2] : []));

describe.skipIf(!hasEzdxf)('a template as DXF, read by another library', () => {
  const typical = templates(bonxie);
  let found: ReadDxf[] = [];
  let refused: ReadDxf[] = [];
  beforeAll(() => {
    const all = readDxf([...readTemplates, ...typical.map((one) => ({ ...one, id: `typical-${one.id}` }))]);
    [found, refused] = [all.slice(0, readTemplates.length), all.slice(readTemplates.length)];
  });

  test('is in millimetres and sound', () => {
    expect(found.map(({ units, faults }) => [units, faults])).toEqual(readTemplates.map(() => [4, 0]));
  });

  test('has every outline on its layer, each with our own area within 0.1 mm²', () => {
    for (const [at, { cut, mark, drill }] of readTemplates.entries()) {
      const own = found[at];
      if (own === undefined) throw new Error('not read');
      const layers = [
        ['CUT', cut.map(({ shape }) => shapeAreaMm2(shape))],
        ['ENGRAVE', mark.map(({ shape }) => shapeAreaMm2(shape))],
        ['DRILL', drill.map(({ holeMm }) => (Math.PI * holeMm ** 2) / 4)],
      ] as const;
      for (const [layer, areas] of layers) {
        const readAreas = areasOn(own, layer);
        expect(readAreas).toHaveLength(areas.length);
        for (const [n, area] of areas.entries()) expect(Math.abs((readAreas[n] ?? 0) - area)).toBeLessThan(0.1);
      }
    }
  });

  test('by typical sizes has nothing to cut, and says so', () => {
    expect(typical.every(({ notForCutting }) => notForCutting.length > 0)).toBe(true);
    expect(new Set(refused.flatMap(({ things }) => things.map(({ layer }) => layer)))).toEqual(
      new Set(['NOT_FOR_CUTTING']),
    );
  });
});

/** The first and the last tick of a ruler are as wide as its lines, half of it beyond either end. */
const lineMm = 0.15;

/** The longest run of dark points of a strip, along it. */
const longestRunMm = (
  { width, pixels }: ReturnType<typeof greyPicture>,
  { from, to, isAcross }: { from: readonly [number, number]; to: readonly [number, number]; isAcross: boolean },
  dpi: number,
): number => {
  const px = (mm: number): number => Math.round((mm * dpi) / 25.4);
  let longest = 0;
  const [aFrom, aTo, bFrom, bTo] = isAcross ? [from[1], to[1], from[0], to[0]] : [from[0], to[0], from[1], to[1]];
  for (let a = px(aFrom); a < px(aTo); a += 1) {
    let run = 0;
    for (let b = px(bFrom); b < px(bTo); b += 1) {
      const value = pixels[isAcross ? a * width + b : b * width + a] ?? 255;
      run = value < 140 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  }
  return (longest * 25.4) / dpi;
};

describe.skipIf(!hasReaders)('a template as PDF', () => {
  const [template] = readTemplates.filter(({ id }) => id === 'dash-plate');
  if (template === undefined) throw new Error('There is no plate for the dash.');

  test.each(['a4', 'letter'] as const)('on %s has rulers of 100 mm both ways within 0.2 mm', async (paper) => {
    const set = templatePages(template, { boat: 'Bonxie', paper });
    const file = join(folder, `${paper}.pdf`);
    writeFileSync(file, await binderPdf(set));
    const pages = readPages(file);
    expect(pages).toHaveLength(set.pages.length);
    // a tenth of a millimetre a point
    const dpi = 254;
    const firstAndLast = [...set.pages.entries()].filter(([at]) => at === 0 || at === set.pages.length - 1);
    for (const [at, { heightMm }] of firstAndLast) {
      const picture = greyPicture(file, at + 1, dpi);
      const below = {
        from: [tileEdges.leftMm, heightMm - tileEdges.bottomMm + 2] as const,
        to: [150, heightMm - 7] as const,
      };
      const left = { from: [4, tileEdges.topMm] as const, to: [tileEdges.leftMm - 2, 140] as const };
      const outerMm = 100 + lineMm;
      expect(Math.abs(longestRunMm(picture, { ...below, isAcross: true }, dpi) - outerMm)).toBeLessThanOrEqual(0.2);
      expect(Math.abs(longestRunMm(picture, { ...left, isAcross: false }, dpi) - outerMm)).toBeLessThanOrEqual(0.2);
      expect((pages[at]?.words ?? []).map(({ text }) => text).join(' ')).toContain('Print at 100 %');
    }
  });

  test('of typical sizes says on every sheet that it is not for cutting, and why', async () => {
    const [typical] = templates(bonxie).filter(({ id }) => id === 'dash-plate');
    if (typical === undefined) throw new Error('There is no plate for the dash.');
    const file = join(folder, 'refused.pdf');
    writeFileSync(file, await binderPdf(templatePages(typical, { boat: 'Bonxie', paper: 'a4' })));
    for (const { words } of readPages(file)) {
      const says = words.map(({ text }) => text).join(' ');
      expect(says).toContain('NOT FOR CUTTING');
      expect(says).toContain('not read in its manual');
    }
  });
});

test('a plate wider than the paper is parted into as few sheets as hold it', () => {
  const sheets = readTemplates.map((template) => tilingOf(templateDrawing(template), 'a4').tiles.length);
  expect(Math.max(...sheets)).toBeGreaterThan(3);
});
