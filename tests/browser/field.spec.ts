import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { type APIRequestContext, expect, type Page, test } from "@playwright/test";

test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

const set = `
installation: { date: 2020-04-01 }
`;

/** A job of its own, so that tests do not meet. */
const newJob = async (request: APIRequestContext, name: string, more = ""): Promise<string> =>
  jobOf(request, fileOf(name) + more);

const fileOf = (name: string): string => readFileSync(new URL(`jobs/${name}.yaml`, import.meta.url), "utf8");

const jobOf = async (request: APIRequestContext, text: string): Promise<string> => {
  const made = await request.post("/api/jobs", { data: { text } });
  expect(made.ok()).toBe(true);
  return (await made.json()).id;
};

const textOf = async (request: APIRequestContext, id: string): Promise<string> =>
  (await (await request.get(`/api/jobs/${id}`)).json()).text;
const entriesOf = async (request: APIRequestContext, id: string): Promise<readonly { readonly kind: string }[]> =>
  (await request.get(`/api/jobs/${id}/entries`)).json();

const open = async (page: Page, id: string, place: string) => {
  await page.goto(`/#/jobs/${id}/cards/${place}`);
  await expect(page.locator(".card-bar")).toBeVisible();
};
const box = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const tap = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
const onward = (page: Page) => page.locator(".card-bar button").click();
const waiting = (page: Page) => page.getByRole("region", { name: "To be sent" });

/** The page's own files are on the device. */
const carried = (page: Page) => page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);

/** A coloured picture as a phone's camera would hand it over. */
const photograph = async (page: Page, width: number, height: number) => {
  const jpeg = await page.evaluate(
    ([w, h]) => {
      const canvas = document.createElement("canvas");
      canvas.width = w;
      canvas.height = h;
      const pen = canvas.getContext("2d")!;
      for (let i = 0; i < 400; i++) {
        pen.fillStyle = `hsl(${i * 7} 60% 50%)`;
        pen.fillRect((i * 137) % w, (i * 211) % h, w / 10, h / 10);
      }
      return canvas.toDataURL("image/jpeg", 0.9).split(",")[1]!;
    },
    [width, height] as const,
  );
  return { name: "IMG_0001.jpg", mimeType: "image/jpeg", buffer: Buffer.from(jpeg, "base64") };
};

test("a torque round without a signal: typed, closed, opened again, sent once when the signal is back", async ({
  page,
  context,
  request,
}) => {
  const id = await newJob(request, "1-kept-tickets", set);
  await open(page, id, "torque");
  await carried(page);
  await context.setOffline(true);
  await tap(page, "Begin: This round");
  await box(page, "Which wrench").fill("click wrench");
  await onward(page);
  await expect(page.getByRole("heading", { level: 2 })).toHaveText("LA");
  await expect(page.locator(".progress")).toContainText("2 of 11");
  await box(page, "Torque found").fill("45");
  await expect(page.locator(".card")).toContainText("45 lb-ft = 61.01 N·m");
  await tap(page, "60° 1 flat");
  await tap(page, "solid");

  await page.locator('input[type="file"]').setInputFiles(await photograph(page, 40, 30));
  await expect(page.getByRole("img", { name: "anchor LA, photograph 1" })).toBeVisible();

  // the page is closed in the middle of it, without a signal
  await page.reload();
  await expect(page.getByRole("heading", { level: 2 })).toHaveText("LA");
  await expect(box(page, "Torque found")).toHaveValue("45");
  await expect(page.getByRole("button", { name: "60° 1 flat" })).toHaveAttribute("aria-pressed", "true");
  await onward(page);
  await tap(page, "full, 120 lb-ft");
  await box(page, "Stud above the plate").fill("1");
  await tap(page, "1/8");
  await page.locator(".progress").click();
  await tap(page, "Finish with 2 of 10 nuts");
  await expect(waiting(page)).toContainText("1 entry and 1 photograph wait on this device");
  await page.reload();
  await expect(waiting(page)).toContainText("1 entry and 1 photograph wait on this device");
  expect(await entriesOf(request, id)).toHaveLength(0);

  await context.setOffline(false);
  await expect(waiting(page)).toContainText("Nothing waits to be sent.");
  const text = await textOf(request, id);
  expect(text.match(/anchor: LA/g)).toHaveLength(1);
  expect(text).toMatch(/found: 45 lb-ft/);
  expect(text).toMatch(/turned: 60 deg/);
  expect(text).toMatch(/projection: 1 1\/8 in/);
  expect(text).toMatch(/wrench: click wrench/);
  expect(await entriesOf(request, id)).toHaveLength(1);
  expect(await (await request.get(`/api/jobs/${id}/attachments`)).json()).toMatchObject([{ note: "anchor LA" }]);

  // the same day it goes on, and joins the same visit
  await page.getByRole("link", { name: /LB/ }).click();
  await box(page, "Torque found").fill("100 N·m");
  await page.locator(".progress").click();
  await tap(page, "Finish with 3 of 10 nuts");
  await expect(waiting(page)).toContainText("Nothing waits to be sent.");
  const more = await textOf(request, id);
  expect(more.match(/wrench: click wrench/g)).toHaveLength(1);
  expect(more.match(/anchor: LA/g)).toHaveLength(1);
  expect(more).toContain("found: 100 N·m");
});

test("a hollow sound takes the lift out of service at once, also without a signal", async ({
  page,
  context,
  request,
}) => {
  const id = await newJob(request, "1-kept-tickets", set);
  await open(page, id, "torque/LC");
  await carried(page);
  await context.setOffline(true);
  await tap(page, "hollow");
  await expect(page.getByRole("alert")).toContainText("Out of service today");
  await expect(page.locator(".card-says")).toContainText("LC sounds hollow");
  await tap(page, "solid");
  await expect(page.locator(".card-stop")).toHaveCount(0);
});

test.describe("with requests in hand", () => {
  test.use({ serviceWorkers: "block" });

  test("a reply that is lost: it is sent again and taken once", async ({ page, request }) => {
    const id = await newJob(request, "2-thin-slab");
    let lost = 0;
    await page.route("**/entries", async (route) => {
      if (lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      await route.abort();
    });
    await open(page, id, "drill");
    const before = (await textOf(request, id)).match(/thickness:/g)!.length;
    await page.goto(`/#/jobs/${id}/cards/drill/hole-1`);
    await tap(page, "through, underside hooked");
    await box(page, "Depth").fill("4");
    await onward(page);
    await expect(waiting(page)).toContainText("1 entry waits on this device");
    expect(lost).toBe(1);
    await tap(page, "Send now");
    await expect(waiting(page)).toContainText("Nothing waits to be sent.");
    expect(await entriesOf(request, id)).toHaveLength(1);
    expect((await textOf(request, id)).match(/thickness:/g)).toHaveLength(before + 1);
  });

  test("what is refused is kept with its reason, and can be given up", async ({ page, request }) => {
    const day = new Date();
    const today = new Date(day.getTime() - day.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
    const id = await newJob(request, "1-kept-tickets", `\ninstallation: { date: ${today} }\n`);
    await open(page, id, "torque/LA");
    await box(page, "Torque found").fill("90");
    await expect(page.getByRole("alert")).toContainText("is not after the day the lift was set");
    await page.locator(".progress").click();
    await tap(page, "Finish with 1 of 10 nuts");
    await expect(waiting(page)).toContainText(/Refused: Round of .*: LA\./);
    await expect(waiting(page)).toContainText("is not after the day the lift was set");
    await page.reload();
    await expect(waiting(page)).toContainText("Refused");
    await expect(waiting(page).getByRole("link", { name: "Correct it" })).toBeVisible();
    await tap(page, "Give it up");
    await expect(waiting(page)).toContainText("Nothing waits to be sent.");
    expect(await entriesOf(request, id)).toHaveLength(0);
  });

  test("a drilled hole changes the outcome; corrected, it stays one reading", async ({ page, request }) => {
    const id = await jobOf(request, fileOf("1-kept-tickets").replace(/ {2}readings:[\s\S]*?(?= {2}ground:)/, ""));
    await page.goto(`/#/jobs/${id}`);
    await expect(page.locator(".outcome")).toHaveAttribute("data-state", "settled");
    const before = await page.locator(".outcome-sentence").textContent();
    await open(page, id, "drill/hole-1");
    await box(page, "Depth").fill("2 1/2");
    await onward(page);
    await expect(page.getByText("Say how it ended: without it the depth tells nothing.")).toBeVisible();
    await tap(page, "dropped before the mark");
    await tap(page, "clay");
    await onward(page);
    await expect(waiting(page)).toContainText("Nothing waits to be sent.");
    await expect(page.getByRole("heading", { level: 2 })).toHaveText("Hole 2");
    await page.locator(".card-bar a").click();
    await box(page, "Depth").fill("3 1/8");
    await tap(page, /^Keep, on to/);
    await expect(waiting(page)).toContainText("Nothing waits to be sent.");
    await expect.poll(() => textOf(request, id)).toContain("3 1/8 in");
    const text = await textOf(request, id);
    expect(text).not.toContain("2 1/2 in");
    expect(text).toMatch(/end: dropped/);
    await page.goto(`/#/jobs/${id}`);
    await expect(page.locator(".outcome")).toHaveAttribute("data-state", "settled");
    await expect(page.locator(".outcome-sentence")).not.toHaveText(before!);
  });

  test("steel under the bit ends the drilling", async ({ page, request }) => {
    const id = await newJob(request, "2-thin-slab");
    await open(page, id, "drill/hole-1");
    await tap(page, "sparks: steel");
    await expect(page.getByRole("alert")).toContainText("The bit met steel");
    await page.goto(`/#/jobs/${id}/cards/drill/hole-2`);
    await expect(page.getByRole("alert")).toContainText("No further hole");
    await expect(box(page, "Depth")).toHaveCount(0);
  });

  test("under a stop no hole is offered", async ({ page, request }) => {
    const id = await newJob(request, "3-tendons");
    for (const card of ["drill", "installation"]) {
      await open(page, id, card);
      await expect(page.getByRole("alert")).toContainText("No hole is drilled");
      await expect(page.locator(".card-figures")).toHaveCount(0);
      await expect(page.locator(".card-bar button")).toHaveCount(0);
    }
  });

  test("a photograph is made small, named after its place, sent, and shown with the papers", async ({
    page,
    request,
  }) => {
    const id = await newJob(request, "1-kept-tickets", set);
    await open(page, id, "torque/RD");
    await page.locator('input[type="file"]').setInputFiles(await photograph(page, 3000, 2000));
    await expect(page.getByRole("img", { name: "anchor RD, photograph 1" })).toBeVisible();
    await expect(waiting(page)).toContainText("Nothing waits to be sent.");
    const [kept] = await (await request.get(`/api/jobs/${id}/attachments`)).json();
    expect(kept).toMatchObject({ note: "anchor RD", mime: "image/jpeg" });
    const size = await page.evaluate(async (hash) => {
      const picture = await createImageBitmap(await (await fetch(`/api/attachments/${hash}`)).blob());
      return [picture.width, picture.height];
    }, kept.hash);
    expect(size).toEqual([1600, 1067]);
    await page.goto(`/#/jobs/${id}/papers`);
    await page.getByText("Photographs of the floor").click();
    await expect(page.getByRole("img", { name: "anchor RD" })).toBeVisible();
  });

  for (const colorScheme of ["light", "dark"] as const)
    test(`cards at 360 px, ${colorScheme}: no axe violation, nothing runs out, big targets`, async ({
      page,
      request,
    }) => {
      await page.emulateMedia({ colorScheme });
      const thin = await newJob(request, "2-thin-slab");
      const kept = await newJob(request, "1-kept-tickets", set);
      const places = [
        [thin, "drill"],
        [thin, "drill/hole-1"],
        [thin, "pour/truck-1"],
        [kept, "installation/RA"],
        [kept, "torque/LA"],
        [kept, "torque/end"],
      ] as const;
      for (const [id, place] of places) {
        await open(page, id, place);
        for (const button of await page.getByRole("button", { name: /^(hollow|a tendon|sparks: steel)$/ }).all())
          await button.click();
        await page.waitForTimeout(600);
        await page.evaluate(() => {
          for (const more of document.querySelectorAll("details")) more.open = true;
        });
        await page.waitForTimeout(600);
        const found = await new AxeBuilder({ page }).analyze();
        expect(found.violations, place).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth), place).toBeLessThanOrEqual(360);
        const small = await page
          .locator(".card button:visible, .card a:visible, .card input:visible, .card summary:visible")
          .evaluateAll((all) =>
            all
              .filter((each) => !each.matches('[type="file"]') && each.getBoundingClientRect().height < 48)
              .map((each) => each.outerHTML.slice(0, 80)),
          );
        expect(small, place).toEqual([]);
      }
    });
});
