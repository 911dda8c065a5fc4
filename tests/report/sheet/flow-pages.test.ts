import { expect, test } from 'vitest';
import { flowPages } from '../../../src/report/sheet/flow-pages.js';
import type { Typeset } from '../../../src/report/sheet/typeset-block.js';

/** A piece that high, that names itself. */
const piece = (name: string, height: number): Typeset => ({
  nodes: [{ kind: 'text', x: 0, y: 0, text: name, size: 10 }],
  height,
});
const onward = piece('onward', 10);
const namesOn = (page: Typeset): string[] =>
  JSON.stringify(page)
    .match(/"text":"[^"]+"/g)
    ?.map((each) => each.slice(8, -1)) ?? [];

test('what does not fit goes on at the next row, below a line that says whose sheet it is', () => {
  const pages = flowPages(
    [[piece('a', 40)], [piece('b1', 30), piece('b2', 30), piece('b3', 30)]],
    onward,
    100,
    5,
  );
  expect(pages.map(namesOn)).toEqual([
    ['a', 'b1'],
    ['onward', 'b2', 'b3'],
  ]);
});

test('no page is higher than its room, and no room is left that the next row would have filled', () => {
  const rows = Array.from({ length: 40 }, (_, i) => piece(`row ${i}`, 7 + ((i * 13) % 17)));
  const [first, ...rest] = rows as [Typeset, ...Typeset[]];
  const pages = flowPages([[first, ...rest]], onward, 100, 5);
  expect(pages.flatMap(namesOn).filter((name) => name !== 'onward')).toEqual(rows.flatMap(namesOn));
  let placed = 0;
  for (const page of pages) {
    expect(page.height).toBeLessThanOrEqual(100);
    placed += namesOn(page).filter((name) => name !== 'onward').length;
    const next = rows[placed];
    if (next) expect(page.height + next.height).toBeGreaterThan(100);
  }
});
