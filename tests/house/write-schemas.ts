import { mkdirSync, writeFileSync } from 'node:fs';
import { jsonSchemas } from '../../src/records/json-schemas/json-schemas.js';
import { sharedFile } from '../../src/records/shared/shared-data.js';

/* Maintainers' script, `npm run schemas`: writes the JSON Schemas of all records into shared/schemas. */

mkdirSync(sharedFile('schemas/'), { recursive: true });
for (const [name, text] of jsonSchemas()) writeFileSync(sharedFile(`schemas/${name}`), text);
