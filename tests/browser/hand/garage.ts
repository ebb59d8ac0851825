import { wishesOf } from "./wishes.ts";

/** An invented lift, as its maker's floor page has it. */
export const lift = wishesOf(`
lift:
  name: Tarn 9 Twin
  kind: two-post
  manual: in-hand
  top: overhead-tied
  arms: symmetric
  rated: 9000 lb
  columnWeight: 610 lb
  spacing: 124 in
  tieHeight: 142 in
  pickupHeight: 27 in
  fullHeight: 74 in
  reachCar: 36 in
  reachTruck: 44 in
  base: { outline: { width: 20 in, depth: 18 in }, thickness: 3/4 in }
  anchors:
    torque: 110 lb-ft
    holes:
      - { id: A, at: [-7.5 in, -6.5 in] }
      - { id: B, at: [-7.5 in, 0 in] }
      - { id: C, at: [-7.5 in, 6.5 in] }
      - { id: D, at: [4 in, -6.5 in] }
      - { id: E, at: [4 in, 6.5 in] }
    product:
      sheet: in-hand
      kind: expansion
      diameter: 3/4 in
      nominalEmbedment: 4 in
      effectiveEmbedment: 3 1/4 in
      category: "1"
      minimumEdge: 4 1/2 in
      minimumSpacing: 4 in
      minimumThickness: 4 1/4 in
      criticalEdge: 9 in
      steelStrength: 90 ksi
      steelArea: 0.334 in²
      ductile: ductile
  asks: { thickness: 4 1/4 in, strength: 3000 psi, days: 28 d, edge: 6 in }
`);

/** A smaller one, of which the page says little. */
export const lowLift = wishesOf(`
lift:
  name: Tarn 7 Low
  top: free-standing
  rated: 7000 lb
  spacing: 124 in
  asks: { thickness: 4 in, strength: 3000 psi }
`);

/** The floor under the first, but for two things nobody has found out yet: whether it has tendons, and its strength. */
export const floor = wishesOf(`
title: Pear Tree Yard, bay two
setting: { use: home, permit: not-required, seismic: B, weather: indoors, slopeNear: none, slabOwner: customer }
floor:
  kind: slab-on-ground
  below: ground
  heat: none
  utilities: none
  movement: none
  surface: sound
  layer: none
  reinforcement: mesh
  ageDays: 41 d
  readings:
    - { near: left, at: [45 in, 226 in], thickness: 6.1 in, method: drill, end: through, under: gravel, place: slab }
    - { near: left, at: [21 in, 254 in], thickness: 5.9 in, method: drill, end: through, under: gravel, place: slab }
    - { near: right, at: [145 in, 226 in], thickness: 6 1/4 in, method: drill, end: through, under: gravel, place: slab }
    - { near: right, at: [169 in, 254 in], thickness: 6 1/16 in, method: drill, end: through, under: gravel, place: slab }
  ground: { soil: gravel, wet: dry, base: gravel, foam: none, voids: none }
  joints:
    - { name: J1, kind: saw-cut, x: 190 in, transfer: none, state: standing }
`);

export const bay = wishesOf(`
columns: { left: [33 in, 240 in], right: [157 in, 240 in] }
bay:
  outline: { width: 360 in, depth: 480 in }
  ceiling: 156 in
`);

/** What settles the two. */
export const tendons = wishesOf("floor: { postTension: none-shown }");
export const strength = wishesOf(`
floor:
  strength:
    specified: 4000 psi
    tickets: in-hand
    cylinders:
      - { strength: 4380 psi, ageDays: 28 d, cured: standard }
      - { strength: 4410 psi, ageDays: 28 d, cured: standard }
`);
