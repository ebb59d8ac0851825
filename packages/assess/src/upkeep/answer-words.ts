import { notAfterFailure } from "./after-failure.ts";

export type UpkeepAnswer = "sound" | "retorque-and-look" | "out-of-service" | "no-readings" | "stopped";

export const sentences: Readonly<Record<UpkeepAnswer, string>> = {
  sound: "Sound: what the anchors move dies away.",
  "retorque-and-look": "Re-torque and look: nothing shows a failure, and something has to be seen to.",
  "out-of-service": "Out of service today: lower it, unload it, lock it out and tag it.",
  stopped: "Not judged: a stop stands, and no reading of the nuts answers it.",
  "no-readings": "Nobody has been round the nuts: go round once, write down what is found, then come back here.",
};

/** A lift that stands loose. */
export const noNuts =
  "No nuts to go round: this lift stands without anchors. Look at the floor under its feet and at every crack once a year.";

/** Why no next round is named. */
export const noRoundWords = (answer: UpkeepAnswer): string =>
  answer === "stopped"
    ? "None while a stop stands."
    : "Nobody wrote when the lift was set or last looked at, so no day follows.";

export const steps: Readonly<Record<UpkeepAnswer, readonly string[]>> = {
  sound: ["Keep to the next round."],
  "retorque-and-look": [
    "Unload the lift. Bring every nut to its torque with a checked torque wrench, never an impact wrench; write down the torque found, the angle turned and the stud above the plate.",
    "Tap the concrete around each base, look for cracks, gaps under the plate and a lean of the column.",
    "A nut that turns at every round is an anchor walking out: then nothing is lifted.",
  ],
  "out-of-service": [
    "Lower the lift, take the vehicle off, lock it out and hang the tag where the controls are.",
    ...notAfterFailure,
    "Tell whoever else uses it; in a shop, tell the employer and the inspector. An engineer or the maker says how it comes back.",
  ],
  stopped: ["Nothing is lifted on this floor until whoever must look has looked, and written down the answer."],
  "no-readings": ["Go round every nut with a checked torque wrench and write down what is found."],
};
