/** A sentence taken apart: who says it, its three letters, its fields. */
export interface SentenceParts {
  readonly talker: string;
  readonly formatter: string;
  readonly fields: readonly string[];
}

/** Takes the text between start character and star apart; a maker’s own sentence keeps all its letters. */
export const sentenceParts = (body: string): SentenceParts => {
  const [address = '', ...fields] = body.split(',');
  if (address.startsWith('P') || address.length < 5) return { talker: 'P', formatter: address, fields };
  return { talker: address.slice(0, -3), formatter: address.slice(-3), fields };
};

const digit = /\d/;

/** Units and flags alone say nothing: a sentence is empty where none of its fields holds a figure. */
export const isEmptySentence = ({ formatter, fields }: SentenceParts): boolean =>
  !['VDM', 'VDO', 'RTE', 'TXT', 'DSC', 'DSE'].includes(formatter) && !fields.some((field) => digit.test(field));
