/**
 * Statics of every two-post lift of the acceptance scenarios: load and moment of a column, the factor the overhead beam
 * leaves at pick-up, and the outer row's pull by moments about the toe. Printed values are the scenarios' own
 * (calculated there on rigid bases); within 5 % as they ask.
 */
import { type BasePlate, rowTension, solveContact } from "@floorworthy/engine/contact";
import { baseReactions, type ColumnFrame, type LiftLoad, toPlan } from "@floorworthy/engine/frames";
import { isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const inches = (v: number): number => toBase(v, "in");
const pounds = (v: number): number => toBase(v, "lb");
const kipInches = (v: number): number => toBase(v, "kip-in");
const near = (value: number, printed: number, within = 0.05): void =>
  expect(Math.abs(value / printed - 1)).toBeLessThanOrEqual(within);

interface Sheet {
  rated: number;
  spacing: number;
  tie?: number;
  pickUp: number;
  column: number;
  car?: number;
  truck: number;
  toe: number;
  z: number;
}
const sheets = {
  K7T: { rated: 7000, spacing: 112, tie: 138, pickUp: 28, column: 450, car: 32, truck: 38, toe: 7.0, z: 13.5 },
  K10T: { rated: 10000, spacing: 126, tie: 144, pickUp: 28, column: 650, car: 37, truck: 45, toe: 8.5, z: 16 },
  B9F: { rated: 9000, spacing: 124, pickUp: 28, column: 600, car: 36, truck: 44, toe: 7.5, z: 14.5 },
  // no pick-up height on these two sheets: the printed rows imply the same 0.194 of the beam's height as K10T's
  B12T: {
    rated: 12000,
    spacing: 130,
    tie: 150,
    pickUp: 150 * (28 / 144),
    column: 850,
    car: 39,
    truck: 47,
    toe: 9.5,
    z: 18,
  },
  T18T: { rated: 18000, spacing: 148, tie: 172, pickUp: 172 * (28 / 144), column: 1500, truck: 54, toe: 12, z: 24 },
} satisfies Record<string, Sheet>;

const column = (sheet: Sheet, reach: number, tie: "counted" | "ignored") => {
  const frame: ColumnFrame = {
    top: sheet.tie !== undefined && tie === "counted" ? "overhead-tied" : "free-standing",
    spacing: inches(sheet.spacing),
    ...(sheet.tie === undefined ? {} : { tieHeight: inches(sheet.tie) }),
    columnWeight: pounds(sheet.column),
    reach: inches(reach),
    baseStiffness: "rigid",
  };
  const load: LiftLoad = {
    weight: pounds(sheet.rated),
    dynamicFactor: 1,
    leftShare: 0.5,
    foreAft: 0,
    carriageHeight: inches(sheet.pickUp),
  };
  const { left } = able(baseReactions(frame, load));
  return { left, row: rowTension(left.P, left.inwardMoment, inches(sheet.toe), inches(sheet.z)).value };
};

describe("vertical load and inward moment at rated load, tie ignored; row of anchors [lb, kip-in, lb]", () => {
  test.each([
    ["K7T", "car", 3950, 119, 6770], // printed M 119 is for the class's reach of 34 in
    ["K10T", "car", 5650, 185, 8560],
    ["K10T", "truck", 5650, 225, 11060],
    ["B9F", "car", 5100, 162, 8534],
    ["B12T", "car", 6850, 234, 9390],
    ["B12T", "truck", 6850, 282, 12050],
    ["T18T", "truck", 10500, 486, 15000],
  ] as const)("%s %s pads: P %d, M %d, row %d", (name, pads, P, M, row) => {
    const sheet: Sheet = sheets[name];
    // the class table of the 7k lift uses a reach of 34 in for cars, two inches more than this sheet
    const reach = name === "K7T" ? 34 : sheet[pads]!;
    const found = column(sheet, reach, "ignored");
    near(found.left.P, pounds(P));
    near(found.left.inwardMoment, kipInches(M));
    near(found.row, pounds(row));
  });
});

describe("overhead beam counted, at pick-up", () => {
  test("K10T truck pads: factor 0.473, 106.5 kip-in, row 3,655 lb", () => {
    const { left, row } = column(sheets.K10T, 45, "counted");
    near(left.inwardMoment / kipInches(225), 0.473);
    near(left.inwardMoment, kipInches(106.5));
    near(row, pounds(3655));
  });
  test("B12T truck pads: row 3,800 lb; T18T: row 4,340 lb", () => {
    near(column(sheets.B12T, 47, "counted").row, pounds(3800));
    near(column(sheets.T18T, 54, "counted").row, pounds(4340));
  });
});

/** base / applied against carriage height over beam height, two decimals as printed in the class table */
test("the factor the beam leaves, height by height", () => {
  const frame: ColumnFrame = {
    top: "overhead-tied",
    spacing: 3,
    tieHeight: 1,
    columnWeight: 0,
    reach: 1,
    baseStiffness: "rigid",
  };
  for (const [rho, printed] of [
    [0.05, 0.85],
    [0.1, 0.72],
    [0.15, 0.58],
    [0.2, 0.46],
    [0.3, 0.24],
    [0.5, -0.13],
    [0.6, -0.26],
    [0.7, -0.37],
    [0.8, -0.44],
    [0.9, -0.49],
  ] as const) {
    const load = { weight: 2, dynamicFactor: 1, leftShare: 0.5, foreAft: 0, carriageHeight: rho };
    expect(Math.abs(able(baseReactions(frame, load)).left.inwardMoment - printed)).toBeLessThanOrEqual(0.0051);
  }
});

test("a full contact solution of K10T agrees with the hand formula on the outer row", () => {
  const plate: BasePlate = {
    outline: [
      [-10, -9],
      [10, -9],
      [10, 9],
      [-10, 9],
    ].map(([x, y]) => ({ x: inches(x!), y: inches(y!) })),
    anchors: [
      [-7.5, -6.5],
      [-7.5, 0],
      [-7.5, 6.5],
      [4, -6.5],
      [4, 6.5],
    ].map(([x, y], i) => ({ id: `L${i + 1}`, x: inches(x!), y: inches(y!), stiffness: 40_000, preload: 0 })),
    bedding: 200,
  };
  const { left, row } = column(sheets.K10T, 45, "ignored");
  const found = able(solveContact(plate, toPlan(left, "left")));
  const outer = found.anchorTension.slice(0, 3).reduce((sum, { T }) => sum + T, 0);
  // the hand formula gives the inner pair nothing; the plate gives it a little and the outer row so much less
  expect(outer).toBeLessThan(row);
  expect(outer).toBeGreaterThan(0.85 * row);
});
