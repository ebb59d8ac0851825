import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};
const shop = "examples/new-heated-shop.yaml";
const thin = "examples/four-inches-that-are-not.yaml";

describe("floorworthy joints", () => {
  test("each line from two walls with its reason; what was refused; workings; a sheet with its DXF", () => {
    const folder = mkdtempSync(join(tmpdir(), "joints-"));
    const { status, stdout } = run("joints", shop, "--workings", "--out", folder);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^A {3}.* from the left wall, from .*$/m);
    expect(stdout).toContain("Without it a panel would be");
    expect(stdout).toContain("a line midway between the columns");
    expect(stdout).toMatch(/min\(30 × 5 in, 15'-0"\)/);
    expect(stdout).not.toMatch(/NaN|undefined|\[object/);
    expect(readdirSync(folder).toSorted()).toEqual(
      ["dxf", "pdf", "svg"].map((ending) => `new-heated-shop-joints.${ending}`),
    );
  });

  test("a stamped slab gets no joint plan; a wrong paper is a mistake", () => {
    const stamped = run("joints", "examples/stamp-at-the-door.yaml");
    expect(stamped.status).toBe(3);
    expect(stamped.stderr).toContain("No joint plan:");
    expect(run("joints", shop, "--paper", "legal").status).toBe(2);
  });
});

describe("floorworthy order", () => {
  test("the quantity to order first, then mix, list, prices that say they are invented", () => {
    const { status, stdout } = run("order", shop);
    expect(status).toBe(0);
    expect(stdout.split("\n")[2]).toBe("ORDER 26.50 yd³ of concrete, 3 loads");
    expect(stdout).toContain("invented figure, replace with your own quotes");
    expect(stdout).not.toMatch(/NaN|undefined|\[object/);
  });

  test("--csv is one row a thing, read back by another program's parser; no formula survives", () => {
    const { stdout } = run("order", shop, "--csv");
    const rows = parse(stdout, { columns: true }) as readonly Record<string, string>[];
    expect(rows.map(({ what }) => what)).toContain("#4 bars");
    expect(rows.find(({ what }) => what === "Ready-mixed concrete")).toMatchObject({ get: "26.5", unit: "yd³" });
    for (const row of rows) for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+@-]\D/);
  });

  test("--json and the remedy that is asked for; a sheet for the dispatcher", () => {
    const folder = mkdtempSync(join(tmpdir(), "order-"));
    const order = JSON.parse(run("order", thin, "--remedy", "separate-pads", "--json").stdout);
    expect(order.pours).toBe("separate-pads");
    expect(run("order", thin, "--out", folder).status).toBe(0);
    expect(readFileSync(join(folder, "four-inches-that-are-not-ready-mix.svg"), "utf8")).toContain("Order 3.25 cu yd");
  });

  test("mistakes and refusals", () => {
    expect(run("order", shop, "--json", "--csv").status).toBe(2);
    const wrong = run("order", thin, "--remedy", "carpet");
    expect(wrong.status).toBe(3);
    expect(wrong.stderr).toContain('There is no remedy "carpet" for this job; there is strip, separate-pads.');
    expect(run("order", "examples/records-in-hand.yaml").stderr).toContain("No concrete is to be poured");
  });
});
