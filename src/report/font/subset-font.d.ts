/* What is used of subset-font, whose own types lack some of it. */
declare module 'subset-font' {
  /** A font with the glyphs of a text only; the options say what else is left out or kept. */
  function subsetFont(
    font: Buffer,
    text: string,
    options: {
      readonly targetFormat: 'sfnt';
      readonly noHinting: boolean;
      readonly noLayoutClosure: boolean;
      readonly dropTables: readonly string[];
      readonly preserveNameIds: readonly number[];
    },
  ): Promise<Buffer>;
  export = subsetFont;
}
