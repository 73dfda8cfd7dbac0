/**
 * What recognisers make of shop talk when an everyday word sounds like the trade's: the word heard, the word meant, and the words beside it
 * that make it plain. Heard so by general recognisers on shop notes; common practice, no source.
 */
interface Misheard { heard: RegExp; meant: string; /** The word after it. */ before?: RegExp; /** The word ahead of it. */ after?: RegExp; /** Plain enough where the shop has the word meant. */ own?: boolean }

/** Two words heard where one was said, after a word that only the one could follow. */
export const HEARD_APART: readonly (readonly [first: string, second: string, meant: string, after: RegExp])[] = [
  ['egg', 'shaped', 'egg-shaped', /./], ['magnet', 'oh', 'magneto', /./], ['magnet', 'toe', 'magneto', /./], ['mag', 'neato', 'magneto', /./], ['mag', 'needo', 'magneto', /./], ['alter', 'nator', 'alternator', /./], ['gas', 'kits', 'gaskets', /./], ['hydra', 'lick', 'hydraulic', /./], ['hydro', 'lick', 'hydraulic', /./], ['high', 'draulic', 'hydraulic', /./], ['die', 'nemo', 'dynamo', /^(the|a|my|old)$/], ['solo', 'noid', 'solenoid', /./], ['thermo', 'stat', 'thermostat', /./], ['conk', 'rod', 'conrod', /^(the|a)$/], ['piss', 'ton', 'piston', /./], ['radio', 'ator', 'radiator', /./], ['wreak', 'cored', 'recored', /./], ['reek', 'cored', 'recored', /./], ['re', 'cored', 'recored', /./], ['prime', 'her', 'primer', /^(of|with|the|some|epoxy|etch|grey|gray|red|zinc|two)$/], ['gas', 'kit', 'gasket', /^(a|the|head|new|old|sump|manifold)$/], ['prime', 'or', 'primer', /^(of|with|the|some)$/], ['var', 'nish', 'varnish', /./], ['fly', 'will', 'flywheel', /^(the|a)$/],
  ['pin', 'yen', 'pinion', /./], ['tap', 'it', 'tappet', /^(the|a|valve)$/], ['carb', 'or', 'carburettor', /^(the|a)$/], ['rat', 'chet', 'ratchet', /./], ['bush', 'in', 'bushing', /^(the|a|bronze|new|old)$/],
];

export const MISHEARD: readonly Misheard[] = [
  { heard: /^breaks?$/, meant: 'brake', before: /^(lines?|shoes?|drums?|pads?|pedal|cylinders?|bands?|rods?|cables?|fluid|levers?|dis[ck]s?|calipers?|linings?|springs?|hoses?|pipes?|light|adjusters?|hub|backing|assembly)$/ },
  { heard: /^breaks?$/, meant: 'brake', after: /^(hand|parking|drum|band|rear|wheel|disc|foot|winch|transmission|left|right)$/ },
  { heard: /^(where|wire|ware|were)$/, meant: 'wear', before: /^(plates?|strips?|rings?|bars?|pads?|shoes?)$/ },
  { heard: /^(scores?|course|horse)$/, meant: 'coarse', after: /^(\d+\/\d+|inch|eighths?|sixteenths?|quarter|half|quarters)$/ },
  { heard: /^bring(s)?$/, meant: 'bearing', after: /^(wheel|ball|hub|front|rear|main|thrust|roller|left|right|outer|inner|carrier|pilot|crank|beater|end|shaft|idler|taper|release|throwout|drum|top|bottom)$/ },
  { heard: /^letters?$/, meant: 'leather', after: /^(pump|cup|new|the two|piston)$/ },
  { heard: /^few$/, meant: 'fuel', before: /^(pump|line|tank|filter|cap|tap|nozzle|pipe|gauge|cock|strainer|bowl|hose)$/ },
  { heard: /^diagrams?$/, meant: 'diaphragm', after: /^(pump|pulsator|lift|fuel|rubber|accumulator|torn|perished|vacuum|new)$/, own: true },
  { heard: /^(peddle|petal|medal)s?$/, meant: 'pedal', after: /^(brake|clutch|break|foot|throttle|starter|gas|the)$/ },
  { heard: /^(sheer|share)$/, meant: 'shear', before: /^(bolts?|pins?|blades?|bars?)$/ },
  { heard: /^(role|rule)$/, meant: 'roll', before: /^(pins?|bars?)$/ },
  { heard: /^(cotton|carter|copper)$/, meant: 'cotter', before: /^(pins?)$/ },
  { heard: /^(idol|idle|title)$/, meant: 'idler', before: /^(pulleys?|wheels?|gears?|shafts?|arms?|sprockets?)$/ },
  { heard: /^(bail|bale|bell)$/, meant: 'bale', before: /^(wire|twine|chamber|counter)$/ },
  { heard: /^(pen|pan|pens)$/, meant: 'pin', after: /^(king|clevis|hitch|cotter|roll|wrist|crank|shear|taper|pivot|gudgeon|hinge|linch)$/ },
  { heard: /^(bold|bolds|bull|boat|bowl|bolt's)$/, meant: 'bolt', after: /^(king|shear|carriage|head|eye|u|hex|coach|anchor|wheel|pivot|mounting|clamp)$/ },
  { heard: /^(hug|hob|hubbed|hump)$/, meant: 'hub', before: /^(bearings?|caps?|seals?|nuts?|bolts?|puller)$/ },
  { heard: /^(knots|nots|notes)$/, meant: 'nuts', after: /^(lug|wheel|jam|lock|castle|wing|axle)$/ },
  { heard: /^(steal|still|steele)$/, meant: 'steel', before: /^(plate|bar|rod|tube|sheet|strip|pipe|angle|wire|wool|channel)$/ },
  // "two thousand" of what is counted or weighed is the number itself.
  { heard: /^thousand$/, meant: 'thou', before: /^(?!(?:pounds?|lbs?|dollars?|bucks|quid|euros?|miles?|rpms?|revs?|feet|foot|psi|hours?|kilos?|kgs?|kilograms?|tons?|square|bolts?|volts?|gallons?|litres?|newtons?|revolutions|a|and|one|two|three|four|five|six|seven|eight|nine|ten|[a-z]+teen|[a-z]+ty|hundred|\d+)$)/, after: /^(ten|twelve|fifteen|twenty|thirty|forty|eight|six|five|four|seven|nine|two|three|\d{1,2})$/ },
  { heard: /^(though|go)$/, meant: 'thou', before: /^(at|under|clearance|gap|play|end|out|thick|wear|worn|runout|shims?|feeler)$/, after: /^(ten|twelve|fifteen|twenty|thirty|forty|eight|six|five|four|seven|nine|two|three|\d{1,2})$/ },
  { heard: /^(val|vow|dow|tho|foul)$/, meant: 'thou', after: /^(ten|twelve|fifteen|twenty|thirty|forty|eight|six|five|four|seven|nine|two|three|\d{1,2})$/ },
  { heard: /^(talked|talk|torched|tort|torte|torqued)$/, meant: 'torqued', before: /^(the|it|them|to|all|both|down|up)$/ },
  { heard: /^(sale|sell|ceil|steel)$/, meant: 'seal', after: /^(oil|shaft|grease|crank|hub|lip|felt|rope|pinion|input|output|axle)$/ },
  { heard: /^(leaver|liver|leather)$/, meant: 'lever', after: /^(gear|clutch|brake|throttle|hand|shift|trip|lift|release)$/ },
  { heard: /^(val|vowel|bowel)s?$/, meant: 'valve', after: /^(exhaust|intake|inlet|relief|check|needle|float|control|slide|safety|foot)$/ },
  { heard: /^(genes?|gems|gyms|chims|jims|shins|chins)$/, meant: 'shims', after: /^(the|two|three|four|five|six|seven|eight|nine|ten|of|were|some|\d+)$/, own: true },
  { heard: /^pushings?$/, meant: 'bushing', after: /^(the|a|new|old|bronze|brass|left|right|wheel|king|pin|front|rear|spindle|hub|drag|link|rake|two|both)$/ },
  { heard: /^warn$/, meant: 'worn' },
  { heard: /^(civ|cive|sift|seive)$/, meant: 'sieve' },
  { heard: /^(babit|bobbit|babbit|babbet)$/, meant: 'babbitt', after: /^(the|pour|poured|drive|end|old|new|of|re-pour|poor)$/ },
  { heard: /^(collars?|colour|color)$/, meant: 'collar', after: /^(thrust|set|shaft|lock)$/ },
];
