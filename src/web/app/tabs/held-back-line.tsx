import type { ReactNode } from 'react';
import type { NewerSeen } from '../../workers/protocol.ts';
import { words } from './words.ts';

/** Why nothing can be changed in this tab: another one works on the boat, an earlier state is looked at, or a newer program wrote the file. */
export type HeldBack =
  | { readonly kind: 'follows' }
  | { readonly kind: 'looks'; readonly when: string }
  | { readonly kind: 'newer'; readonly seen: NewerSeen };

const saysOf = (held: HeldBack): string => {
  if (held.kind === 'newer') return words.newer(held.seen);
  return held.kind === 'follows' ? words.follows : words.looksAt(held.when);
};

const LineButton = ({ onPress, children }: { onPress: () => void; children: ReactNode }): ReactNode => (
  <button type="button" className="edit-link" onClick={onPress}>
    {children}
  </button>
);

/** The line in place of the one about saving, in a tab in which nothing can be changed. */
export const HeldBackLine = ({
  held,
  onTakeOver,
  onBack,
  onRestore,
  onCopy,
}: {
  held: HeldBack;
  onTakeOver: () => void;
  onBack: () => void;
  onRestore: () => void;
  /** saves the text of the file as it was read */
  onCopy: () => void;
}): ReactNode => (
  <div className="save-line trouble">
    <p role="status">{saysOf(held)}</p>
    {held.kind === 'follows' ? (
      <LineButton onPress={onTakeOver}>{words.workHere}</LineButton>
    ) : held.kind === 'newer' ? (
      <>
        <LineButton onPress={onBack}>{words.loadAnew}</LineButton>
        <LineButton onPress={onCopy}>{words.saveUnchanged}</LineButton>
      </>
    ) : (
      <>
        <LineButton onPress={onBack}>{words.back}</LineButton>
        <LineButton onPress={onRestore}>{words.restore}</LineButton>
      </>
    )}
  </div>
);

const notDone = { follows: words.notHere, looks: words.notThen, newer: words.notNewer } as const;

/** Why an edit was not made in such a tab. */
export const heldBackWords = ({ kind }: HeldBack): string => notDone[kind];
