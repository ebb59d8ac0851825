import type { Floor } from "@floorworthy/engine/plates";
import type { Mesh } from "./mesh.ts";

/** Share of an element's area that each node of an 8-node rectangle carries (diagonal of its own mass matrix, scaled). */
const share = { corner: 3 / 76, side: 16 / 76 } as const;

/** Area that stands behind every node, mm², by node number; and the weight of slab on it, N. */
export const tributary = (floor: Floor, mesh: Mesh): { area: Map<number, number>; weight: Map<number, number> } => {
  const [area, weight] = [new Map<number, number>(), new Map<number, number>()];
  for (const e of mesh.elements)
    e.nodes.forEach((n, i) => {
      const part = (i < 4 ? share.corner : share.side) * (e.x1 - e.x0) * (e.y1 - e.y0);
      area.set(n, (area.get(n) ?? 0) + part);
      weight.set(n, (weight.get(n) ?? 0) + part * floor.unitWeight * e.thickness);
    });
  return { area, weight };
};

/**
 * A CalculiX deck: S8R shells, a spring of k × area at every node that touches the ground, the slab's weight as a force at
 * every node that does not (the springs count from the level at which the slab was cast). z is up, so w = -U3.
 */
export const deck = (floor: Floor, mesh: Mesh, open: ReadonlySet<number>, thin = 1): string => {
  const { area, weight } = tributary(floor, mesh);
  const E = floor.E * thin ** 3; // thin > 1: the same stiffness D in a plate so many times thinner
  const out = ["*HEADING", "Two-column bay with thickened pads on springs", "*NODE, NSET=ALL"];
  for (const { id, x, y } of mesh.nodes) out.push(`${id}, ${num(x)}, ${num(y)}, 0`);
  const thicknesses = [...new Set(mesh.elements.map((e) => e.thickness))];
  for (const h of thicknesses) {
    out.push(`*ELEMENT, TYPE=S8R, ELSET=H${h}`);
    for (const e of mesh.elements) if (e.thickness === h) out.push([e.id, ...e.nodes].join(", "));
  }
  out.push("*MATERIAL, NAME=CONCRETE", "*ELASTIC", `${num(E)}, ${floor.nu}`);
  for (const h of thicknesses) out.push(`*SHELL SECTION, ELSET=H${h}, MATERIAL=CONCRETE`, num(h / thin));
  let element = mesh.elements.length;
  const groups = new Map<string, number[]>();
  for (const [node, a] of area)
    if (!open.has(node)) groups.set(num(floor.k * a), [...(groups.get(num(floor.k * a)) ?? []), node]);
  let group = 0;
  for (const [stiffness, nodes] of groups) {
    out.push(`*ELEMENT, TYPE=SPRING1, ELSET=S${++group}`);
    for (const node of nodes) out.push(`${++element}, ${node}`);
    out.push(`*SPRING, ELSET=S${group}`, "3", stiffness);
  }
  const [first, other] = [mesh.node(0, 0), mesh.node(2 * mesh.xs.length - 2, 0)];
  out.push("*BOUNDARY", `${first}, 1, 2`, `${other}, 2, 2`, "*STEP", "*STATIC");
  out.push("*DLOAD");
  for (const e of mesh.elements) if (e.pressure !== 0) out.push(`${e.id}, P, ${num(-e.pressure)}`);
  if (open.size > 0) {
    out.push("*CLOAD");
    for (const node of open) out.push(`${node}, 3, ${num(-weight.get(node)!)}`);
  }
  for (const h of thicknesses) out.push(`*EL PRINT, ELSET=H${h}`, "S");
  out.push("*NODE PRINT, NSET=ALL", "U", "*END STEP", "");
  return out.join("\n");
};

const num = (value: number): string => String(Number(value.toPrecision(9)));
