// Runs one Python function inside Pyodide under Node. Its argument names a file of JSON:
//   index, stdlib, info: Pyodide's folder, its standard library's archive, a file with its info
//   mounts: {folder inside: folder of this machine}; path: what goes on sys.path
//   module, argument, result: <module>.main(argument) -> text, which is written to the file result
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

async function run(task) {
  const { loadPyodide } = await import(pathToFileURL(`${task.index}/pyodide.mjs`).href);
  const { info } = JSON.parse(readFileSync(task.info, "utf8"));
  const pyodide = await loadPyodide({
    indexURL: `${task.index}/`,
    stdLibURL: task.stdlib,
    lockFileContents: { info, packages: {} },
    packageBaseUrl: `${task.index}/`,
    // A fixed seed: sets must come out in the same order in every build.
    env: {
      HOME: "/",
      PYTHONDONTWRITEBYTECODE: "1",
      PYTHONHASHSEED: "0",
      PYTHONPATH: task.path.join(":"),
    },
    fsInit: async (FS) => {
      for (const [inside, root] of Object.entries(task.mounts)) {
        FS.mkdirTree(inside);
        FS.mount(FS.filesystems.NODEFS, { root }, inside);
      }
    },
  });
  writeFileSync(task.result, pyodide.pyimport(task.module).main(task.argument));
}

try {
  await run(JSON.parse(readFileSync(process.argv[2], "utf8")));
  process.exit(0); // Pyodide keeps timers open
} catch (error) {
  // Python's trace and no more: left to itself, Node would print a megabyte of packed source.
  console.error(error?.message ?? String(error));
  process.exit(1);
}
