import { choice, group, quantity } from "../fields/index.ts";
import type { FloorPage } from "../lift.ts";
import { reinforcementWords } from "./words.ts";

export const floorPageForm = group<FloorPage>(
  "the maker's floor page",
  "what the maker asks of the floor; a line the page does not have is left out",
  {
    thickness: quantity("length", "least thickness of the concrete"),
    strength: quantity("stress", "least compressive strength (cylinder)"),
    days: quantity("time", "least age of the concrete before drilling"),
    edge: quantity("length", "least distance from an anchor to an edge of the slab"),
    joint: quantity("length", "least distance from an anchor to a joint or saw cut; the edge distance when left out"),
    crack: quantity("length", "least distance from an anchor to a crack; the edge distance when left out"),
    wall: quantity("length", "least distance from an anchor to a wall"),
    reinforcement: choice(reinforcementWords, "reinforcement asked for"),
    slope: quantity("number", "steepest floor, rise over run", { sign: "not-negative" }),
    ceiling: quantity("length", "least clear height"),
  },
);
