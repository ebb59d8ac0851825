import {
  choice,
  date,
  type Field,
  group,
  list,
  optionalGroup,
  plainNumber,
  plainNumberOrNone,
  quantity,
  required,
  word,
} from "../fields/index.ts";
import type { MonthName, Pour, PourCover, PourDayTemperatures, PourWeather } from "../job.ts";
import { daysInOrder } from "./pour-days.ts";
import { cylinderForm } from "./strength-form.ts";
import { ticketForm } from "./ticket-form.ts";

const spell = group<Pour["temperatures"][number]>("a spell of days", "days of about the same temperature", {
  fromDay: required(plainNumber("time", "first day after the pour", 0)),
  toDay: plainNumberOrNone("time", "last day; the spell goes on when left out"),
  mean: required(quantity("temperature", "mean temperature of the concrete", { sign: "any" })),
});

const temperature = (doc: string): Field<number> => required(plainNumber("temperature", doc, 0, "any"));

const day = group<PourDayTemperatures>("a day's temperatures", "the thermometer of one day", {
  on: date("the day; or count it with day"),
  day: plainNumberOrNone("time", "the day counted from the pour, which is 0"),
  low: temperature("lowest of the day"),
  high: temperature("highest of the day"),
});

const monthNames: Readonly<Record<MonthName, string>> = {
  january: "1",
  february: "2",
  march: "3",
  april: "4",
  may: "5",
  june: "6",
  july: "7",
  august: "8",
  september: "9",
  october: "10",
  november: "11",
  december: "12",
};

const month = group<NonNullable<Pour["months"]>[number]>("a month", "the usual mean of one month", {
  month: required(word(monthNames, "which month", undefined)) as Field<MonthName | undefined>,
  mean: required(quantity("temperature", "its mean temperature", { sign: "any" })),
});

const cover = group<PourCover>("a cover", "a blanket or a heater over the fresh concrete", {
  what: required(
    word({ blanket: "insulating blankets", heater: "heat under a tent or in the room" }, "what", "blanket"),
  ),
  fromDay: required(plainNumber("time", "first day after the pour", 0)),
  toDay: plainNumberOrNone("time", "day it comes off; it stays when left out"),
  holds: quantity(
    "temperature",
    "what the concrete is kept above, by a thermometer under it; not counted when unknown",
    {
      sign: "any",
    },
  ),
});

const weather = group<PourWeather>("the weather", "the weather of pour day", {
  air: quantity("temperature", "air in the shade", { sign: "any" }),
  humidity: quantity("number", "relative humidity", { sign: "not-negative" }),
  wind: quantity("speed", "wind just above the slab", { sign: "not-negative" }),
  concrete: quantity("temperature", "concrete as it comes from the truck", { sign: "any" }),
});

export const pourForm = optionalGroup(
  daysInOrder(
    group<Pour>("the pour", "the concrete to be poured, or just poured", {
      date: date("the day of the pour"),
      strength: quantity("stress", "compressive strength ordered"),
      slump: quantity("length", "slump ordered"),
      air: quantity("number", "air content ordered", { sign: "not-negative" }),
      cement: choice(
        { I: "ordinary", II: "moderate", III: "quick", blended: "with fly ash or slag" },
        "type of cement",
      ),
      fibre: quantity("dosage", "fibres in the mix", { sign: "not-negative" }),
      temperatures: list("temperature after the pour, spell by spell", spell, { most: 200 }),
      days: list("lowest and highest of single days; they count before the spells", day, { most: 400 }),
      months: list("mean temperatures of the months, for the days nobody has measured", month, { most: 12 }),
      covers: list("blankets and heaters", cover, { most: 20 }),
      weather: optionalGroup(weather),
      cylinders: list("cylinders cast from this pour", cylinderForm, { most: 100 }),
      tickets: list("the trucks as they came, with what was measured at each", ticketForm, { most: 60 }),
      waste: quantity("number", "extra concrete to order, as a share", { sign: "not-negative" }),
    }),
  ),
);
