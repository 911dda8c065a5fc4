import { z } from 'zod';

/** The codes of one topic, each with the shape of its params. */
type Shapes = Readonly<Record<string, Readonly<Record<string, z.ZodType>>>>;

/** Params of one code, optional ones as such. */
type ParamsOf<P extends Shapes[string]> = z.output<z.ZodObject<{ -readonly [K in keyof P]: P[K] }>>;

/** What JSON prints of a statement: its code, its params, and the English sentence in the trade's units. */
type Printed<S extends Shapes> = {
  [C in keyof S & string]: { code: C; params: ParamsOf<S[C]>; text: string };
}[keyof S & string];

/** The same data before it is printed: statements without their sentences. */
export type Unworded<T> = T extends { code: string; params: object; text: string }
  ? { code: T['code']; params: Unworded<T['params']> }
  : T extends object
    ? { [K in keyof T]: Unworded<T[K]> }
    : T;

/** The params of each code of a topic, without sentences. */
export type TopicOf<S extends Shapes> = {
  readonly [C in keyof S]: Unworded<ParamsOf<S[C]>>;
};

/**
 * A schema of the printed statements of one topic.
 *
 * @param id  its name in the published schemas
 */
export function statementSchema<const S extends Shapes>(id: string, shapes: S): z.ZodType<Printed<S>> {
  const [first, ...others] = Object.entries(shapes).map(([code, params]) =>
    z.strictObject({
      code: z.literal(code),
      params: z.strictObject(params),
      text: z.string(),
    }),
  );
  return z.discriminatedUnion('code', [first, ...others]).meta({ id }) as unknown as z.ZodType<Printed<S>>;
}
