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

  function decoded(text) {
    if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
    const letters = atob(text), bytes = new Uint8Array(letters.length);
    for (let i = 0; i < letters.length; i++) bytes[i] = letters.charCodeAt(i);
    return bytes;
  }

  function unwrap(file) {
    packed.bytes[file] = decoded(packed.blocks[file].textContent);
    packed.blocks[file].remove();
    delete packed.blocks[file];
  }

  // What the page never asks for the worker needs all the same.
  packed.unwrapRest = () => Object.keys(packed.blocks).forEach(unwrap);

  function unpack(url) {
    unwrap(name(url));
    const stream = new Blob([packed.bytes[name(url)]]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Response(stream, { headers: { "Content-Type": url.endsWith(".wasm") ? "application/wasm" : "application/octet-stream" } });
  }

  Blazor.start({
    loadBootResource: (type, file, url) => type === "dotnetjs" ? packed.modules[name(url)]
      : packed.blocks[name(url)] ? Promise.resolve(url).then(unpack) : undefined,
  });
  if ("serviceWorker" in navigator && location.protocol.startsWith("http") && !packed.modules["dotnet.js"])
    navigator.serviceWorker.register("service-worker.js").catch(() => { /* Without it the page needs its host again next time. */ });
})();
