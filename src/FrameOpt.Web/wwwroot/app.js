// What the application asks of the browser. Nothing here computes or sends anything.
globalThis.frameopt = (() => {
  let shell = null, worker = null, stopped = null, results = {};
  const packed = { modules: {}, texts: {}, blocks: {}, bytes: {}, unwrapRest: () => {} };

  function read(name) { try { return localStorage.getItem(name); } catch { return null; } }

  function write(name, text) {
    try {
      if (text === null) localStorage.removeItem(name); else localStorage.setItem(name, text);
      return true;
    } catch { return false; }
  }

  function saveBlob(name, parts, type) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob(parts, { type }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }

  const types = { html: "text/html", csv: "text/csv", json: "application/json", zip: "application/zip",
    svg: "image/svg+xml", xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" };
  const typeOf = name => types[name.split(".").pop()] ?? "application/yaml";
  const save = (name, text) => saveBlob(name, [text], typeOf(name));
  const saveResult = name => saveBlob(name, [results[name]], typeOf(name));

  // A workbook is no text: its bytes as base64.
  function letters(file) {
    if (!file.name.toLowerCase().endsWith(".xlsx")) return file.text();
    return new Promise((done, fail) => {
      const reader = new FileReader();
      reader.onload = () => done(reader.result.split(",")[1] ?? "");
      reader.onerror = () => fail(reader.error);
      reader.readAsDataURL(file);
    });
  }

  async function open(files) {
    const texts = await Promise.all([...files].map(async file => [file.name, await letters(file)]));
    await shell.invokeMethodAsync("Opened", texts.map(one => one[0]), texts.map(one => one[1]));
  }

  function pick() {
    const box = document.createElement("input");
    box.type = "file";
    box.multiple = true;
    box.accept = ".yaml,.yml,.csv,.txt,.xlsx";
    box.onchange = () => open(box.files);
    box.click();
  }

  function listen(reference) {
    shell = reference;
    addEventListener("dragover", event => event.preventDefault());
    addEventListener("drop", event => { event.preventDefault(); if (event.dataTransfer.files.length) open(event.dataTransfer.files); });
    addEventListener("keydown", event => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || /^(INPUT|TEXTAREA)$/.test(event.target.tagName)) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      shell.invokeMethodAsync(key === "y" || event.shiftKey ? "Redo" : "Undo");
    });
    // An arrow key on a handle moves the handle, not the page.
    addEventListener("keydown", event => {
      if (event.target.closest?.(".handle") && event.key.startsWith("Arrow")) event.preventDefault();
    });
    if (/^#opened\/[^/]+$/.test(location.hash)) openNamed(location.hash.slice(1));
  }

  // The study that `frameopt open` was started with: once, so that a reload keeps what was changed since.
  async function openNamed(address) {
    const answer = await fetch(address);
    const text = answer.ok ? await answer.text() : null;
    if (text === null || sessionStorage.getItem("frameopt:named") === text) return;
    sessionStorage.setItem("frameopt:named", text);
    await shell.invokeMethodAsync("Opened", [decodeURIComponent(address.split("/").pop())], [text]);
  }

  // Two numbers for a move, where an event of the framework would carry thirty.
  function follow(handle, pointer, x, y, reference) {
    try { handle.setPointerCapture(pointer); } catch { /* The pointer is gone already. */ }
    const picture = handle.ownerSVGElement, scale = picture.viewBox.baseVal.width / picture.getBoundingClientRect().width;
    const over = new AbortController();
    handle.addEventListener("pointermove", event => {
      if (event.pointerId === pointer) reference.invokeMethod("Moved", (event.clientX - x) * scale, (event.clientY - y) * scale);
    }, over);
    for (const end of ["pointerup", "pointercancel"]) handle.addEventListener(end, () => over.abort(), over);
  }

  function placeIn(picture, x, y) {
    const box = picture.getBoundingClientRect(), view = picture.viewBox.baseVal;
    return [(x - box.left) * view.width / box.width, (y - box.top) * view.height / box.height];
  }

  function started(task, job) {
    const one = new Worker(packed.modules["worker.js"] ?? "worker.js");
    packed.unwrapRest();
    one.postMessage({ base: document.baseURI, texts: packed.texts, bytes: packed.bytes, job, task });
    return one;
  }

  const notStarted = event => new Error(event.message || "The worker could not start.");

  function run(job, task, reference) {
    return new Promise((done, fail) => {
      const end = () => { worker?.terminate(); worker = stopped = null; };
      stopped = () => { end(); done(null); };
      worker = started(task, job);
      worker.onerror = event => { end(); fail(notStarted(event)); };
      worker.onmessage = ({ data }) => {
        if (data.stage) { reference.invokeMethodAsync("Progress", data.stage, data.done, data.total); return; }
        if (data.files) results = data.files;
        if ("answer" in data) { reference.invokeMethodAsync("Answered", data.answer); return; }
        end();
        if (data.failure) fail(new Error(data.failure)); else done(Object.keys(results));
      };
    });
  }

  // A short task, whatever runs meanwhile: its answer, and the files that it made are saved.
  function ask(job, task) {
    return new Promise((done, fail) => {
      const one = started(task, job);
      let answer = "";
      one.onerror = event => { one.terminate(); fail(notStarted(event)); };
      one.onmessage = ({ data }) => {
        if ("answer" in data) answer = data.answer;
        if (data.stage || !data.done && !data.failure) return;
        one.terminate();
        if (data.failure) { fail(new Error(data.failure)); return; }
        for (const [name, bytes] of Object.entries(data.files)) saveBlob(name, [bytes], typeOf(name));
        done(answer);
      };
    });
  }

  // A timer would wait four milliseconds at least.
  function pause() {
    return new Promise(done => {
      const next = new MessageChannel();
      next.port1.onmessage = () => done();
      next.port2.postMessage(0);
    });
  }

  const stop = () => stopped?.();
  return { packed, pause, read, write, save, saveResult, pick, listen, follow, placeIn, run, ask, stop };
})();
