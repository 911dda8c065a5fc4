import { z } from 'zod';
import { hypot } from '../../math/hypot.js';
import { cross, norm, unit, type Vec3 } from '../../math/vec3.js';
import { choice, fileField, nameField, noteField, quantity, recordTag } from './quantity.js';

/** Units a core may be drawn in. */
export const LENGTH_UNITS = ['in', 'mm', 'cm'] as const;

export type LengthUnit = (typeof LENGTH_UNITS)[number];

const unitField = (what: string) => choice(LENGTH_UNITS, what);

/** Of any length, in the file's unit: far below what can be made, and what can still be computed with. */
const LEAST_LENGTH = 0.001;

/** A length of a solid in the file's unit; what is too long depends on the unit, so the upper bound is wide. */
const length = (what: string) =>
  z
    .number({ error: 'must be a number above 0' })
    .min(LEAST_LENGTH, `must be at least ${LEAST_LENGTH}`)
    .max(1000, 'must be at most 1000')
    .meta({ description: `${what}, in the file's unit` });

const density = (what: string) =>
  quantity(0.05, 20, {
    unit: 'g/cc',
    what,
    hint: 'Grams per cubic centimetre: filler is near 1, a core 1.5 to 3; kg/m³ divided by 1000.',
  });

const coordinate = z
  .number({ error: 'must be a number' })
  .min(-1000, 'must be at least -1000')
  .max(1000, 'must be at most 1000');

const point = (what: string) =>
  z
    .tuple([coordinate, coordinate, coordinate], { error: 'must be three numbers: [x, y, z]' })
    .meta({ description: what });

const degrees = (what: string) =>
  quantity(-360, 360, { unit: 'degrees', what, hint: 'A full turn is 360.' }).optional();

/** How a solid stands: turned about its own axis first, then tilted. */
const poseFields = {
  turnDeg: degrees('Turn about its own axis z, from x toward y'),
  tiltDeg: degrees("Then its axis leaves the file's z by this much: 0 upright, 90 lying"),
  towardDeg: degrees("Which way it is tilted: 0 toward the file's x, 90 toward its y"),
};

const solidFields = {
  name: nameField.optional(),
  densityGcc: density('Density'),
  centre: point("Its centre, in the file's unit; left out, the ball's centre").optional(),
  ...poseFields,
};

const ellipsoid = z.strictObject({
  shape: z.literal('ellipsoid'),
  radii: z
    .tuple([length('Radius'), length('Radius'), length('Radius')], {
      error: 'must be three radii: along x, y and z',
    })
    .meta({ description: "Radii along its x, y and z, in the file's unit; three equal ones make a ball" }),
  ...solidFields,
});

const cylinder = z.strictObject({
  shape: z.literal('cylinder'),
  radius: length('Radius'),
  height: length('Height along its z, centred'),
  ...solidFields,
});

const cone = z.strictObject({
  shape: z.literal('cone'),
  bottomRadius: length('Radius at the lower end of its z'),
  topRadius: z
    .number({ error: 'must be a number, 0 or above' })
    .min(0, 'must be 0 or above')
    .max(1000, 'must be at most 1000')
    .meta({ description: "Radius at the upper end of its z, in the file's unit; 0 for a tip" }),
  height: length('Height along its z, centred'),
  ...solidFields,
});

const capsule = z
  .strictObject({
    shape: z.literal('capsule'),
    radius: length('Radius of its wall and of its round ends'),
    height: length('Height along its z from end to end, round ends included'),
    ...solidFields,
  })
  .superRefine(({ radius, height }, ctx) => {
    if (height < 2 * radius)
      ctx.addIssue({
        code: 'custom',
        path: ['height'],
        message: `must be at least twice the radius, ${2 * radius}`,
        params: { hint: 'The height is from end to end, round ends included.' },
      });
  });

const box = z.strictObject({
  shape: z.literal('box'),
  sides: z
    .tuple([length('Side'), length('Side'), length('Side')], { error: 'must be three sides: x, y and z' })
    .meta({ description: "Whole lengths along its x, y and z, in the file's unit" }),
  ...solidFields,
});

const mesh = z.strictObject({
  shape: z.literal('mesh'),
  name: nameField.optional(),
  file: fileField(
    'STL file, binary or text, seen from the folder of this one: one closed surface or several.',
  ),
  unit: unitField('Unit of the STL file, which does not name one itself.'),
  densityGcc: density('Density'),
  shift: point(
    "Where the STL file's origin lies, in this file's unit; left out, at the ball's centre",
  ).optional(),
  ...poseFields,
});

const SHAPES = [ellipsoid, cylinder, cone, capsule, box, mesh] as const;

const direction = (what: string) =>
  point(what)
    .refine(
      (v) => hypot(...v) >= LEAST_LENGTH,
      `must not be [0, 0, 0]: its length must be at least ${LEAST_LENGTH}`,
    )
    .optional();

/** Pin and marker of a core as given or by default, in its file's frame; of any length. */
export const coreDirections = ({
  pin = [0, 0, 1],
  marker = [1, 0, 0],
}: {
  readonly pin?: Vec3 | undefined;
  readonly marker?: Vec3 | undefined;
}): { readonly pin: Vec3; readonly marker: Vec3 } => ({ pin, marker });

/** Least sine of the angle between pin and marker; below, the marker's direction is lost. */
const LEAST_SINE = 0.02;

export const coreSchema = z
  .strictObject({
    schema: recordTag('flarewise/core/1'),
    name: nameField,
    note: noteField,
    unit: unitField('Unit of every length in this file but those in an STL file.'),
    pin: direction(
      "Direction from the ball's centre to the pin: the core's low-RG axis as it was meant. Left out, the file's z.",
    ),
    marker: direction(
      'Which way the marker lies from the pin: for an asymmetric core the end of its high-RG axis that the ball ' +
        "marks, for a symmetric one the side of the CG. Its part across the pin's axis counts. Left out, the file's x.",
    ),
    cover: z
      .strictObject({
        thickness: length('Thickness: 3/4 to 1 in is usual'),
        densityGcc: density('Density: 1.15 to 1.25 is usual'),
      })
      .meta({
        description: 'The outer shell. What the filler inside weighs follows from the ball’s weight.',
      }),
    fillerDensityGcc: density(
      'Density of the filler, if known; it is compared with the one that makes the weight come out',
    ).optional(),
    parts: z
      .array(
        z.discriminatedUnion('shape', SHAPES, {
          error: `must be ${SHAPES.map(({ shape }) => `"${shape.shape.value}"`).join(' or ')}`,
        }),
        { error: 'must be a list: entries in [ ]' },
      )
      .min(1, 'must have at least one part')
      .max(60, 'must be at most 60 parts')
      .meta({ description: 'Solids and meshes of the core. Where two share space, the later one is there.' }),
  })
  .superRefine((core, ctx) => {
    const { pin, marker } = coreDirections(core);
    if (norm(cross(unit(pin), unit(marker))) < LEAST_SINE)
      ctx.addIssue({
        code: 'custom',
        path: [core.marker ? 'marker' : 'pin'],
        message: `must not lie along the ${core.marker ? 'pin' : "marker, which is the file's x unless you give it"}`,
        params: {
          hint: 'Give the two directions across one another; left out, the pin is z and the marker x.',
        },
      });
  })
  .meta({
    title: 'Core',
    description:
      'A core as its designer knows it, in a frame F with its origin at the ball’s centre: cover, parts, densities.',
  });

export type Core = z.infer<typeof coreSchema>;
export type CorePart = Core['parts'][number];

/** A core file as read, with the bytes of the mesh files it names. */
export interface CoreFile {
  /** Where it was read, for errors about it. */
  readonly path: string;
  readonly core: Core;
  /** By the name the core calls them: where each was read, and its bytes. */
  readonly meshes: ReadonlyMap<string, { readonly path: string; readonly bytes: Uint8Array }>;
}
