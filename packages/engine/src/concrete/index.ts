export {
  barInCoreFactor,
  type Core,
  type CoreFactor,
  type CoreMoisture,
  coreFactorsAci2144,
  coreLengthFactorC42,
  coreToCubeFactor,
  potentialOverInPlace,
} from "./core-factors.ts";
export {
  type CharacteristicInPlace,
  characteristicInPlaceEn13791,
  cylinderFromUnitCore,
  knUnknownVariance,
} from "./en13791.ts";
export {
  alternateStrength,
  type Batches,
  type EquivalentStrength,
  type InPlaceStrength,
  inPlaceStrength,
  toleranceFactorStrength,
} from "./equivalent-strength.ts";
export {
  type Drying,
  evaporationLimits,
  evaporationMenzel,
  evaporationUnoCustomary,
  evaporationUnoMetric,
  judgeEvaporation,
  type PourAir,
  vapourPressure,
} from "./evaporation.ts";
export {
  activationEnergy,
  dayOfEquivalentAge,
  equivalentAge,
  gasConstant,
  type Hardening,
  hardeningRate,
  maturity,
  standardTemperature,
  temperatureFactorEn1992,
} from "./maturity.ts";
export { chartModulusOfRupture } from "./modulus-of-rupture.ts";
export {
  type Binder,
  brokenPourLimits,
  coolestPlacing,
  coolingLimits,
  curingDays,
  type PourLimit,
  pourLimits,
  sawWindow,
  settingTimeFactor,
  settingWindow,
  type Window,
  wearResistance,
} from "./pour-day.ts";
export {
  type Band,
  cautiousDay,
  cautiousRatio,
  dayOfStrengthBand,
  earlyFrost,
  equivalentAgeBand,
  hardeningBand,
  strengthFromFieldCylinder,
  strengthRatioBand,
} from "./readiness.ts";
export {
  notionalShrinkageMc90,
  type ShrinkageMix,
  shrinkageFactorsAci209,
  shrinkageHumidityMc90,
  shrinkageStrengthMc90,
  shrinkageTimeAci209,
  shrinkageTimeMc90,
  ultimateShrinkageAci209,
} from "./shrinkage.ts";
export { impactEchoThickness, radarDepth } from "./sounding-depth.ts";
export {
  cylinderFromCube,
  meanFlexuralStrength,
  meanStrength,
  meanTensileStrength,
  type StrengthClass,
  secantModulus,
  strengthClasses,
  strengthClassNamed,
  strengthClassReached,
} from "./strength-classes.ts";
export {
  aci209Constants,
  ageForRatio,
  ageForRatioAci209,
  ageForRatioEn1992,
  type Cement,
  type CementClass,
  type Cure,
  characteristicStrengthEn1992,
  type Gain,
  strengthRatio,
  strengthRatioAci209,
  strengthRatioEn1992,
} from "./strength-with-age.ts";
export {
  constantTemperature,
  dailyExtremes,
  dailyMeans,
  heated,
  loggedTemperatures,
  monthlyMeans,
  type Stretch,
  type TemperatureStory,
  temperatureOn,
  untilDay,
} from "./temperature-story.ts";
export { type ThicknessTolerance, thicknessTolerance } from "./thickness-tolerance.ts";
