import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { quickPlan } from '../src/core/quick-plan.test-helper.ts';
import { binderPdf } from '../src/node/binder-pdf.ts';
import { cableLabels } from '../src/papers/labels/cable-labels.ts';
import { labelSheets, labelTapes } from '../src/papers/labels/label-geometry.ts';
import { labelPages, labelTitle } from '../src/papers/labels/label-pages.ts';
import { anExample } from './an-example.test-helper.ts';
import { fonts, hasReaders, pageSizes, soundness } from './pdf/read-pdf.ts';

const boat = anExample('sandpiper');
const labels = cableLabels(boat, quickPlan(boat), { dateIso: '2026-11-26' });
const pointsPerMm = 72 / 25.4;

const pdfOf = (geometry: (typeof labelSheets)[number] | (typeof labelTapes)[number]) => {
  const { pages } = labelPages(labels, geometry, { boat: boat.name });
  return binderPdf({ title: labelTitle(boat.name, geometry), dateIso: '2026-11-26', pages, bookmarks: [] });
};

test('equal labels of a day are the same file, byte for byte', async () => {
  expect(Buffer.compare(await pdfOf(labelSheets[0]), await pdfOf(labelSheets[0]))).toBe(0);
});

test.skipIf(!hasReaders)(
  'a sheet is as large as its paper, a strip as high as its tape; every face is in the file',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'fairlead-labels-'));
    const file = join(folder, 'labels.pdf');
    try {
      for (const geometry of [labelSheets[0], ...labelTapes.slice(0, 1)]) {
        writeFileSync(file, await pdfOf(geometry));
        expect(soundness(file)).toContain('No syntax or stream encoding errors');
        const highMm = 'rows' in geometry ? 297 : geometry.widthMm;
        for (const { heightPt } of pageSizes(file)) expect(heightPt).toBeCloseTo(highMm * pointsPerMm, 1);
        for (const font of fonts(file)) expect(font.isEmbedded, font.name).toBe(true);
      }
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);
