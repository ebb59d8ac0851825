/** A logger's table: columns and units found, bad rows one message each, broken files refused in words. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTemperatures } from "../../apps/cli/src/read-temperatures.ts";

const poured = "2025-02-04";
const read = (text: string, day: string | undefined = poured) => readTemperatures(text, { poured: day });
const good = (text: string) => {
  const log = read(text);
  if (!log.ok) throw new Error(log.mistakes.join("\n"));
  return log;
};
const bad = (text: string, day: string | undefined = poured): string => {
  const log = readTemperatures(text, { poured: day });
  return log.ok ? "read" : log.mistakes.join("\n");
};
const rounded = ({ readings }: ReturnType<typeof good>) =>
  readings.map(({ day, temperature }) => [Number(day.toFixed(3)), Number(temperature.toFixed(1))]);

describe("what loggers write", () => {
  test.each([
    ["time,temperature °F\n2025-02-04 06:00,50\n2025-02-04 18:00,59\n"],
    ["Timestamp;Temp (°C)\n2025-02-04T06:00;10,0\n2025-02-04T18:00:00;15,0\n"],
    ["Date\tTime\tTemp_F\n2025-02-04\t06:00 AM\t50\n2025-02-04\t06:00 PM\t59\n"],
    ["hours,concrete temperature (C)\n6,10\n18,15\n"],
    ["day,temp\n0.25,50 °F\n0.75,15 °C\n"],
    ["\uFEFFLogger 3\r\nserial,17\r\n\r\n#,Date Time,Temp, °F\r\n1,2025-02-04 06:00,50\r\n2,2025-02-04 18:00,59\r\n"],
  ])("%j", (text) => {
    if (text.includes("Temp, °F")) return expect(bad(text)).toMatch(/unit|read/);
    expect(rounded(good(text))).toEqual([
      [0.25, 10],
      [0.75, 15],
    ]);
  });
  test("a head row in quotes with a comma in it", () =>
    expect(rounded(good('"#","Date Time","Temp, °F"\n1,2025-02-04 06:00,50\n2,2025-02-04 18:00,59\n'))).toEqual([
      [0.25, 10],
      [0.75, 15],
    ]));
});

describe("bad rows are left out, one message each, with their line", () => {
  test("no temperature, no date, backward, impossible, empty", () => {
    const rows = Array.from({ length: 24 }, (_, i) => `2025-02-05 ${String(i).padStart(2, "0")}:00,45`);
    rows.splice(2, 0, "2025-02-05 01:30,---", "02/05/2025 2:00,44", "2025-02-05 00:10,44", "2025-02-05 01:40,480");
    rows.push("2025-02-31 10:00,44", "2025-02-06 25:00,44");
    const log = good(`time,temp F\n${rows.join("\n")}\n`);
    expect(log.readings).toHaveLength(24);
    expect(log.skipped).toEqual([
      'line 4: "---" is not a temperature; left out.',
      'line 5: "02/05/2025 2:00" is not a date such as 2025-02-04 14:30; left out.',
      "line 6: not later than the row before; left out.",
      "line 7: 480 °F is no temperature of concrete; left out.",
      'line 30: "2025-02-31 10:00" is not a date such as 2025-02-04 14:30; left out.',
      'line 31: "2025-02-06 25:00" is not a date such as 2025-02-04 14:30; left out.',
    ]);
  });
});

describe("files refused", () => {
  test.each([
    ["", /empty/],
    ["\n \n", /empty/],
    ["a,b\n1,2\n", /no head row/],
    ["time,temperature °F\n", /fewer than two rows/],
    ["time,temperature °F\n2025-02-05,40\n", /fewer than two rows/],
    ["time,temperature\n2025-02-05,40\n2025-02-06,41\n", /has no unit/],
    ["time,temperature °F\n2025-01-01,40\n2025-01-02,41\n", /ends before the day of the pour/],
    ['time,temperature °F\n"2025-02-05,40\n', /not a table/],
    ["time,temperature °F\n2025-02-05,40\n2025-02-06,41\nx,1\ny,2\n", /2 of 4 rows could not be read/],
  ])("%j", (text, why) => expect(bad(text)).toMatch(why));
  test("dates without the day of the pour; days after the pour need none", () => {
    expect(readTemperatures("time,temp F\n2025-02-05,40\n2025-02-06,41\n", { poured: undefined })).toMatchObject({
      ok: false,
      mistakes: [expect.stringMatching(/when the concrete was poured/)],
    });
    expect(readTemperatures("days,temp F\n1,40\n2,41\n", { poured: undefined }).ok).toBe(true);
  });
  test("whatever the bytes: readings in order, or words; never a throw", () =>
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0129:- ,;\n°FCtempdays"') })),
        (noise) => {
          for (const text of [noise, `days,temp F\n${noise}`]) {
            const log = read(text);
            if (!log.ok) expect(log.mistakes.length).toBeGreaterThan(0);
            else
              log.readings.forEach(({ day, temperature }, i) => {
                expect(Number.isFinite(day) && temperature >= -50 && temperature <= 90).toBe(true);
                if (i > 0) expect(day).toBeGreaterThan(log.readings[i - 1]!.day);
              });
          }
        },
      ),
    ));
});
