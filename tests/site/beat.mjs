// Reads [travel, length, steps] from the command line; writes the step and the beat, as JSON.
import { pathToFileURL } from "node:url";

const [folder, asked] = process.argv.slice(2);
const { beatOf, stepFor } = await import(pathToFileURL(`${folder}/pace.js`).href);
const [travel, length, steps] = JSON.parse(asked);
const step = stepFor(travel, steps);
console.log(JSON.stringify({ step, ...beatOf(travel, length, step) }));
