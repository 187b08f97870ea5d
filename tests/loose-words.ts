import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';

/** Words of a language that stand in a part of the page and not in its language file. */
export interface LooseWords {
  readonly file: string;
  readonly line: number;
  readonly words: string;
}

interface Syntax {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** What is read out or shown of an element beside its text, and what the parts of the app are given to be shown. */
const shownBy = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'caption',
  'empty',
  'heading',
  'label',
  'placeholder',
  'title',
  'words',
]);

const hasLetters = (text: string): boolean => /\p{L}/u.test(text);

/** A capital first, a stop last, words between: nothing but a person reads that. */
const isSentence = (text: string): boolean => /^\p{Lu}\S*\s.*[.:!?…]\s*$/su.test(text);

const isSyntax = (value: unknown): value is Syntax =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

const partsOf = (syntax: Syntax): Syntax[] => Object.values(syntax).flat().filter(isSyntax);

/** The text of a literal, values left out; undefined where it is none. */
const textOf = (syntax: Syntax): string | undefined => {
  if (syntax.type === 'JSXText' || syntax.type === 'Literal')
    return typeof syntax.value === 'string' ? syntax.value : undefined;
  if (syntax.type !== 'TemplateLiteral') return undefined;
  // reason: the syntax of a template holds its pieces so
  return (syntax.quasis as readonly { value: { cooked: string } }[]).map(({ value }) => value.cooked).join('');
};

/** The literals that an expression may come to: both sides of a choice, and no argument of a call. */
const outcomes = (syntax: Syntax): Syntax[] => {
  if (textOf(syntax) !== undefined) return [syntax];
  const { type } = syntax;
  if (type === 'ConditionalExpression') return [syntax.consequent, syntax.alternate].filter(isSyntax).flatMap(outcomes);
  if (type === 'LogicalExpression') return [syntax.left, syntax.right].filter(isSyntax).flatMap(outcomes);
  if (type === 'JSXExpressionContainer') return [syntax.expression].filter(isSyntax).flatMap(outcomes);
  return [];
};

/** What one piece of syntax shows to a person, by where it stands. */
const shownIn = (syntax: Syntax): Syntax[] => {
  if (syntax.type === 'JSXElement' || syntax.type === 'JSXFragment')
    return (syntax.children as readonly Syntax[]).flatMap(outcomes);
  const { type, value } = syntax;
  if ((type !== 'JSXAttribute' && type !== 'Property') || !isSyntax(value)) return [];
  const { name } = (type === 'Property' ? syntax.key : syntax.name) as { readonly name?: unknown };
  return shownBy.has(String(name)) ? outcomes(value) : [];
};

/** What the program says to whoever works on it, when it is wrong itself. */
const isForMakers = (syntax: Syntax): boolean => {
  if (syntax.type === 'ImportDeclaration') return true;
  return syntax.type === 'NewExpression' && (syntax.callee as { readonly name?: unknown }).name === 'Error';
};

const looseIn = (syntax: Syntax): Syntax[] => {
  if (isForMakers(syntax)) return [];
  const sentence = isSentence(textOf(syntax) ?? '') ? [syntax] : [];
  const shown = shownIn(syntax).filter((part) => hasLetters(textOf(part) ?? ''));
  return [...sentence, ...shown, ...partsOf(syntax).flatMap(looseIn)];
};

const isWritten = (file: string): boolean => /words\.en\.ts$/.test(file) || /\.test(?:-helper)?\.tsx?$/.test(file);

/**
 * Every word of a language under a folder that stands outside its language files: letters in the text of an element, in
 * what is read out or shown of it, and whole sentences anywhere.
 */
export const looseWords = (folder: string): LooseWords[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file) && !isWritten(file))
    .flatMap((file) => {
      const text = readFileSync(join(folder, file), 'utf8');
      // reason: the syntax is read by names, whatever kind it is of
      const syntax = parseSync(file, text).program as unknown as Syntax;
      const found = new Map(looseIn(syntax).map((part) => [part.start, textOf(part) ?? '']));
      return [...found].map(([start, words]) => ({
        file,
        line: text.slice(0, start).split('\n').length,
        words: words.trim(),
      }));
    });
