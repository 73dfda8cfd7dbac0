import { ENGLISH_VERBS } from './english.ts';
import { BENCH_VERBS, DONE_NOUNS } from './bench-verbs.ts';
import { IRREGULAR } from './irregular.ts';
import { nounClasses } from './nouns.ts';

/** What a verb of the shop does, apart from its particle. A verb may do several things; its particle and its object decide. */
type VerbClass = 'off' | 'on' | 'hang' | 'tight' | 'work' | 'send' | 'arrive' | 'order' | 'buy' | 'quote' | 'stow' | 'measure' | 'begin' | 'stop' | 'find' | 'spend' | 'state' | 'say' | 'think' | 'move' | 'own' | 'help' | 'wait' | 'check' | 'fail';

const BY_CLASS: Record<VerbClass, string> = {
  off: 'rip peel unshackle unhang unrivet unclamp unlace unlock unseat wrench winkle lever worm bash nurse manhandle hump shuck ditch offload unload decouple demount unclip uncap unjam unlash unseat unsolder unwrap pull remove unbolt unscrew dismount detach disconnect uncouple extract unpin unhook unhitch dismantle disassemble strip undo draw separate split whip yank haul prise pry wrestle lift take knock drive press punch tap pop slide drop tease chisel cut get unship withdraw jack crack slip beat tear back drift slack coax work',
  on: 'bond dog locate fit install mount refit reinstall remount reattach attach replace swap bolt put press drive tap shrink slip slide drop seat screw thread pin rivet hook connect reconnect couple hitch assemble reassemble button pop stick nail clip slot lower lift set swing get drift home renew change lace reseat insert fasten marry bed secure ease knock feed push stand secure refasten wire lag exchange',
  hang: 'hang rehang tack mock offer prop perch rest dry-fit dryfit clamp lay sit wire zip-tie tie lash rig strap bungee',
  tight: 'tighten torque retorque retighten adjust readjust gap regap tension retension set reset snug nip preload cinch tweak pinch talk pull do run bring',
  work: `${BENCH_VERBS} bond rebond build clean paint prime grease oil weld grind machine seal mask unmask test rebuild drain fill flush sand blast sandblast scrape soak strip straighten hone ream bore rebore turn lap polish buff file drill tap solder braze patch pour re-pour repour
    cast glue clamp varnish wax degrease derust rewire wire rewind sharpen balance true bleed charge recharge lubricate lube pack repack splice sew plane cut recut trim bend heat anneal harden temper plate galvanise galvanize undercoat topcoat wash scrub dress redress face skim reface shim reline re-line boil fabricate make remake knurl sleeve resleeve
    deburr bead-blast beadblast wipe dry prep etch repair fix mend rewire regrind reground resurface recover upholster reupholster re-upholster tin re-tin pickle dip brush spray coat recoat repaint respray shellac stain lacquer prime reprime clear unblock rod purge pressure-test wirebrush wire-brush wirewheel wire-wheel scour descale free unseize unstick loosen chase retap rethread re-thread
    stitch pin bush rebush re-bush rebabbitt shape form press roll crimp peen stone burnish stake countersink chamfer trace rub fill top change decoke decarbonise decarb powder-coat powdercoat zinc stone spin swage dismantle strip vacuum blow degauss magnetise remagnetise recharge rewire reseal re-seal replate re-plate chrome caulk rivet refurbish overhaul service recondition restore relace lace saw rip mill shave ease rout edge joint laminate steam fettle dye undercoat skim line-bore proof stretch shorten lengthen extend reshape redrill re-drill tidy touch rough-sand scuff knock dress bed prick balance punch time cook bake leak-test tack hammer jig cure degas track pressure-wash media-blast retip rebed rescrape rescue shotblast dewax demag re-blue reblue rebalance recore re-core rod tape re-tip retip set square gauge check-valve reinforce stiffen wheel gusset brace bung plug unplug tar creosote treat preserve dunk steep label tag stencil line splint grout flatten smear build metal remetal re-metal hardface hard-face shot-peen dowel key spline sweat scribe scuff clock jig rig wedge chock hose jetwash jet-wash rinse swill hoover sweep strain siphon syphon replenish commission smear slather dab daub lather degunge needle-gun wirewool tumble demagnetise demagnetize resolder retin unscrew unpick untangle unbend unblock patch reglue respray repack wax-oil undercoat hydro-test crack-test dye-test hammer tweak`,
  send: 'dispatch despatch forward consign send ship post mail drop take leave deliver drive run hand give courier haul cart freight carry go',
  arrive: 'arrive come land show turn collect pick fetch receive deliver get',
  order: 'order reorder re-order backorder pre-order',
  buy: 'snaffle fork treat wangle acquire procure source buy get pick pay purchase grab score nab find bag snag collect',
  quote: 'quote ask want say reckon charge offer list sell',
  stow: 'bin lob plonk plop whack stockpile put stow store stash stack leave stick tuck lay keep box bag hang shove set throw toss chuck park drop pop pack move place hide shelve wrap file slide sling dump bury lean',
  measure: 'calliper caliper register average hover dial measure read mike count check weigh gauge clock find get show come record note draw make sit run pull hold spec see drop register give test blow put',
  begin: 'start begin try commence get',
  stop: 'stop quit finish halt pause give leave',
  find: 'find notice discover spot see',
  spend: 'spend put take sink log waste use lose do work',
  state: 'freeze warm hunt surge ping pink judder shudder clank grumble froth spurt gush puddle slump snatch misfire backfire cough wheeze hiss rasp gargle scrape foul labour labor lug droop look seem feel sound turn hold leak weep drip seize run spin rock rattle knock smoke squeal bind stick drag wobble grab slip slide work fire start go swing move float seal stay sit drop pass fail burn shine wear rust break crack snap bend strip jam rub catch clunk whine hum chatter overheat draw close open click crank pull track smell measure fit mesh ring slop flop hang skip miss pop sag lean read flicker glow charge discharge shut creak grind want line bottom clear pump lift lower turn engage disengage latch lock release return balance vibrate idle rev spark arc short blow back wander shimmy shift walk sink stall die flood judder lurch kick backfire misfire growl howl scream thump clack clatter hiss puff gurgle foam heave nod dribble ooze flutter fade bite bleed crumble flake peel lift blister sweat tick squeak whistle roll glide climb throw sing jerk stutter pulse sputter hesitate groan flap wallow crab weave grip bubble behave labour labor lope gallop sieze creep purr crackle',
  say: 'say tell reckon figure claim swear mention phone call ring hear promise guess suppose warn write rumour',
  think: 'think guess suppose reckon wonder hope wish believe suspect bet know expect imagine doubt dream fancy figure remember forget swear consider',
  move: 'go come move roll drag tow push flip swing lift stand raise lower haul bring',
  own: 'have own got get need want',
  help: 'help lend give come',
  wait: 'wait leave let cure dry set rest sit cool touch stand',
  check: 'revisit eyeball check recheck re-check inspect look re-torque retorque examine verify test see watch',
  fail: 'flog hollow mangle batter butcher maul ding cup splay fog mist discolour discolor contaminate emulsify curdle congeal clog choke seep spall balloon fatigue explode burst chafe derail mildew craze moulder unravel unwind detach crack break snap shear strip wear rust seize jam leak split bend warp corrode rot pit score chip tear fail burn perish gall scuff groove chew wallow stretch collapse crumble swell crush twist distort flatten dent melt fracture hole gum glaze harden sag let rub rot egg blow lose foul shatter mushroom scorch weather delaminate soften stiffen round mash bust',
};

/** Every class of verbs. */
export const VERB_CLASSES = Object.keys(BY_CLASS) as readonly VerbClass[];

export interface VerbForm { base: string; form: 'base' | 's' | 'past' | 'part' | 'ing' }
const forms = new Map<string, VerbForm[]>();
const classes = new Map<string, Set<VerbClass>>();

const doubles = (base: string): boolean => /^(?:[^aeiou]|qu)*[aeiou][bdgklmnprtz]$/.test(base) || /^(unp|rep?|unst|resh|ret|unpl|unm|refi|reb|disen|over|unsh)/.test(base) && /[^aeiou][aeiou][bdgmnpt]$/.test(base) || /^(equip|format)$|(metal|pedal|level|label|channel|travel|swivel|pencil|chisel)$/.test(base);
const stem = (base: string): string => doubles(base) ? base + base.at(-1) : base;

/** Past ("-ed" or irregular), participle, "-ing" and "-s" forms of a base verb. */
export function inflect(base: string): VerbForm[] {
  const past = /e$/.test(base) ? `${base}d` : /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ied` : `${stem(base)}ed`;
  const ing = /ie$/.test(base) ? `${base.slice(0, -2)}ying` : /[^eoy]e$/.test(base) ? `${base.slice(0, -1)}ing` : `${stem(base)}ing`;
  const s = /(s|x|z|ch|sh|o)$/.test(base) ? `${base}es` : /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ies` : `${base}s`;
  const odd = IRREGULAR.get(base);
  return [
    { base, form: 'base' }, { base, form: 's' }, { base, form: 'ing' }, { base, form: 'past' }, { base, form: 'part' },
  ].map((f, i) => ({ ...f, word: [base, s, ing, odd?.[0] ?? past, odd?.[1] ?? past][i]! })) as (VerbForm & { word: string })[];
}

for (const [cls, list] of Object.entries(BY_CLASS) as [VerbClass, string][]) {
  for (const base of list.trim().split(/\s+/)) {
    if (!classes.has(base)) {
      classes.set(base, new Set());
      for (const f of inflect(base) as (VerbForm & { word: string })[]) {
        const have = forms.get(f.word) ?? [];
        if (!have.some(h => h.base === f.base && h.form === f.form)) forms.set(f.word, [...have, { base: f.base, form: f.form }]);
      }
    }
    classes.get(base)!.add(cls);
  }
}
for (const base of [...IRREGULAR.keys(), 'trust', 'rely', 'exhibit', 'display', 'possess', 'indicate', 'demonstrate', 'be', 'need', 'keep', 'spend', 'use', 'lie', 'like', 'love', 'hate', 'mean', 'learn', 'eat', 'drink', 'live', 'die', 'sleep', 'talk', 'walk', 'become', 'happen', 'matter', 'cost', 'last', 'kill', 'save', 'owe', 'carry', 'add', 'allow', 'belong', 'borrow', 'decide', 'end', 'finish', 'follow', 'hit', 'join', 'mind', 'miss', 'plan', 'play', 'steal', 'teach', 'throw', 'touch', 'try', 'visit', 'manage', 'intend', 'refuse', 'agree', 'bother', 'turn', 'wear', 'watch', 'work', 'swap', 'quit', 'lose', 'phone', 'scratch', 'strike', 'cancel', 'hurry', 'stay', 'relax', 'bleed', 'rain', 'snow', 'freeze', 'pour', 'close', 'charge', 'weigh', 'sing', 'hide', 'smoke', 'beat', 'boil', 'blame', 'thank', 'arrive', 'free', 'part', 'forget', 'recore', 'claim', 'deal', 'prefer', 'regrease', 'refill', 'rebleed',
  'ride', 'point', 'contain', 'include', 'remain', 'appear', 'explain', 'describe', 'answer', 'shout', 'yell', 'curse', 'laugh', 'smile', 'cry', 'argue', 'win', 'choose', 'bring', 'catch', 'chase', 'lead', 'avoid', 'ignore', 'continue', 'proceed', 'attempt', 'struggle', 'fiddle', 'sweat', 'thaw', 'hear', 'listen', 'realise', 'realize',
  'prove', 'differ', 'exceed', 'reach', 'depart', 'climb', 'jump', 'protect', 'uncover', 'expose', 'reveal', 'vanish', 'disappear', 'spill', 'shake', 'stir', 'blend', 'divide', 'share', 'carve', 'bury', 'dig', 'kneel', 'squeeze', 'wriggle', 'wiggle', 'jiggle', 'prod', 'poke', 'scare', 'bark', 'holler', 'invent', 'design', 'build', 'teach', 'admit', 'deserve', 'enjoy', 'sulk',
  'consist', 'depend', 'involve', 'require', 'suit', 'resist', 'refuse', 'obey', 'behave', 'survive', 'suffer', 'recover', 'improve', 'worsen', 'shed', 'spit', 'spew', 'squirt', 'spray', 'drool', 'dangle', 'hover', 'swivel', 'pivot', 'rotate', 'revolve', 'oscillate', 'slacken', 'steal', 'borrow', 'quiver', 'tremble', 'stutter', 'splutter', 'cough', 'bounce', 'rebound', 'topple', 'stumble', 'trip', 'sneak', 'creep', 'obtain', 'procure', 'propose', 'observe', 'exhibit', 'indicate']) {
  for (const f of inflect(base) as (VerbForm & { word: string })[]) {
    const have = forms.get(f.word) ?? [];
    if (!have.some(h => h.base === f.base && h.form === f.form)) forms.set(f.word, [...have, { base: f.base, form: f.form }]);
  }
}
for (const [word, base] of [['got', 'get'], ['fit', 'fit'], ['lit', 'light'], ['learnt', 'learn'], ['burnt', 'burn'], ['spelt', 'spell'], ['leant', 'lean'], ['proven', 'prove'], ['shrunken', 'shrink'], ['stripped', 'strip'], ['swelled', 'swell'], ['swollen', 'swell'], ['mic', 'mike'], ['mics', 'mike'], ['mikes', 'mike'], ['miked', 'mike'], ['welt', 'weld'], ['mated', 'mate']] as const) {
  const have = forms.get(word) ?? [];
  forms.set(word, [...have.filter(h => h.base !== base || h.form === 'base'), { base, form: 'past' }, { base, form: 'part' }]);
}

for (const [word, base] of DONE_NOUNS.trim().split(/[|\n]/).map(x => x.split(' ') as [string, string])) {
  const have = forms.get(word) ?? [];
  forms.set(word, [...have.filter(h => h.base !== base), { base, form: 'past' }, { base, form: 'part' }]);
  classes.set(base, (classes.get(base) ?? new Set<VerbClass>()).add('work'));
}

const tradeForms: readonly string[] = [...forms.keys()], inShop: ReadonlySet<string> = new Set(tradeForms);
for (const base of ENGLISH_VERBS) for (const f of inflect(base) as (VerbForm & { word: string })[]) if (!nounClasses(f.word).size) forms.set(f.word, [...forms.get(f.word) ?? [], { base: f.base, form: f.form }]);

/** Forms of the verbs that the shop's talk is made of. */
export const allVerbForms = (): readonly string[] => tradeForms;
/** Whether a word is a form of one of them; other English verbs ("radiate") are heard for names ("radiator") as any odd word is. */
export const isShopVerb = (low: string): boolean => inShop.has(low);
/** The verbs that a word can be a form of; empty when it is none. */
export const verbForms = (low: string): readonly VerbForm[] => forms.get(low) ?? againForms(low);
const NONE: readonly VerbForm[] = [];

/** A deed of the shop done again: "re-tensioned", "rescraped". */
function againForms(low: string): readonly VerbForm[] {
  const [, re, rest] = /^(re-?)(\p{L}{4,})$/u.exec(low) ?? [];
  const of = rest !== undefined ? forms.get(rest) ?? NONE : NONE;
  return of.length ? of.map(f => ({ ...f, base: `${re}${f.base}` })) : NONE;
}

/** Whether a verb does something of that class; what is done again ("re-tension") is of the class of what it does again. */
export const isClass = (base: string, cls: VerbClass): boolean => (classes.get(base) ?? classes.get(base.replace(/^re-?/, '')))?.has(cls) ?? false;
