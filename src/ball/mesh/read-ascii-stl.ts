import { Refusal } from '../../records/refusals/refusal.js';
import type { StlFound, StlWord } from '../../records/refusals/stl-refusals.js';

/**
 * Corners of a text STL file, nine numbers a triangle, of all its solids together (the format as commonly
 * described, from memory): words in upper or lower case, any white
 * space, numbers with or without exponent.
 *
 * @throws {Refusal} with the line: `stl-other-word` for another word than the format wants there or a text that ends too soon,
 *   `stl-no-number` for a coordinate that is not a finite number; `stl-no-triangles`
 */
export function readAsciiStl(text: string, source?: string): Float32Array {
  const reader = new StlReader(text, source);
  const corners = reader.solids();
  if (corners.length === 0)
    throw new Refusal([{ code: 'stl-no-triangles', params: { form: 'text' } }], source);
  return Float32Array.from(corners);
}

/** Recursive descent over the words of a text. */
class StlReader {
  private at = 0; // behind the word last read
  private start = 0; // of the word last read
  private first = 0; // where the text begins, behind white space
  private readonly corners: number[] = [];

  constructor(
    private readonly text: string,
    private readonly source: string | undefined,
  ) {}

  solids(): readonly number[] {
    this.skipSpace();
    this.first = this.at;
    do {
      this.expect('solid');
      this.solid();
    } while (this.hasMore());
    return this.corners;
  }

  /** What follows the word "solid". */
  private solid(): void {
    this.restOfLine(); // its name, any words
    let word = this.word();
    for (; isWord(word, 'facet'); word = this.word()) this.facet();
    if (!isWord(word, 'endsolid')) throw this.unexpected(word, 'facet or endsolid');
    this.restOfLine();
  }

  private facet(): void {
    this.expect('normal');
    for (let i = 0; i < 3; i++) this.word(); // some programs write nan here
    this.expect('outer');
    this.expect('loop');
    for (let i = 0; i < 3; i++) {
      this.expect('vertex');
      for (let j = 0; j < 3; j++) this.corners.push(this.coordinate());
    }
    this.expect('endloop');
    this.expect('endfacet');
  }

  private coordinate(): number {
    const word = this.word();
    const value = Math.fround(NUMBER.test(word) ? Number(word) : Number.NaN);
    if (Number.isFinite(value)) return value;
    throw new Refusal(
      [{ code: 'stl-no-number', params: { line: this.line(), found: this.found(word) } }],
      this.source,
    );
  }

  private expect(wanted: Exclude<StlWord, 'facet or endsolid'>): void {
    const word = this.word();
    if (!isWord(word, wanted)) throw this.unexpected(word, wanted);
  }

  private hasMore(): boolean {
    this.skipSpace();
    return this.at < this.text.length;
  }

  /** The next word; empty at the end of the text. */
  private word(): string {
    this.skipSpace();
    this.start = this.at;
    while (this.at < this.text.length && !isSpace(this.text.charCodeAt(this.at))) this.at++;
    return this.text.slice(this.start, this.at);
  }

  private skipSpace(): void {
    while (isSpace(this.text.charCodeAt(this.at))) this.at++;
  }

  private restOfLine(): void {
    while (this.at < this.text.length && !'\r\n'.includes(this.text[this.at])) this.at++;
  }

  private unexpected(word: string, wanted: StlWord): Refusal {
    return new Refusal(
      [{ code: 'stl-other-word', params: { line: this.line(), wanted, found: this.found(word) } }],
      this.source,
    );
  }

  /** Line of the word last read, from 1. */
  private line(): number {
    return this.text.slice(0, this.start).split(/\r\n|\r|\n/).length;
  }

  /** What does not begin as an STL text is some other file, which is not shown around. */
  private found(word: string): StlFound {
    if (word === '') return { kind: 'end' };
    return this.start === this.first ? { kind: 'other-text' } : { kind: 'word', word: word.slice(0, SHOWN) };
  }
}

/** Most letters of a word that are shown. */
const SHOWN = 40;

const isWord = (word: string, wanted: string): boolean => word === wanted || word.toLowerCase() === wanted;
const isSpace = (code: number): boolean => code === 32 || (code >= 9 && code <= 13);
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
