export {
  type Bed,
  type BedExpansion,
  type BedExpansionMethod,
  bedExpansion,
  bedExpansionMethods,
  upflowForRise,
} from './bed/bed-expansion.ts';
export { ergun, ergunConstants, ergunWithConstants, reynoldsErgun, spheres } from './bed/ergun.ts';
export { expansionErgun, upflowErgun } from './bed/expansion-ergun.ts';
export { standardGravity } from './bed/gravity.ts';
export { beadSizes, calibrateByPail, type PailCalibration, type PailSight } from './bed/pail-calibration.ts';
export { bedPressureLoss, liftedBedLoss } from './bed/pressure-loss.ts';
export {
  expansionRichardsonZaki,
  richardsonZakiExponent,
  upflowRichardsonZaki,
} from './bed/richardson-zaki.ts';
export { rose, roseGraded } from './bed/rose.ts';
export { type PassingPoint, type Sieve, type SieveAnalysis, sieveAnalysis } from './bed/sieve.ts';
export { archimedesNumber, sphereDrag, terminalVelocity } from './bed/terminal-velocity.ts';
export { expansionOf, voidageAt } from './bed/voidage.ts';
export { wenYu } from './bed/wen-yu.ts';
export {
  type BoreBody,
  bodyFromPorts,
  type Chamber,
  joined,
  type Leak,
  leakOf,
  leaksWhileShut,
  type PortGroup,
  type SealNo,
} from './bore/body.ts';
export {
  boreFromJoins,
  type JoinedBore,
  type JoinProblem,
  type Settled,
  type StopOpen,
  type StopWanted,
} from './bore/joins.ts';
export {
  type Bore,
  type BoreLengths,
  type BoreResult,
  boreFromLengths,
  type LengthProblem,
  type Piston,
  type SealRule,
  type Span,
} from './bore/lengths.ts';
export {
  displacement,
  type PistonState,
  type SealState,
  type StopShift,
  stateAt,
  statesAtStops,
  type Transit,
  transit,
} from './bore/piston-state.ts';
export { placeSchematic, schematicLengths } from './bore/schematic.ts';
export { brineDensity, brineSalt } from './brine/density.ts';
export { brineMade, saltPerWater } from './brine/dissolve.ts';
export { potassiumChlorideDensity, potassiumChlorideSolubility } from './brine/potassium-chloride.ts';
export { salometerBrine, salometerReading } from './brine/salometer.ts';
export { saltSolubility, saltSolubilitySparrow } from './brine/solubility.ts';
export { bayesUpdate } from './decisions/bayes.ts';
export { poissonCdf, poissonQuantile, poissonShortfall } from './decisions/poisson.ts';
export {
  type CoverCosts,
  everyRepairOrder,
  expectedRepairCost,
  type RepairAction,
  type RepairOrder,
} from './decisions/repair-cost.ts';
export { bestRepairOrder } from './decisions/repair-order.ts';
export { baseStock, newsvendorNormal, newsvendorPoisson, smallestStock } from './decisions/stock.ts';
export { equations } from './equations.ts';
export {
  colebrook,
  type Friction,
  frictionRegimes,
  laminarFriction,
  pipeFriction,
} from './hydraulics/friction.ts';
export { jetPump, jetPumpDrive, jetPumpNozzleFlow } from './hydraulics/jet-pump.ts';
export { leakFlow, orificeDiameter, orificeFlow } from './hydraulics/orifice.ts';
export { orificeExpansibility, orificePlate } from './hydraulics/orifice-plate.ts';
export { pipeLoss } from './hydraulics/pipe-loss.ts';
export {
  type AnalysisDoubt,
  type AnalysisVerdict,
  analyseIons,
  analysisLimits,
  type IonReport,
  type LaboratoryFigures,
} from './ions/analyse-ions.ts';
export { chargeBalance } from './ions/charge-balance.ts';
export { conductivityAt, waterConductivity } from './ions/conductivity.ts';
export { dissolvedSolids } from './ions/dissolved-solids.ts';
export { fullHardness, hardnessFromIons, hardnessWithStrontium } from './ions/hardness.ts';
export {
  concentrationOf,
  equivalentsOf,
  fromNitrogen,
  type IonEquivalents,
  type IonName,
  ionNames,
  ions,
  isIonName,
  type WaterIons,
} from './ions/ions.ts';
export { chalkPerEquivalent, molarMass } from './ions/molar-masses.ts';
export { combinedUncertainty, coverage95, rectangular } from './measure/combine.ts';
export {
  acceptanceLimit,
  conformanceProbability,
  type Estimate,
  type Guard,
  type Limits,
  rejectionLimit,
  type Side,
  usualRisk,
} from './measure/conformance.ts';
export { erf, erfc } from './measure/erf.ts';
export { normalCdf, normalQuantile } from './measure/normal.ts';
export { pailRate } from './measure/pail.ts';
export { medianOf, medianOfRepeats, type Repeats } from './measure/repeats.ts';
export { judge, repeatsToDecide, type Verdict } from './measure/verdict.ts';
export {
  type Equation,
  type EquationMeta,
  equation,
  type RangeRule,
  type SourceStatus,
  type Variable,
} from './meta/equation.ts';
export { inputWithin } from './meta/input-within.ts';
export { type Source, type SourceKey, sources } from './meta/sources.ts';
export { symbolName } from './meta/symbol-name.ts';
export { bedSize, dryResin } from './regeneration/bed-size.ts';
export { blendPast } from './regeneration/blending.ts';
export { agedCapacity, bedExchange, capacityFromDose } from './regeneration/capacity.ts';
export { leakPerDay, waterPerExchange, yearlyUse } from './regeneration/consumption.ts';
export { regenerationTime, regenerationWater, stepVolume } from './regeneration/cycle.ts';
export { dilutedBrine, drawTime } from './regeneration/draw.ts';
export { batchExchange, separationCapacity } from './regeneration/exchange-equilibrium.ts';
export { compensatedHardness, sodiumAdded } from './regeneration/hardness-load.ts';
export { exchangeNeeded, serviceTime, volumeBeforeReserve, volumeBetween } from './regeneration/interval.ts';
export { brineFromRefill, refillTime, refillWater, saltFromRefill } from './regeneration/refill.ts';
export { rinseTime, rinseVolume } from './regeneration/rinse.ts';
export { saltDose, saltEfficiency, saltMass, theoreticalSalt } from './regeneration/salt.ts';
export { bedDepth, expansionAtFreeHeight, flowForUpflow } from './settings/bed-depth.ts';
export { airGapNeeded, costDifference, runningCost, yearlyDifference } from './settings/cost.ts';
export { equivalentDose, potassiumDose, potassiumEquivalence } from './settings/potassium.ts';
export { averageUse, bedVolumesThrough, brineStepTime, rinseLeft, useOverTime } from './settings/times.ts';
export { flowLimits, volumeLimits } from './settings/tolerance.ts';
export { filterWater, waterCost, waterWithLeak } from './settings/water-cost.ts';
export { bracketedRoot } from './solve/bracketed-root.ts';
export {
  bedVolume,
  crossSection,
  freeHeight,
  insideDiameter,
  tankVolume,
  upflowRate,
} from './vessel/tank.ts';
export { celsiusZero, toCelsius } from './water/celsius.ts';
export { waterDensity } from './water/density.ts';
export { waterVapourPressure } from './water/vapour-pressure.ts';
export { waterKinematicViscosity, waterViscosity } from './water/viscosity.ts';
