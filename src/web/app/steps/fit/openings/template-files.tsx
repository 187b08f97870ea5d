import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { FitEntry } from '../../../../../core/fits-shape.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { templatesOf } from '../../../../../papers/templates/templates-of.ts';
import { saveFile } from '../../../saving/save-file.ts';
import { words } from './words.ts';

/** How each kind of file is written; what writes it is brought once somebody wants one. */
const written = {
  svg: () => import('../../../../../papers/templates/template-svg.ts').then(({ templateSvg }) => templateSvg),
  dxf: () => import('../../../../../papers/templates/template-dxf.ts').then(({ templateDxf }) => templateDxf),
} as const;
const kinds = ['svg', 'dxf'] as const;

/** Hands out the template of an opening, or of the plate over it; nothing where nothing is cut. */
export const TemplateFiles = ({ boat, plan, fit }: { boat: Boat; plan: Plan; fit: FitEntry }): ReactNode => {
  const template = templatesOf(boat, plan).find(({ id }) => id === (fit.plate ?? fit.opening));
  if (template === undefined) return null;
  const save = async (type: (typeof kinds)[number]): Promise<void> => {
    const write = await written[type]();
    saveFile({ name: `${template.id}.${type}`, text: write(template), type });
  };
  return (
    <p className="quiet">
      {template.notForCutting.length === 0 ? words.templateToCut : words.templateNotToCut}{' '}
      {kinds.map((type) => (
        <button key={type} type="button" className="press-link" onClick={() => void save(type)}>
          {words.templateFile[type]}
          <span className="unseen"> {template.title}</span>
        </button>
      ))}{' '}
      {words.templatePdf}
    </p>
  );
};
