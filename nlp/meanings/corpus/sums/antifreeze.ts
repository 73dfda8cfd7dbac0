import { type AskCorpus, sums } from '../phrase.ts';

const G = { temp: -20, tempUnit: '°F', capacity: 9, capacityUnit: 'qt' };
export const ANTIFREEZE_CORPUS: AskCorpus = {
  phrases: [
    { text: 'coolant 22 L, 25 percent in it now. how much do i swap to get 50?', asks: [{ kind: 'sum', of: 'antifreeze', given: { percentNow: 25, percent: 50, capacity: 22, capacityUnit: 'L' } }] },
    { text: 'System takes 12 litres and I want it safe to minus twenty. How much antifreeze?', asks: [{ kind: 'sum', of: 'antifreeze', given: { temp: -20, tempUnit: '°C', capacity: 12, capacityUnit: 'L' } }] },
    { text: 'Minus five out there this morning. It holds 12 litres and I want it good to minus twenty-five, how much antifreeze?', asks: [{ kind: 'sum', of: 'antifreeze', given: { temp: -25, tempUnit: '°C', capacity: 12, capacityUnit: 'L' } }] },
    { text: 'radiator holds ten litres its at thirty percent now and i want it at fifty how much do i chuck in', asks: [{ kind: 'sum', of: 'antifreeze', given: { percentNow: 30, percent: 50, capacity: 10, capacityUnit: 'L' } }] },
    ...sums('antifreeze', G, [
      'system holds 9 quarts and I want it good to twenty below Fahrenheit, how much antifreeze', 'How much antifreeze do I need for 9 quarts to be safe at -20 F?', 'nine quarts good to minus twenty fahrenheit how much antifreeze', 'how many quarts of antifreeze for a 9 quart system at -20F', "I need protection to 20 below Fahrenheit in a 9 quart system. How much coolant?", 'what mix do I need for minus 20 Fahrenheit in nine quarts', 'Radiator and block hold nine quarts. How much antifreeze to be good to -20 F?', 'antifreeze for 9 quarts down to -20F, how much', 'how much straight antifreeze goes in a 9 quart system for -20 Fahrenheit', 'tell me how much antifreeze for nine quarts at twenty below fahrenheit',
    ]),
    ...sums('antifreeze', { temp: -25, tempUnit: '°C', capacity: 10, capacityUnit: 'L' }, ['10 litres, good to minus 25 Celsius, how much antifreeze', 'how much antifreeze in ten litres for minus twenty five celsius', 'What strength do I want for -25 C in 10 litres?']),
    ...sums('antifreeze', { percent: 50, capacity: 4, capacityUnit: 'gal' }, ['how much antifreeze for fifty percent in 4 gallons', 'Fifty percent mix, system holds 4 gallons. How much antifreeze is that?', '4 gallon system at 50 percent how much straight antifreeze']),
    ...sums('antifreeze', { percentNow: 30, percent: 50, capacity: 12, capacityUnit: 'qt' }, ["It tests 30 percent now and I want 50 percent, system's 12 quarts, how much do I drain?", "it's at 30 percent now and I want 50 percent in 12 quarts how much antifreeze"]),
    { text: 'how much antifreeze in 9 quarts for -20 F? What if I go fifty percent?', asks: [{ kind: 'sum', of: 'antifreeze', given: G }, { kind: 'sum', of: 'antifreeze', given: { percent: 50, capacity: 9, capacityUnit: 'qt' } }] },
    { text: 'Block holds 8 quarts, I want it good to minus 10 Fahrenheit. How much antifreeze? And what would 60% be?', asks: [{ kind: 'sum', of: 'antifreeze', given: { temp: -10, tempUnit: '°F', capacity: 8, capacityUnit: 'qt' } }, { kind: 'sum', of: 'antifreeze', given: { percent: 60, capacity: 8, capacityUnit: 'qt' } }] },
    { text: 'it holds eight quarts how much antifreeze for fifty percent and what if i only go thirty five', asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 50, capacity: 8, capacityUnit: 'qt' } }, { kind: 'sum', of: 'antifreeze', given: { percent: 35, capacity: 8, capacityUnit: 'qt' } }] },
    { text: "Block holds 8 quarts. How much antifreeze for 50 percent? And if there's fifteen percent in it already?", asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 50, capacity: 8, capacityUnit: 'qt' } }, { kind: 'sum', of: 'antifreeze', given: { percent: 50, percentNow: 15, capacity: 8, capacityUnit: 'qt' } }] },
    { text: 'and for forty', prior: ['how much antifreeze for fifty percent in 8 quarts'], asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 40, capacity: 8, capacityUnit: 'qt' } }] },
    { text: 'System is 22 litres, want forty percent in it. And if it was fifty percent?', asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 40, capacity: 22, capacityUnit: 'L' } }, { kind: 'sum', of: 'antifreeze', given: { percent: 50, capacity: 22, capacityUnit: 'L' } }] },
    { text: 'Not forty, call it thirty-five per cent.', prior: ['how much antifreeze for forty percent in 22 litres'], asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 35, capacity: 22, capacityUnit: 'L' } }] },
    { text: 'how much antifreeze for minus twenty celsius in 22 litres, and how much if I only go to minus twelve?', asks: [{ kind: 'sum', of: 'antifreeze', given: { temp: -20, tempUnit: '°C', capacity: 22, capacityUnit: 'L' } }, { kind: 'sum', of: 'antifreeze', given: { temp: -12, tempUnit: '°C', capacity: 22, capacityUnit: 'L' } }] },
    { text: "How much antifreeze for fifty fifty in the Heron's five gallon system?", asks: [{ kind: 'sum', of: 'antifreeze', given: { percent: 50, capacity: 5, capacityUnit: 'gal' } }] },
  ],
  never: ['Filled it with antifreeze, nine quarts.', 'Antifreeze is on the shelf.', 'It held to twenty below last winter.', 'Drained two gallons of rusty water.'],
};
