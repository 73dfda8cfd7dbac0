import { type DimCorpus, read } from '../corpus.ts';

const m = (value: number, unit: string, to?: number) => ({ value, unit, ...(to === undefined ? {} : { to }) });
export const MEASURE_CORPUS: DimCorpus<'measure'> = {
  dim: 'measure',
  reads: read<'measure'>([
    ['ten thou', m(0.01, 'in')], ['two and a half thou', m(0.0025, 'in')], ['fifteen thousandths', m(0.015, 'in')], ['a thou and a half', m(0.0015, 'in')], ['half a thou', m(0.0005, 'in')], ['21 thou', m(0.021, 'in')], ['15,000th', m(0.015, 'in')],
    ['three thou and two tenths', m(0.0032, 'in')], ['two tenths', m(0.0002, 'in')], ['three tenths of an inch', m(0.3, 'in')], ['two tenths of a thou', m(0.0002, 'in')],
    ['an inch and fifteen sixteenths plus two thou', m(1.9395, 'in')], ['an inch and a quarter less eight', m(1.242, 'in')], ['two and a half less four', m(2.496, 'in')], ['two and a half inches less eleven thou', m(2.489, 'in')],
    ['four inches and six thou', m(4.006, 'in')], ['an inch and thirty thou', m(1.03, 'in')], ['an inch and five sixteenths', m(1.3125, 'in')], ['an inch and a quarter', m(1.25, 'in')], ['inch and a half', m(1.5, 'in')], ['five eighths', m(0.625, 'in')],
    ['half-inch', m(0.5, 'in')], ['half an inch', m(0.5, 'in')], ['quarter inch', m(0.25, 'in')], ['three sixty-fourths', m(0.046875, 'in')], ['three thirty-seconds of an inch', m(0.09375, 'in')], ['1-1/4 inch', m(1.25, 'in')], ['1 1/4"', m(1.25, 'in')], ['2½ inches', m(2.5, 'in')], ['3/8"', m(0.375, 'in')], ['5/8ths', m(0.625, 'in')],
    ['two and three quarter inches', m(2.75, 'in')], ['9in', m(9, 'in')], ['an inch', m(1, 'in')], ['3 16ths', m(0.1875, 'in')],
    ['ten foot six', m(10.5, 'ft')], ["5'6\"", m(5.5, 'ft')], ['5 feet 3 inches', m(5.25, 'ft')], ['22 foot', m(22, 'ft')], ['a foot and a half', m(1.5, 'ft')],
    ['34.9 millimetres', m(34.9, 'mm')], ['120 mm', m(120, 'mm')], ['300mm', m(300, 'mm')], ['8 metres', m(8, 'm')], ['3 m', m(3, 'm')], ['2.5 m', m(2.5, 'm')], ['7.5 L', m(7.5, 'L')], ['60 microns', m(60, 'µm')], ['a mil and a half', m(1.5, 'mil')], ['2 mils', m(2, 'mil')],
    ['90 foot-pounds', m(90, 'lb-ft')], ['80 ft lbs', m(80, 'lb-ft')], ['35 lb-ft', m(35, 'lb-ft')], ['eighty foot pounds', m(80, 'lb-ft')], ['25 inch pounds', m(25, 'lb-in')], ['45 newton metres', m(45, 'N·m')], ['45 Nm', m(45, 'N·m')],
    ['40 psi', m(40, 'psi')], ['forty pounds per square inch', m(40, 'psi')], ['2.5 bar', m(2.5, 'bar')], ['six point three volts', m(6.3, 'V')], ['12V', m(12, 'V')], ['11 amps', m(11, 'A')], ['1.5 ohms', m(1.5, 'Ω')], ['55 watts', m(55, 'W')],
    ['14 gauge', m(14, 'AWG')], ['fourteen gauge', m(14, 'AWG')], ['12ga', m(12, 'AWG')], ['sixteen threads to the inch', m(16, 'tpi')], ['24 tpi', m(24, 'tpi')],
    ['59 Fahrenheit', m(59, '°F')], ['74F', m(74, '°F')], ['11 Celsius', m(11, '°C')], ['20°C', m(20, '°C')], ['twenty below Fahrenheit', m(-20, '°F')], ['minus 25 Celsius', m(-25, '°C')], ['twenty-five below zero Fahrenheit', m(-25, '°F')], ['45 degrees', m(45, '°')],
    ['nine quarts', m(9, 'qt')], ['4 gallons', m(4, 'gal')], ['10 litres', m(10, 'L')], ['900 pounds', m(900, 'lb')], ['1,400 lb', m(1400, 'lb')], ['180 kilos', m(180, 'kg')], ['a hundred and forty square feet', m(140, 'sq ft')], ['12 square metres', m(12, 'm²')], ['2.5 square mm', m(2.5, 'mm²')],
    ['1725 rpm', m(1725, 'rpm')], ['9 A', m(9, 'A')], ['22A', m(22, 'A')], ['450 g', m(450, 'g')], ['5 kohm', m(5, 'kΩ')], ['4.2 megohms', m(4.2, 'MΩ')], ['0,35 mm', m(0.35, 'mm')], ['2,5 bar', m(2.5, 'bar')], ['a thousandth and a half', m(0.0015, 'in')], ['ten to twelve thou', m(0.01, 'in', 0.012)], ['10-12 thou', m(0.01, 'in', 0.012)], ['thirty knots', m(30, 'kn')],
  ]),
  never: ['9 a side', 'section 3 a is bent', 'put 4 in the box', '3 L 4 R', '4 m of hose', 'needs 4 a side', 'two in the pail', 'the second foot', 'in the drawer', 'four bolts', 'twelve fifty', 'M16', 'foot of the bed', 'a bar across it'],
};
