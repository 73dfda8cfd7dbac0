/** Verbs that do not take "-ed": base, past, participle. */
const FORMS = `
break broke broken|bend bent bent|bring brought brought|build built built|rebuild rebuilt rebuilt|burn burned burned|buy bought bought|cast cast cast|catch caught caught|come came come|cut cut cut|recut recut recut|
deal dealt dealt|do did done|redo redid redone|undo undid undone|draw drew drawn|drive drove driven|eat ate eaten|fall fell fallen|feed fed fed|feel felt felt|find found found|fit fitted fitted|refit refitted refitted|get got gotten|give gave given|go went gone|
grind ground ground|regrind reground reground|hang hung hung|rehang rehung rehung|have had had|hear heard heard|hold held held|keep kept kept|know knew known|lay laid laid|lead led led|leave left left|lend lent lent|let let let|lie lay lain|light lit lit|lose lost lost|make made made|remake remade remade|
mean meant meant|meet met met|pay paid paid|put put put|quit quit quit|read read read|ride rode ridden|ring rang rung|rise rose risen|run ran run|say said said|see saw seen|seek sought sought|seize seized seized|sell sold sold|send sent sent|set set set|reset reset reset|sew sewed sewn|shake shook shaken|
shear sheared sheared|shoot shot shot|show showed shown|shrink shrank shrunk|shut shut shut|sink sank sunk|sit sat sat|slide slid slid|split split split|spend spent spent|spin spun spun|spring sprang sprung|stand stood stood|steal stole stolen|stick stuck stuck|strike struck struck|string strung strung|
swing swung swung|take took taken|teach taught taught|tear tore torn|tell told told|think thought thought|throw threw thrown|wear wore worn|weep wept wept|weld welded welded|wind wound wound|rewind rewound rewound|write wrote written|sweep swept swept|blow blew blown|bleed bled bled|bore bored bored|
re-pour re-poured re-poured|freeze froze frozen|forget forgot forgotten|begin began begun|dig dug dug|sling slung slung|wring wrung wrung|slit slit slit|let let let|spray sprayed sprayed|hit hit hit|beat beat beaten|knit knit knit|cost cost cost|hurt hurt hurt|learn learned learnt|spill spilled spilt|swear swore sworn|shine shone shone|stink stank stunk|dry dried dried`;

export const IRREGULAR: ReadonlyMap<string, readonly [past: string, participle: string]> =
  new Map(FORMS.replace(/\n/g, '').split('|').map(f => { const [b, p, pp] = f.split(' '); return [b!, [p!, pp!]] as const; }));
