import type { WatchReason } from "@floorworthy/engine/bolts";

/** Why the watch says what it says, to a person who holds the wrench. */
export const watchWords: Readonly<Record<WatchReason, string>> = {
  "dies-away": "what it moves gets less from round to round, as relaxing steel and concrete do",
  "hardly-moves": "it no longer moves more than can be read",
  "goes-on": "it moves on at the same pace at every round: that is an anchor walking out, not one settling",
  grows: "it moves more from round to round: that is an anchor walking out, not one settling",
  "take-up-over-limit": "its nut has been taken up further than the limit",
  "rise-over-limit": "its stud stands further out than the limit",
  "too-few-visits": "one round tells no pattern",
  "either-fits": "the readings fit settling and slipping alike",
  "could-reach-limit": "at the fastest pace the readings allow it would reach the limit before the next round",
  "torque-lower-than-relaxation-leaves": "less torque was found than relaxation alone leaves",
};
