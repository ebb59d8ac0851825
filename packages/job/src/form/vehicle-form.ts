import { choice, date, group, name, quantity } from "../fields/index.ts";
import type { Vehicle } from "../job.ts";

export const vehicleForm = group<Vehicle>("a vehicle", "a vehicle to be lifted", {
  name: name("its name"),
  weight: quantity("force", "its weight as it will be lifted", { usual: [1000, 300_000] }),
  frontAxle: quantity("force", "weight on the front axle"),
  rearAxle: quantity("force", "weight on the rear axle"),
  wheelbase: quantity("length", "between the axles"),
  length: quantity("length", "length over all"),
  width: quantity("length", "width over the body, mirrors folded"),
  height: quantity("length", "height of its roof over the floor"),
  noseToCentre: quantity("length", "from its nose to its centre of gravity"),
  frame: choice(
    { unibody: "lifted at the sills", "body-on-frame": "lifted at the rails of a frame" },
    "how it is built",
  ),
  pickupSpacing: quantity("length", "between front and rear lifting points"),
  offset: quantity("length", "where its centre of gravity stands, from the line of the columns toward the door", {
    sign: "any",
  }),
  since: date("the first day it is lifted; left out: from the beginning"),
});
