/** The closed classes of the language: what never names a part. */
const set = (s: string): ReadonlySet<string> => new Set(s.trim().split(/\s+/));

export const DET = set("the a an this that these those another any some every each either neither no both all my your his her our their its which what whose half several few couple");
export const ARTICLE = set('the a an this that these those my your his her our their its some any another');
export const SUBJECT = set('i we you he she they it');
export const PRONOUN = set("i me we us you he him she her they them it one ones this that these those something anything nothing everything somebody someone nobody anyone everyone whoever myself himself herself yourself ourselves theirself mine yours his hers theirs ours itself themselves meself hisself");
export const PREP = set('past of in on at to from with without for by under underneath below beneath behind beside besides alongside agin among amongst between near over above onto into off out inside outside through against across along around round after before since until till about up down per than like via toward towards next');
export const PARTICLE = set('off on out in up down back apart away together loose over through');
export const AUX_BE = set("is are was were be been being am 's 're 'm isn't aren't wasn't weren't ain't");
export const AUX_HAVE = set("has have had having 've hasn't haven't hadn't");
export const AUX_DO = set("do does did doing done don't doesn't didn't");
export const MODAL = set("can could ought will would shall should may might must 'll 'd can't couldn't won't wouldn't shan't shouldn't mustn't needn't");
export const NEGATIVE = set("not n't never no isn't aren't wasn't weren't ain't hasn't haven't hadn't don't doesn't didn't can't couldn't won't wouldn't shan't shouldn't mustn't needn't nor neither hardly nothing none without nobody");
export const CONJ = set('and but or so then plus & yet nor');
export const SUBORD = set("if when whenever while before after until till once because 'cause since unless although though whereas as that which who whose where why how whether except lest so");
export const WH = set("what where when who whose which why how whats wheres");
export const ADVERB = set(`
now then today tonight yesterday tomorrow again already ready yet still just only really quite very too also even maybe perhaps probably finally fully completely totally
all almost nearly about roughly approximately around nicely well badly properly pretty rather fairly so much more most less least enough ever never always often sometimes
soon later earlier early late lately recently first second last next once twice anyway though however instead else together apart away here there everywhere somewhere
inside outside indoors outdoors upstairs downstairs up down back forward sideways right left straight dead clean clear halfway mostly partly barely hardly actually basically honestly
good-and for-good meanwhile afterwards afterward beforehand ago half way home overnight temporarily permanently currently presently alone beforehand supposedly apparently definitely certainly
slightly lightly heavily carefully thoroughly gently loosely tightly easily freely smoothly evenly slowly quickly nowhere hopefully luckily sadly thankfully finger`);
export const CALENDAR = set('monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december mon tue tues wed weds thu thur thurs fri sat arvo christmas easter');
export const FILLER = set('um uh er erm ah eh hmm hm mm uhm umm uhh ehm');
export const DISCOURSE = set('okay ok right so well now righto oh alright yeah yep yes no anyway anyhow look listen hey hi hello like see mind also and but then plus basically actually still good great nope aye cheers please thanks update note job log');
