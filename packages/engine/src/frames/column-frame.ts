/** What holds the heads of a two-post lift: nothing but the columns themselves, or a beam between them. */
export type TopKind = "free-standing" | "overhead-tied";

/** "rigid", or a stiffness in the unit its place states. */
export type Stiffness = "rigid" | number;

/**
 * The two columns of a two-post lift and what joins them. Own axes of each column: u inward (toward the vehicle),
 * v fore-aft (toward the door).
 */
export interface ColumnFrame {
  readonly top: TopKind;
  /** between the column centroids, mm */
  readonly spacing: number;
  /** floor to the overhead beam, mm; needed where the lift is overhead-tied */
  readonly tieHeight?: number;
  /** one column with its carriage and arms, N */
  readonly columnWeight: number;
  /** e: lateral distance from the pad line to the column centroid, mm */
  readonly reach: number;
  /** rotational spring under each base, N·mm/rad; "rigid" is the upper bound of the base moment */
  readonly baseStiffness: Stiffness;
  /** bending stiffness of one column in the u-direction, N·mm²; needed with any spring, axial stiffness or slack */
  readonly columnEI?: number;
  /** axial stiffness EA of the overhead beam, N; rigid unless given */
  readonly strutEA?: Stiffness;
  /** play the heads can take up before the beam is pressed or pulled, mm; none unless given */
  readonly strutSlack?: number;
}

/** A force of hands and tools on the raised vehicle. */
export interface WorkForce {
  /** N; positive toward the door ("fore-aft") or from the left column to the right one ("lateral") */
  readonly force: number;
  readonly direction: "fore-aft" | "lateral";
  /** above the floor, mm; at the carriage unless given */
  readonly height?: number;
}

/** What stands on the arms. */
export interface LiftLoad {
  /** W: lifted weight, N */
  readonly weight: number;
  /** φ: shock factor on the lifted weight */
  readonly dynamicFactor: number;
  /** r: share of the weight on the left column, 0 to 1 */
  readonly leftShare: number;
  /** y: centre of gravity from the column line, mm, positive toward the door */
  readonly foreAft: number;
  /** carriage centre above the floor, mm */
  readonly carriageHeight: number;
  /**
   * Extra fore-aft offset of the left column's share, mm; the right column's share moves the other way so that the
   * whole weight stays where it is. This is the one degree of freedom that four pads leave open.
   */
  readonly crosswise?: number;
  readonly workForce?: WorkForce;
}
