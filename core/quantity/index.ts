export { amountsIn, type ShownAmounts } from './amounts-in.ts'
export { fixedAmount, shortAmount } from './amount.ts'
export { namedUnit, type ReadingUnit } from './named-unit.ts'
export { angleAmount, degrees, parseAngle, type Angle } from './angle.ts'
export { parseNumber, parseReading } from './decimal.ts'
export { forceAmount, newtons, parseForce, type Force } from './force.ts'
export {
  difference,
  half,
  inMicrometres,
  inMillimetres,
  lengthAmount,
  shortLengthAmount,
  lengthIn,
  lengthOf,
  lengthUnits,
  millimetres,
  nanometres,
  parseLength,
  sum,
  type Length,
  type LengthUnit,
} from './length.ts'
export { withUnit } from './measure.ts'
export { formatNumber, roundHalfAway } from './rounding.ts'
export { celsius, parseTemperature, temperatureAmount, type Temperature } from './temperature.ts'
export {
  benchTorqueUnits,
  type BenchTorqueUnit,
  newtonMetres,
  parseTorque,
  readTorque,
  torqueAmount,
  torqueIn,
  torqueOf,
  torqueUnits,
  type Torque,
  type TorqueUnit,
} from './torque.ts'
export { readBoth } from './both.ts'
export { classesWith, limitsOfClass } from './tolerance-class.ts'
export { readThread, unifiedName, type ThreadDesignation, type ThreadSystem } from './thread-designation.ts'
