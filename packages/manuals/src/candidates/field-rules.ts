import { type Dimension, toBase } from "@floorworthy/engine/quantities";
import type { FieldName } from "./field-names.ts";
import type { Subject } from "./subjects.ts";

/** How a manual speaks of one line of the lift sheet. */
export interface FieldRule {
  readonly field: FieldName;
  readonly dimension: Dimension;
  /** the words that name it */
  readonly cue: RegExp;
  /** its text speaks of one of these; any subject when left out */
  readonly about?: readonly Subject[];
  /** words in the sentence that make it something else */
  readonly unless?: RegExp;
  /** words the sentence must have besides */
  readonly needs?: RegExp;
  /** said this way it needs no subject */
  readonly alone?: RegExp;
  /** base units; outside a person must look */
  readonly usual: readonly [number, number];
  /** which of two values asks more */
  readonly demanding: "higher" | "lower" | "neither";
}

const inches = (low: number, high: number): readonly [number, number] => [toBase(low, "in"), toBase(high, "in")];
const pounds = (low: number, high: number): readonly [number, number] => [toBase(low, "lb"), toBase(high, "lb")];

const MACHINE = /hydraulic|pressure|oil\b|pump|gauge|valve|air supply|tyre|tire/i;
const SPACED = /rebars?|reinforc|\bbars? (?:at|spaced)|o\.c\.|joint spacing/i;

export const fieldRules: readonly FieldRule[] = [
  {
    field: "rated",
    dimension: "force",
    cue: /rated (?:lifting )?(?:capacity|load)|(?:lifting|load|bearing|carrying) capacity|capacity|lifts up to|max(?:imum|\.)? (?:lifting |lift )?(?:weight|load)|safe working load|rated at/gi,
    unless: /(?:capacity|load) (?:of|per) (?:each |an? )?arm|arm capacity|jack|crate|fork|adapter|beam|tank|reservoir/i,
    usual: pounds(2000, 80_000),
    demanding: "higher",
  },
  {
    field: "columnWeight",
    dimension: "force",
    cue: /weigh(?:s|ing)?\b|weights?\b|mass\b/gi,
    about: ["column"],
    unless: /lifting weight|crate|package|shipping|total weight|vehicle/i,
    usual: pounds(150, 4000),
    demanding: "higher",
  },
  {
    field: "weight",
    dimension: "force",
    cue: /(?:total|net|own|dead|lift) weight|weight of (?:the )?lift/gi,
    unless: /crate|package|shipping|vehicle|column/i,
    usual: pounds(500, 20_000),
    demanding: "higher",
  },
  {
    field: "spacing",
    dimension: "length",
    cue: /cent(?:er|re)s?(?:[- ]?(?:to|-)[- ]?|[- ]on[- ])cent(?:er|re)s?|(?:column|post) (?:cent(?:er|re)s|axes|spacing)|on cent(?:er|re)s?|ax(?:ial|is|es) distance|distance (?:of|between) (?:the )?(?:columns?|posts?)[' ]*(?:cent(?:er|re)s|axes|axis)/gi,
    about: ["column"],
    unless: /rebar|hole spacing|anchor spacing|#\d/i,
    usual: inches(70, 220),
    demanding: "neither",
  },
  {
    field: "columnsInside",
    dimension: "length",
    cue: /(?:width|distance|clearance|inside|clear)(?: \w+)? (?:between|of|inside) (?:the )?(?:columns|posts)(?![' ]*(?:cent|ax))|inside (?:of )?columns|drive[- ]?through(?: width)?|between (?:the )?(?:columns|posts)(?! (?:cent|ax))/gi,
    unless: /cent(?:er|re)|ax(?:[ie]s|ial)/i,
    usual: inches(60, 200),
    demanding: "neither",
  },
  {
    field: "overallHeight",
    dimension: "length",
    cue: /(?:overall|total) height|height,? over ?all|(?:tall|high) over ?all|column height/gi,
    usual: inches(70, 280),
    demanding: "higher",
  },
  {
    field: "overallWidth",
    dimension: "length",
    cue: /(?:overall|total) width|width,? over ?all|wide over ?all/gi,
    usual: inches(80, 260),
    demanding: "higher",
  },
  {
    field: "tieHeight",
    dimension: "length",
    cue: /height (?:of|to|under|below) (?:the )?(?:overhead |upper |cross ?)*beam|(?:cross ?)?beam height|floor to (?:the )?(?:overhead )?(?:cross ?)?beam/gi,
    usual: inches(90, 260),
    demanding: "neither",
  },
  {
    field: "asks.ceiling",
    dimension: "length",
    cue: /ceiling(?: height| clearance)?|(?:room|hall|building|bay) height|headroom|height of the (?:hall|room|ceiling)|overhead clearance/gi,
    unless: /lights?\b|opener|vehicle height/i,
    usual: inches(90, 320),
    demanding: "higher",
  },
  {
    field: "base.width",
    dimension: "length",
    cue: /width|wide/gi,
    about: ["plate"],
    unless: /overall|total width/i,
    usual: inches(8, 48),
    demanding: "neither",
  },
  {
    field: "base.depth",
    dimension: "length",
    cue: /depth|deep|long\b|length/gi,
    about: ["plate"],
    usual: inches(8, 48),
    demanding: "neither",
  },
  {
    field: "base.thickness",
    dimension: "length",
    cue: /thick(?:ness)?/gi,
    about: ["plate"],
    usual: inches(0.25, 2.5),
    demanding: "neither",
  },
  {
    field: "anchors.product.holeDiameter",
    dimension: "length",
    cue: /diam(?:eter)?\b|dia\b\.?|[øØ∅⌀]|\bbits?\b|drill (?:size|bit)/gi,
    about: ["hole"],
    usual: inches(0.3, 2),
    demanding: "neither",
  },
  {
    field: "anchors.product.holeDepth",
    dimension: "length",
    cue: /depth|deep/gi,
    about: ["hole"],
    unless: /anchoring depth|embed/i,
    usual: inches(1.5, 16),
    demanding: "neither",
  },
  {
    field: "anchors.product.diameter",
    dimension: "length",
    cue: /diam(?:eter)?\b|dia\b\.?|[øØ∅⌀]|anchor size/gi,
    about: ["anchor"],
    usual: inches(0.3, 1.6),
    demanding: "neither",
  },
  {
    field: "anchors.product.length",
    dimension: "length",
    cue: /(?:overall )?length|\blong\b/gi,
    about: ["anchor"],
    usual: inches(2, 20),
    demanding: "neither",
  },
  {
    field: "anchors.product.effectiveEmbedment",
    dimension: "length",
    cue: /effective (?:anchor(?:age|ing)? )?(?:embedment|depth)|hef\b/gi,
    usual: inches(1, 16),
    demanding: "higher",
  },
  {
    field: "anchors.product.nominalEmbedment",
    dimension: "length",
    cue: /embed(?:ment|ded|ding)?|anchor(?:ing|age) depth|setting depth|depth of (?:the )?anchor(?:age|ing)?s?\b|anchors? must sit|set(?:ting)? (?:the )?anchors? (?:to )?(?:a )?dep(?:th)?/gi,
    unless: /effective (?:embed|anchor)|bury|conduit/i,
    usual: inches(1.5, 16),
    demanding: "higher",
  },
  {
    field: "anchors.torque",
    dimension: "moment",
    cue: /(?:re-?)?torqu(?:e|ed|ing)|tighten(?:ed|ing)?/gi,
    about: ["anchor"],
    unless:
      /(?:cross ?|upper |overhead )?beam (?:bolts|screws)|(?:bolts|screws)[^.;]* (?:beam|arm|pump|motor)|arm pin|motor/i,
    usual: [toBase(15, "lb-ft"), toBase(600, "lb-ft")],
    demanding: "neither",
  },
  {
    field: "anchors.roundEvery",
    dimension: "time",
    cue: /every|intervals? of|interval|thereafter|periodic\w*/gi,
    about: ["anchor"],
    needs: /re-?torqu|torque|tighten/i,
    alone: /re-?torqu|torque/i,
    unless: /cable|chain|hydraulic|hose|grease|lubricat/i,
    usual: [1, 800],
    demanding: "lower",
  },
  {
    field: "anchors.firstRound",
    dimension: "time",
    cue: /after\b|initial|first|re-?torqu(?:e|ed)(?: at| after)?|within/gi,
    about: ["anchor"],
    needs: /re-?torqu|again|check|inspect|re-?tight|first|initial/i,
    alone: /re-?torqu|torque/i,
    unless: /cable|chain|hydraulic|hose|grease|lubricat|cure|curing|harden/i,
    usual: [0.01, 400],
    demanding: "lower",
  },
  {
    field: "anchors.shimLimit",
    dimension: "length",
    cue: /shims?(?:ming)?(?: (?:stack|height|thickness))?/gi,
    about: ["shim"],
    usual: inches(0.05, 4),
    demanding: "lower",
  },
  {
    field: "asks.thickness",
    dimension: "length",
    cue: /thick(?:ness|er)?|\bdepth\b|\bdeep\b/gi,
    about: ["concrete"],
    unless: /\bbars?\b.*spaced|saw ?cut|gravel|insulation|asphalt/i,
    usual: inches(2.9, 40),
    demanding: "higher",
  },
  {
    field: "asks.strength",
    dimension: "stress",
    cue: /compressive strength|(?:compression|compressive)\b|tensile strength|strength|quality|concrete (?:class|grade)|grade|class\b|concrete|f'?c\b/gi,
    about: ["concrete"],
    alone: /compressive strength/i,
    unless: MACHINE,
    usual: [toBase(1800, "psi"), toBase(9000, "psi")],
    demanding: "higher",
  },
  {
    field: "asks.days",
    dimension: "time",
    cue: /cur(?:e[ds]?|ing)\b|harden(?:ed|ing)?(?: time)?|\bage[ds]?\b|\bold\b|set(?:ting)? time/gi,
    about: ["concrete"],
    alone: /cur(?:e|ing) time|before (?:drilling|install)/i,
    unless: /adhesive|epoxy|grout|hose|warranty/i,
    usual: [2, 100],
    demanding: "higher",
  },
  {
    field: "asks.edge",
    dimension: "length",
    cue: /(?:slab |free |any )?edges?\b|edge distance|\brim\b|\bborders?\b/gi,
    unless: SPACED,
    usual: inches(2, 80),
    demanding: "higher",
  },
  {
    field: "asks.joint",
    dimension: "length",
    cue: /(?:control|expansion|contraction|construction|cold) joints?|joints?\b|saw ?cuts?|seams?\b/gi,
    unless: SPACED,
    usual: inches(2, 120),
    demanding: "higher",
  },
  {
    field: "asks.crack",
    dimension: "length",
    cue: /cracks?\b|cracking/gi,
    unless: /wider than|wide\b|width of|thickness lost/i,
    usual: inches(2, 120),
    demanding: "higher",
  },
  {
    field: "asks.wall",
    dimension: "length",
    cue: /walls?\b/gi,
    unless: /wall thickness|wall outlet|thick wall/i,
    usual: inches(4, 240),
    demanding: "higher",
  },
  {
    field: "asks.slope",
    dimension: "number",
    cue: /slopes?d?\b|inclination|incline|unevenness|out of level|\blevel(?:ness)?\b|pitch\b/gi,
    unless: /oil level|thread pitch|latch|fluid/i,
    usual: [0, 0.06],
    demanding: "lower",
  },
  {
    field: "reactions.P",
    dimension: "force",
    cue: /(?:vertical|downward) (?:force|load|reaction)|reaction force|load (?:per|on each) column|(?:floor|foundation|base) (?:load|reaction)/gi,
    usual: pounds(500, 80_000),
    demanding: "higher",
  },
  {
    field: "reactions.Min",
    dimension: "moment",
    cue: /(?:overturning |bending |base )?moment(?: (?:across|lateral|mx|inward))?/gi,
    unless: /torque/i,
    usual: [1e5, 1e9],
    demanding: "higher",
  },
  {
    field: "reactions.Vu",
    dimension: "force",
    cue: /(?:shear|horizontal) (?:force|load|reaction)/gi,
    usual: pounds(20, 20_000),
    demanding: "higher",
  },
];

const byName = new Map(fieldRules.map((rule) => [rule.field, rule]));

export const ruleOf = (field: FieldName): FieldRule | undefined => byName.get(field);
