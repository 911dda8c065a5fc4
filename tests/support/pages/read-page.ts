import { type Drawn, readSvg } from './read-svg.js';

/** A table read back from a page's text. */
interface ReadTable {
  readonly caption: string;
  readonly heads: readonly string[];
  /** Cells of each row, the row's name first. */
  readonly rows: readonly (readonly string[])[];
}

/** A figure of a page: its pictures by their titles, and the tables behind it. */
export interface ReadFigure {
  readonly pictures: ReadonlyMap<string, readonly Drawn[]>;
  readonly tables: readonly ReadTable[];
}

/** Everything a page of ours shows in figures, by their ids. */
export function readFigures(html: string): ReadonlyMap<string, ReadFigure> {
  const figures = html.matchAll(/<figure id="([\w-]+)">([\s\S]*?)<\/figure>/g);
  return new Map(
    [...figures].map(([, id, inner]) => [
      id as string,
      {
        pictures: new Map(
          [...inner!.matchAll(/<svg [\s\S]*?<\/svg>/g)].map(([svg]) => [
            plain(/<title>(.*?)<\/title>/.exec(svg)?.[1] ?? ''),
            readSvg(svg),
          ]),
        ),
        tables: readTables(/<details>([\s\S]*)<\/details>/.exec(inner!)?.[1] ?? ''),
      },
    ]),
  );
}

/** All tables of some HTML. */
export const readTables = (html: string): ReadTable[] =>
  [...html.matchAll(/<table[\s\S]*?<\/table>/g)].map(([table]) => {
    const rows = [...table.matchAll(/<tr[\s\S]*?<\/tr>/g)].map(([row]) =>
      [...row.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => plain(cell!)),
    );
    return {
      caption: plain(/<caption>(.*?)<\/caption>/.exec(table)?.[1] ?? ''),
      heads: rows[0] ?? [],
      rows: rows.slice(1),
    };
  });

const plain = (text: string): string =>
  text.replaceAll('\u00a0', ' ').replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&');
