import { z } from 'zod';

const errors = z.strictObject({ r2: z.number(), rmse: z.number(), p95: z.number(), worst: z.number() });

/** The card of a fitted model: its inputs and outputs, its errors, and the data and settings of the fit. */
export const cardSchema = z.strictObject({
  schema: z.literal('flarewise/model-card/1'),
  about: z.string(),
  version: z.string(),
  file: z.strictObject({ name: z.string(), bytes: z.number(), sha256: z.string() }),
  physics: z.strictObject({ hash: z.string(), numbers: z.array(z.number()) }),
  data: z.strictObject({
    seed: z.number(),
    lanes: z.number(),
    fittedOn: z.number(),
    heldOut: z.number(),
    split: z.string(),
  }),
  fit: z.strictObject({
    widths: z.array(z.number()),
    squares: z.number(),
    /** Number of values that the answers are linear in. */
    basis: z.number(),
    epochs: z.number(),
    batch: z.number(),
    rate: z.number(),
    seed: z.number(),
  }),
  inputs: z.array(
    z.strictObject({ name: z.string(), unit: z.string(), least: z.number(), most: z.number() }),
  ),
  /** `scale` is the standard deviation over the shots fitted on, SI. */
  outputs: z.array(
    z.strictObject({
      name: z.string(),
      unit: z.string(),
      si: z.number(),
      scale: z.number(),
      heldOut: errors,
    }),
  ),
  /** Other fits of the same rows, errors on the same held-out shots, in the order of the outputs. */
  comparison: z.array(z.strictObject({ fit: z.string(), heldOut: z.array(errors) })),
  /** Root mean square change of the engine's own answers when inputs change by up to `share`, in the order of the outputs. */
  roughness: z.array(z.strictObject({ share: z.number(), rmse: z.array(z.number()) })),
  /** Root mean square errors on held-out shots by thirds of an input, in the order of the outputs. */
  regions: z.array(
    z.strictObject({ input: z.string(), from: z.number(), to: z.number(), rmse: z.array(z.number()) }),
  ),
});

export type ModelCard = z.infer<typeof cardSchema>;

/** Names of the model's two files in `models/`. */
export const MODEL_FILE = 'reaction.onnx';
export const CARD_FILE = 'reaction.card.json';
/** A new model is written here first. If writing was interrupted and the card already describes this file, it counts. */
export const NEXT_MODEL_FILE = 'reaction.next.onnx';
