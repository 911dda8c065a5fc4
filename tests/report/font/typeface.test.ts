import { readFileSync } from 'node:fs';
import { create, type Font } from 'fontkit';
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { loadTypeface, type Weight } from '../../../src/report/font/typeface.js';
import { fontTables } from '../../oracles/font-tables.js';

const typeface = loadTypeface();
const WORDS = ['70 x 4 1/2 x 30', 'AVATAR To fix', 'Ärger – ½ Ωλ', 'left of the way from PAP to pin', ''];
const NO_KERNING = { kern: false, liga: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];

/** Width as pdfkit sets the text. */
const widthInPdf = (font: string | Buffer, text: string): number =>
  new PDFDocument().font(font).fontSize(10).widthOfString(text, { features: NO_KERNING });

/** What a font draws for a sign, in its own units. */
const outlineOf = (font: Font, sign: string) =>
  font.glyphForCodePoint(sign.codePointAt(0) as number).path.commands;

describe.each(['regular', 'bold'] as const)('typeface, %s', (weight: Weight) => {
  const whole = readFileSync(typeface.files[weight]);

  test.each(WORDS)('width: %j is as wide as the tables of the font say', (text) => {
    const { advance, glyphOf } = fontTables(whole);
    const wanted = [...text].reduce(
      (sum, sign) => sum + 10 * advance(glyphOf(sign.codePointAt(0) as number)),
      0,
    );
    expect(typeface.width(text, 10, weight)).toBeCloseTo(wanted, 9);
  });

  test.each(WORDS)('width: %j is as wide as a PDF sets it', (text) => {
    expect(typeface.width(text, 10, weight)).toBeCloseTo(widthInPdf(typeface.files[weight], text), 9);
  });

  test('cut: the letters kept are as wide as before, and another program can read them', async () => {
    const all = WORDS.join('');
    const cut = await typeface.cut(all, weight);
    for (const text of WORDS) expect(widthInPdf(cut, text)).toBeCloseTo(typeface.width(text, 10, weight), 9);
    expect(cut.length).toBeLessThan(40_000); // of some 700,000
  });

  test('cut: every letter is drawn as by the whole font, those put together from others too; none besides', async () => {
    const cut = create(await typeface.cut('ÄiΩ½', weight)) as Font;
    for (const sign of 'ÄiΩ½') {
      const drawn = outlineOf(cut, sign);
      expect(drawn.length).toBeGreaterThan(5);
      expect(drawn).toEqual(outlineOf(create(whole) as Font, sign));
    }
    expect(cut.hasGlyphForCodePoint('x'.codePointAt(0) as number)).toBe(false);
    expect(cut.numGlyphs).toBeLessThan(12); // with the parts of some, and the sign for a missing one
  });
});

test('cut: the same letters give the same bytes in any order', async () => {
  const [tape, blank, other] = await Promise.all(
    ['tape', 'epat tape', 'epattape'].map((text) => typeface.cut(text, 'regular')),
  );
  expect(tape.equals(blank)).toBe(false); // a blank more
  expect(tape.equals(other)).toBe(true);
});

test('cut: the check sum of the file is the one its format asks for', async () => {
  const bytes = await typeface.cut('check', 'regular');
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  expect(sum).toBe(0xb1b0afba); // OpenType specification 1.9, `head`
});

test('cut: the copyright notice and the licence travel along', async () => {
  const { name } = create(await typeface.cut('x', 'regular')) as Font & {
    readonly name: { readonly records: Readonly<Record<string, { readonly en: string }>> };
  };
  expect(name.records.copyright.en).toContain('Copyright (c) 2003 by Bitstream');
  expect(name.records.license.en).toContain('Permission is hereby granted, free of charge');
});

test('printable: a sign the font lacks becomes a question mark, accents of many scripts stay', () => {
  expect(typeface.printable('Łukasz Ängström Ωmega Жук 保龄球 🎳')).toBe('Łukasz Ängström Ωmega Жук ??? ?');
});
