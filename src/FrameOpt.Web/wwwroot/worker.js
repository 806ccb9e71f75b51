// Long work in a worker of its own: the same program, started a second time, so that the page stays usable meanwhile.
async function unpacked(bytes, url) {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream, { headers: { "Content-Type": url.endsWith(".wasm") ? "application/wasm" : "application/octet-stream" } });
}

// A listener, not onmessage: the runtime takes a worker with onmessage for one of its own threads and waits for ever.
self.addEventListener("message", async ({ data: { base, texts, bytes, job, task } }) => {
  try {
    const modules = {};
    // From a disk a worker may only load modules whose address it made itself.
    for (const [name, text] of Object.entries(texts))
      modules[name] = URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
    const file = url => url.split("/").pop();
    const { dotnet } = await import(modules["dotnet.js"] ?? new URL("_framework/dotnet.js", base).href);
    const runtime = await dotnet.withResourceLoader((type, name, url) =>
      type === "dotnetjs" ? modules[file(url)] ?? url : bytes[file(url)] ? unpacked(bytes[file(url)], url) : url).create();
    for (const late of runtime.getConfig().resources.lazyAssembly ?? []) await runtime.INTERNAL.loadLazyAssembly(late.virtualPath);
    runtime.setModuleImports("worker", { progress: (stage, done, total) => self.postMessage({ stage, done, total }) });
    const { RunJob: run, FormJob: form } = (await runtime.getAssemblyExports("FrameOpt.Web.dll")).FrameOpt.Web.Work;
    const files = () => Object.fromEntries(run.Names().map(name => [name, run.File(name)]));
    self.postMessage({ answer: (run[task] ?? form[task])(job) });
    run.WriteFiles(job);
    self.postMessage({ done: true, files: files() });
  } catch (problem) {
    self.postMessage({ failure: String(problem?.message ?? problem) });
  }
});
