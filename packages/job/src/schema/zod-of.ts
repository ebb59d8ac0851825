import { type Dimension, dimensionWords } from "@floorworthy/engine/quantities";
import { z } from "zod";
import { basisKeys } from "../fields/basis.ts";
import type { AnyField, Shape, Words } from "../fields/field.ts";
import { type PricedBy, priceExample } from "../fields/index.ts";

type Of<K extends Shape["kind"]> = Extract<Shape, { readonly kind: K }>;

const scalar = z.union([z.string(), z.number(), z.boolean()]);

const basisWord = z.enum(["measured", "documented", "assumed", "stated", "unknown"]);

const basisFields = Object.fromEntries(basisKeys.map((key) => [key, (key === "basis" ? basisWord : scalar).nullish()]));

const UNKNOWN = /^\s*[Uu][Nn][Kk][Nn][Oo][Ww][Nn]\s*$/;

const once = <K, V>(make: (key: K) => V): ((key: K) => V) => {
  const made = new Map<K, V>();
  return (key) => {
    const found = made.get(key);
    if (found !== undefined) return found;
    const value = make(key);
    made.set(key, value);
    return value;
  };
};

/** A number with its unit, as text; a bare number only where the dimension has no unit, or zero. */
const written = once((dimension: Dimension) => {
  const { name, example } = dimensionWords[dimension];
  const text = z
    .string()
    .min(1)
    .regex(/\d|[¼½¾⅛⅜⅝⅞⅓⅔]/);
  const bare = dimension === "number" ? z.number() : dimension === "temperature" ? undefined : z.literal(0);
  return (bare ? z.union([text, bare]) : text).meta({ id: dimension, description: `${name}, such as ${example}` });
});

const unknownWord = z.string().regex(UNKNOWN).meta({ id: "unknown", description: "the word unknown" });

const quantityFact = once((dimension: Dimension) => {
  const end = z.union([written(dimension), unknownWord]).nullish();
  const group = z.strictObject({ value: end, low: end, high: end, from: end, to: end, ...basisFields });
  return z.union([written(dimension), unknownWord, group]).meta({ id: `fact-${dimension}` });
});

const priceFact = once((by: PricedBy) => {
  const one = z
    .union([z.string().regex(/\d/), ...(by === "each" ? [z.number().min(0)] : [])])
    .meta({ id: `price-${by}`, description: `a price, such as ${priceExample[by]}` });
  const end = z.union([one, unknownWord]).nullish();
  const group = z.strictObject({ value: end, low: end, high: end, from: end, to: end, ...basisFields });
  return z.union([one, unknownWord, group]).meta({ id: `fact-price-${by}` });
});

const wordOf = (words: Words) => {
  const list = Object.keys(words);
  const numbers = list.filter((word) => /^\d+$/.test(word)).map(Number);
  const texts = z.enum(list as [string, ...string[]]);
  return numbers.length > 0 ? z.union([texts, z.literal(numbers)]) : texts;
};

const choiceOf = ({ words, may }: Of<"choice">) => {
  const one = wordOf(words);
  if (may === "not-be-unknown") return one;
  const value = z.union([one, unknownWord]);
  return z.union([value, z.strictObject({ value: value.nullish(), ...basisFields })]);
};

const pointOf = ({ axes: [a, b] }: Of<"point">) =>
  z.union([
    z.tuple([written("length"), written("length")]),
    z.strictObject({ [a]: written("length"), [b]: written("length") }),
  ]);

const groupOf = once((fields: Of<"group">["fields"]) =>
  z.strictObject(
    Object.fromEntries(
      Object.entries(fields).map(([key, field]) => {
        const inner = zodOf(field).describe(field.doc);
        return [key, field.need === "required" ? inner : inner.nullish()];
      }),
    ),
  ),
);

/** What may be written at a field, as a zod schema of the parsed YAML or JSON. */
export const zodOf = ({ shape }: AnyField): z.ZodType => {
  switch (shape.kind) {
    case "quantity":
      return shape.may === "be-unknown" ? quantityFact(shape.dimension) : written(shape.dimension);
    case "choice":
      return choiceOf(shape);
    case "price":
      return priceFact(shape.by);
    case "text":
      return scalar;
    case "date":
      return z.string().regex(/^\s*\d{4}-\d{2}-\d{2}\s*$|^\s*unknown\s*$/);
    case "version":
      return z.literal([1, "1"]);
    case "point":
      return pointOf(shape);
    case "list":
      return z.array(zodOf(shape.of)).min(shape.least).max(shape.most);
    case "group":
      return groupOf(shape.fields);
    case "either":
      return z.union(shape.of.map(zodOf) as [z.ZodType, z.ZodType, ...z.ZodType[]]);
  }
};
