// biome-ignore-all lint/a11y/useSemanticElements: an SVG is no set of fields
import { memo, type ReactNode } from 'react';
import type { Page } from '../../../../papers/pages/page-shape.ts';
import type { PaperName } from '../../../../papers/pages/paper-sizes.ts';
import { PageView } from '../../../drawing/page-view.tsx';

interface LeafProps {
  /** its number, counted from 0 */
  readonly at: number;
  readonly size: Pick<Page, 'widthMm' | 'heightMm'>;
  readonly paper: PaperName;
  /** what it is called to those who cannot see it */
  readonly label: string;
  /** what stands on it; absent while it is far from the window, or has not come */
  readonly page: Page | undefined;
}

/** One page of the binder as a sheet of paper; blank until it is near the window. */
export const BinderLeaf = memo(({ at, size, paper, label, page }: LeafProps): ReactNode => {
  const { widthMm, heightMm } = size;
  return (
    <section
      className={`binder-leaf paper-inks ${paper}${widthMm > heightMm ? ' across' : ''}${page === undefined ? ' blank' : ''}`}
      data-page={at}
      aria-label={label}
      tabIndex={-1}
    >
      <svg
        className="binder-sheet"
        viewBox={`0 0 ${widthMm} ${heightMm}`}
        width={`${widthMm}mm`}
        height={`${heightMm}mm`}
        role="group"
        aria-label={label}
      >
        {page === undefined ? null : <PageView page={page} />}
      </svg>
    </section>
  );
});
