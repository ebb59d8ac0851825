/** Bars, mesh, fibres, chairs: what to get. */
import { type Polygon, polygonArea } from "@floorworthy/engine/geometry";
import { dragSteel, fibreBags, sheetsFor, wirePerWidth, wireWeight } from "@floorworthy/engine/orders";
import { fromBase, printNumber, type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { tape } from "../joint-plan/index.ts";
import { boxOf } from "../layout.ts";
import { area, count, run, weight } from "./amounts.ts";
import { type BarMat, cutPieces, stockBars } from "./bar-mats.ts";
import { costOf } from "./costs.ts";
import type { OrderLine } from "./order.ts";
import { soldAs, tradeLength } from "./practice.ts";

/** "12 of 15'-6", 30 of 4'-6"": pieces other than whole stock bars, longest first. */
const cutList = (mats: readonly BarMat[], stock: number, units: Job["units"]): string => {
  const kinds = new Map<number, number>();
  for (const piece of mats.flatMap(({ bars }) => bars.flatMap((b) => cutPieces(b.run, stock)))) {
    const mm = Math.round(piece);
    kinds.set(mm, (kinds.get(mm) ?? 0) + 1);
  }
  const rows = [...kinds].toSorted(([a], [b]) => b - a).map(([mm, n]) => `${n} of ${tape(mm, units)}`);
  return rows.length > 8 ? `${rows.slice(0, 7).join(", ")} and ${rows.length - 7} more lengths` : rows.join(", ");
};

export const barLines = (job: Job, mats: readonly BarMat[]): readonly OrderLine[] => {
  const { units } = job;
  const { bar: stock, barWords } = soldAs[units];
  const sizes = [...new Set(mats.map(({ bar }) => bar.size))];
  return sizes.flatMap((size) => {
    const of = mats.filter(({ bar }) => bar.size === size);
    const { bar } = of[0]!;
    const laid = of.flatMap(({ bars }) => bars);
    const length = laid.reduce((sum, { run: r }) => sum + r.length, 0);
    const laps = laid.reduce((sum, { run: r }) => sum + r.laps, 0);
    if (laid.length === 0) return [];
    const needed = stockBars(of, stock);
    return [
      {
        id: `bars-${size.replace(/\W+/g, "")}`,
        group: "steel",
        what: `${size} bars`,
        takes: run("L", `length of ${size} bar, laps counted`, length, units, {
          formula: "Σ (run + laps)",
          from: of.map((mat) => matTerm(mat, units)),
        }),
        buy: count("n", barWords, needed, { formula: "pieces cut out of stock bars, longest first" }),
        sold: barWords,
        note: `Cut: ${cutList(of, stock, units)}.${laps > 0 ? ` ${laps} laps of ${tape(bar.lap, units)}.` : ""} ${printNumber(weight("W", "", needed * stock * bar.weight, units).value, 0)} ${units === "si" ? "kg" : "lb"}.`,
        cost: costOf(job, "bar", needed * stock * bar.weight),
      } satisfies OrderLine,
    ];
  });
};

const matTerm = ({ where, direction, depth, bars, spacing }: BarMat, units: Job["units"]): Term =>
  run(
    "L",
    `${bars.length} bars ${direction === "x" ? "across" : "front to back"} in the ${where.replace(/^the /, "")}${depth === undefined ? "" : `, ${tape(depth, units)} down`}`,
    bars.reduce((sum, b) => sum + b.run.length, 0),
    units,
    { formula: "n × run", worked: `${bars.length} bars at most ${tape(spacing, units)} apart` },
  );

/** A support every 4 ft each way under each mat. */
export const chairLine = (job: Job, mats: readonly BarMat[]): readonly OrderLine[] => {
  const each = tradeLength("chairs", job.units) ** 2;
  const layers = mats.filter(({ direction }) => direction === "x");
  const pieces = layers.map(({ bars, spacing }) =>
    Math.max(4, Math.ceil(bars.reduce((sum, { from, to }) => sum + (to - from) * spacing, 0) / each)),
  );
  const needed = pieces.reduce((sum, n) => sum + n, 0);
  const heights = [...new Set(layers.flatMap(({ depth }) => (depth === undefined ? [] : [tape(depth, job.units)])))];
  return needed === 0
    ? []
    : [
        {
          id: "chairs",
          group: "steel",
          what: "Chairs and concrete bricks",
          takes: count("n", "supports", needed, {
            formula: `area of each mat / (${tape(tradeLength("chairs", job.units), job.units)})²`,
            clause: "common practice, no source",
            from: layers.map(({ where, depth }, i) =>
              count("n", `${where}${depth === undefined ? "" : `, ${tape(depth, job.units)} down`}`, pieces[i]!),
            ),
          }),
          buy: count("n", "supports", needed),
          sold: "pieces",
          note: `Bars ${heights.join(" and ")} below the top, ${tape(tradeLength("cover", job.units), job.units)} clear of soil; none in a window.`,
          cost: undefined,
        },
      ];
};

/** Stock styles of welded wire sheets, lightest first: W number and spacing (Concrete Construction table) [welded-wire]. */
const styles = [
  { name: "6×6 W2.9", W: 2.9, spacing: toBase(6, "in") },
  { name: "6×6 W4.0", W: 4, spacing: toBase(6, "in") },
  { name: "6×6 W5.5", W: 5.5, spacing: toBase(6, "in") },
  { name: "4×4 W4.0", W: 4, spacing: toBase(4, "in") },
] as const;

/** Friction 1.5 by custom, 145 pcf, two thirds of a yield of 60 ksi. */
const DRAG = { friction: 1.5, weight: toBase(145, "pcf"), stress: toBase(40, "ksi") } as const;

/** Steel per width that drags half the longest panel over its base. */
export const dragFor = (longest: number, slab: number): Term =>
  dragSteel(DRAG.friction, longest, slab, DRAG.weight, DRAG.stress);

const perFoot = (perWidth: number): number => fromBase(perWidth * 304.8, "in²");

/** in² per ft that the slab's bars give in their weaker direction. */
export const slabBarSteel = (mats: readonly BarMat[]): number => {
  const of = (direction: "x" | "y") =>
    mats
      .filter((mat) => mat.where === "slab" && mat.direction === direction)
      .reduce((sum, { bar, spacing }) => sum + perFoot((Math.PI * bar.diameter ** 2) / 4 / spacing), 0);
  return Math.min(of("x"), of("y"));
};

export const meshLine = (job: Job, outline: Polygon, drag: Term): readonly OrderLine[] => {
  const { units } = job;
  const { sheet, sheetWords } = soldAs[units];
  const style = styles.find(({ W, spacing }) => perFoot(wirePerWidth(W, spacing)) >= drag.value) ?? styles.at(-1)!;
  const box = boxOf(outline);
  const [width, length] = [box.x1 - box.x0, box.y1 - box.y0];
  const lap = tradeLength("meshLap", units);
  const covered = polygonArea(outline);
  const whole = sheetsFor(length, width, { ...sheet, lap });
  const sheets = Math.min(
    whole,
    covered < 0.98 * width * length ? Math.ceil((covered / ((sheet.length - lap) * (sheet.width - lap))) * 1.1) : whole,
  );
  const heavy = weight("W", "", sheets * sheet.length * sheet.width * wireWeight(style.W, style.spacing), units);
  return [
    {
      id: "mesh",
      group: "steel",
      what: `Welded wire mesh ${style.name}`,
      takes: area("A", "slab to cover", covered, units, { from: [drag] }),
      buy: count("n", sheetWords, sheets, { formula: `sheets lapped ${tape(lap, units)}` }),
      sold: sheetWords,
      note: `Gives ${printNumber(perFoot(wirePerWidth(style.W, style.spacing)), 3)} in² per ft; the largest panel needs ${printNumber(drag.value, 3)}. On chairs in the upper half, cut out at the windows, ${printNumber(heavy.value, 0)} ${heavy.unit}.`,
      cost: costOf(job, "mesh", sheets * sheet.length * sheet.width),
    },
  ];
};

/** Bags as fibres are sold, by what they are; look at the bag. */
const fibreKind = (dosage: number): { readonly what: string; readonly bag: number; readonly words: string } =>
  dosage >= 10
    ? { what: "Steel fibres", bag: 20, words: "bags of 20 kg (44 lb)" }
    : dosage >= 1.5
      ? { what: "Long synthetic fibres", bag: 2.268, words: "bags of 5 lb (2.27 kg)" }
      : { what: "Short synthetic fibres", bag: 0.4536, words: "bags of 1 lb (0.45 kg)" };

export const fibreLine = (job: Job, ordered: number): readonly OrderLine[] => {
  const { units, pour } = job;
  if (!pour?.fibre.known || !(pour.fibre.value > 0)) return [];
  const dosage = pour.fibre.value;
  const { what, bag, words } = fibreKind(dosage);
  const bags = fibreBags(ordered, dosage, bag);
  const unit = units === "si" ? ("kg/m³" as const) : ("lb/yd³" as const);
  return [
    {
      id: "fibre",
      group: "steel",
      what,
      takes: weight("W", "fibres", (ordered / 1e9) * dosage * 9.80665, units, {
        formula: "V × dosage",
        from: [{ symbol: "q", words: "dosage", value: fromBase(dosage, unit), unit }],
      }),
      buy: count("n", words, bags),
      sold: words,
      note: "Size of bag invented: look at yours. Put in at the plant, or a bag at a time with the drum turning fast.",
      cost: costOf(job, "fibre", bags * bag * 9.80665),
    },
  ];
};
