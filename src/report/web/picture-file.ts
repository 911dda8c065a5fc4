import { loadTypeface } from '../font/typeface.js';
import { pngFile } from '../scene/png-file.js';
import type { Scene } from '../scene/scene.js';
import { svgFile } from '../scene/svg-file.js';

/** Kinds of file that an answer with a picture can be written as, by the ending of their names. */
export const PICTURE_KINDS = ['svg', 'png', 'html'] as const;
export type PictureKind = (typeof PICTURE_KINDS)[number];

/** An answer as the bytes of a file: its picture alone, for paper, or a page around it. The same answer gives the same bytes. */
export async function pictureFile(
  kind: PictureKind,
  answer: { readonly picture: () => Scene; readonly page: () => string },
): Promise<Buffer> {
  switch (kind) {
    case 'html':
      return Buffer.from(answer.page());
    case 'svg':
      return Buffer.from(await svgFile(answer.picture(), loadTypeface()));
    case 'png':
      return pngFile(answer.picture(), loadTypeface());
  }
}
