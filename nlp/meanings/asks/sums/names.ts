/**
 * How the trade calls a sum, and the sets of fields with which it is whole. With its name and one whole set a fragment asks for it without
 * any word of a question ("M12 8.8 torque", "tap drill half thirteen"); with its name alone a question does ("what size fuse do I need?").
 * An empty `whole`: the name with a figure is what was measured on the bench (a clearance, a deflection, a ring gap), so only a question asks.
 * `result`: units that only the answer has: a fragment with such a figure states it and asks nothing ("grade 5 3/8 torque 30 foot pounds").
 */
export interface SumName { name: RegExp; whole: readonly (readonly string[])[]; result?: readonly string[] }

export const SUM_NAMES: Readonly<Record<string, SumName>> = {
  torque: { name: /\b(?:torque|tq|tighten(?:ing)?|wrench (?:say|set)|foot pounds|ft lbs?|newton met(?:re|er)s)\b/, whole: [['size', 'grade']], result: ['lb-ft', 'N·m', 'lb-in'] },
  belt: { name: /\b(?:belt (?:length|size)|(?:what|which) (?:length|size)(?: of)? (?:v |vee |fan )?belt|cent(?:re|er)s? for (?:an? |the )?(?=[^.?!]*\bbelt)|length of (?:the |a )?(?:new |flat |v |vee |drive |leather |canvas |fan )*belt(?:ing)?|(?:need|size|what|long a|long an?|long should the) (?:v |vee |fan )?belt|arc of contact|wrap)\b/, whole: [['d1', 'd2', 'centre'], ['d1', 'd2', 'length']] },
  tapDrill: { name: /\b(?:tap(?:ping)? (?:drill|hole|size|bit)s?|percent threads?|for tapping|tapping|to tap|(?<=[#~a-z0-9] )tap)\b|^(?:and |the |right |ok |so )*(?:drill|bit|hole|drill bit) (?:size )?(?:for|to tap) (?!an? )/, whole: [['size']] },
  shims: { name: /\bshims?(?: (?:stack|pack))?\b|\bleaves\b/, whole: [['target', 'have']] },
  voltDrop: { name: /\b(?:volt(?:age|s)? (?:drop|loss|lost)|drop in|line loss)\b/, whole: [['amps', 'length', 'gauge'], ['watts', 'volts', 'length', 'gauge']] },
  dewPoint: { name: /\bdew ?(?:points?|pt)\b/, whole: [['temp', 'humidity']] },
  antifreeze: { name: /\b(?:freez(?:e|ing) point|anti ?freeze|glycol|coolant)\b/, whole: [['percent', 'capacity'], ['temp', 'capacity'], ['percentNow', 'percent']] },
  sling: { name: /\b(?:sling (?:sum|question)|(?:leg|sling) (?:load|tension|pull)|tension (?:per|in each|on each|in the) (?:leg|sling)|each (?:leg|sling|strap|chain))\b/, whole: [['load', 'angle'], ['load', 'height', 'length']] },
  endPlay: { name: /\b(?:end ?play|end ?float|bearing play)\b/, whole: [['pitch', 'flats'], ['pitch', 'turn'], ['pitch', 'measured', 'wanted']] },
  shrinkFit: { name: /\b(?:shrink(?: ?fit| on)?|shrunk|temperature rise|heat needed|how hot|heat it)\b/, whole: [['diameter', 'interference']] },
  coverage: { name: /\b(?:coverage|(?:lit(?:re|er)s|gallons|quarts) (?:needed|required|of [a-z]+)|spread(?:ing)? rate|paint|primer|square (?:feet|met(?:re|er)s) (?:to|per|from) (?:the|a) (?:gallon|lit(?:re|er)|quart))\b/, whole: [['solids', 'thickness']] },
  landed: { name: /\b(?:landed|to my door|all in|land at|lands at|delivered price|really cost)\b/, whole: [['price', 'shipping'], ['price', 'tax'], ['price', 'core'], ['price', 'miles']] },
  boltStrength: { name: /\b(?:proof|breaking|yield|tensile) (?:load|strength|point)\b/, whole: [['size', 'grade']] },
  clearanceHole: { name: /\b(?:clearance|body|through|clear|close fit|loose fit|normal fit) (?:hole|drill|bit)s?\b/, whole: [['size']] },
  pipeThread: { name: /\b(?:npt|pipe (?:thread|tap|plug))\b/, whole: [['size']] },
  drillSize: { name: /\b(?:drill size|(?:closest|nearest) drill|diameter of (?:an? )?(?:letter|number)|drill)\b/, whole: [] },
  adjustableSheave: { name: /\b(?:adjustable|variable(?: pitch)?) (?:sheave|pulley)\b/, whole: [['d1', 'turns'], ['d1', 'pitch']] },
  beltNumber: { name: /\b(?:belt number|nearest [abc] belt|standard belt|(?:pitch|outside|inside|datum) length)\b/, whole: [['section', 'number'], ['section', 'length']] },
  beltTension: { name: /\b(?:belt (?:deflection|tension)|deflection)\b/, whole: [] },
  alternatorSpeed: { name: /\balternator (?:speed|rpm|revs)\b/, whole: [['d1', 'd2', 'rpm1']] },
  boiling: { name: /\bboil(?:s|ing)?(?: point)?\b/, whole: [['cap']] },
  pressureLeak: { name: /\b(?:leak(?:age)?(?: rate| down)?|pressure test)\b/, whole: [['pressure1', 'pressure2', 'volume', 'time']] },
  wireGauge: { name: /\b(?:circular mils?|resistance of|diameter of|wire (?:diameter|section)|how thick)\b/, whole: [['gauge'], ['section']] },
  fuse: { name: /\b(?:what|which|size|sized) (?:size |sized |amp )*fuse\b|\bfuse (?:size|for|rating)\b/, whole: [['amps'], ['watts', 'volts']] },
  battery: { name: /\b(?:battery|state of charge|hydrometer|specific gravity)\b/, whole: [] },
  sixToTwelve: { name: /\b(?:dropping|ballast|dropper) resistor\b|\bresistor\b/, whole: [['amps'], ['watts'], ['ohms']] },
  slingCapacity: { name: /\b(?:sling|chain)[^.?!]*\b(?:capacity|good for|lift|rated)\b/, whole: [['rating', 'angle'], ['size', 'grade', 'angle']] },
  isoFit: { name: /\b(?:limits?|tolerances?)\b|\b(?:js|[hgfekmnprs])\d{1,2}\b[^.?!]*\b(?:how tight|fit)\b/, whole: [['fit', 'diameter']] },
  pressFit: { name: /\b(?:press(?: fit)?|interference)\b/, whole: [['holeLow', 'shaftLow']] },
  bushing: { name: /\b(?:running clearance|bush(?:ing)? clearance|clearance)\b/, whole: [] },
  bearingGrease: { name: /\bgrease\b/, whole: [['diameter', 'width']] },
  displacement: { name: /\b(?:displacement|cubic inches|cubic capacity|swept volume|what size (?:is )?(?:an?|the|my) engine)\b/, whole: [['bore', 'stroke']] },
  compression: { name: /\bcompression ratio\b|\bchamber volume\b/, whole: [['bore', 'stroke', 'chamber'], ['bore', 'stroke', 'ratio']] },
  hydraulic: { name: /\bhydraulic (?:force|ram|cylinder)\b|\b(?:force|push|pull|pressure)\b[^.?!]*\b(?:cylinder|ram)s?\b|\b(?:cylinder|ram)s?\b[^.?!]*\b(?:force|push|(?<!\b(?:first|second|third|fourth|fifth|sixth|\d(?:st|nd|rd|th)) )pull|how fast)\b/, whole: [['bore', 'pressure'], ['bore', 'flow']] },
  ringGap: { name: /\bring (?:end )?gaps?\b/, whole: [] },
  roadSpeed: { name: /\b(?:(?:road|ground|top) speed|revs? per mile|turns per mile)\b/, whole: [['rpm', 'ratio', 'radius'], ['rpm', 'ratio', 'diameter'], ['radius']] },
  gearing: { name: /\b(?:gear|sprocket|chain|drive) ratio\b|\bratio (?:from|of|between)\b/, whole: [['teeth1', 'teeth2'], ['rpm1', 'rpm2']] },
  twoStroke: { name: /\b(?:two ?stroke|2 ?stroke|#~* ?stroke|chain ?saw|petrol|gas|fuel) mix\b|\boil (?:for|in|to)\b|\bhow much oil\b/, whole: [['ratio', 'fuel'], ['ratio']] },
  filmThickness: { name: /\b(?:wet (?:film|mils?)|mils? wet|microns? wet|dr(?:y|ies) to)\b/, whole: [['wet', 'solids'], ['dry', 'solids']] },
  paintMix: { name: /\b(?:mix(?:ed|ing)?|hardener|reducer|activator)\b/, whole: [['parts', 'total'], ['parts', 'first']] },
  mileage: { name: /\b(?:mileage|miles?|drive|driving|trip)\b/, whole: [] },
};
