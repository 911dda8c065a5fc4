import { visible } from '../../base/visible.js';

const NAMED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text safe between tags and in attributes of XML and HTML, made of characters that XML allows and a reader sees. */
export const escapeXml = (text: string): string => visible(text).replace(/[&<>"']/g, (sign) => NAMED[sign]);
