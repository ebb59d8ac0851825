import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import type { Look } from "./survey-plan.ts";

/** What forbids every hole, and what to do instead; empty where drilling may be planned. A stop of any kind forbids it. */
export const whyNoDrilling = (job: Job, { stops }: Pick<Assessment, "stops">): readonly string[] => [
  ...stops.map(({ reason, next }) => `${reason} Instead: ${next}`),
  ...linesNotInTheFile(job),
];

/** Said to be located, but the file does not say where: nothing can be kept clear of them. */
const linesNotInTheFile = ({ floor }: Job): readonly string[] => {
  const heating = floor.pipes.some(({ kind, line }) => kind === "heating" && line.length > 0);
  const other = floor.pipes.some(({ kind, line }) => kind !== "heating" && line.length > 0);
  const located = (fact: Job["floor"]["heat"]): boolean => fact.known && fact.value === "located";
  const words = (what: string): string =>
    `${what} are said to be located, but none of their lines is in the file. Instead: write their lines into floor.pipes, taped from the two walls; then ask again.`;
  return [
    ...(located(floor.heat) && !heating ? [words("Heating tubes or wires")] : []),
    ...(located(floor.utilities) && !other ? [words("Pipes, conduits or drains")] : []),
  ];
};

/** Not ruled out yet: looked at on the spot, before the first hole. */
export const looksFirst = ({ floor }: Job): readonly Look[] => [
  ...(floor.postTension.known
    ? []
    : [
        {
          what: "No tendons (post-tension)",
          how: "no stamp or sign at the door, no round patches along the slab's edge, drawings or the builder asked; absence of a stamp alone proves nothing",
        },
      ]),
  ...(floor.heat.known
    ? []
    : [{ what: "No heating in the slab", how: "no manifold, no thermostat, the owner asked who was at the pour" }]),
  ...(floor.below.known || floor.kind.known
    ? []
    : [{ what: "Ground below, no room", how: "walked round the house; no door, window or crawl space below" }]),
  ...(floor.utilities.known
    ? []
    : [
        {
          what: "No pipe, drain or conduit under any hole",
          how: "utility locating service called days before; private lines traced or scanned",
        },
      ]),
  ...saidOnly(floor),
];

/** Said and not shown is not ruled out: whoever drills looks for himself. */
const saidOnly = ({ postTension, heat, utilities }: Job["floor"]): readonly Look[] => {
  const said = [
    { what: "no tendons", fact: postTension },
    { what: "no heating", fact: heat },
    { what: "no pipes", fact: utilities },
  ].filter(({ fact }) => fact.known && fact.basis.kind === "stated" && fact.value !== "located");
  return said.length === 0
    ? []
    : [
        {
          what: `Said but not shown: ${said.map(({ what }) => what).join(", ")}`,
          how: "who says so and how he knows; looked again for a stamp, patches, a manifold, drains and boxes",
        },
      ];
};
