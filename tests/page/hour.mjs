// An hour of use by the clock: memory, errors and whether the study is still as it was left. Usage: node tests/page/hour.mjs build/web/frameopt.html [minutes]
// Needs what tests/page/check.sh installs, and chromium. Takes a tenth of one processor.
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

const [file, minutes] = [pathToFileURL(process.argv[2]).href, Number(process.argv[3] ?? 60)];
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"],
  defaultViewport: { width: 1280, height: 850 }, protocolTimeout: 600000 });
const page = await browser.newPage();
const errors = [];
page.on("pageerror", error => errors.push(error.message));
page.on("console", line => { if (line.type() === "error") errors.push(line.text()); });
await page.goto(file, { waitUntil: "domcontentloaded" });
await page.waitForSelector(".card");
const until = async holds => (await page.waitForFunction(holds, { timeout: 300000 })).dispose();
const pause = seconds => new Promise(done => setTimeout(done, 1000 * seconds));
const go = screen => page.evaluate(name =>
  [...document.querySelectorAll(".steps button")].find(one => one.innerText.startsWith(name)).click(), screen);
const type = (box, text) => page.evaluate((box, text) => {
  const input = document.querySelector(box);
  input.value = text;
  input.dispatchEvent(new Event("change", { bubbles: true }));
}, box, text);
const told = async () => {
  const session = await page.createCDPSession();
  await session.send("HeapProfiler.collectGarbage");
  const js = (await page.metrics()).JSHeapUsedSize, wasm = await page.evaluate(() => Blazor.runtime.Module.HEAPU8.length);
  await session.detach();
  return `${(js / 1e6).toFixed(1)} MB of JavaScript, ${(wasm / 1e6).toFixed(0)} MB of WebAssembly, ${errors.length} errors`;
};
console.log(`start: ${await told()}`);
await page.click(".card");
await page.waitForSelector(".field");
let moves = 0, changes = 0, runs = 0;
for (let minute = 1; minute <= minutes; minute++) {
  const end = Date.now() + 60000;
  await go("Holes");
  // A handle that is kept would keep the whole screen in memory.
  const grip = await page.waitForSelector(".grip");
  const box = await grip.boundingBox();
  await grip.dispose();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  for (let step = 0; step < 40; step++, moves++) {
    await page.mouse.move(box.x + box.width / 2 + 12 * Math.sin(step / 5), box.y + box.height / 2 + 6 * Math.cos(step / 7));
    await pause(0.1);
  }
  await page.mouse.up();
  await go("Machine");
  for (let change = 0; change < 4; change++, changes++) {
    await type("#f-machine-propeller-diameter", `1.${20 + (minute + change) % 10} m`);
    await pause(2);
  }
  await go("Choices");
  await until(() => document.querySelector(".front") && !document.querySelector("progress"));
  await go("Scales");
  await until(() => document.querySelector("#scale-left"));
  await type("#scale-left", `${50 + minute % 7} kgf`);
  await type("#scale-right", "56 kgf");
  await pause(2);
  if (minute % 10 === 5) {
    await go("How sure");
    await until(() => document.querySelector("button.main"));
    await page.click("button.main");
    await until(() => document.querySelectorAll(".pictures figure").length > 0);
    runs++;
  }
  await go("Study file");
  const text = await page.$eval("#study-text", box => box.value);
  const typed = `1.${20 + (minute + 3) % 10} m`;
  if (!text.includes(typed)) errors.push(`minute ${minute}: ${typed} is not in the study`);
  if (minute % 10 === 0 || minute === 1) console.log(`after ${minute} minutes, ${moves} moves, ${changes} changes, ${runs} whole runs: ${await told()}`);
  while (Date.now() < end) await pause(1);
}
console.log(`after ${minutes} minutes, ${moves} moves, ${changes} changes, ${runs} whole runs: ${await told()}`);
for (const error of new Set(errors)) console.log(error);
await browser.close();
process.exit(errors.length > 0 ? 1 : 0);
