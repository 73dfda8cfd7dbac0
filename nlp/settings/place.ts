/** Where the shop is (degrees, north and east positive), whether a forecast is fetched for it, and what a mile costs. */
export type ShopSetting =
  | { set: 'place'; latitude: number; longitude: number }
  | { set: 'forecast'; on: boolean }
  | { set: 'mile rate'; rate: number };

const DEGREES = String.raw`([+-−]?\d{1,3}(?:\.\d+)?) ?(?:°|degrees?)? ?(north|south|east|west|n|s|e|w)?`;
const PLACE = new RegExp(String.raw`^(?:(?:we're|we are|i'm|i am|the shop(?:'s| is)|my shop(?:'s| is)|shop(?:'s| is)|it's|our place is|the place is|my place is|place|position|location)(?: (?:at|near|located at|about|is|set to))?:? )${DEGREES}(?:,| and|;)? ${DEGREES}$`);
const FETCH_ON = /^(?:fetch|get|use|turn on|switch on|start (?:fetching|getting|using)|look up|download)(?: me)? (?:the |a |my |weather )*(?:forecasts?|weather)(?: (?:from now on|online|from the internet|for (?:me|us|here)|again|automatically))?$/;
const FETCH_OFF = /^(?:(?:don't|do not|never) (?:fetch|get|use|look up)|stop (?:fetching|getting|using|looking up)|turn off|switch off|no(?: more)?(?: fetching)?(?: of)?)(?: me)? (?:the |a |my |any |weather )*forecasts?(?: (?:any ?more|from now on|online))?$/;
const NUMBER = String.raw`(?:[$£€] ?)?(\d+(?:\.\d+)?|\.\d+)`;
const MILE = new RegExp(String.raw`^(?:(?:a|one|each|every|the) mile (?:costs?(?: me| us)?|is|comes to|counts(?: as)?|at)|(?:miles|mileage|driving)(?: rate)? (?:costs?(?: me| us)?|is|are|comes to|counts as|at)|(?:count|reckon|take|figure|use) (?:a |each |the )?(?:mile|mileage) (?:as|at)|(?:my |the )?mile(?:age)? rate(?: is|:)?) ${NUMBER} ?(cents?|c|p|pence|dollars?|bucks|euros?|pounds?)?(?: (?:a|per|each) mile| each)?$`);

/** Reads a setting of the shop out of a whole sentence; undefined when it is about anything else. */
export function readShopSetting(text: string): ShopSetting | undefined {
  const low = text.toLowerCase().replace(/[’‘]/g, "'").replace(/−/g, '-').replace(/[.!?]+\s*$/, '').replace(/\s+/g, ' ').replace(/^(?:please|ok|okay) /, '').replace(/ please$/, '').trim();
  if (FETCH_ON.test(low)) return { set: 'forecast', on: true };
  if (FETCH_OFF.test(low)) return { set: 'forecast', on: false };
  const mile = MILE.exec(low);
  if (mile) return { set: 'mile rate', rate: Number(mile[1]) * (/^(?:c|p$|pence)/.test(mile[2] ?? '') ? 0.01 : 1) };
  return place(low);
}

function place(low: string): ShopSetting | undefined {
  const said = PLACE.exec(low);
  if (!said) return undefined;
  const [, a, aSide, b, bSide] = said;
  // "Two and three" are no degrees: they are told by a decimal point or by the side that is named.
  if (!(aSide && bSide) && !(a!.includes('.') && b!.includes('.'))) return undefined;
  const latitude = signed(a!, aSide);
  const longitude = signed(b!, bSide);
  return /^[ew]/.test(aSide ?? '') || Math.abs(latitude) > 90 || Math.abs(longitude) > 180 ? undefined : { set: 'place', latitude, longitude };
}
const signed = (degrees: string, side: string | undefined): number => Number(degrees.replace('+', '')) * (/^[sw]/.test(side ?? '') ? -1 : 1);
