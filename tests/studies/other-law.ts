import type { Lane } from '../../src/records/schemas/lane.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';

/** How friction falls with film/scale otherwise: as 1/(1 + film/scale), or as exp(−(film/scale)^0.7), which no shape of the fit's own law is. */
export type OtherLaw = 'hyperbola' | 'stretched';

/** Films that grip as much under the exponential law, in scales. */
const AS_FILM: Readonly<Record<OtherLaw, (scales: number) => number>> = {
  hyperbola: (scales) => Math.log(1 + scales),
  stretched: (scales) => scales ** 0.7,
};

/** The lane under another friction law: both fall more slowly in thick oil, and the stretched one faster in thin. */
export function underOtherLaw(lane: Lane, law: OtherLaw): Lane {
  const { filmScale } = NOMINAL_SURFACE;
  const asFilm = (units: number): number => filmScale * AS_FILM[law](units / filmScale);
  return {
    ...lane,
    zones: lane.zones.map((zone) => ({
      ...zone,
      units: asFilm(zone.units),
      ...(zone.unitsAtEnd === undefined ? {} : { unitsAtEnd: asFilm(zone.unitsAtEnd) }),
    })),
  };
}
