import type { Candidate, FieldName, RemarkCode } from "@floorworthy/manuals";
import { describe, expect, test } from "vitest";
import { foundIn } from "./said.ts";

const only = (candidates: readonly Candidate[], field: FieldName): Candidate => {
  const list = candidates.filter((c) => c.field === field);
  expect(list).toHaveLength(1);
  return list[0]!;
};

const codesOf = (candidate: Candidate): readonly RemarkCode[] => candidate.remarks.map(({ code }) => code);

describe("a wrong word is read, explained and never sure", () => {
  const cases: readonly (readonly [string, FieldName, RemarkCode])[] = [
    ["The concrete must have a tensile strength of 3,000 psi.", "asks.strength", "tensile-for-compressive"],
    ["Use 3,000 lb concrete for the floor.", "asks.strength", "pounds-of-concrete"],
    ["Concrete strength must be 3,000 lbs minimum.", "asks.strength", "pounds-of-concrete"],
    ["The cement must be at least 5 in. thick.", "asks.thickness", "cement-for-concrete"],
    ["The footing must be at least 12 in. thick.", "asks.thickness", "footing-for-pad"],
    ["Tighten the anchors to a torque of 900 in-lbs.", "anchors.torque", "inch-pounds-of-torque"],
    ["The concrete must have a cube strength of 25 MPa.", "asks.strength", "cube-strength"],
    ["The slab must be 6 in. (180 mm) thick.", "asks.thickness", "units-disagree"],
    ["The slab must be 60 in. thick.", "asks.thickness", "unusual-value"],
  ];
  test.each(cases)("%s", (sentence, field, code) => {
    const candidate = only(foundIn(sentence), field);
    expect(codesOf(candidate)).toContain(code);
    expect(candidate.confidence).toBe("doubtful");
  });

  test("a slab thinner than embedment and cover", () => {
    const found = foundIn("The slab must be at least 4 in. thick.", "Minimum anchor embedment 3 3/4 in.");
    expect(codesOf(only(found, "asks.thickness"))).toEqual(["thinner-than-anchor"]);
    const sound = foundIn("The slab must be at least 5 in. thick.", "Minimum anchor embedment 3 3/4 in.");
    expect(only(sound, "asks.thickness").confidence).toBe("sure");
  });

  test("a torque that the diameter cannot take, or that no nut would hold with", () => {
    const torqueOf = (torque: string) =>
      codesOf(
        only(foundIn("Use 5/8 in. diameter wedge anchors.", `Torque the anchors to ${torque}.`), "anchors.torque"),
      );
    expect(torqueOf("85 lb-ft")).toEqual([]);
    expect(torqueOf("450 lb-ft")).toEqual(["torque-outside-diameter"]);
    expect(torqueOf("90 in-lb")).toContain("torque-outside-diameter");
  });
});

describe("the same words where they are right", () => {
  test("compressive strength, a class with both figures, foot-pounds", () => {
    expect(
      only(foundIn("The concrete shall have a compressive strength of 3,000 psi."), "asks.strength").confidence,
    ).toBe("sure");
    expect(only(foundIn("Concrete of class C20/25 is required."), "asks.strength")).toMatchObject({
      written: "20 MPa",
    });
    expect(only(foundIn("Torque the anchors to 90 ft-lb."), "anchors.torque").remarks).toEqual([]);
  });
});

describe("figures that are none of the floor's business", () => {
  test.each([
    "The relief valve is set to 2,500 psi.",
    "Torque the beam bolts to 75 ft-lb.",
    "Fill the tank with 3 gallons of oil.",
    "Lower the carriage to within 4 in. of the floor.",
    "Cables are adjusted when slack is more than 1/2 in.",
    "The crate weighs 1,450 lb.",
    "Hoses are replaced every 5 years.",
    "Keep 10 ft away while the vehicle is raised.",
  ])("%s", (sentence) => {
    expect(foundIn(sentence)).toEqual([]);
  });
});
