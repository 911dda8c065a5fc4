const NAMED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text safe between tags and in attributes of XML and HTML. Control characters, which XML forbids, become spaces. */
export const escapeXml = (text: string): string =>
  text.replace(/\p{Cc}/gu, ' ').replace(/[&<>"']/g, (sign) => NAMED[sign] as string);
