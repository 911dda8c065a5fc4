import type { CorePart } from '../../records/schemas/core.js';

/** How a fault or a warning calls a part: `parts[2] (block)`. */
export const partName = (part: CorePart, index: number): string => {
  const name = part.name ?? (part.shape === 'mesh' ? part.file : undefined);
  return name ? `parts[${index}] (${name})` : `parts[${index}]`;
};
