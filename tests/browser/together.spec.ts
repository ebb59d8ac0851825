import { type Browser, expect, type Page, test } from "@playwright/test";
import { field, jobText, kept, newJob, openEvery, openJob, part, textOf } from "./hand/page.ts";

/** The two groups of the floor that are written in here. */
const openFields = async (page: Page): Promise<void> => {
  for (const group of [/^How thick/, /^How strong/])
    await openEvery(
      part(page, "floor")
        .locator("details", { has: page.locator("> summary", { hasText: group }) })
        .first(),
    );
};

const sitDown = async (browser: Browser, baseURL: string | undefined, id: string): Promise<Page> => {
  const page = await (await browser.newContext({ baseURL: baseURL! })).newPage();
  await openJob(page, id, "floor");
  await openFields(page);
  return page;
};
const thickness = "floor.readings[0].thickness";
const other = "floor.readings[1].thickness";

test("two at one job: different places both stay, the same place is decided by one of them, a step back takes nothing", async ({
  browser,
  baseURL,
  request,
}) => {
  const id = await newJob(request, jobText("1-kept-tickets"));
  const ada = await sitDown(browser, baseURL, id);
  const bo = await sitDown(browser, baseURL, id);

  // different places, written before either has seen the other's
  await ada.context().setOffline(true);
  await field(ada, thickness).fill("7 in");
  await expect(ada.locator("[data-keeping=unreached]")).toBeVisible();
  await field(bo, other).fill("8 in");
  await kept(bo);
  await ada.context().setOffline(false);
  await kept(ada);
  await expect(field(ada, other)).toHaveValue("8 in");
  await expect(ada.locator(".keeping")).toContainText("changes came in with yours");
  const both = await textOf(request, id);
  expect(both).toContain("thickness: 7 in");
  expect(both).toContain("thickness: 8 in");

  // Ada's step back takes back her own change only
  await ada.getByRole("button", { name: "Undo" }).click();
  await expect(field(ada, thickness)).toHaveValue("6.1 in");
  await expect(field(ada, other)).toHaveValue("8 in");
  await expect.poll(() => textOf(request, id)).toContain("thickness: 6.1 in");
  expect(await textOf(request, id)).toContain("thickness: 8 in");

  // the same place: first theirs goes on, then mine; what else was written stays each time
  for (const [words, stands] of [
    [/^Theirs goes on/, "5 in"],
    [/^Mine goes on/, "4 1/2 in"],
  ] as const) {
    await bo.reload();
    await openFields(bo);
    await kept(ada);
    await ada.context().setOffline(true);
    await field(ada, thickness).fill("4 1/2 in");
    await field(ada, "floor.ageDays").fill(stands === "5 in" ? "50 d" : "60 d");
    await expect(ada.locator("[data-keeping=unreached]")).toBeVisible();
    await field(bo, thickness).fill(stands === "5 in" ? "5 in" : "5 1/4 in");
    await kept(bo);
    await expect
      .poll(() => textOf(request, id))
      .toContain(stands === "5 in" ? "thickness: 5 in" : "thickness: 5 1/4 in");
    await ada.context().setOffline(false);
    await expect(ada.locator(".clash")).toContainText(thickness);
    await ada.getByRole("button", { name: words }).click();
    await expect(field(ada, thickness)).toHaveValue(stands);
    await expect.poll(() => textOf(request, id)).toContain(stands === "5 in" ? "ageDays: 50 d" : "ageDays: 60 d");
    expect(await textOf(request, id)).toContain(`thickness: ${stands}`);
  }
  // nothing written was ever lost: it is in the history
  const history = await (await request.get(`/api/jobs/${id}/revisions`)).json();
  const texts = await Promise.all(
    history.map(({ number }: { number: number }) =>
      request.get(`/api/jobs/${id}/revisions/${number}`).then((reply) => reply.json()),
    ),
  );
  for (const written of ["7 in", "8 in", "5 in", "5 1/4 in", "4 1/2 in"])
    expect(texts.some(({ text }) => text.includes(`thickness: ${written}`))).toBe(true);
  await ada.context().close();
  await bo.context().close();
});
