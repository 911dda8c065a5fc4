import PDFDocument from 'pdfkit';
import type { Typeface } from '../font/typeface.js';
import { PAPER, type PathNode, type Scene, type SceneNode, type TextNode } from './scene.js';

type Document = InstanceType<typeof PDFDocument>;

/**
 * Letters set one by one, as wide as `Typeface` measures them. pdfkit hands this on to its font engine, which
 * takes switches by name; its types know a list only.
 */
const PLAIN = { kern: false, liga: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];

/**
 * Scenes as the pages of a PDF, its font embedded, its text selectable.
 *
 * The same scenes and date give the same bytes.
 *
 * @param date  YYYY-MM-DD, written into the file as its date of creation
 */
export async function pdfFile(scenes: readonly Scene[], typeface: Typeface, date: string): Promise<Buffer> {
  const [first] = scenes;
  const document = new PDFDocument({
    size: [first.width, first.height],
    margin: 0,
    lang: 'en',
    displayTitle: true,
    info: { Title: first.title, Subject: first.description, CreationDate: new Date(`${date}T00:00:00Z`) },
  });
  const chunks: Buffer[] = [];
  document.on('data', (chunk: Buffer) => chunks.push(chunk));
  const ended = new Promise<void>((resolve) => document.on('end', () => resolve()));
  scenes.forEach(({ width, height, nodes }, i) => {
    if (i > 0) document.addPage({ size: [width, height], margin: 0 });
    for (const node of nodes) drawNode(document, node, typeface);
  });
  document.end();
  await ended;
  return Buffer.concat(chunks);
}

function drawNode(document: Document, node: SceneNode, typeface: Typeface): void {
  switch (node.kind) {
    case 'group': {
      const { dx = 0, dy = 0, nodes } = node;
      document.save().translate(dx, dy);
      for (const each of nodes) drawNode(document, each, typeface);
      document.restore();
      return;
    }
    case 'path':
      drawPath(document, node);
      return;
    case 'text':
      drawText(document, node, typeface);
  }
}

function drawPath(document: Document, { d, fill, stroke }: PathNode): void {
  if (d === '') return;
  document.path(d);
  if (stroke) {
    document.lineWidth(stroke.width).lineJoin('round');
    if (stroke.dash) document.dash(stroke.dash[0], { space: stroke.dash[1] });
    else document.undash();
  }
  if (fill && stroke) document.fillAndStroke(PAPER[fill], PAPER[stroke.ink]);
  else if (fill) document.fill(PAPER[fill]);
  else if (stroke) document.stroke(PAPER[stroke.ink]);
}

function drawText(document: Document, node: TextNode, typeface: Typeface): void {
  const { x, y, text, size, weight = 'regular', anchor = 'start', ink = 'ink' } = node;
  const width = typeface.width(text, size, weight);
  const left = x - { start: 0, middle: width / 2, end: width }[anchor];
  document
    .font(typeface.files[weight])
    .fontSize(size)
    .fillColor(PAPER[ink])
    .text(text, left, y, { lineBreak: false, baseline: 'alphabetic', features: PLAIN });
}
