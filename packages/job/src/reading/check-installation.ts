import type { Node, YAMLMap } from "yaml";
import type { JobFile } from "../form/index.ts";
import { at, type Place, report } from "./place.ts";

/** Each hole and each corner of a base is recorded once. */
export const checkInstallation = ({ installation }: JobFile, root: YAMLMap, place: Place): void => {
  if (!installation) return;
  const { holes, levels } = installation;
  once(
    holes.map(({ anchor }) => anchor.trim().toUpperCase()),
    "holes",
    "anchor",
    root,
    place,
  );
  once(
    levels.map(({ base, corner }) => (corner ? `${corner} corner of the ${base} base` : "")),
    "levels",
    "corner",
    root,
    place,
  );
};

const once = (names: readonly string[], list: "holes" | "levels", key: string, root: YAMLMap, place: Place): void => {
  for (const [i, name] of names.entries()) {
    if (name === "" || names.indexOf(name) === i) continue;
    const path = ["installation", list, i, key];
    const node = (root.getIn(path, true) as Node | undefined) ?? undefined;
    report(path.reduce<Place>(at, place), node, "recorded-twice", {
      got: name,
      message: `installation.${list} records ${list === "holes" ? "" : "the "}${name} twice.`,
      hint: "Keep the one that holds.",
    });
  }
};
