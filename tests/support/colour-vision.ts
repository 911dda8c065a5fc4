/*
 * How far colours lie apart for those who see all of them and for the colour-blind, and how far they stand out from a ground.
 *
 * Simulation: Machado, Oliveira & Fernandes, IEEE Trans. Vis. Comput. Graph. 15, 1291 (2009), matrices of severity 1, applied to linear
 * RGB (from memory). Differences: CIEDE2000 as Sharma, Wu & Dalal write it, Color Res. Appl. 30, 21 (2005). Contrast: WCAG 2.2.
 */

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

const SIMULATED: Readonly<Record<string, Matrix>> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

export const SIGHTS = Object.keys(SIMULATED);

/** sRGB to linear (IEC 61966-2-1). */
const toLinear = (hex: string): Triple =>
  [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as unknown as Triple;

const times = (matrix: Matrix, v: Triple): Triple =>
  matrix.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as unknown as Triple;

/** CIELAB under D65. */
function toLab(rgb: Triple): Triple {
  const [x, y, z] = times(
    [
      [0.4124564, 0.3575761, 0.1804375],
      [0.2126729, 0.7151522, 0.072175],
      [0.0193339, 0.119192, 0.9503041],
    ],
    rgb,
  );
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const [fx, fy, fz] = [f(x / 0.95047), f(y), f(z / 1.08883)];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** A colour as somebody sees it, in CIELAB. */
export const seenBy = (sight: string, hex: string): Triple =>
  toLab(
    times(SIMULATED[sight] as Matrix, toLinear(hex)).map((each) =>
      Math.min(1, Math.max(0, each)),
    ) as unknown as Triple,
  );

/** Contrast of two colours, 1 to 21. */
export function contrast(one: string, other: string): number {
  const [high, low] = [one, other]
    .map((hex) => {
      const [r, g, b] = toLinear(hex);
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    })
    .sort((a, b) => b - a) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const RAD = Math.PI / 180;

/** CIEDE2000 between two colours in CIELAB. */
export function ciede2000([l1, a1, b1]: Triple, [l2, a2, b2]: Triple): number {
  const meanC = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7)));
  const [p1, p2] = [(1 + g) * a1, (1 + g) * a2];
  const [c1, c2] = [Math.hypot(p1, b1), Math.hypot(p2, b2)];
  const hue = (a: number, b: number): number =>
    a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / RAD + 360) % 360;
  const [h1, h2] = [hue(p1, b1), hue(p2, b2)];
  const isGrey = c1 * c2 === 0;
  const turn = isGrey ? 0 : ((h2 - h1 + 540) % 360) - 180;
  const [dL, dC, dH] = [l2 - l1, c2 - c1, 2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * RAD)];
  const [l, c] = [(l1 + l2) / 2, (c1 + c2) / 2];
  const sum = h1 + h2;
  const h = isGrey ? sum : Math.abs(h1 - h2) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  const t =
    1 -
    0.17 * Math.cos((h - 30) * RAD) +
    0.24 * Math.cos(2 * h * RAD) +
    0.32 * Math.cos((3 * h + 6) * RAD) -
    0.2 * Math.cos((4 * h - 63) * RAD);
  const sL = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sC = 1 + 0.045 * c;
  const sH = 1 + 0.015 * c * t;
  const rT =
    -Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * RAD) * 2 * Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7));
  return Math.sqrt((dL / sL) ** 2 + (dC / sC) ** 2 + (dH / sH) ** 2 + rT * (dC / sC) * (dH / sH));
}
