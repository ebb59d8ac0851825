import { choice, date, type Field, group, list, quantity, word } from "../fields/index.ts";
import type { Bars, Floor, Joint } from "../floor.ts";
import { barsForm, crackForm, groundForm, pipeForm } from "./floor-parts-form.ts";
import { jointForm } from "./joint-form.ts";
import { readingForm } from "./reading-form.ts";
import { strengthForm } from "./strength-form.ts";
import { findingWords, reinforcementWords } from "./words.ts";
import { zoneForm } from "./zone-form.ts";

const writtenJoints = list("joints and saw cuts", jointForm, { most: 100 });
const joints: Field<readonly Joint[]> = {
  ...writtenJoints,
  absent: () => [],
  read: (node, place) => writtenJoints.read(node, place).flat(),
};

export const floorForm = group<Floor>(
  "the floor",
  "the concrete, standing or to be poured, and all that is known of it",
  {
    state: word(
      { standing: "the floor is there", "to-be-poured": "it is still to be poured" },
      "is the floor there",
      "standing",
    ),
    kind: choice(
      {
        "slab-on-ground": "concrete on the ground",
        suspended: "concrete spanning over a space",
        "hollow-core": "planks with hollows",
        deck: "concrete on steel sheet",
        asphalt: "asphalt",
        pavers: "stones or blocks",
        timber: "timber",
        gravel: "loose stone",
      },
      "what the floor is",
    ),
    below: choice({ ground: "ground", space: "a room, crawl space or cistern" }, "what is below it"),
    postTension: choice(
      {
        "none-shown": "drawings or a scan show no tendons",
        suspected: "pockets along the edge, or the neighbourhood has them",
        stamped: "a stamp or sign says so",
      },
      "post-tensioning tendons",
    ),
    heat: choice(findingWords, "heating tubes or wires in the slab"),
    utilities: choice(findingWords, "pipes, conduits and drains in or under the slab"),
    movement: choice(
      {
        none: "no sign",
        heave: "the floor rose",
        settlement: "the floor sank",
        "expansive-clay": "the clay swells and shrinks",
        frost: "frost lifts it",
      },
      "does the ground move",
    ),
    surface: choice({ sound: "hard", dusts: "scratches with a nail or dusts", spalled: "flakes off" }, "the surface"),
    layer: choice(
      {
        none: "no layer over the slab",
        "bonded-topping": "concrete bonded to it",
        "loose-topping": "concrete lying on it",
        screed: "screed",
        tile: "tiles",
      },
      "a layer over the slab",
    ),
    thickness: quantity("length", "thickness somebody names for the whole slab", { usual: [50, 900] }),
    readings: list("thickness readings", readingForm, { most: 200 }),
    zones: list("pads, strips, thick edges and other parts with a thickness of their own", zoneForm, { most: 50 }),
    strength: strengthForm,
    poured: date("the day the panel under the lift was last poured"),
    ageDays: quantity("time", "its age on the job's date, when the day is not known"),
    reinforcement: choice(reinforcementWords, "reinforcement"),
    bars: list("bars, when known", barsForm as Field<Bars>, { most: 20 }),
    ground: groundForm,
    joints,
    cracks: list("cracks", crackForm, { most: 100 }),
    pipes: list("pipes, tubes and conduits", pipeForm, { most: 100 }),
    slope: quantity("number", "slope of the floor, rise over run", { sign: "not-negative" }),
  },
);
