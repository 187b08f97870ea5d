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
  /** goes to another page, counted from 0 */
  readonly onGo: (to: { readonly page: number; readonly topMm: number }) => void;
}

/** What on a page leads to another; by the keyboard the contents beside lead there. */
const Links = ({ links, onGo }: Pick<Page, 'links'> & Pick<LeafProps, 'onGo'>): ReactNode =>
  links.map(({ leftMm, topMm, widthMm, heightMm, toPage }) => (
    // biome-ignore lint/a11y/noStaticElementInteractions: a second way, for the hand only
    <rect
      key={`${leftMm} ${topMm}`}
      className="binder-link"
      x={leftMm}
      y={topMm}
      width={widthMm}
      height={heightMm}
      onClick={() => onGo({ page: toPage, topMm: 0 })}
    />
  ));

/** One page of the binder as a sheet of paper; blank until it is near the window. */
export const BinderLeaf = memo(({ at, size, paper, label, page, onGo }: LeafProps): ReactNode => {
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
        {page === undefined ? null : (
          <>
            <PageView page={page} />
            <Links links={page.links} onGo={onGo} />
          </>
        )}
      </svg>
    </section>
  );
});
