import { type AskCorpus, sums } from '../phrase.ts';

export const DEW_POINT_CORPUS: AskCorpus = {
  phrases: [
    { text: "14 celsius in the shed and the humidity's 81. what's my dew point?", asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 14, tempUnit: '°C', humidity: 81 } }] },
    { text: "It's 78 degrees and 55 percent in here, what's the dew point?", asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 78, tempUnit: '°F', humidity: 55 } }] },
    ...sums('dewPoint', { temp: 74, tempUnit: '°F', humidity: 68 }, [
      "It's 74 Fahrenheit and 68 percent humidity, what's the dew point?", 'whats the dew point at 74 fahrenheit and 68 percent', 'dew point for 74 F and 68%', '74 degrees fahrenheit sixty eight percent humidity whats the dew point', 'What is the dew point when it is 74 F with the humidity at 68 percent?', 'give me the dew point for 74F, 68 percent', "thermometer says 74 Fahrenheit, hygrometer says 68 percent. Dew point?", 'tell me the dew point at seventy-four Fahrenheit and sixty-eight percent', 'dew point please 74 fahrenheit humidity 68', 'work out the dew point, 74 Fahrenheit, 68 percent relative humidity',
    ]),
    ...sums('dewPoint', { temp: 11, tempUnit: '°C', humidity: 80 }, ["11 Celsius and 80 percent in here, what's the dew point", '11 degrees C, 80% RH, dew point?', 'its eleven celsius and eighty percent whats the dew point']),
    { text: "What's the dew point at 74 Fahrenheit and 68 percent? And at 75 percent?", asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 74, tempUnit: '°F', humidity: 68 } }, { kind: 'sum', of: 'dewPoint', given: { temp: 74, tempUnit: '°F', humidity: 75 } }] },
    { text: 'It is 10 Celsius and 82 percent in the shed, what is the dew point? And supposing I get it up to 18 with the same damp?', asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 10, tempUnit: '°C', humidity: 82 } }, { kind: 'sum', of: 'dewPoint', given: { temp: 18, tempUnit: '°C', humidity: 82 } }] },
    { text: 'Same sum with the damp at 70.', prior: ['14 celsius and 80 percent in the shop, dew point?'], asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 14, tempUnit: '°C', humidity: 70 } }] },
    { text: 'its sixty six fahrenheit and seventy percent whats the do point', asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 66, tempUnit: '°F', humidity: 70 } }] },
    { text: "The forecast says 94 F tomorrow. What's the dew point at 72 F and 50 humid?", asks: [{ kind: 'sum', of: 'dewPoint', given: { temp: 72, tempUnit: '°F', humidity: 50 } }] },
  ],
  never: ['Dew point was 60 so I left it.', "It's 74 Fahrenheit in here.", 'Humidity is 80 percent, too damp to paint.'],
};
