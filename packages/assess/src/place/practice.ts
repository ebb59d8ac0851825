const IN = 25.4;

/** Distances of common practice, no source, where neither the maker nor the job says otherwise; mm. */
export const practice = {
  /** between the vehicle and a wall, a bench, or the plane of a door that must close */
  bumper: 6 * IN,
  /** a vehicle on its way in keeps this from jambs, posts and benches on either side */
  jamb: 3 * IN,
  /** between a base plate and a wall, to get at the outer nuts */
  plateToWall: 2 * IN,
  /** over the body; most cars and pickups are narrower with their mirrors folded */
  vehicleWidth: 80 * IN,
  /** between a base plate and heating tubes whose distance nobody gave */
  heating: 24 * IN,
  /** between an anchor and any other pipe, drain or conduit whose distance nobody gave */
  pipe: 6 * IN,
  /** of concrete between the tip of a drilled hole and a pipe that runs below it */
  belowHole: 2 * IN,
  /** a mark keeps this much more than the maker asks: what a tape and a drill are off by */
  settingOut: 0.25 * IN,
  /** of a vehicle's length its centre of gravity lies behind its nose, where nobody gave it */
  centreFrom: 0.4,
  centreTo: 0.5,
} as const;
