// Starts the application: from the folder it was published to, or from the blocks that the one file holds.
(() => {
  const name = url => url.split("/").pop();
  const packed = frameopt.packed;
  for (const block of document.querySelectorAll("script[data-file]")) {
    const file = block.dataset.file;
    if (file.endsWith(".js")) {
      packed.texts[file] = block.textContent;
      packed.modules[file] = URL.createObjectURL(new Blob([block.textContent], { type: "text/javascript" }));
    } else {
      packed.blocks[file] = block;
    }
  }

  function unpack(url) {
    const block = packed.blocks[name(url)];
    const bytes = packed.bytes[name(url)] = Uint8Array.from(atob(block.textContent), letter => letter.charCodeAt(0));
    block.remove();
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Response(stream, { headers: { "Content-Type": url.endsWith(".wasm") ? "application/wasm" : "application/octet-stream" } });
  }

  Blazor.start({
    loadBootResource: (type, file, url) => type === "dotnetjs" ? packed.modules[name(url)]
      : packed.blocks[name(url)] ? Promise.resolve(url).then(unpack) : undefined,
  });
  if ("serviceWorker" in navigator && location.protocol.startsWith("http") && !packed.modules["dotnet.js"])
    navigator.serviceWorker.register("service-worker.js").catch(() => { /* Without it the page needs its host again next time. */ });
})();
