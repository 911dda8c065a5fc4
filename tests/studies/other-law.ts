import type { Lane } from '../../src/records/schemas/lane.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';

/**
 * The lane under another friction law, μ = oiled + (dry − oiled)/(1 + film/scale): it falls as fast in thin oil, and more slowly in thick.
 * A film of f units then does what s ln(1 + f/s) units do under the law that is assumed, s being its scale.
 */
export function underOtherLaw(lane: Lane): Lane {
  const { filmScale } = NOMINAL_SURFACE;
  const asFilm = (units: number): number => filmScale * Math.log(1 + units / filmScale);
  return {
    ...lane,
    zones: lane.zones.map((zone) => ({
      ...zone,
      units: asFilm(zone.units),
      ...(zone.unitsAtEnd === undefined ? {} : { unitsAtEnd: asFilm(zone.unitsAtEnd) }),
    })),
  };
}
