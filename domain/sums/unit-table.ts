/** Units of the shop with their exact factors to one base unit of each dimension. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'force'
  | 'torque'
  | 'pressure'
  | 'power'
  | 'speed'
  | 'temperature'
  | 'flow'
  | 'time'
  | 'angle'
  | 'energy'
  | 'turning';

export interface Unit {
  /** As the contract spells it. */
  name: string;
  dimension: Dimension;
  /** base = (value + before) * factor */
  factor: number;
  before: number;
  /** Other spellings, lower case, without full stops. */
  also: readonly string[];
}

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const PSI = POUND_FORCE / (INCH * INCH);
const GALLON = 231 * INCH ** 3;
const IMPERIAL_GALLON = 0.00454609;

const unit = (dimension: Dimension, name: string, factor: number, also: string, before = 0): Unit => ({
  name,
  dimension,
  factor,
  before,
  also: also.split(',').filter(Boolean),
});

/**
 * Source: 16 CFR 500.19 (inch, foot, square units), NIST Handbook 44 app. C (gallon = 231 in³, pound = 453.59237 g), standard gravity
 * 9.80665 m/s², of which the force, torque, pressure and power factors are products. inHg and inH2O are conventional, not exact.
 */
export const UNITS: readonly Unit[] = [
  unit('length', 'in', INCH, 'inch,inches,"'),
  unit('length', 'ft', FOOT, "foot,feet,'"),
  unit('length', 'yd', 3 * FOOT, 'yard,yards'),
  unit('length', 'mi', 5280 * FOOT, 'mile,miles'),
  unit('length', 'mil', INCH / 1000, 'mils,thou,thousandth,thousandths'),
  unit('length', 'mm', 0.001, 'millimetre,millimetres,millimeter,millimeters'),
  unit('length', 'cm', 0.01, 'centimetre,centimetres,centimeter,centimeters'),
  unit('length', 'm', 1, 'metre,metres,meter,meters'),
  unit('length', 'km', 1000, 'kilometre,kilometres,kilometer,kilometers'),
  unit('length', 'µm', 1e-6, 'um,μm,micron,microns,micrometre,micrometres,micrometer,micrometers'),
  unit('area', 'sq in', INCH ** 2, 'in2,in²,square inch,square inches'),
  unit('area', 'sq ft', FOOT ** 2, 'ft2,ft²,sqft,square foot,square feet'),
  unit('area', 'sq yd', 9 * FOOT ** 2, 'yd2,yd²,square yard,square yards'),
  unit('area', 'acre', 43560 * FOOT ** 2, 'acres'),
  unit('area', 'mm²', 1e-6, 'mm2,sq mm,square millimetre,square millimetres,square millimeter,square millimeters'),
  unit('area', 'cm²', 1e-4, 'cm2,sq cm,square centimetre,square centimetres,square centimeter,square centimeters'),
  unit('area', 'm²', 1, 'm2,sq m,square metre,square metres,square meter,square meters'),
  unit('area', 'ha', 1e4, 'hectare,hectares'),
  unit('volume', 'in³', INCH ** 3, 'in3,cu in,cubic inch,cubic inches,ci,cid'),
  unit('volume', 'ft³', FOOT ** 3, 'ft3,cu ft,cubic foot,cubic feet'),
  unit('volume', 'gal', GALLON, 'gallon,gallons,us gal,us gallon,us gallons'),
  unit('volume', 'qt', GALLON / 4, 'quart,quarts'),
  unit('volume', 'pt', GALLON / 8, 'pint,pints'),
  unit('volume', 'cup', GALLON / 16, 'cups'),
  unit('volume', 'fl oz', GALLON / 128, 'floz,fluid ounce,fluid ounces'),
  unit('volume', 'imp gal', IMPERIAL_GALLON, 'imperial gallon,imperial gallons'),
  unit('volume', 'imp pt', IMPERIAL_GALLON / 8, 'imperial pint,imperial pints'),
  unit('volume', 'L', 1e-3, 'litre,litres,liter,liters,ltr'),
  unit('volume', 'mL', 1e-6, 'cc,cm3,cm³,millilitre,millilitres,milliliter,milliliters'),
  unit('volume', 'm³', 1, 'm3,cubic metre,cubic metres,cubic meter,cubic meters'),
  unit('mass', 'lb', POUND, 'lbs,pound,pounds'),
  unit('mass', 'oz', POUND / 16, 'ounce,ounces'),
  unit('mass', 'ton', 2000 * POUND, 'tons,short ton,short tons'),
  unit('mass', 'long ton', 2240 * POUND, 'long tons'),
  unit('mass', 'g', 1e-3, 'gram,grams,gramme,grammes'),
  unit('mass', 'kg', 1, 'kilo,kilos,kilogram,kilograms,kgs'),
  unit('mass', 't', 1000, 'tonne,tonnes,metric ton,metric tons'),
  unit('force', 'lbf', POUND_FORCE, 'pound force,pounds force,pounds-force'),
  unit('force', 'N', 1, 'newton,newtons'),
  unit('force', 'kN', 1000, 'kilonewton,kilonewtons'),
  unit('force', 'kgf', GRAVITY, 'kilopond,kp,kilogram force'),
  unit(
    'torque',
    'lb-ft',
    POUND_FORCE * FOOT,
    'ft-lb,ft-lbs,lb ft,ft lb,ft lbs,lbf·ft,lbf-ft,lbf ft,foot pound,foot pounds,foot-pounds,pound feet,pound-feet,lbs-ft',
  ),
  unit(
    'torque',
    'lb-in',
    POUND_FORCE * INCH,
    'in-lb,in-lbs,lb in,in lb,in lbs,lbf·in,lbf-in,inch pound,inch pounds,inch-pounds,pound inches',
  ),
  unit('torque', 'N·m', 1, 'nm,n-m,n m,n*m,newton metre,newton metres,newton meter,newton meters,newton-metres'),
  unit('torque', 'kgf·m', GRAVITY, 'kgm,kg-m,kg·m,kgf-m,kgf m,mkg,kilogram metres'),
  unit('torque', 'kgf·cm', GRAVITY / 100, 'kg-cm,kg·cm,kgf-cm'),
  unit('pressure', 'psi', PSI, 'psig,pounds per square inch,lb/in²,lb/in2'),
  unit('pressure', 'bar', 1e5, 'bars'),
  unit('pressure', 'kPa', 1e3, 'kilopascal,kilopascals'),
  unit('pressure', 'MPa', 1e6, 'megapascal,megapascals,n/mm²,n/mm2'),
  unit('pressure', 'Pa', 1, 'pascal,pascals'),
  unit('pressure', 'atm', 101325, 'atmosphere,atmospheres'),
  unit('pressure', 'kgf/cm²', GRAVITY * 1e4, 'kgf/cm2,kg/cm²,kg/cm2'),
  unit('pressure', 'inHg', 3386.389, 'in hg,inches of mercury,inches of vacuum'),
  unit('pressure', 'inH2O', 249.08891, 'in h2o,inches of water'),
  unit('power', 'hp', 550 * FOOT * POUND_FORCE, 'horsepower,horse power'),
  unit('power', 'PS', 75 * GRAVITY, 'metric horsepower,cv'),
  unit('power', 'kW', 1000, 'kilowatt,kilowatts'),
  unit('power', 'W', 1, 'watt,watts'),
  unit('speed', 'mph', (5280 * FOOT) / 3600, 'mi/h,miles per hour,mile an hour,miles an hour'),
  unit('speed', 'km/h', 1 / 3.6, 'kph,kmh,kilometres per hour,kilometers per hour'),
  unit('speed', 'm/s', 1, 'metres per second,meters per second'),
  unit('speed', 'ft/min', FOOT / 60, 'fpm,feet per minute'),
  unit('speed', 'in/s', INCH, 'in/sec,inches per second'),
  unit('temperature', '°F', 5 / 9, 'f,fahrenheit,deg f,degf,degrees f,degrees fahrenheit,ºf', 459.67),
  unit('temperature', '°C', 1, 'c,celsius,centigrade,deg c,degc,degrees c,degrees celsius,ºc', 273.15),
  unit('temperature', 'K', 1, 'kelvin,kelvins'),
  unit('temperature', '°R', 5 / 9, 'r,rankine'),
  unit('flow', 'gpm', GALLON / 60, 'gal/min,gallons per minute,gallons a minute'),
  unit('flow', 'L/min', 1e-3 / 60, 'lpm,litres per minute,liters per minute,litres a minute'),
  unit('flow', 'cfm', FOOT ** 3 / 60, 'ft³/min,ft3/min,cubic feet per minute'),
  unit('time', 's', 1, 'sec,second,seconds'),
  unit('time', 'min', 60, 'minute,minutes'),
  unit('time', 'h', 3600, 'hr,hrs,hour,hours'),
  unit('time', 'days', 86400, 'day,d'),
  unit('angle', '°', 1, 'deg,degree,degrees'),
  unit('angle', 'rad', 180 / Math.PI, 'radian,radians'),
  unit('energy', 'J', 1, 'joule,joules'),
  unit('energy', 'kJ', 1000, 'kilojoule,kilojoules'),
  unit('energy', 'Btu', 1055.05585262, 'btus'),
  unit('energy', 'kWh', 3.6e6, 'kilowatt hour,kilowatt hours'),
  unit('turning', 'rpm', 1, 'rev/min,revs,r/min'),
];
