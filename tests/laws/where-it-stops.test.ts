/** Where a stop stands, no answer of any question may read as comfort: swept over every stop, over jobs that are well without it. */
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { judgeLift } from "@floorworthy/assess/catalogue";
import { cureClock } from "@floorworthy/assess/cure";
import { adviseHit } from "@floorworthy/assess/hit";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { stressField } from "@floorworthy/assess/margin";
import { orderFor } from "@floorworthy/assess/order";
import { cheapestPad, checkHabit } from "@floorworthy/assess/pad";
import { marginMap, placeLift } from "@floorworthy/assess/place";
import { referral } from "@floorworthy/assess/referral";
import { setOut } from "@floorworthy/assess/setout";
import { planSurvey } from "@floorworthy/assess/survey";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { judgeVehicle, vehicleOfClass } from "@floorworthy/assess/vehicle";
import { isUnable } from "@floorworthy/engine/quantities";
import { type Job, readJob, setFact } from "@floorworthy/job";
import { sheets } from "@floorworthy/papers";
import { roundsCalendar } from "@floorworthy/papers/calendar";
import { describe, expect, test } from "vitest";

const TODAY = "2026-05-11";

const planted = [
  ["floor.postTension", "stamped"],
  ["floor.postTension", "suspected"],
  ["floor.below", "space"],
  ["floor.kind", "hollow-core"],
  ["floor.kind", "asphalt"],
  ["lift.manual", "missing"],
  ["floor.heat", "not-located"],
  ["floor.utilities", "not-located"],
  ["setting.seismic", "D"],
  ["setting.use", "public"],
  ["setting.permit", "required"],
  ["setting.weather", "outdoors"],
  ["setting.slopeNear", "near"],
  ["floor.movement", "heave"],
  ["floor.ground.voids", "found"],
  ["floor.layer", "screed"],
  ["setting.slabOwner", "landlord-not-asked"],
] as const;

/** the years of the demo without its bad anchor and its crack */
const calm = (text: string): string =>
  text
    .replace(/ {2}cracks:.*?(?=columns:)/s, "")
    .replace(
      /\{\s*anchor: L2,\s*found: \d+ lb-ft,\s*turned: \d+ deg,\s*projection: [^}]*\}/g,
      "{ anchor: L2, found: 80 lb-ft, turned: 5 deg }",
    );
const well = {
  "records-in-hand": (text: string) => text,
  "four-years-of-rounds": calm,
  "new-heated-shop": (text: string) => text,
} as const;

const jobOf = (name: keyof typeof well, path?: string, word?: string): Job => {
  const text = well[name](readFileSync(`examples/${name}.yaml`, "utf8"));
  const read = readJob(path && word ? setFact(text, path, word) : text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};

/** papers that may exist under a stop: they carry facts, or take the lift out of use */
const harmless = new Set(["referral", "out-of-service", "inspection", "anchor-log", "installation", "torque-trend"]);

describe.each(Object.keys(well) as (keyof typeof well)[])("%s", (name) => {
  test("is well without a stop, so that the sweep means something", () => {
    expect(assess(jobOf(name)).stops).toEqual([]);
  });

  test.each(planted)("%s: %s", (path, word) => {
    const job = jobOf(name, path, word);
    const assessment = assess(job);
    expect(assessment.stops.length).toBeGreaterThan(0);
    expect(["refuse", "refer", "hold", "out-of-service"]).toContain(assessment.outcome);
    expect(assessment.margin.verdict).toBe("not-computed");
    expect([assessment.margin.checks, assessment.remedies]).toEqual([[], []]);
    expect(assessment.page.lines.filter(({ result }) => result === "meets")).toEqual([]);

    for (const figure of [
      stressField(job),
      cheapestPad(job),
      checkHabit(job),
      planJobJoints(job, assessment),
      orderFor(job, assessment),
      cureClock(job, TODAY),
      setOut(job, assessment),
      marginMap(job, placeLift(job)),
    ])
      expect(isUnable(figure)).toBe(true);
    expect(placeLift(job)).toMatchObject({ answer: "stopped", proposed: undefined, smallest: undefined });
    const survey = planSurvey(job, assessment);
    if (!isUnable(survey)) expect(survey.holes).toEqual([]);
    expect(["accept", "accept-if"]).not.toContain(judgeLift(job, job.lift).outcome);
    for (const owner of ["agrees", "refuses"] as const) {
      const hit = adviseHit(job, { hole: "L1", depth: 60, met: "bar", owner });
      expect(hit.verdict).not.toBe("accept-if");
      expect(hit.ways).toEqual([]);
    }
    const vehicle = judgeVehicle(job, vehicleOfClass("small-sports"), TODAY);
    expect(["no", "hold"]).toContain(vehicle.answer);
    expect(vehicle.checks).toEqual([]);

    const years = upkeepOf(job, TODAY);
    expect(["stopped", "out-of-service"]).toContain(years.answer);
    expect(years.next).toBeUndefined();
    expect(
      years.anchors.filter(({ answer, sentence }) => answer === "sound" || /settles|sound/i.test(sentence)),
    ).toEqual([]);
    expect(roundsCalendar(job, years, TODAY)).toBeUndefined();

    const pack = JSON.stringify(referral(job, assessment));
    expect(/"(ample|enough|meets)"|the margin is/.test(pack)).toBe(false);
    const drawn = sheets.filter(({ draw }) => !isUnable(draw(job, assessment, { date: TODAY, paper: "letter" })));
    expect(drawn.map(({ name: sheet }) => sheet).filter((sheet) => !harmless.has(sheet))).toEqual([]);
  });
});

test("a permit stops until it is granted, and then it still binds", () => {
  const asked = assess(jobOf("records-in-hand", "setting.permit", "required"));
  expect(asked.outcome).toBe("refer");
  const granted = assess(jobOf("records-in-hand", "setting.permit", "granted"));
  const none = assess(jobOf("records-in-hand"));
  expect(granted.stops).toEqual([]);
  expect([granted.outcome, granted.margin.verdict]).toEqual([none.outcome, none.margin.verdict]);
  expect(granted.cautions.filter((caution) => /permit's conditions/.test(caution))).toHaveLength(1);
  expect(none.cautions.filter((caution) => /permit's conditions/.test(caution))).toEqual([]);
});
