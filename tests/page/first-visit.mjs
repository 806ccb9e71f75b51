// The way of somebody who opens the file for the first time: own machine typed in, a hole dragged, the A4 sheet printed. Prints the time of each
// step and writes pictures. Usage: node tests/page/first-visit.mjs build/web/frameopt.html FOLDER. Needs what tests/page/check.sh installs.
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

const [file, folder] = [pathToFileURL(process.argv[2]).href, process.argv[3]];
const own = { title: "My first frame", "machine-masses-0-mass": "82,5", "machine-masses-2-mass": "27", "machine-propeller-diameter": "1,3",
  "machine-propeller-bench-rpm": "2400", "machine-propeller-bench-thrust": "66", "machine-propeller-bench-torque": "68", "wing-area": "26", "wing-span": "11,6" };
for (const width of [390, 1280]) {
  const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"],
    defaultViewport: { width, height: 850, hasTouch: width < 500 }, protocolTimeout: 600000 });
  const page = await browser.newPage();
  await page.setOfflineMode(true);
  page.on("pageerror", problem => { console.log(`ERROR ${problem.message}`); process.exitCode = 1; });
  const began = Date.now();
  const step = async name => {
    console.log(`${width} px: ${((Date.now() - began) / 1000).toFixed(1)} s ${name}`);
    await page.screenshot({ path: `${folder}/${width}-${name.replaceAll(" ", "-")}.png` });
  };
  const go = screen => page.evaluate(name => [...document.querySelectorAll(".steps button")].find(one => one.innerText.startsWith(name)).click(), screen);
  await page.goto(file, { waitUntil: "domcontentloaded" });
  await page.waitForSelector(".card");
  await step("opened");
  await page.click(".card");
  for (const [box, text] of Object.entries(own)) {
    await page.waitForSelector(`#f-${box}`);
    await page.click(`#f-${box}`, { count: 3 });
    await page.type(`#f-${box}`, text);
    await page.keyboard.press("Tab");
  }
  await page.evaluate(() => document.querySelectorAll(".turns button")[0].click());
  await step("own machine typed in");
  console.log([...await page.evaluate(() => [...document.querySelectorAll(".field.wrong, .field.doubtful")].map(one => one.innerText))].join("\n") || "nothing to correct");
  await go("Holes");
  const grip = await page.waitForSelector(".grip");
  const box = await grip.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  if (width < 500) {
    const finger = await page.touchscreen.touchStart(x, y);
    for (let moved = 1; moved <= 8; moved++) await finger.move(x - moved, y);
    await finger.end();
  } else {
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 9, y, { steps: 8 });
    await page.mouse.up();
  }
  console.log(await grip.evaluate(one => one.closest(".handle").getAttribute("aria-valuetext")));
  await step("hole dragged");
  await go("Take away");
  await page.waitForSelector(".sheet");
  await page.pdf({ path: `${folder}/${width}-sheet.pdf`, preferCSSPageSize: true });
  await step("printed");
  await browser.close();
}
