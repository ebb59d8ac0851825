import {
  alternateStrength,
  type Core,
  coreFactorsAci2144,
  type EquivalentStrength,
  type InPlaceStrength,
  inPlaceStrength,
  toleranceFactorStrength,
} from "@floorworthy/engine/concrete";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { en13791Beside } from "./cores-en13791.ts";
import type { End } from "./known.ts";
import { shown, term } from "./print.ts";
import type { Evidence, TestedCore } from "./strength-finding.ts";

/** For an ordinary structure; ACI 214.4R-10 gives 0.90 and 0.95 for very important and crucial ones (from memory). */
const CONFIDENCE = 0.75;
/** one slab, probably more than one truck; ACI 214.4R-10 Table 9.6 */
const BATCHES = "many-batches-one-member";
/** a single core under this share of f'c rules f'c out; ACI 318-19 26.12.6.1(e) */
const SINGLE = 0.75;

/**
 * Equivalent specified strength of old concrete: the tolerance-factor method counts, the alternate method and EN 13791
 * stand beside. Fewer than three cores give no bound, only a ceiling. @clause ACI 214.4R-10, 9.4
 */
export const oldFloorCores = (job: Job, cores: readonly TestedCore[], otherwise: Evidence): Evidence => {
  const refused = cores.filter((core) => isUnable(coreFactorsAci2144(asCore(core, "worst"))));
  const used = cores.filter((core) => !refused.includes(core));
  const notes = [...refusedNote(refused.length), ...sizeNote(used)];
  const place = inPlaceStrength(used.map((core) => asCore(core, "worst")));
  const better = inPlaceStrength(used.map((core) => asCore(core, "best")));
  if (isUnable(place) || isUnable(better)) return { ...otherwise, notes };
  const rows = coreTerms(job, place, used);
  const atMost = Math.min(...better.cores.map((core) => core.strength)) / SINGLE;
  const found = toleranceFactorStrength(place.sample, place.factorSpread, CONFIDENCE);
  if (isUnable(found)) return fewCores(job, place, rows, atMost, otherwise, notes);
  const other = alternateStrength(place.sample, place.factorSpread, CONFIDENCE, BATCHES);
  const workings = equivalentTerm(job, place, found, rows);
  return {
    shown: found.strength,
    worst: found.strength,
    best: Math.max(better.sample.mean, found.strength),
    why: `${used.length} cores as an old floor: equivalent strength by the tolerance-factor method of ACI 214.4R, ${Math.round(100 * CONFIDENCE)} % confidence`,
    from: "cores",
    atMost: undefined,
    workings,
    beside: [...(isUnable(other) ? [] : [alternateTerm(job, place, other)]), ...en13791Beside(job, place)],
    notes: [...notes, ...moreNote(job, place, found.strength)],
  };
};

const asCore = ({ strength, diameter, length, moisture }: TestedCore, end: End): Core => {
  const d = diameter.known ? diameter.value : end === "worst" ? 152.4 : 101.6;
  const state = { "as-received": "as-received", soaked: "soaked", dry: "air-dried" } as const;
  return {
    strength: end === "worst" ? strength.low : strength.high,
    diameter: d,
    length: length.known ? length.value : end === "worst" ? d : 2 * d,
    moisture: moisture.known ? state[moisture.value] : end === "worst" ? "air-dried" : "soaked",
  };
};

const refusedNote = (count: number): string[] =>
  count === 0
    ? []
    : [
        `${count} core${count === 1 ? " is" : "s are"} shorter than ${count === 1 ? "its" : "their"} diameter and not judged`,
      ];

const sizeNote = (cores: readonly TestedCore[]): string[] => {
  const open = cores.filter((c) => !c.diameter.known || !c.length.known || !c.moisture.known).length;
  return open === 0
    ? []
    : [
        `for ${open} core${open === 1 ? "" : "s"} size or moisture is not written: counted as short, wide and dry; the laboratory's report says it`,
      ];
};

const fewCores = (
  job: Job,
  place: InPlaceStrength,
  rows: readonly Term[],
  atMost: number,
  otherwise: Evidence,
  notes: readonly string[],
): Evidence => {
  const { count, lowest } = place.sample;
  const worst = Math.min(otherwise.worst, lowest);
  const why = `${count} core${count === 1 ? "" : "s"} give${count === 1 ? "s" : ""} no bound: at least three are needed (ACI 214.4R), so ${3 - count} more; until then ${shown(worst, "stress", job.units)} counts`;
  return {
    ...otherwise,
    worst,
    best: Math.max(worst, Math.min(otherwise.best, atMost)),
    why,
    from: "cores",
    atMost,
    workings: term("f'c", "compressive strength counted with too few cores", worst, "stress", job.units, {
      basis: why,
      from: [otherwise.workings, ...rows],
    }),
    notes,
  };
};

const coreTerms = ({ units }: Job, place: InPlaceStrength, cores: readonly TestedCore[]): Term[] =>
  place.cores.map(({ core, factors, strength }, i) =>
    term(`f_c${i + 1}`, `core ${i + 1} turned into concrete in place`, strength, "stress", units, {
      formula: "F_l/d F_dia F_mc F_d f_core",
      worked: [
        ...factors.map((f) => String(Math.round(f.value * 1000) / 1000)),
        shown(core.strength, "stress", units),
      ].join(" × "),
      clause: "ACI 214.4R-10 Eq. 8-1, from memory",
      from: [
        term("f_core", "as broken", core.strength, "stress", units, { basis: cores[i]!.strength.written }),
        ...factors.map((f) =>
          term(factorSymbols[f.name], `correction for ${f.name}`, f.value, "plain", units, {
            clause: "ACI 214.4R-10 Table 8.1 and 9.1, from memory",
            basis: `coefficient of variation ${Math.round(1000 * f.variation) / 10} %`,
          }),
        ),
      ],
    }),
  );

const factorSymbols = { length: "F_l/d", diameter: "F_dia", moisture: "F_mc", damage: "F_d" } as const;

const sampleTerms = ({ units }: Job, place: InPlaceStrength, rows: readonly Term[]): Term[] => [
  term("f̄c", "mean in-place strength", place.sample.mean, "stress", units, { from: rows }),
  term("s_c", "spread of the cores", place.sample.spread, "stress", units),
  term("s_a", "spread that the correction factors add", place.factorSpread, "stress", units, {
    clause: "ACI 214.4R-10 Eq. 9-4, from memory",
  }),
];

const equivalentTerm = (job: Job, place: InPlaceStrength, found: EquivalentStrength, rows: readonly Term[]): Term =>
  term("f'c,eq", "equivalent specified strength, tolerance-factor method", found.strength, "stress", job.units, {
    formula: "f̄c − √[(K s_c)² + (Z s_a)²]",
    clause: "ACI 214.4R-10 9.4.1, from memory",
    from: [
      ...sampleTerms(job, place, rows),
      term("K", `one-sided tolerance factor of ${place.sample.count} cores`, found.factor, "plain", job.units, {
        clause: "ACI 214.4R-10 Table 9.3; Natrella 1963",
      }),
      term("Z", "factor for the corrections", found.Z, "plain", job.units, {
        clause: "ACI 214.4R-10 Table 9.4, from memory",
      }),
    ],
  });

const alternateTerm = (job: Job, place: InPlaceStrength, found: EquivalentStrength): Term =>
  term("f'c,eq", "beside it: equivalent strength by the alternate method", found.strength, "stress", job.units, {
    formula: "0.85 {f̄c − √[(T s_c)²/n + (Z s_a)²]}",
    clause: "ACI 214.4R-10 9.4.2, from memory",
    from: [
      ...sampleTerms(job, place, []),
      term("T", `Student's t of ${place.sample.count} cores`, found.factor, "plain", job.units),
    ],
  });

const MOST = 30;

/** How many more cores like these would bring the equivalent strength to what the maker asks. */
const moreNote = (job: Job, place: InPlaceStrength, now: number): string[] => {
  const asked = job.lift.asks.strength;
  if (!asked.known || now >= asked.high) return [];
  const reaches = (count: number): boolean => {
    const found = toleranceFactorStrength({ ...place.sample, count }, place.factorSpread, CONFIDENCE);
    return !isUnable(found) && found.strength >= asked.high;
  };
  const limit = shown(asked.high, "stress", job.units);
  for (let count = place.sample.count + 1; count <= MOST; count++)
    if (reaches(count)) {
      const more = count - place.sample.count;
      return [`${more} more core${more === 1 ? "" : "s"} like these would bring the bound to ${limit}`];
    }
  return [`no reasonable number of cores like these would bring the bound to ${limit}`];
};
