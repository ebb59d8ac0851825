import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { unfold } from "./hand/by-mouse.ts";
import { jobText, newJob, openJob, openPart, part } from "./hand/page.ts";

const parts = ["lift", "floor", "position", "answer", "pad", "pour", "anchors", "upkeep", "papers"] as const;

const sound = async (page: Page, width: number) => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join("\n")}`)).toEqual(
    [],
  );
  const wide = await page.evaluate(
    (most) => [
      document.documentElement.scrollWidth,
      [...document.querySelectorAll("main *")]
        .filter((node) => {
          const { right, width } = node.getBoundingClientRect();
          return width > 0 && right > most + 1 && !node.closest(".table-window, svg, .unseen, pre");
        })
        .slice(0, 5)
        .map((node) => node.outerHTML.slice(0, 120)),
    ],
    width,
  );
  expect(wide).toEqual([width, []]);
};

test.describe("no axe violation, and nothing runs out of the page", () => {
  for (const width of [1280, 360]) {
    test(`jobs, lifts, a lift, people at ${width} px`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await newJob(page.request, jobText("2-thin-slab"));
      const lift = await page.request.post("/api/lifts", {
        data: { text: "floorworthy: 1\nlift:\n  name: Tarn 7 Low\n  kind: two-post\n  rated: 7000 lb\n" },
      });
      await page.goto("/");
      await expect(page.locator(".job-line .job-outcome").first()).not.toHaveText("…");
      await sound(page, width);
      await page.goto("/#/lifts");
      await expect(page.getByText("Tarn 7 Low").first()).toBeVisible();
      await sound(page, width);
      await page.goto(`/#/lifts/${(await lift.json()).id}`);
      await expect(page.locator('[id="lift.rated"]')).toHaveValue("7000 lb");
      await unfold(page.locator("main"));
      await sound(page, width);
      await page.goto("/#/people");
      await expect(page.getByRole("heading", { name: "People" })).toBeVisible();
      await sound(page, width);
    });

    test(`a job, every part of it open and unfolded, at ${width} px`, async ({ page }) => {
      test.setTimeout(240_000);
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme: width === 360 ? "dark" : "light" });
      await openJob(page, await newJob(page.request, jobText("2-thin-slab")));
      for (const id of parts) await openPart(page, id);
      for (const id of ["lift", "floor", "position", "pour", "anchors", "upkeep"] as const)
        await unfold(part(page, id));
      await unfold(part(page, "answer"), 12);
      await part(page, "papers")
        .getByRole("button", { name: /contractor/i })
        .first()
        .click();
      await expect(page.getByRole("progressbar")).toHaveCount(0, { timeout: 90_000 });
      await sound(page, width);
    });
  }
});
