import type { FoundValue } from "../values/index.ts";
import { numberWords, spokenNumber } from "../values/index.ts";
import type { Claim } from "./claim.ts";
import type { FieldName } from "./field-names.ts";
import type { Statement } from "./statement.ts";

interface WordRule {
  readonly field: FieldName;
  /** words in the order they are tried; the first that fits is taken */
  readonly says: readonly (readonly [RegExp, string])[];
  readonly needs: RegExp;
  readonly unless?: RegExp;
  readonly confidence: "sure" | "likely";
}

const wordRules: readonly WordRule[] = [
  {
    field: "top",
    says: [
      [
        /without (?:an? )?(?:upper|overhead) ?(?:cross ?)?-?beam|floor ?-?plate|base ?-?plate style|open[- ]top|free[- ]standing/i,
        "free-standing",
      ],
      [/overhead (?:cross ?)?-?beam|upper cross ?-?beam|clear[- ]?floor|overhead[- ]tie|arch\b/i, "overhead-tied"],
    ],
    needs: /construction|design|style|type|kind|column tops|configuration|lift\b/i,
    unless: /torque|tighten|bolts|screws|raise|lower|ceiling|hang/i,
    confidence: "likely",
  },
  {
    field: "arms",
    says: [
      [/asymmetric/i, "asymmetric"],
      [/symmetric/i, "symmetric"],
    ],
    needs: /arms?\b|style|design|construction|configuration|lift\b/i,
    confidence: "sure",
  },
  {
    field: "anchors.product.kind",
    says: [
      [/(?:wedge|expansion)[- ](?:type )?(?:anchors?|dowels?|bolts?)/i, "expansion"],
      [/screw anchors?|concrete screws?/i, "screw"],
      [/(?:adhesive|chemical|epoxy|bonded|resin)[- ](?:anchors?|dowels?)/i, "adhesive"],
      [/sleeve anchors?/i, "sleeve"],
      [/undercut anchors?/i, "undercut"],
      [/cast-in (?:anchors?|bolts?)/i, "cast-in"],
    ],
    needs: /anchors?|dowels?|bolts?|screws?/i,
    unless: /do not use|never use|instead of|not permitted|if (?:you|chemical|adhesive)|alternativ|except/i,
    confidence: "sure",
  },
  {
    field: "asks.reinforcement",
    says: [
      [/wire mesh|welded wire|steel mesh|wire fabric|mesh\b/i, "mesh"],
      [/rebars?\b|reinforcing (?:steel )?bars?|steel bars?|deformed bars?|re-?bars?\b/i, "bars"],
      [/fib(?:er|re)s?\b/i, "fibre"],
      [/un-?reinforced|plain concrete|no reinforcement/i, "none"],
    ],
    needs: /concrete|slab|foundation|ground plate|reinforc|armour|steel in/i,
    unless: /hit|strike|avoid|cut through|if (?:you|rebar|the)|do not drill/i,
    confidence: "sure",
  },
];

/** Words of the lift sheet's lists that a statement says. */
export const claimWords = ({ text, from }: Statement): readonly Claim[] =>
  wordRules.flatMap(({ field, says, needs, unless, confidence }): readonly Claim[] => {
    if (!needs.test(text) || unless?.test(text)) return [];
    for (const [pattern, word] of says) {
      const match = pattern.exec(text.slice(from));
      if (!match) continue;
      const at = from + match.index;
      const reasons = confidence === "sure" ? [] : ["the manual describes it in words"];
      return [{ field, said: word, from: at, to: at + match[0].length, confidence, reasons, remarks: [] }];
    }
    return [];
  });

const COUNTED = new RegExp(
  `(?<![\\p{L}\\d.,/-])\\(?(?<n>\\d{1,2}|${numberWords})\\)?(?![\\d.,]*\\d)(?! ?(?:in\\b|mm|ft\\b|lbs?\\b|kg|["″]))(?= (?:[\\p{L}\\d/"″.-]+ ){0,4}?(?:anchors?|dowels?|anchor bolts?|bolts)\\b)`,
  "giu",
);
const LAST = /(?:[:\s]|^)\(?(?<n>\d{1,2})\)?\.?\s*(?:pcs?\.?|off|pieces?)?$/iu;
const EACH =
  /(?:per|each|every|a) (?:of the )?(?:columns?|posts?|towers?|base|side)|(?:columns?|posts?)(?: base)? (?:is|are) (?:held|fixed|fastened)/i;

/** How many anchors hold one column. */
export const claimCount = ({ text, from, form }: Statement): readonly Claim[] => {
  if (!/anchors?|dowels?|bolts/i.test(text) || !EACH.test(text)) return [];
  const counted = [...text.matchAll(COUNTED)].findLast(
    (m) => m.index >= from && !/(?:in\.?|mm|x|×)\s*$/.test(text.slice(0, m.index)),
  );
  const last = LAST.exec(text);
  const match = counted ?? (last && last.index >= from - 1 && (form === "cell" || /:/.test(text)) ? last : undefined);
  const words = match?.groups?.n;
  const n = words === undefined ? Number.NaN : (spokenNumber(words) ?? Number(words));
  if (!match || !(n >= 2 && n <= 24)) return [];
  const at = match.index! + match[0].indexOf(words!);
  const said: FoundValue = {
    from: at,
    to: at + words!.length,
    dimension: "number",
    value: n,
    low: n,
    high: n,
    written: String(n),
    unit: "",
    how: [],
  };
  return [{ field: "anchors.count", said, from: said.from, to: said.to, confidence: "sure", reasons: [], remarks: [] }];
};

const SUPPLY =
  /(?<![\d.])\d{3}(?: ?[/-] ?\d{3})? ?V(?:AC|olts?| AC)?\b(?:[,;/ ]*(?:\d{1,2} ?(?:A\b|amps?)|(?:single|one|three|1|3)[- ]?ph(?:ase)?\b|\d{2}(?:\/\d{2})? ?Hz|\d(?:\.\d)? ?(?:kW|HP)\b))*/i;

/** The mains supply, as far as an installer needs it; kept as text. */
export const claimPower = ({ text, from }: Statement): readonly Claim[] => {
  const match = SUPPLY.exec(text.slice(from));
  if (!match) return [];
  const at = from + match.index;
  return [
    {
      field: "power",
      said: match[0].trim(),
      from: at,
      to: at + match[0].length,
      confidence: "likely",
      reasons: ["kept as text"],
      remarks: [],
    },
  ];
};
