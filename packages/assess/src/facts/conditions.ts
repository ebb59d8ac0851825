import type { Job } from "@floorworthy/job";
import { crackFindings } from "./cracks.ts";

/** What this floor asks for before and after drilling, whatever else the outcome asks. */
export const floorConditions = (job: Job): string[] => [
  ...layerConditions(job),
  ...crackConditions(job),
  ...(job.floor.state === "standing" && !job.floor.utilities.known
    ? [
        "Pipes, wires and drains in and under the slab are located before the first hole (in the US call 811; private lines need a private locator).",
      ]
    : []),
];

const layerConditions = ({ floor }: Job): string[] => {
  if (!floor.layer.known) return [];
  if (floor.layer.value === "tile")
    return ["The tile and its bed are taken up under every base plate: steel stands on concrete."];
  if (floor.layer.value === "bonded-topping")
    return [
      "The topping does not count: the anchors' depth is counted from the slab under it, or the topping is taken off under every base plate.",
    ];
  return [];
};

const crackConditions = (job: Job): string[] => {
  const cracks = crackFindings(job);
  const open = cracks.filter(({ look }) => look === "wide" || look === "stepped");
  return [
    ...open.map(({ name, words }) => `Find out what made ${name} (${words}) before anything is drilled.`),
    ...(cracks.length > 0
      ? [
          `Mark the ends of ${cracks.map(({ name }) => name).join(", ")}, write the date and the width, photograph them, and look again at each round of the nuts.`,
        ]
      : []),
  ];
};
