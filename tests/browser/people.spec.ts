import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { type Served, serve } from "../server/served.ts";
import { field, jobText } from "./hand/page.ts";

// A server of its own: once somebody has an account, everybody has to sign in.
let served: Served;
test.beforeAll(async () => {
  served = await serve(join(mkdtempSync(join(tmpdir(), "floorworthy-people-")), "jobs.sqlite"));
});
test.afterAll(async () => {
  served.process.kill("SIGTERM");
  expect(await served.ended).toBe(0);
});

const password = "a long enough one";
const signIn = async (page: Page, name: string, word = password) => {
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("Password").fill(word);
  await page.getByRole("button", { name: "Sign in" }).click();
};
const addPerson = async (page: Page, name: string, role: string) => {
  await expect(page.getByRole("heading", { name: "A new person" })).toBeVisible();
  await page.getByLabel("Name").fill(name);
  await page.getByLabel(/^Password/).fill(password);
  await page.locator("select[name=role]").selectOption(role);
  await page.getByRole("button", { name: "Add" }).click();
};

test("the first owner, a reader who cannot write, signing out", async ({ page, browser }) => {
  const made = await page.request.post(`${served.address}/api/jobs`, { data: { text: jobText("1-kept-tickets") } });
  const { id } = await made.json();
  await page.goto(`${served.address}/#/people`);
  await expect(page.getByText("Nobody has an account")).toBeVisible();
  await addPerson(page, "Ada", "owner");
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  for (const width of [1280, 360]) {
    await page.setViewportSize({ width, height: 800 });
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
  await page.setViewportSize({ width: 1280, height: 800 });
  await signIn(page, "Ada", "not her password");
  await expect(page.getByRole("alert")).toContainText("do not belong together");
  await signIn(page, "Ada");
  await addPerson(page, "Rae", "reader");
  await expect(page.getByLabel("what Rae may do")).toHaveValue("reader");
  await page.getByLabel("what Ada may do").selectOption("reader");
  await expect(page.getByRole("alert")).toContainText("last owner");

  const rae = await (await browser.newContext()).newPage();
  await rae.goto(`${served.address}/#/jobs/${id}/floor`);
  await signIn(rae, "Rae");
  await expect(rae.getByText("You may look, not write.")).toBeVisible();
  await expect(field(rae, "floor.readings[0].thickness")).toHaveJSProperty("readOnly", true);
  await expect(rae.getByRole("button", { name: "Undo" })).toHaveCount(0);
  await expect(rae.getByRole("link", { name: "People" })).toHaveCount(0);
  const refused = await rae.request.put(`${served.address}/api/jobs/${id}`, {
    data: { basedOn: 1, text: "title: Mine\n" },
  });
  expect(refused.status()).toBe(403);
  await rae.getByRole("link", { name: "Jobs" }).click();
  await expect(rae.getByRole("button", { name: "New job" })).toHaveCount(0);
  await expect(rae.getByText("Wren Hollow")).toBeVisible();
  await rae.getByRole("button", { name: /sign out/ }).click();
  await expect(rae.getByRole("heading", { name: "Sign in" })).toBeVisible();
  expect((await rae.request.get(`${served.address}/api/jobs`)).status()).toBe(401);
  await rae.context().close();
});
