import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { fontFile } from '../../../src/report/font/font-file.js';
import { partsOf } from '../../../src/report/font/outline.js';
import { loadTypeface, type Weight } from '../../../src/report/font/typeface.js';

const typeface = loadTypeface();
const WORDS = ['70 x 4 1/2 x 30', 'AVATAR To fix', 'Ärger – ½ Ωλ', 'left of the way from PAP to pin', ''];
const NO_KERNING = { kern: false, liga: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];

/** Width by another program: fontkit, as pdfkit uses it. */
const widthByFontkit = (font: string | Buffer, text: string): number =>
  new PDFDocument().font(font).fontSize(10).widthOfString(text, { features: NO_KERNING });

describe.each(['regular', 'bold'] as const)('typeface, %s', (weight: Weight) => {
  test.each(WORDS)('width: %j is as wide as fontkit says', (text) => {
    expect(typeface.width(text, 10, weight)).toBeCloseTo(widthByFontkit(typeface.files[weight], text), 9);
  });

  test('cut: the letters kept are as wide as before, and fontkit can read them', () => {
    const all = WORDS.join('');
    const cut = typeface.cut(all, weight);
    for (const text of WORDS)
      expect(widthByFontkit(cut, text)).toBeCloseTo(typeface.width(text, 10, weight), 9);
    expect(cut.length).toBeLessThan(40_000); // of some 700,000
  });

  test('cut: outlines are those of the whole font but for hints, composites with their parts', () => {
    const cut = fontFile(typeface.cut('Äi', weight));
    const parts = partsOf(cut.outline(cut.glyphOf('Ä'.codePointAt(0) as number)));
    expect(parts.length).toBe(2); // the letter and its dots
    for (const { glyph } of parts) expect(cut.outline(glyph).length).toBeGreaterThan(20);
  });
});

test('cut: the same letters give the same bytes in any order', () => {
  expect(typeface.cut('tape', 'regular').equals(typeface.cut('epat tape', 'regular'))).toBe(false); // a blank more
  expect(typeface.cut('tape', 'regular').equals(typeface.cut('epattape', 'regular'))).toBe(true);
});

test('cut: the check sum of the file is the one its format asks for', () => {
  const bytes = typeface.cut('check', 'regular');
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  expect(sum).toBe(0xb1b0afba); // OpenType specification 1.9, `head`
});

test('cut: the copyright notice and the licence travel along', () => {
  const text = typeface.cut('x', 'regular').toString('latin1');
  expect(text).toContain('Copyright (c) 2003 by Bitstream');
  expect(text).toContain('Permission is hereby granted, free of charge');
});

test('printable: a sign the font lacks becomes a question mark, accents of many scripts stay', () => {
  expect(typeface.printable('Łukasz Ängström Ωmega Жук 保龄球 🎳')).toBe('Łukasz Ängström Ωmega Жук ??? ?');
});
