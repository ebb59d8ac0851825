/** Prints how often the anchor watch is right on made-up histories: `npx tsx bench/anchor-watch.ts [histories]`. */
import { usualWatchRules, type WatchVerdict, watchAnchor } from "@floorworthy/engine/bolts";
import { createGenerator } from "@floorworthy/engine/numerics";
import { isUnable } from "@floorworthy/engine/quantities";
import { disturbances, inventHistory, kinds } from "./histories/anchors.ts";

const histories = Number(process.argv[2] ?? 200);
const rules = usualWatchRules(2.54);
const verdicts: readonly WatchVerdict[] = ["settling", "undecided", "beyond-limit", "slipping"];

console.log(`${histories} histories each; 3/4-10 thread; limit 1/16 in; percent of verdicts`);
console.log(["visits", "kind      ", "reading       ", ...verdicts, "sound though moved over the limit"].join("  "));
for (const count of [2, 3, 4, 5])
  for (const kind of kinds)
    for (const disturbance of disturbances) {
      const next = createGenerator(1000 + count);
      const tally = new Map<string, number>();
      let missed = 0;
      for (let i = 0; i < histories; i++) {
        const history = inventHistory(kind, disturbance, count, rules.pitch, next);
        const watch = watchAnchor(history.visits, rules);
        if (isUnable(watch)) throw new Error(watch.reason);
        tally.set(watch.verdict, (tally.get(watch.verdict) ?? 0) + 1);
        if (watch.verdict === "settling" && history.moved > rules.limit) missed++;
      }
      const shares = verdicts.map((v) => ((100 * (tally.get(v) ?? 0)) / histories).toFixed(1).padStart(v.length));
      console.log(
        [String(count).padEnd(6), kind.padEnd(10), disturbance.padEnd(14), ...shares, String(missed)].join("  "),
      );
    }
