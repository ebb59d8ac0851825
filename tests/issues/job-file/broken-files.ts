/** A broken job file and every message it must get: code, line:column, path, what is wrong, what to write. */
export interface BrokenFile {
  readonly title: string;
  readonly text: string;
  readonly issues: readonly string[];
}

const HEAD = "floorworthy: 1\ntitle: t\n";
const SHORT = `${HEAD}lift: { name: L, kind: two-post }\n`;
const LONG = `${HEAD}lift:\n  name: L\n  kind: two-post\n`;
const BAY = `${SHORT}bay: { outline: { width: 24 ft, depth: 30 ft } }\n`;

export const brokenFiles: readonly BrokenFile[] = [
  {
    title: "nothing at all",
    text: "",
    issues: ["empty-file 1:1 The file is empty. Begin with the line floorworthy: 1."],
  },
  {
    title: "only a remark",
    text: "# a remark\n",
    issues: ["empty-file 1:1 The file is empty. Begin with the line floorworthy: 1."],
  },
  {
    title: "a list instead of keys",
    text: "- floorworthy: 1\n",
    issues: ["not-a-group 1:1 The file does not begin with keys. Begin with the line floorworthy: 1."],
  },
  {
    title: "a text instead of keys",
    text: "thickness is four inches\n",
    issues: ["not-a-group 1:1 The file does not begin with keys. Begin with the line floorworthy: 1."],
  },
  {
    title: "no version line",
    text: "title: t\nlift: { name: L, kind: two-post }\n",
    issues: [
      "missing-version 1:1 floorworthy: The version line is missing. Begin the file with the line floorworthy: 1.",
    ],
  },
  {
    title: "a version from the future",
    text: "floorworthy: 7\ntitle: t\nlift: { name: L, kind: two-post }\n",
    issues: [
      'unknown-version 1:14 floorworthy: The version "7" is not known here. The file is from a newer program: use that one.',
    ],
  },
  {
    title: "a version that is no number",
    text: "floorworthy: latest\ntitle: t\nlift: { name: L, kind: two-post }\n",
    issues: ['unknown-version 1:14 floorworthy: The version "latest" is not known here. Write floorworthy: 1.'],
  },
  {
    title: "nothing but the version",
    text: "floorworthy: 1\n",
    issues: [
      'missing-key 1:1 title: "title" is missing. Needed: what the job is called, in a few words.',
      'missing-key 1:1 lift: "lift" is missing. Needed: the lift, as its maker\'s sheet describes it.',
    ],
  },
  {
    title: "a tab for indentation",
    text: `${LONG}	rated: 9000 lb\n`,
    issues: ["tabs 6:1 This line is indented with a tab. Indent with spaces."],
  },
  {
    title: "a colon inside a text",
    text: `${SHORT}place: left bay: third door\n`,
    issues: [
      "syntax 4:8 The file cannot be read from here on: Nested mappings are not allowed in compact mappings. Put a text that holds a colon in quotes.",
    ],
  },
  {
    title: "a quote that is never closed",
    text: `${SHORT}place: "by the river\n`,
    issues: [
      'syntax 5:1 The file cannot be read from here on: Missing closing "quote. Check quotes, brackets and colons on this line and the one before.',
    ],
  },
  {
    title: "a bracket that is never closed",
    text: `${SHORT}columns: { left: [5 ft, 12 ft], right: [15 ft, 12 ft]\n`,
    issues: [
      "syntax 5:1 The file cannot be read from here on: Flow map in block collection must be sufficiently indented and end with a }. Keys of one group begin in the same column.",
    ],
  },
  {
    title: "keys of one group in different columns",
    text: `${SHORT}floor:\n    state: standing\n  thickness: 4 in\n`,
    issues: [
      "syntax 6:1 The file cannot be read from here on: All mapping items must start at the same column. Keys of one group begin in the same column.",
    ],
  },
  {
    title: "two documents",
    text: `${SHORT}---\n${SHORT}`,
    issues: ["several-documents 4:1 A second document begins here. Keep one job per file and take the line --- away."],
  },
  {
    title: "an anchor and an alias",
    text: `${SHORT}floor:\n  thickness: &t 4 in\n  ageDays: *t\n`,
    issues: [
      "alias 5:17 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
      "alias 6:12 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
    ],
  },
  {
    title: "aliases that would unfold to gigabytes",
    text: "a: &a [x, x]\nb: &b [*a, *a]\n",
    issues: [
      "alias 1:7 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
      "alias 2:7 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
      "alias 2:8 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
      "alias 2:12 Anchors, aliases and tags are not part of the form. Write the value out where it is needed.",
    ],
  },
  {
    title: "a tag",
    text: `${SHORT}customer: !!str 12\n`,
    issues: ["alias 4:17 Anchors, aliases and tags are not part of the form. Write the value out where it is needed."],
  },
  {
    title: "a key that is not in the form, near one that is",
    text: `${SHORT}florr: { thickness: 4 in }\n`,
    issues: ['unknown-key 4:1 florr: "florr" is not a key of a job. Did you mean floor?'],
  },
  {
    title: "a key that is near none",
    text: `${SHORT}colour: blue\n`,
    issues: [
      'unknown-key 4:1 colour: "colour" is not a key of a job. Keys here: floorworthy, title, customer, place, date, units, setting, lift, bay, floor, columns, vehicles, pad, pour, prices, installation, visits, choices.',
    ],
  },
  {
    title: "a key with other capitals",
    text: `${LONG}  RatedLoad: 9000 lb\n`,
    issues: ['unknown-key 6:3 lift.RatedLoad: "RatedLoad" is not a key of a lift. Did you mean rated?'],
  },
  {
    title: "a key with a hyphen",
    text: `${LONG}  tie-height: 140 in\n`,
    issues: ['unknown-key 6:3 lift.tie-height: "tie-height" is not a key of a lift. Did you mean tieHeight?'],
  },
  {
    title: "keys that mean something to the machine",
    text: `${SHORT}__proto__: { polluted: yes }\nconstructor: x\n`,
    issues: [
      'unknown-key 4:1 __proto__: "__proto__" is not a key of a job. Keys here: floorworthy, title, customer, place, date, units, setting, lift, bay, floor, columns, vehicles, pad, pour, prices, installation, visits, choices.',
      'unknown-key 5:1 constructor: "constructor" is not a key of a job. Keys here: floorworthy, title, customer, place, date, units, setting, lift, bay, floor, columns, vehicles, pad, pour, prices, installation, visits, choices.',
    ],
  },
  {
    title: "the same key twice",
    text: `${SHORT}customer: A\ncustomer: B\n`,
    issues: ['duplicate-key 5:1 customer: The key "customer" stands twice. Keep one of them.'],
  },
  {
    title: "no lift",
    text: HEAD,
    issues: ['missing-key 1:1 lift: "lift" is missing. Needed: the lift, as its maker\'s sheet describes it.'],
  },
  {
    title: "a lift without a name and kind",
    text: `${HEAD}lift: { rated: 9000 lb }\n`,
    issues: [
      'missing-key 3:7 lift.name: "name" is missing. Needed: the lift\'s name and model.',
      'missing-key 3:7 lift.kind: "kind" is missing. Needed: what kind of lift.',
    ],
  },
  {
    title: "a needed key left empty",
    text: "floorworthy: 1\ntitle:\nlift: { name: L, kind: two-post }\n",
    issues: ['missing-key 2:1 title: "title" is missing. Needed: what the job is called, in a few words.'],
  },
  {
    title: "a lift that is a text",
    text: `${HEAD}lift: Wainfell 10 Arch\n`,
    issues: [
      'not-a-group 3:7 lift: "Wainfell 10 Arch" stands where the keys of a lift were expected. Write its keys on lines of their own, such as name, kind, manual.',
    ],
  },
  {
    title: "a bare number for a length",
    text: `${SHORT}floor: { thickness: 4 }\n`,
    issues: [
      'bare-number 4:21 floor.thickness: "4" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a bare number for a weight",
    text: `${LONG}  rated: 9000\n`,
    issues: [
      'bare-number 6:10 lift.rated: "9000" has no unit; a weight or force was expected. Write a number and a unit, such as 9000 lb or 40 kN.',
    ],
  },
  {
    title: "a word for a number",
    text: `${SHORT}floor: { thickness: six }\n`,
    issues: [
      'not-a-quantity 4:21 floor.thickness: "six" is not a length. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a unit nobody knows",
    text: `${SHORT}floor: { thickness: 4 inchs }\n`,
    issues: [
      'unknown-unit 4:21 floor.thickness: "4 inchs": the unit "inchs" is not known; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "tons",
    text: `${LONG}  rated: 5 tons\n`,
    issues: [
      'unknown-unit 6:10 lift.rated: "5 tons" can be short tons or tonnes. Write pounds (lb), kilograms (kg) or tonnes (t).',
    ],
  },
  {
    title: "a weight for a length",
    text: `${SHORT}floor: { thickness: 4 lb }\n`,
    issues: [
      'wrong-dimension 4:21 floor.thickness: "4 lb" is a weight or force; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a strength in pounds",
    text: `${SHORT}floor: { strength: { specified: 3000 lb } }\n`,
    issues: [
      'wrong-dimension 4:33 floor.strength.specified: "3000 lb" is a weight; a strength or pressure was expected. Concrete spoken of by the pound is meant per square inch: write 3000 psi.',
    ],
  },
  {
    title: "a decimal comma",
    text: `${SHORT}floor:\n  thickness: 4,5 in\n`,
    issues: [
      'ambiguous-number 5:14 floor.thickness: "4,5 in" can be read in two ways. Write a point before decimals and a comma only between thousands, such as 1.5 or 1,234.5.',
    ],
  },
  {
    title: "points and commas mixed up",
    text: `${LONG}  rated: 9.000,5 lb\n`,
    issues: [
      'ambiguous-number 6:10 lift.rated: "9.000,5 lb" can be read in two ways. Write a point before decimals and a comma only between thousands, such as 1.5 or 1,234.5.',
    ],
  },
  {
    title: "thousands with a comma inside braces",
    text: `${SHORT}vehicles: [{ name: van, weight: 4,600 lb }]\n`,
    issues: [
      'comma-in-braces 4:33 vehicles[0]: "4,600 lb" is cut in two at its comma, because it stands in braces. Put it in quotes, or write 4600 lb.',
    ],
  },
  {
    title: "a number beyond all numbers",
    text: `${SHORT}floor: { thickness: 1e400 in }\n`,
    issues: [
      'number-too-large 4:21 floor.thickness: "1e400 in" is larger than any number this program can hold. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a negative thickness",
    text: `${SHORT}floor: { thickness: -4 in }\n`,
    issues: ['negative 4:21 floor.thickness: "-4 in" is negative. Write a length above zero.'],
  },
  {
    title: "a thickness of zero",
    text: `${SHORT}floor: { thickness: 0 in }\n`,
    issues: ['not-positive 4:21 floor.thickness: "0 in" is zero. Write a length above zero, or unknown.'],
  },
  {
    title: "a vehicle without width, a lift held by glue",
    text: `${HEAD}lift: { name: L, kind: two-post, fixing: glued }\nvehicles: [{ name: van, width: 0 in, height: tall }]\n`,
    issues: [
      'wrong-word 3:42 lift.fixing: "glued" is not a word of the list. Write one of: anchored, loose.',
      'not-positive 4:32 vehicles[0].width: "0 in" is zero. Write a length above zero, or unknown.',
      'not-a-quantity 4:46 vehicles[0].height: "tall" is not a length. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a negative slope",
    text: `${SHORT}floor: { slope: -2 % }\n`,
    issues: ['negative 4:17 floor.slope: "-2 %" is negative. Write a plain number of zero or more.'],
  },
  {
    title: "more than eleven inches after feet",
    text: `${SHORT}bay: { ceiling: 11 ft 14 in }\n`,
    issues: [
      'not-a-quantity 4:17 bay.ceiling: "11 ft 14 in" has 12 inches or more after the feet. Carry them into the feet: 5 ft 14 in is 6 ft 2 in.',
    ],
  },
  {
    title: "a list for one value",
    text: `${SHORT}floor: { thickness: [4 in, 5 in] }\n`,
    issues: [
      "not-a-value 4:21 floor.thickness: A list stands where a length was expected. Write a value such as 6 in or 150 mm, or unknown.",
    ],
  },
  {
    title: "a group of keys for a date",
    text: `${SHORT}date: { year: 2025 }\n`,
    issues: [
      "not-a-value 4:7 date: A group of keys stands where a date was expected. Write year-month-day, such as 2025-03-04.",
    ],
  },
  {
    title: "a word that is not of the list",
    text: `${LONG}  top: hanging\n`,
    issues: [
      'wrong-word 6:8 lift.top: "hanging" is not a word of the list. Write one of: overhead-tied, free-standing.',
    ],
  },
  {
    title: "a word nearly of the list",
    text: `${LONG}  top: overhead-teid\n`,
    issues: [
      'wrong-word 6:8 lift.top: "overhead-teid" is not a word of the list. Did you mean overhead-tied? Write one of: overhead-tied, free-standing.',
    ],
  },
  {
    title: "a basis nobody knows",
    text: `${SHORT}floor: { thickness: { value: 4 in, basis: guessed } }\n`,
    issues: [
      'wrong-word 4:43 floor.thickness.basis: "guessed" is not a basis. Write one of: measured, documented, assumed, stated, unknown.',
    ],
  },
  {
    title: "low above high",
    text: `${SHORT}floor: { thickness: { low: 5 in, high: 4 in } }\n`,
    issues: [
      "low-above-high 4:21 floor.thickness: The low end 5 in lies above the high end 4 in. Swap them or correct one.",
    ],
  },
  {
    title: "a value outside its range",
    text: `${SHORT}floor: { thickness: { value: 6 in, low: 4 in, high: 5 in } }\n`,
    issues: [
      "outside-range 4:21 floor.thickness: The value 6 in does not lie between 4 in and 5 in. Correct the value or its range.",
    ],
  },
  {
    title: "half a range",
    text: `${SHORT}floor: { thickness: { from: 4 in, by: me } }\n`,
    issues: [
      "half-a-range 4:21 floor.thickness: Only one end of the range is written: 4 in. Write both low and high, or a value.",
    ],
  },
  {
    title: "a fact without a value",
    text: `${SHORT}floor: { thickness: { basis: measured } }\n`,
    issues: ["no-value 4:21 floor.thickness: The fact has no value. Write value: 6 in or 150 mm, or basis: unknown."],
  },
  {
    title: "a choice without a value",
    text: `${SHORT}floor: { below: { by: me } }\n`,
    issues: [
      "no-value 4:17 floor.below: The fact has no value. Write value: with one of ground, space, or basis: unknown.",
    ],
  },
  {
    title: "an assumption without a reason",
    text: `${SHORT}floor: { thickness: { value: 4 in, basis: assumed } }\n`,
    issues: ["assumed-without-why 4:43 floor.thickness: An assumed value does not say why. Add why: and the reason."],
  },
  {
    title: "a page of a measurement",
    text: `${SHORT}floor: { thickness: { value: 4 in, basis: measured, page: 3 } }\n`,
    issues: [
      'basis-mismatch 4:53 floor.thickness.page: "page" tells of a value that is documented, and this one is measured. Beside basis measured write by, on, how.',
    ],
  },
  {
    title: "a day that does not exist",
    text: `${SHORT}date: 2025-02-29\n`,
    issues: ["bad-date 4:7 date: The date 2025-02-29 does not exist. Write year-month-day, such as 2025-03-04."],
  },
  {
    title: "a date in another order",
    text: `${SHORT}date: 3/4/2025\n`,
    issues: ['bad-date 4:7 date: "3/4/2025" is not a date. Write year-month-day, such as 2025-03-04.'],
  },
  {
    title: "a measurement on a day that does not exist",
    text: `${SHORT}floor: { thickness: { value: 4 in, on: 2025-13-01 } }\n`,
    issues: [
      "bad-date 4:40 floor.thickness.on: The date 2025-13-01 does not exist. Write year-month-day, such as 2025-03-04.",
    ],
  },
  {
    title: "unknown where a value is needed",
    text: `${SHORT}floor: { strength: { cylinders: [{ strength: 4000 psi, ageDays: unknown }] } }\n`,
    issues: [
      "needs-a-value 4:65 floor.strength.cylinders[0].ageDays: A time is needed here. Write a value such as 28 d, or take the item out.",
    ],
  },
  {
    title: "one coordinate",
    text: `${SHORT}columns: { left: [5 ft], right: [15 ft, 12 ft] }\n`,
    issues: [
      "not-a-point 4:18 columns.left: A place is written as two lengths. Write x and y in brackets, such as [5 ft, 12 ft 3 in].",
    ],
  },
  {
    title: "coordinates without units",
    text: `${SHORT}columns: { left: [60, 144], right: [180 in, 144 in] }\n`,
    issues: [
      'bare-number 4:19 columns.left[0]: "60" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
      'bare-number 4:23 columns.left[1]: "144" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "a coordinate called by the wrong letter",
    text: `${SHORT}columns: { left: { x: 5 ft, z: 2 ft }, right: [15 ft, 12 ft] }\n`,
    issues: ['unknown-key 4:29 columns.left.z: "z" is not a key of a place. Keys here: x, y.'],
  },
  {
    title: "only the left column",
    text: `${SHORT}columns: { left: [5 ft, 12 ft] }\n`,
    issues: ['missing-key 4:10 columns.right: "right" is missing. Needed: the right column\'s centre.'],
  },
  {
    title: "both columns at one place",
    text: `${SHORT}columns: { left: [5 ft, 12 ft], right: [60 in, 144 in] }\n`,
    issues: ["columns-coincide 4:10 columns: Both columns stand at the same place. Correct left or right."],
  },
  {
    title: "an outline of two corners",
    text: `${SHORT}bay: { outline: [[0 ft, 0 ft], [20 ft, 0 ft]] }\n`,
    issues: ["too-few-points 4:17 bay.outline: 2 places are written; at least 3 are needed. Add the missing places."],
  },
  {
    title: "an outline that crosses itself",
    text: `${SHORT}bay: { outline: [[0 ft, 0 ft], [20 ft, 20 ft], [20 ft, 0 ft], [0 ft, 19 ft]] }\n`,
    issues: [
      "crossing-outline 4:17 bay.outline: The outline crosses or touches itself. Write its corners in order, going round.",
    ],
  },
  {
    title: "an outline on one line",
    text: `${SHORT}bay: { outline: [[0 ft, 0 ft], [10 ft, 0 ft], [20 ft, 0 ft]] }\n`,
    issues: ["flat-outline 4:17 bay.outline: The outline encloses no area. Write its corners in order, going round."],
  },
  {
    title: "a rectangle without a depth",
    text: `${SHORT}bay: { outline: { width: 24 ft } }\n`,
    issues: ['missing-key 4:17 bay.outline.depth: "depth" is missing. A rectangle has a width and a depth.'],
  },
  {
    title: "a rectangle placed twice",
    text: `${SHORT}floor: { zones: [{ kind: pad, outline: { width: 4 ft, depth: 4 ft, corner: [1 ft, 1 ft], centre: [3 ft, 3 ft] } }] }\n`,
    issues: [
      "two-placements 4:90 floor.zones[0].outline: The rectangle is placed by its corner and by its centre. Keep one of them.",
    ],
  },
  {
    title: "a zone without outline and kind",
    text: `${SHORT}floor: { zones: [{ thickness: 12 in }] }\n`,
    issues: [
      'missing-key 4:18 floor.zones[0].kind: "kind" is missing. Needed: what it is.',
      'missing-key 4:18 floor.zones[0].outline: "outline" is missing. Needed: its outline, or {width, depth} with corner or centre.',
    ],
  },
  {
    title: "a joint in two ways",
    text: `${BAY}floor: { joints: [{ x: 12 ft, y: 10 ft }] }\n`,
    issues: [
      "joint-place 5:19 floor.joints[0]: The joint is not placed in exactly one way. Write x, or y, or both from and to.",
    ],
  },
  {
    title: "a joint in no way",
    text: `${BAY}floor: { joints: [{ name: cut }] }\n`,
    issues: [
      "joint-place 5:19 floor.joints[0]: The joint is not placed in exactly one way. Write x, or y, or both from and to.",
    ],
  },
  {
    title: "an opening and dowels that cannot be",
    text: `${BAY}floor: { joints: [{ x: 12 ft, opening: -1 mm, dowelDiameter: 0 in, dowelSpacing: 30 }] }\n`,
    issues: [
      'negative 5:40 floor.joints[0].opening: "-1 mm" is negative. Write a length of zero or more.',
      'not-positive 5:62 floor.joints[0].dowelDiameter: "0 in" is zero. Write a length above zero, or unknown.',
      'bare-number 5:82 floor.joints[0].dowelSpacing: "30" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "more feet than a lift has",
    text: `${LONG}  supports: [${Array.from({ length: 25 }, (_, i) => `{ at: [${i} in, 0 in] }`).join(", ")}]\n`,
    issues: [
      "too-many-items 6:13 lift.supports: The list has 25 items; the form takes up to 24. Keep the ones that matter for this lift.",
    ],
  },
  {
    title: "a joint with one end",
    text: `${BAY}floor: { joints: [{ from: [0 ft, 4 ft] }] }\n`,
    issues: [
      "joint-place 5:19 floor.joints[0]: The joint is not placed in exactly one way. Write x, or y, or both from and to.",
    ],
  },
  {
    title: "a joint across a floor without outline",
    text: `${SHORT}floor: { joints: [{ x: 12 ft }] }\n`,
    issues: [
      "joint-without-outline 4:19 floor.joints[0]: A joint right across the floor needs the outline of the bay. Write bay.outline, or the joint's from and to.",
    ],
  },
  {
    title: "a joint beside the floor",
    text: `${BAY}floor: { joints: [{ name: cut, x: 40 ft }] }\n`,
    issues: [
      "joint-outside 5:19 floor.joints[0]: The joint at this x does not cross the bay. Check the distance and the bay's outline.",
    ],
  },
  {
    title: "a joint of no length",
    text: `${BAY}floor: { joints: [{ from: [1 ft, 1 ft], to: [1 ft, 12 in] }] }\n`,
    issues: ["no-length 5:19 floor.joints[0]: The joint begins and ends at the same place. Correct from or to."],
  },
  {
    title: "a crack of one place",
    text: `${SHORT}floor: { cracks: [{ line: [[1 ft, 1 ft]] }] }\n`,
    issues: [
      "too-few-points 4:27 floor.cracks[0].line: One place is written; at least 2 are needed. Add the missing places.",
    ],
  },
  {
    title: "two holes of one name",
    text: `${LONG}  anchors: { holes: [{ id: A, at: [1 in, 2 in] }, { id: A, at: [1 in, 5 in] }] }\n`,
    issues: [
      'duplicate-name 6:21 lift.anchors.holes: Two items of lift.anchors.holes are named "A". Give each its own name.',
    ],
  },
  {
    title: "a list that is no list",
    text: `${SHORT}vehicles: { name: van }\n`,
    issues: [
      "not-a-list 4:11 vehicles: A list was expected here. Begin each item on its own line with a dash and a space.",
    ],
  },
  {
    title: "an empty item",
    text: `${SHORT}vehicles:\n  - name: van\n  -\n`,
    issues: ["empty-item 6:4 vehicles[1]: An item of the list is empty. Write it or take its dash away."],
  },
  {
    title: "a reading without a thickness",
    text: `${SHORT}floor: { readings: [{ near: left }] }\n`,
    issues: [
      'missing-key 4:21 floor.readings[0].thickness: "thickness" is missing. Needed: the thickness read; after a drilled depth that stayed in concrete, that depth.',
    ],
  },
  {
    title: "a lift file nobody can fetch",
    text: `${HEAD}lift: { file: lifts/none.yaml }\n`,
    issues: [
      'file-not-found 3:15 lift.file: The file "lifts/none.yaml" could not be read. Check the name, or write the lift out here.',
    ],
  },
  {
    title: "a range in one text",
    text: `${SHORT}floor: { thickness: 4 to 5 in }\n`,
    issues: [
      'not-a-quantity 4:21 floor.thickness: "4 to 5 in" is not a length. Write a range as { low: 4 in, high: 5 in }.',
    ],
  },
  {
    title: "a number about right",
    text: `${SHORT}floor: { thickness: about 4 in }\n`,
    issues: [
      'not-a-quantity 4:21 floor.thickness: "about 4 in" is not a length. Write the number alone, or how far it may be off, as { value: 4 in, low: 3 in, high: 5 in }.',
    ],
  },
  {
    title: "a needed key misspelt",
    text: `${HEAD}lift: { nmae: L, kind: two-post, ratd: 9000 }\n`,
    issues: [
      'unknown-key 3:9 lift.nmae: "nmae" is not a key of a lift. Did you mean name?',
      'unknown-key 3:34 lift.ratd: "ratd" is not a key of a lift. Did you mean rated?',
      'bare-number 3:40 lift.rated: "9000" has no unit; a weight or force was expected. Write a number and a unit, such as 9000 lb or 40 kN.',
    ],
  },
  {
    title: "a fact with a key that does not belong",
    text: `${SHORT}floor: { thickness: { vlaue: 4, by: me } }\n`,
    issues: [
      'unknown-key 4:23 floor.thickness.vlaue: "vlaue" is not a key of a fact. Did you mean value?',
      'bare-number 4:30 floor.thickness.value: "4" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "one value for a group",
    text: `${SHORT}floor: { strength: 3000 psi }\n`,
    issues: [
      'not-a-group 4:20 floor.strength: "3000 psi" stands where the keys of the evidence of strength were expected. Write its keys on lines of their own, such as specified, tickets, cylinders.',
    ],
  },
  {
    title: "columns as a bare list",
    text: `${SHORT}columns: [[5 ft, 12 ft], [15 ft, 12 ft]]\n`,
    issues: [
      "not-a-group 4:10 columns: A list stands where the keys of the columns were expected. Write its keys on lines of their own, such as left, right.",
    ],
  },
  {
    title: "prices that do not say what they are for",
    text: `${SHORT}prices:\n  concrete: 190\n  saw: 10 per yd³\n  bag: -7\n  labour: dear\n  dowel: 9 per ft\n  bar: $1.10 per lb\n`,
    issues: [
      'not-a-price 5:13 prices.concrete: "190" does not say what the price is for. Write an amount and what it is for, such as 185 per yd³ or 240 per m³.',
      'not-a-price 6:8 prices.saw: "10 per yd³": "yd³" does not measure what is priced here. Write an amount and what it is for, such as 9 per ft or 30 per m.',
      'negative 7:8 prices.bag: "-7" is negative. Write an amount and what it is for, such as 7.50 each.',
      'not-a-price 8:11 prices.labour: "dear" is not a price. Write an amount and what it is for, such as 65 per h.',
      'not-a-price 9:10 prices.dowel: "9 per ft" is priced by "ft"; a price for each was expected. Write an amount and what it is for, such as 7.50 each.',
    ],
  },
  {
    title: "wishes for a pad that cannot be",
    text: `${SHORT}pad: { shape: round, leastDepth: 12, join: dowelled }\n`,
    issues: [
      'wrong-word 4:15 pad.shape: "round" is not a word of the list. Write one of: two-pads, joined-circles, strip, whole-bay.',
      'bare-number 4:34 pad.leastDepth: "12" has no unit; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
    ],
  },
  {
    title: "mistakes all over",
    text: `${LONG}  rated: 9000\n  spacing: 10 stone\nfloor:\n  thikness: 4 in\n  below: grund\n  readings:\n    - { thickness: -3 in }\ndate: 2025-04-31\n`,
    issues: [
      'bare-number 6:10 lift.rated: "9000" has no unit; a weight or force was expected. Write a number and a unit, such as 9000 lb or 40 kN.',
      'unknown-unit 7:12 lift.spacing: "10 stone": the unit "stone" is not known; a length was expected. Write a number and a unit, such as 6 in or 150 mm.',
      'unknown-key 9:3 floor.thikness: "thikness" is not a key of the floor. Did you mean thickness?',
      'wrong-word 10:10 floor.below: "grund" is not a word of the list. Did you mean ground? Write one of: ground, space.',
      'negative 12:20 floor.readings[0].thickness: "-3 in" is negative. Write a length above zero.',
      "bad-date 13:7 date: The date 2025-04-31 does not exist. Write year-month-day, such as 2025-03-04.",
    ],
  },
  {
    title: "rounds of the nuts whose days and angles cannot be",
    text: `${SHORT}installation: { date: 2024-03-01 }\nvisits:\n  - { date: 2024-02-01 }\n  - { date: 2024-06-01, readings: [{ anchor: L1, turned: 6 turn }, { anchor: L1 }] }\n  - { date: 2024-05-01 }\n  - { date: 2024-06-01 }\n`,
    issues: [
      "before-setting 6:13 visits[0].date: The round of 2024-02-01 is not after the day the lift was set, 2024-03-01. Correct one of the two; the torque of the first day belongs to installation.holes.",
      'impossible-angle 7:58 visits[1].readings[0].turned: "6 turn" is more than 5 full turns; the nut would have left its bolt. Check the figure and its unit: 90 deg is a quarter turn.',
      "duplicate-anchor 7:78 visits[1].readings[1].anchor: The round of 2024-06-01 reads L1 twice. Keep one reading of each anchor and day.",
      "dates-out-of-order 8:13 visits[2].date: Rounds of the nuts: 2024-05-01 stands after 2024-06-01. Write the oldest first.",
      "duplicate-date 9:13 visits[3].date: Rounds of the nuts: 2024-06-01 stands twice. Put the readings of one day together, or correct the date.",
    ],
  },
  {
    title: "a fresh floor whose days cannot be",
    text: `${SHORT}pour:\n  date: 2025-02-04\n  temperatures: []\n  days: [{ on: 2025-02-03, low: 1 °C, high: 4 °C }]\n  weather: { humidity: 60 }\n`,
    issues: [
      "empty-list 6:17 pour.temperatures: The list of temperatures is empty. Write what was measured, or leave the key out.",
      "before-pour 7:10 pour.days[0]: 2025-02-03 lies before the pour, 2025-02-04. Correct one of the two.",
      'unusual-share 8:24 pour.weather.humidity: "60" is more than all the air can hold. Write the relative humidity as a share, such as 45 %.',
    ],
  },
  {
    title: "one hole written twice",
    text: `${SHORT}installation: { holes: [{ anchor: L1 }, { anchor: L1 }] }\n`,
    issues: [
      "recorded-twice 4:51 installation.holes[1].anchor: installation.holes records L1 twice. Keep the one that holds.",
    ],
  },
];
