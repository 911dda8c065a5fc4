import fc from 'fast-check';
import { spoiledText } from './spoiled-text.js';

type Path = readonly (string | number)[];

/** All places in a value: every field and entry, and the whole. */
function placesIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inner = Array.isArray(value) ? value.map((each, i) => [i, each] as const) : Object.entries(value);
  return [path, ...inner.flatMap(([key, each]) => placesIn(each, [...path, key]))];
}

/** What is put in the place of a field: of the wrong kind, on the edge, typed by a person. */
const strange: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, false, '', [], {}, [[]], 'x'.repeat(900), '\ud800', '\u202e', {
    __proto__: 1,
  }),
  fc.constantFrom(0, -0, 1, -1, 0.1, 1e-300, 1e300, 2 ** 53, 360, 39, 1e9),
  fc.double(),
  fc.double({ min: 0, max: 60, noNaN: true }),
  spoiledText(
    ['4 7/8', '27,5 km/h', '15 lb 4 oz', '2.50-2.54', 'about 300', '17½', '1/4 down', '124 mm', '12°'],
    2,
  ),
  fc.jsonValue({ maxDepth: 2 }),
);

const edit = fc.record({
  kind: fc.nat(7),
  at: fc.nat(100_000),
  value: strange,
  factor: fc.constantFrom(-1, 0.1, 0.5, 0.9, 1.1, 2, 10, 25.4, 1.609, 1e6),
  name: fc.constantFrom('__proto__', 'constructor', 'x', 'name', 'unit', 'note', 'speedMph', 'y'.repeat(300)),
});

/** A sound record with a few of its fields gone, renamed, doubled, replaced, or their numbers changed. */
export const spoiledRecord = (sound: readonly unknown[], mostEdits = 4): fc.Arbitrary<unknown> =>
  fc
    .tuple(fc.constantFrom(...sound), fc.noBias(fc.array(edit, { minLength: 1, maxLength: mostEdits })))
    .map(([record, edits]) => {
      const whole = { record: structuredClone(record) };
      for (const { kind, at, value, factor, name } of edits) {
        const places = placesIn(whole.record, ['record']);
        const path = places[at % places.length];
        const holder = path.slice(0, -1).reduce((from, key) => (from as never)[key], whole as unknown);
        change(holder as Record<string | number, unknown>, path.at(-1) as string, {
          kind,
          value: structuredClone(value),
          factor,
          name,
        });
      }
      return whole.record;
    });

function change(
  holder: Record<string | number, unknown>,
  key: string,
  { kind, value, factor, name }: { kind: number; value: unknown; factor: number; name: string },
): void {
  const now = holder[key];
  if (typeof now === 'number' && kind < 3) holder[key] = now * factor;
  else if (kind === 3 && Array.isArray(now)) now.push(structuredClone(now[0]) ?? value);
  else if (kind === 3 && Array.isArray(holder)) holder.splice(Number(key), 1);
  else if (kind === 3) delete holder[key];
  else if (kind === 4 && typeof now === 'object' && now !== null && !Array.isArray(now))
    Object.defineProperty(now, name, { value, enumerable: true, configurable: true, writable: true });
  else holder[key] = value;
}
