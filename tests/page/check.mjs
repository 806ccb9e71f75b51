// Accessibility of pages in light and dark, and that they fit a phone. Serious findings, and a page wider than the screen, fail.
import fs from "node:fs";
import { createRequire } from "node:module";
import puppeteer from "puppeteer-core";

const axe = fs.readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const isRoot = process.getuid?.() === 0;
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM, args: isRoot ? ["--no-sandbox"] : [], protocolTimeout: 300_000 });
let bad = 0;
for (const file of process.argv.slice(2)) {
  for (const scheme of ["light", "dark"]) {
    for (const width of [360, 1280]) {
      const page = await browser.newPage();
      await page.setViewport({ width, height: 900 });
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      await page.goto(`file://${file}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() => axe.run(document, { resultTypes: ["violations"] }));
      for (const { impact, id, help, nodes } of violations) console.log(`${impact}: ${id}: ${help}: ${nodes[0].html.slice(0, 200)}`);
      const serious = violations.filter(found => ["serious", "critical"].includes(found.impact)).length;
      console.log(`${file} ${scheme} ${width} px: ${violations.length} findings, ${serious} serious; ${wide} px wide`);
      bad += serious + (wide > width ? 1 : 0);
      await page.close();
    }
  }
}
await browser.close();
process.exit(bad > 0 ? 1 : 0);
