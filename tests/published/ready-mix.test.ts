/** ASTM C94 (read in trade sheets): a truck is empty within 90 minutes of the water meeting the cement. */
import { TRUCK_DISCHARGE_HOURS } from "@floorworthy/engine/orders";
import { expect, test } from "vitest";

test("the time a truck has", () => expect(60 * TRUCK_DISCHARGE_HOURS).toBe(90));
