import type { Entry } from "@floorworthy/job/editing";
import type { AnyField } from "@floorworthy/job/fields";

/** A new list entry that reads without a mistake: what must be written, at a harmless value, to be typed over. */
export const firstEntry = ({ shape }: AnyField, count: number): Entry => {
  switch (shape.kind) {
    case "group": {
      const needed = Object.entries(shape.fields).filter(
        ([key, field]) => field.need === "required" || key === "name" || key === "id",
      );
      const made = Object.fromEntries(needed.map(([key, field]) => [key, firstValue(key, field, count)]));
      return "x" in shape.fields && "from" in shape.fields ? { ...made, x: "10 ft" } : made;
    }
    case "either": {
      const group = shape.of.find((each) => each.shape.kind === "group" && !("width" in each.shape.fields));
      if (group?.shape.kind !== "group") return firstValue("", { shape } as AnyField, count);
      return { ...("id" in group.shape.fields && { id: `${count}` }), ...(firstEntry(group, count) as object) };
    }
    default:
      return firstValue("", { shape } as AnyField, count);
  }
};

const firstValue = (key: string, field: AnyField, count: number): Entry => {
  const { shape } = field;
  switch (shape.kind) {
    case "choice":
      return Object.keys(shape.words)[0] ?? "unknown";
    case "point":
      return key === "to" ? ["10 ft", "2 ft"] : ["2 ft", "2 ft"];
    case "list":
      return shape.of.shape.kind === "point"
        ? [
            ["2 ft", "2 ft"],
            ["10 ft", "2 ft"],
          ]
        : [];
    case "either":
      return { width: "4 ft", depth: "4 ft", corner: ["2 ft", "2 ft"] };
    case "date":
      return new Date().toISOString().slice(0, 10);
    case "group":
      return firstEntry(field, count);
    case "quantity":
      return "unknown";
    case "text":
      return `${count}`;
    default:
      return "unknown";
  }
};
