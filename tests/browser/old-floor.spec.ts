import { expect, test } from "@playwright/test";
import { unfold, writeByMouse } from "./hand/by-mouse.ts";
import { strength, tendons } from "./hand/garage.ts";
import { field, jobText, kept, newJob, openJob, openPart, outcomeIs, part, settled, textOf } from "./hand/page.ts";

const open = jobText("1-kept-tickets")
  .replace("postTension: none-shown", "postTension: unknown")
  .replace(/ {2}strength:\n(?: {4}.*\n)+/, "  strength: {}\n");

test("an old floor is held for what nobody knows, in the order of cost, and accepted once it is found out", async ({
  page,
}) => {
  const id = await newJob(page.request, open);
  await openJob(page, id, "floor");
  await outcomeIs(page, "Hold");
  await expect(page.locator(".outcome-next")).toContainText("post-tensioned");
  await writeByMouse(page, part(page, "floor"), tendons);
  await outcomeIs(page, "Hold");
  await expect(page.locator(".outcome-next")).toContainText("strength");
  await writeByMouse(page, part(page, "floor"), strength);
  await outcomeIs(page, "Accept");
  await kept(page);
  expect(await textOf(page.request, id)).toContain("4380 psi");

  // a thinner reading turns it at once, and a step back turns it again
  const reading = field(page, "floor.readings[3].thickness");
  await reading.fill("3 1/2 in");
  await expect(page.getByText("3 1/2 in = 88.9 mm").first()).toBeVisible();
  await expect(page.locator(".outcome[data-state=settled] .outcome-word")).not.toHaveText("Accept");
  await page.getByRole("button", { name: "Undo" }).click();
  await outcomeIs(page, "Accept");
});

test("what cannot be read is told at its field, the answer before stays, and an unknown is no mistake", async ({
  page,
}) => {
  const id = await newJob(page.request, jobText("1-kept-tickets"));
  await openJob(page, id, "floor");
  await unfold(part(page, "floor"));
  const before = await page.locator(".outcome-sentence").textContent();
  const reading = field(page, "floor.readings[0].thickness");
  await reading.fill("six");
  await expect(reading).toHaveAttribute("aria-invalid", "true");
  await expect(reading).toHaveAccessibleDescription(/"six" is not a length/);
  await expect(page.locator(".outcome")).toHaveAttribute("data-state", "behind");
  await expect(page.locator(".outcome-sentence")).toHaveText(before ?? "");
  await reading.fill("6.1 in");
  await settled(page);
  const ordered = field(page, "floor.strength.specified");
  await ordered.fill("4000");
  await expect(ordered).toHaveAccessibleDescription(/has no unit/);
  await ordered.fill("unknown");
  await settled(page);
  await expect(ordered).toHaveAttribute("aria-invalid", "false");
  await expect(ordered).toHaveAttribute("placeholder", "not known");

  // the whole job by hand: every mistake by its line
  await openPart(page, "papers");
  await part(page, "papers").getByText("The job as a file").click();
  const file = page.getByLabel(/The whole job as a file/);
  const written = await file.inputValue();
  await file.fill(written.replace("rated: 10000 lb", "rated: heavy").replace("spacing: 126 in", "spacing: 126"));
  const mistakes = part(page, "papers").locator(".mistakes li");
  await expect(mistakes).toHaveCount(2);
  await expect(mistakes.first()).toContainText(/line \d+/);
  await file.fill(written);
  await settled(page);

  // shown in other units, the file stays as it was written
  await page.getByLabel("SI", { exact: true }).check();
  await settled(page);
  await openPart(page, "answer");
  await expect(part(page, "answer").getByRole("region", { name: "The maker's page" })).toContainText("mm");
  expect(await file.inputValue()).toBe(written);
});

test("each ratio unfolds to formula, inputs and clause; nothing shown is no number, nothing comes from elsewhere", async ({
  page,
  baseURL,
}) => {
  const elsewhere: string[] = [];
  const errors: string[] = [];
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("request", (request) => {
    if (!request.url().startsWith(baseURL!) && !/^(data|blob):/.test(request.url())) elsewhere.push(request.url());
  });
  const ids = [];
  for (const name of ["1-kept-tickets", "2-thin-slab", "3-tendons"])
    ids.push(await newJob(page.request, jobText(name)));
  await openJob(page, ids[0]!, "answer");
  const answer = part(page, "answer");
  await expect(answer.locator(".check-group").first()).toBeVisible();
  await unfold(answer.locator(".check-group").first(), 12);
  await expect(answer.locator(".clause", { hasText: /ACI \d+/ }).first()).toBeVisible();
  await expect(answer.locator(".formula", { hasText: "=" }).first()).toBeVisible();
  for (const id of ids) {
    await openJob(page, id, "answer");
    expect(await page.locator("main").textContent()).not.toMatch(/\bNaN\b|undefined|Infinity|\[object/);
  }
  // a stop computes no comfort
  await outcomeIs(page, "Refuse");
  await expect(part(page, "answer").locator(".check")).toHaveCount(0);
  await openPart(page, "papers");
  await part(page, "papers")
    .getByRole("button", { name: /installer/i })
    .first()
    .click();
  await expect(part(page, "papers").locator(".refused")).toContainText(/tendon|post-tension/i);
  expect(elsewhere).toEqual([]);
  expect(errors).toEqual([]);
});
