import { expect, test } from "@playwright/test";
import { jobText, kept, newJob, openJob, openPart, outcomeIs, part, settled, textOf } from "./hand/page.ts";

test("a floor too thin becomes a pad in the job, an order, and printed sheets for the contractor", async ({ page }) => {
  test.setTimeout(240_000);
  await page.addInitScript(() => {
    globalThis.print = () => document.documentElement.setAttribute("data-printed", "yes");
  });
  const id = await newJob(page.request, jobText("2-thin-slab"));
  await openJob(page, id);
  await outcomeIs(page, "Pour");

  await openPart(page, "pad");
  await part(page, "pad").getByRole("button", { name: "Find the cheapest pad that holds" }).click();
  await expect(
    part(page, "pad")
      .getByRole("progressbar")
      .or(part(page, "pad").getByText(/holds|pad/i))
      .first(),
  ).toBeVisible();
  await part(page, "pad").getByRole("button", { name: "Put this pad into the job" }).click({ timeout: 120_000 });
  await kept(page);
  expect(await textOf(page.request, id)).toMatch(/kind: pad/);
  await settled(page);

  await openPart(page, "pour");
  await expect(part(page, "pour").getByRole("table").first()).toContainText(/concrete/i, { timeout: 60_000 });

  await openPart(page, "papers");
  const papers = part(page, "papers");
  await papers
    .getByRole("button", { name: /contractor/i })
    .first()
    .click();
  await expect(papers.locator("img.page-picture").first()).toHaveAttribute("alt", /contractor/i);
  await papers.getByRole("button", { name: "Print", exact: true }).click();
  await expect(page.locator("html")).toHaveAttribute("data-printed", "yes");
  await expect(page.locator("#to-print img")).toHaveCount(1);
  await page.emulateMedia({ media: "print" });
  await expect(page.locator("#to-print img").first()).toBeVisible();
  await expect(page.locator("header.title")).toBeHidden();
  await page.emulateMedia({ media: "screen" });
  for (const format of ["PDF", "SVG"]) {
    const file = await page.request.get(
      (await papers.getByRole("link", { name: format }).first().getAttribute("href"))!,
      { timeout: 60_000 },
    );
    expect(file.status()).toBe(200);
    expect((await file.body()).length).toBeGreaterThan(5000);
  }
});
