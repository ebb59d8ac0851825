import type { Cost, Order, OrderGroup } from "@floorworthy/assess/order";
import type { Check, Term } from "@floorworthy/engine/quantities";
import { number, table, wrap } from "./text.ts";
import { unfold } from "./unfold.ts";

const figure = ({ value, unit }: Term): string =>
  `${unit === "yd³" || unit === "m³" ? value.toFixed(2) : number(value)} ${unit}`.trim();

const money = (cost: Cost | undefined, currency: string): string =>
  cost ? `${currency}${number(Math.round(cost.amount))}${cost.basis === "invented" ? " *" : ""}` : "";

const groups: readonly OrderGroup[] = ["concrete", "steel", "ground", "edges and joints", "old slab"];

const listLines = ({ lines, total }: Order): readonly string[] =>
  groups.flatMap((group) => {
    const rows = lines.filter((line) => line.group === group);
    if (rows.length === 0) return [];
    return [
      "",
      group.toUpperCase(),
      ...table(
        rows.map(({ what, takes, buy, sold, cost }) => [
          what,
          figure(takes),
          sold ? `${number(buy.value)} ${sold}` : figure(buy),
          money(cost, total.currency),
        ]),
      ),
      ...rows.flatMap(({ what, note }) => (note && group !== "concrete" ? wrap(`${what}: ${note}`, "    ") : [])),
    ];
  });

const checkLines = ({ demand, capacity, ratio, title }: Check): readonly string[] => [
  `  ${title}: ${number(ratio)}`,
  ...unfold(demand, 2),
  ...unfold(capacity, 2),
];

const workings = (order: Order): readonly string[] => [
  "",
  "WORKINGS",
  ...unfold(order.ordered, 1),
  ...unfold(order.bags.withWaste, 1),
  ...checkLines(order.bags.guard),
  ...(order.drag ? unfold(order.drag, 1) : []),
  ...order.lines.filter(({ id }) => id !== "concrete").flatMap(({ buy }) => unfold(buy, 1)),
];

/** Quantities to order first, then the mix, then every other thing to get, prices and warnings. */
export const orderLines = (order: Order, fold: "folded" | "unfolded"): string[] => {
  const { total, bags } = order;
  return [
    order.title,
    "",
    `ORDER ${figure(order.ordered)} of concrete, ${order.loads.value === 1 ? "one load" : `${order.loads.value} loads`}`,
    ...(order.pours === "job"
      ? []
      : wrap(`Sized as the remedy "${order.pours}": draw it in the job before it is ordered.`)),
    ...table([
      ...order.parts.map(({ name, term }) => [name, term ? figure(term) : ""]),
      ["net", figure(order.net)],
      ["with waste", figure(order.withWaste)],
    ]),
    "",
    ...wrap(bags.sentence),
    `  ${figure(bags.net)} ${bags.net.words}, ${figure(bags.withWaste)} with it: ${money(bags.bagsCost, total.currency)}; by truck ${money(bags.truckCost, total.currency)}`,
    "",
    "MIX",
    ...table(order.mix.map(({ what, words, basis }) => [what, words, basis])),
    ...listLines(order),
    "",
    `TOGETHER ${total.currency}${number(Math.round(total.amount))}, without labour and what has no price${total.invented === "some" ? "; * invented figure, replace with your own quotes (prices)" : ""}`,
    ...(fold === "unfolded" ? workings(order) : []),
    "",
    ...order.warnings.flatMap((words) => wrap(words, "! ")),
  ];
};
