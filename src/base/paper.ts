/** Paper sizes, pt: 8 1/2 x 11 in, and 210 x 297 mm (ISO 216). */
export const PAPERS = {
  letter: { width: 612, height: 792, css: '8.5in 11in' },
  a4: { width: (210 / 25.4) * 72, height: (297 / 25.4) * 72, css: '210mm 297mm' },
} as const;

export type Paper = keyof typeof PAPERS;

export const PAPER_NAMES = Object.keys(PAPERS) as readonly Paper[];
