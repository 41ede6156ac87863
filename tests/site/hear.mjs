// Reads 32-bit samples from standard input; writes what the ear heard, as JSON.
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const [folder, rate] = process.argv.slice(2);
const at = (name) => pathToFileURL(`${folder}/${name}`).href;
const { ArcEar } = await import(at("arc_ear.js"));
const { shortRate } = await import(at("short_rate.js"));

const bytes = readFileSync(0);
const samples = new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
const ear = new ArcEar(Number(rate));
const heard = [];
const began = process.cpuUsage().user;
for (let from = 0; from < samples.length; from += 1200) {
  for (const each of ear.feed(samples.subarray(from, from + 1200))) {
    heard.push(each.kind === "off" ? { ...each, shorts: shortRate(ear.arc), kept: ear.arc.length } : each);
  }
}
const seconds = (process.cpuUsage().user - began) / 1e6;
console.log(JSON.stringify({ heard, load: seconds / (samples.length / Number(rate)) }));
