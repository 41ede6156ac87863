// Runs one Python function inside Pyodide under Node:
//   node pyodide_node.mjs '{"index", "stdlib", "mounts", "path", "module", "argument", "result"}'
// mounts: {folder inside: folder of this machine}; path: what goes on sys.path.
// The function is <module>.main(text) -> text; its answer is written to the file `result`.
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const task = JSON.parse(process.argv[2]);
const { loadPyodide } = await import(pathToFileURL(`${task.index}/pyodide.mjs`).href);
const { info } = JSON.parse(readFileSync(task.info, "utf8"));

const pyodide = await loadPyodide({
  indexURL: `${task.index}/`,
  stdLibURL: task.stdlib,
  lockFileContents: { info, packages: {} },
  packageBaseUrl: `${task.index}/`,
  // A fixed seed: sets must come out in the same order in every build.
  env: { PYTHONPATH: task.path.join(":"), PYTHONHASHSEED: "0", PYTHONDONTWRITEBYTECODE: "1", HOME: "/" },
  fsInit: async (FS) => {
    for (const [inside, root] of Object.entries(task.mounts)) {
      FS.mkdirTree(inside);
      FS.mount(FS.filesystems.NODEFS, { root }, inside);
    }
  },
});
const main = pyodide.pyimport(task.module).main;
writeFileSync(task.result, main(task.argument));
process.exit(0); // Pyodide keeps timers open
