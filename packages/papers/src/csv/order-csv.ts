import type { Order } from "@floorworthy/assess/order";
import { csv } from "./csv.ts";

/** Everything to get for a pour, one line each, for a spreadsheet. */
export const orderCsv = ({ lines, total }: Order): string =>
  csv(
    ["group", "what", "takes", "unit", "get", "sold as", "note", `cost ${total.currency}`, "price", "basis"],
    lines.map(({ group, what, takes, buy, sold, note, cost }) => [
      group,
      what,
      Number(takes.value.toFixed(3)),
      takes.unit,
      Number(buy.value.toFixed(3)),
      sold || buy.unit,
      note,
      cost ? Number(cost.amount.toFixed(2)) : undefined,
      cost?.at,
      cost?.basis,
    ]),
  );
