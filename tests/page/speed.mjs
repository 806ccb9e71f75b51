// Times of the application in the browser, as docs/speed.md tells them. Usage: node tests/page/speed.mjs build/web/frameopt.html [runs]
// Needs what tests/page/check.sh installs, and chromium.
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

const [file, runs] = [pathToFileURL(process.argv[2]).href, Number(process.argv[3] ?? 5)];
const median = list => [...list].sort((a, b) => a - b)[list.length >> 1];
const share90 = list => [...list].sort((a, b) => a - b)[Math.floor(list.length * 0.9)];
const times = { usable: [], processor: [], again: [], drag: [], dragWork: [], keys: [], weight: [], weightWork: [], answer: [], answerWork: [] };

async function started() {
  const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"],
    defaultViewport: { width: 1280, height: 850 }, protocolTimeout: 600000 });
  const page = await browser.newPage();
  await page.goto(file, { waitUntil: "domcontentloaded" });
  return { browser, page };
}

// Processor time of the page's main thread so far, ms.
async function worked(session) {
  return 1000 * (await session.send("Performance.getMetrics")).metrics.find(one => one.name === "TaskDuration").value;
}

// From an event of the pointer or a key to after the next frame was painted, ms.
const record = () => {
  globalThis.painted = [];
  for (const name of ["pointermove", "keydown"]) addEventListener(name, event => {
    if (name === "pointermove" && event.buttons === 0) return;
    requestAnimationFrame(() => { const after = new MessageChannel(); after.port1.onmessage = () => painted.push(performance.now() - event.timeStamp); after.port2.postMessage(0); });
  }, true);
};
const go = async (page, screen) => {
  await page.evaluate(name => [...document.querySelectorAll(".steps button")].find(one => one.innerText.startsWith(name)).click(), screen);
};

for (let run = 0; run < runs; run++) {
  const { browser, page } = await started();
  await page.waitForSelector(".card");
  times.usable.push(await page.evaluate(() => performance.now()));
  const renderer = await (browser.target()).createCDPSession();
  times.processor.push(1000 * Math.max(...(await renderer.send("SystemInfo.getProcessInfo")).processInfo.filter(one => one.type === "renderer").map(one => one.cpuTime)));
  await page.click(".card");
  await page.waitForSelector(".field");
  await go(page, "Holes");
  const grip = await page.waitForSelector(".grip");
  await page.evaluate(record);
  const box = await grip.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const session = await page.createCDPSession();
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const before = await worked(session);
  for (let step = 1; step <= 60; step++) {
    await page.mouse.move(x + 12 * Math.sin(step / 5), y + 6 * Math.cos(step / 7));
    await new Promise(done => setTimeout(done, 40));
  }
  times.dragWork.push((await worked(session) - before) / 60);
  await page.mouse.up();
  times.drag.push(...(await page.evaluate(() => painted.splice(0))).slice(10));
  await grip.evaluate(one => one.closest(".handle").focus());
  for (let step = 0; step < 20; step++) { await page.keyboard.press(step % 2 ? "ArrowLeft" : "ArrowRight"); await new Promise(done => setTimeout(done, 60)); }
  times.keys.push(...(await page.evaluate(() => painted.splice(0))).slice(2));
  // A weight is let go, which orders the front again; then that is undone, which is a change like any other: the whole search, its front drawn.
  await go(page, "Choices");
  await page.waitForSelector(".front");
  const drawn = async (act, list, work, value) => {
    const idle = await worked(session);
    list.push(await page.evaluate((act, value) => new Promise(done => {
      const slider = document.querySelector("#w-1"), began = performance.now();
      let last = null;
      // Drawn when nothing searches and nothing was drawn again for 100 ms; the last drawing counts.
      const watch = new MutationObserver(() => {
        clearTimeout(last);
        if (document.querySelector("progress") || !document.querySelector(".front")) return;
        requestAnimationFrame(() => { const painted = performance.now(); last = setTimeout(() => { watch.disconnect(); done(painted - began); }, 100); });
      });
      watch.observe(document.querySelector("main"), { subtree: true, childList: true, characterData: true, attributes: true });
      if (act === "undo") document.querySelectorAll(".tools button")[0].click();
      else { slider.value = value; slider.dispatchEvent(new Event("input", { bubbles: true })); slider.dispatchEvent(new Event("change", { bubbles: true })); }
    }), act, value));
    work.push(await worked(session) - idle);
  };
  for (let change = 0; change < 4; change++) {
    await drawn("weight", times.weight, times.weightWork, 2 + change);
    await drawn("undo", times.answer, times.answerWork);
  }
  await browser.close();
}

// Long use: a thousand drags and two hundred changes of the study.
const { browser, page } = await started();
await page.waitForSelector(".card");
const memory = async () => {
  const session = await page.createCDPSession();
  await session.send("HeapProfiler.collectGarbage");
  const js = (await page.metrics()).JSHeapUsedSize, wasm = await page.evaluate(() => Blazor.runtime.Module.HEAPU8.length);
  return `${(js / 1e6).toFixed(0)} MB of JavaScript, ${(wasm / 1e6).toFixed(0)} MB of WebAssembly`;
};
console.log(`memory at the start: ${await memory()}`);
await page.click(".card");
await page.waitForSelector(".field");
for (let round = 0; round < 20; round++) {
  await go(page, "Holes");
  const grip = await page.waitForSelector(".grip");
  const box = await grip.boundingBox();
  await page.mouse.move(box.x + 15, box.y + 9);
  await page.mouse.down();
  for (let step = 0; step < 50; step++) await page.mouse.move(box.x + 15 + 12 * Math.sin(step / 5), box.y + 9 + 6 * Math.cos(step / 7));
  await page.mouse.up();
  await go(page, "Machine");
  for (let change = 0; change < 10; change++) {
    await page.evaluate(text => {
      const input = document.querySelector("#f-machine-propeller-diameter");
      input.value = text;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    }, `1.${20 + (round + change) % 10} m`);
    await new Promise(done => setTimeout(done, 20));
  }
  await go(page, "Choices");
  await page.waitForFunction(() => document.querySelector(".front") && !document.querySelector("progress"), { timeout: 60000 });
  if (round === 0 || round === 9) console.log(`after ${50 * (round + 1)} moves of a drag and ${10 * (round + 1)} changes: ${await memory()}`);
}
console.log(`after 1000 moves and 200 changes, each with its search: ${await memory()}`);
await browser.close();

const row = (what, list) => console.log(`| ${what} | ${median(list).toFixed(0)} ms | ${share90(list).toFixed(0)} ms |`);
console.log("| | median | nine of ten within |\n|---|---|---|");
row("from opening the file to a page that can be used", times.usable);
row("of that, processor time of the page", times.processor);
row("from a move of the pointer to the painted phases", times.drag);
row("processor time of that", times.dragWork);
row("the same by an arrow key, which also keeps the design", times.keys);
row("from letting a weight go to the front in its order", times.weight);
row("processor time of that", times.weightWork);
row("from any other change of the study to the answer of the whole search", times.answer);
row("processor time of that", times.answerWork);
