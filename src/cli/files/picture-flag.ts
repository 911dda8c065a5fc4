import { PICTURE_KINDS, type PictureKind } from '../../report/web/picture-file.js';
import { checkedOut, kindOfFile } from './out-file.js';

/** The file that `--out` names for a picture or its page; null without one. @throws {InputError} as `kindOfFile` and `checkedOut` do */
export const pictureFlag = (
  path: string | undefined,
): { readonly kind: PictureKind; readonly path: string } | null =>
  path === undefined ? null : { kind: kindOfFile(path, PICTURE_KINDS), path: checkedOut(path) };
