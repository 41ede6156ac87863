// Starts Pyodide in one of the ways compared and reports when it could answer.
// index: its folder; stdlib: its archive; archives: what goes on sys.path; imports: modules wanted.
addEventListener("message", async ({ data }) => {
  const started = performance.now();
  try {
    const { index, stdlib, archives, imports, info } = data;
    const files = await Promise.all(archives.map(async (url) => {
      const bytes = new Uint8Array(await (await fetch(url)).arrayBuffer());
      return [`/lib/${url.split("/").pop()}`, bytes];
    }));
    const { loadPyodide } = await import(`${index}pyodide.mjs`);
    const python = await loadPyodide({
      indexURL: index,
      stdLibURL: stdlib,
      lockFileContents: { info, packages: {} },
      packageBaseUrl: index,
      env: { HOME: "/", PYTHONHASHSEED: "0", PYTHONPATH: files.map(([path]) => path).join(":") },
      fsInit: async (FS) => files.forEach(([path, bytes]) => FS.writeFile(path, bytes)),
    });
    const loaded = performance.now();
    for (const name of imports) python.pyimport(name);
    postMessage({ loaded: loaded - started, ready: performance.now() - started });
  } catch (error) {
    postMessage({ error: String(error) });
  }
});
