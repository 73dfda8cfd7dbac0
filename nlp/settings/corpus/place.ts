import type { ShopSetting } from '../place.ts';

/** Sentences with the setting they mean, and sentences that must never be taken for one. */
export const PLACE_PHRASES: readonly (readonly [said: string, means: ShopSetting])[] = [
  ["we're at 52.3, -7.7", { set: 'place', latitude: 52.3, longitude: -7.7 }],
  ["We're at 52.3 north, 7.7 west.", { set: 'place', latitude: 52.3, longitude: -7.7 }],
  ['the shop is at 44.84 -0.58', { set: 'place', latitude: 44.84, longitude: -0.58 }],
  ['shop is at 33.9 S, 18.4 E', { set: 'place', latitude: -33.9, longitude: 18.4 }],
  ['place: 52.35, −7.70', { set: 'place', latitude: 52.35, longitude: -7.7 }],
  ['I\'m at 41 degrees north 93 degrees west', { set: 'place', latitude: 41, longitude: -93 }],
  ['fetch the forecast', { set: 'forecast', on: true }],
  ['Use the weather forecast', { set: 'forecast', on: true }],
  ['turn on the forecast', { set: 'forecast', on: true }],
  ['stop fetching the forecast', { set: 'forecast', on: false }],
  ['no forecast', { set: 'forecast', on: false }],
  ['don\'t fetch any forecast', { set: 'forecast', on: false }],
  ['a mile costs 0.45', { set: 'mile rate', rate: 0.45 }],
  ['A mile costs me 45 cents.', { set: 'mile rate', rate: 0.45 }],
  ['mileage is 60p a mile', { set: 'mile rate', rate: 0.6 }],
  ['count a mile at $0.67', { set: 'mile rate', rate: 0.67 }],
  ['driving costs .5 a mile', { set: 'mile rate', rate: 0.5 }],
  ['mile rate 0', { set: 'mile rate', rate: 0 }],
];

export const NOT_PLACES: readonly string[] = [
  "we're at 52 and 60 on compression", "it's 0.045, 0.047 on the left", 'the gap is at 0.018, 0.020', 'I\'m at 12 hours, 40 minutes', 'what\'s the forecast', 'forecast for tomorrow', 'get the weather strip', 'use the weather tape',
  'a mile of wire costs 45', 'it costs 0.45 a mile to ship', 'the seller is 40 miles away', 'position 2, 3', 'we\'re at 65.5, 66 foot pounds', 'turn off the fuel', 'it\'s 14.2 volts, 13.8 at idle', 'change the oil at 50 miles',
];
