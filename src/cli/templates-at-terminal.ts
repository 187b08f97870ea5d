import type { Boat } from '../core/boat/boat-schema.ts';
import type { Plan } from '../core/plan-shape.ts';
import { binderPdf } from '../node/binder-pdf.ts';
import type { PaperName } from '../papers/pages/paper-sizes.ts';
import { templateDxf } from '../papers/templates/template-dxf.ts';
import { templatePages } from '../papers/templates/template-pages.ts';
import { templateSvg } from '../papers/templates/template-svg.ts';
import { templatesOf } from '../papers/templates/templates-of.ts';

/** Every template of a boat as PDF, SVG and DXF, each with the name of its file. */
export const templatePapers = async ({
  boat,
  plan,
  paper,
  dateIso,
}: {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly paper: PaperName;
  readonly dateIso?: string;
}): Promise<[name: string, content: string | Uint8Array][]> => {
  const papers: [name: string, content: string | Uint8Array][] = [];
  for (const template of templatesOf(boat, plan)) {
    const set = templatePages(template, { boat: boat.name, paper, ...(dateIso === undefined ? {} : { dateIso }) });
    papers.push(
      [`templates/${template.id}.pdf`, await binderPdf(set)],
      [`templates/${template.id}.svg`, templateSvg(template)],
      [`templates/${template.id}.dxf`, templateDxf(template)],
    );
  }
  return papers;
};
