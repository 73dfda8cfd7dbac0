/**
 * English words of one class that no list of the trade holds, so that a sentence with words outside the shop is still taken apart rightly.
 * Taken from WordNet 3.1 (Princeton University; its licence stands in WORDNET-LICENSE beside this file): the single words that its tagged
 * texts use more than three times as often in this class as in all others.
 */
const words = (list: string): ReadonlySet<string> => new Set(list.trim().split(/\s+/));

/** Verbs, in their base form. */
export const ENGLISH_VERBS = words(`
abandon abet abhor abide abolish abound abridge abrogate absorb abstain abuse accede accelerate accentuate accept acclaim acclimatize accommodate accompany
accomplish accord accost accredit accrue acculturate accumulate accuse accustom ache achieve acknowledge acquaint acquiesce acquire acquit activate actuate
adapt adhere adjoin adjourn administer admire admix admonish adopt adore adorn adsorb advertise advise advocate aerosolize affect affirm affix afford
agglomerate aggravate agitate alienate alight align allege alleviate allocate allot alphabetize alter amass amaze amble amend amplify amputate amuse analyse
analyze animize annihilate announce annoy antagonise antagonize anticipate apologize appease append applaud apply appoint apportion appraise appreciate
apprehend approve arbitrate archaize arise arouse arraign arrange arrest arrogate ascend ascertain ascribe aspire assail assert assess assign assimilate
assist associate assume assure astonish astound atone attain attend attest attract attribute attune audition augment augur authenticate authorize automate
avenge avert await awaken babble backstitch badger baffle balk balkanize bandy banish baptize barbecue bask baste bathe bawl bear beautify beckon bedamn
befall befit befog befriend befuddle beg beget beguile behead behold behoove belabor belie bellow bemoan berate beseech beset besiege besmirch bespeak bestow
bethink betray bevel bewail beware bewilder bewitch bicker bid bide bilk billow birdie blab blacken blanch blaspheme bless blink blubber blurt blush boast bob
bode boggle boo boomerang boycott brag brandish breathe brighten broaden broil browbeat bruit budge bullshit bump burgeon bushwhack bypass cackle calcify
calculate calibrate calumniate canonize canvass capitalize capitulate captivate capture care careen caricature cascade castigate catapult catechize categorize
cater caucus cause cavort caw cease celebrate centralize centrifuge cerebrate certify chafe chandelle chant characterize chat cheat cherish chide chirp chivy
chop choreograph chortle chronicle chuckle chuff chug circulate circumscribe cite citrate clamber clank clarify clasp classify cleanse cleave clench cling
clink clobber clog clomp clothe coagulate coalesce coddle codify coerce coexist cohere coincide collaborate collate colonize commandeer commemorate commend
commiserate commit communicate communize commute compare compel compensate compete compile complain complicate comply compose comprehend compress comprise
compute conceal concede conceive concentrate conciliate conclude concoct concur condemn condense condone conduct confer confess confide confine confirm
confiscate conform confound confront confuse congeal congratulate congregate conjoin connote conquer conscript consign consolidate consort conspire constitute
constrict construct construe consult consume consummate contaminate contemplate contend contradict contribute contrive convene conventionalize converge
converse convert convey convict convince convulse cooperate coordinate cope correlate correspond corroborate cosponsor counteract counterchallenge covet cower
cram crave crawl crease create cremate cringe crisscross criticise criticize croak crochet croon crouch crucify cruise crumple crystallize cuddle culminate
cultivate curl curtail dabble dampen dare darken darn dart daunt daydream dazzle deaden debilitate deceive decelerate decentralize decertify declaim declare
decompose decorate decry dedicate deduce deduct deem deepen defecate defend defer define defraud defray defrost defy deglycerolize degrade deign delay
delegate delimit delude delve demarcate demean democratize demolish demonstrate demote demur demythologize denote denounce deny depersonalize depict deplore
deploy depose deprave depress deprive deride derive descend desecrate designate despatch despise despoil destine destroy detain detect deter deteriorate
determine detest detonate detract detribalize devastate develop deviate devise devote devour diagnose dialyze dictate differentiate digest dignify digress
dilate dilute diminish dine disable disabuse disagree disallow disappoint disapprove disarm disband disbelieve disburse discard discern disclose discontinue
discourage discriminate discuss disenfranchise disentangle dishearten dishonour disintegrate disinter dislodge dismember dismiss disobey disown dispel
dispense disperse displace display dispose disprove disqualify disrobe disrupt dissect dissemble disseminate dissipate dissolve dissuade distill distinguish
distract distribute disturb diverge divert divest divulge docket dodge dominate domineer donate dovetail downgrade doze dramatize drape dread droop drown
drowse dub duck dupe duplicate dwindle earn ebb economize eddy edify edit educate efface effectuate effloresce ejaculate eject elapse elate elect elevate
elicit eliminate elongate elucidate elude elute emanate emancipate emasculate embark embarrass embed embellish embezzle embitter embody embolden emboss
embroider embroil emerge emigrate emit emphasize employ empower emulate enable enact encamp encase enchant encipher enclose encompass encourage encroach
encrust endanger endear endorse endow endure energize enervate enforce engender engrave engross engulf enhance enjoin enlarge enlist enliven enmesh enquire
enrage enrich enrol enroll ensconce enshrine ensue ensure entail enter entertain enthrall enthrone entice entitle entomb entrench entrust enumerate enunciate
envelop envisage envision envy epitomize equate equilibrate equip eradicate erase erode err erupt escape eschew espouse establish eulogize europeanize
evacuate evade evaluate evaporate eventuate evoke evolve exacerbate exaggerate exalt exasperate excel excise excite exclaim exclude excommunicate excoriate
execute exemplify exert exhale exile exist exonerate exorcise expand expedite expel expend expiate expire explode exploit explore export expound express
expunge extenuate exterminate extinguish extirpate extrapolate extricate extrude exude facilitate fall falsify falter fascinate fathom fatten faze federalize
feign feint felicitate fell ferry fertilize fete fidget fight finance fizzle flatter flaunt flee flex flinch fling flirt flit flocculate flog flounce flounder
flourish flout flub fluoresce fluster forbid foreclose forego foreknow foresee foreshorten forestall forgive forgo formulate forsake forswear fortify foster
fractionate fraternize fret frighten frizzle frogmarch frown frustrate fry fulfil fulfill fulminate fumble fume furl furnish fuss gabble gain gamble gape
garner gash gather gawk gaze generalize generate germinate gesticulate geyser giggle gild gird glean glint glisten gloat glom glorify glower glut glycerolize
gnash gnaw gobble goof gorge gouge govern grapple grasp gratify graze greet grieve grimace grope grovel grow grumble grunt guarantee gull gush guzzle gyrate
haggle hanker harangue harry harshen hasten hatch heal heed heft heighten heist hibachi hibernate highlight hijack hinder hobble hock hog homogenize hop
huddle hug humanize humiliate hunt hurl hurtle hush hustle hypnotize hypothesize identify idolize ignite illuminate illumine illustrate imbed imbibe imitate
immerse impair impale impart impede impel imperil impersonate impinge implant implore imply impose imprecate impress imprison improvise impute inaugurate
incapacitate incise incite inclose incorporate incubate inculcate incur indict indoctrinate indorse induce induct indulge infect infer infest infiltrate
inflame inflate inflect inflict inform infuriate ingest inhabit inherit inhibit initiate inject injure inlay innovate inquire inscribe insist inspire instal
instigate institute institutionalize instruct insulate insure integrate intensify inter interact intercede intercept interconnect interfere interject
interlace interlock internalize interpenetrate interpose interpret interrupt intersect intertwine intervene interweave intimidate intone introduce intrude
intrust inure invade invalidate inveigh invert invest investigate invite invoke iodinate irrigate irritate isolate italicize itch itemize jabber jangle jeer
jeopardize jilt jimmy jingle jive jog joggle jostle justify juxtapose kidnap knead lacerate lam lament lampoon languish laze leap leer legislate legitimize
lessen levy liberalize liberate lick lighten linger lionize liquidate loathe lob locate lodge loiter lounge lunge lure lurk lyophilize madrigal magnetize
magnify maintain malinger maltreat manifest manipulate mar marinate marvel masquerade massacre mastermind match materialize matriculate maximize meander
meddle mediate meditate memorize merge mesmerize metabolize metamorphose mew migrate militate mince mingle minimize miscalculate miscarry misconstrue misgauge
misinterpret misjudge mislay mislead mismanage misname misperceive misplace misquote misread misrepresent mistrust misunderstand miter mitigate mix mobilize
modernize modify moisten molest mollify monitor monopolize moo mop motivate mottle mourn muffle mull multiply mumble murmur muse muster mutilate mutter
mystify nag narcotize narrate nasale nationalize naturalize navigate necessitate neglect negotiate nestle neutralize nominate notarize notify nourish nucleate
nudge nurture nuzzle oblige obliterate obsess obstruct occlude occupy occur offend officiate offsaddle ogle omit operate oppose oppress ordain organise
organize orient originate ossify ostracize oust outclass outdistance outdo outdraw outface outfight outgeneral outgrow outlive outmaneuver outmode outnumber
outplay outrun outsmart outstrip outweigh overburden overcome overdrive overeat overemphasize overestimate overexpose overfeed overfill overhear overindulge
overlap overlay overlook overpower overproduce overreach override overshadow overshoot overstep overstrain overtake overthrow overturn overwhelm overwork
oxidise pacify pall pamper pant paralyze parch pardon pare parlay parry partake participate pat patronize peck peddle peep peer pelt penalize penetrate pepper
perceive perform permeate permit perpetrate perpetuate persecute persevere persist personalize personify persuade pertain perturb peruse pervade pester
petrify philosophize pierce pilfer pillory ping piss plague plat plead please pledge plod plummet plunge plunk ply poach polarize pommel ponder pooch populate
portend portray pose possess postpone postulate pounce practise prance prattle pray preach prearrange precede precipitate preclude precondition predict
predominate preempt preisolate preoccupy prepare presage prescribe preside presume presuppose pretend prevail prevent probe proclaim procrastinate produce
profess proffer prohibit prolong promote prompt promulgate pronounce propel prophesy proscribe prosecute prosper protrude provide provoke prowl publicize
publish pulsate pulverize pummel punctuate puncture punish punt pupate purify purl purloin purport pursue putt puzzle pyramid quail qualify quarrel quash
quell quench quicken quickstep quip radiate ramble ransack rap rape ratify rationalize react reactivate readapt reaffirm realign reap reappear rearrange
reassail reassert reassign reassure reawaken rebuff rebuke rebut recalculate recall recapitulate recapture recede recess recite reclassify recognize recollect
recommend reconcile reconnoiter reconsider reconstruct reconvene reconvert recopy recount recoup recreate recur redden redecorate rededicate redeem redefine
redirect rediscover redistribute redouble reduce reecho reek reelect reenact reenforce reestablish reevaluate reexamine refashion refer refinance refine
reflect refuel refute regain regale regard regroup regulate rehabilitate rehash rehearse reign reimburse reinstate reinterpret reiterate reject rejoice rejoin
relate relearn relegate relent relieve relinquish relive reload rely relyric remand remarry remind reminisce remit remodel remonstrate rename rend render
reopen reorganize repay repeat repel repent rephrase replant represent repress reprimand reproduce repudiate repulse reread rerun reschedule rescind resemble
resent reserve resettle reside resift resign resmudge resolve resort resound respond restate restock restrain restrict resume resurrect resuspend retain
retaliate retard retch rethink retie retire retort retrace retract retranslate retrieve reunite reuse revamp reverberate revere reverence revert review revile
revise revitalize revive revolutionize rewrite ricochet rid riffle ripen ritualize rival rive roam roast rob roleplay romanticize roost roughen rouse rove
ruffle rummage rupture rustle sadden salivate salute sap sashay satiate satisfy saturate saute savor savvy scab scamper scan scandalize scarify scatter scoff
scold scoot scramble scrawl scribble scrounge scrutinize scud scurry sear secede seclude secrete secularize seek seep segregate select sensitize
sentimentalize serve settle sever shamble shirk shiver shoot shrug shudder shuffle shun shuttle sicken sidestep sidle sift sigh signify simmer simplify
simulate singe sip sire situate sizzle skedaddle skid skulk skylark slam slap slash slaver slime slink slurp smack smash smirk smite smolder smother smuggle
snarl snatch snicker sniff snigger snoop snore snort snub snuggle soar sob socialize solicit solve soothe sorb souse sow spang spare speak spearhead
specialize specify speculate splash spoil sponsor sprain sprawl spread sprinkle sprint sprout spurn squall squash squawk squelch squint squirm stab stabilize
stagger stalk stammer standardize stare startle starve steer sterilize stifle stimulate stipulate stoke stomp stoop strafe straggle strangle stratify
strengthen strew strive strop strum stun sub subcontract subdue subjugate submerge submit subpoena subscribe subside subsidize subsist substantiate subtend
subtitle subtract subvert succeed succumb suck sue suffice suffocate suffuse suggest sulphur summarize summate summon sunder superimpose superintend supersede
supervise supplant supplicate suppress surfeit surmount surpass surround suspend sustain swab swagger swathe sway swerve swim swindle swipe swish swoon swoop
symbolize sympathize synchronize synthesise synthesize systematize tabulate tailor tamper tantalize tarnish tarry tat teem teeter telescope televise tempt
tend terminate terrify terrorize testify tether theorize thicken thrash threaten thresh thrive throb thwart tilt tingle tinker titter toil tolerate totter
tramp trample transact transcend transcribe transfix transform transgress translate transmit transmute transpirate transplant transpose traverse trespass
trickle trot trudge trundle tug tweeze twiddle twinkle twirl twitch typify unclasp uncork uncurl underestimate underlie underline undermine underpin underrate
underscore understand understate undertake underwrite undress undulate unearth unfasten unfold unify unite universalize unlace unlash unleash unload unlock
unpack unravel unscramble unsheathe unsolder unteach unthaw untie unveil unwind unwire update upgrade uphold uplift upraise uproot urbanize urge usher usurp
utilize utter vacate validate vanquish vary veer venerate ventilate vex victimize vie vindicate violate visualize vivify vocalize vomit vouch vouchsafe vow
wad wade waft waggle wail waive wallop wane wangle warble warrant waver waylay weaken wean welcome wend whack wheedle whet whimper whinny whirl whisk whisper
whiten whoop widen wield wilt wince wink winnow wisecrack wither withhold withstand woo woolgather worry wreak wreathe wreck wring writhe yap yearn yield
zigzag zoom
`);

export const ENGLISH_ADJECTIVES = words(`
countersunk
abandoned abashed abbreviated abdominal aberrant abhorrent abiding abject ablated ablaze able abnormal abominable abounding aboveground abrupt absent
absentminded absolute absorbed absorptive abstractive absurd abundant abused academic accelerated acceptable accepted accepting accompanied accomplished
accrued accurate accusative accusing aching acoustical acquainted acquired acrobatic activated actual acute adamant adaptable adapted addicted addlebrained
addressed adept adequate adjacent adjectival administrative admirable admissible adopted adrenal advanced advantageous adventurous adverbial adverse
advertised advisable aerated aerobic aerodynamic aerosolized aesthetic affected affectionate afferent affiliated affixed afflicted afire aflame aflare afloat
aforesaid afraid african agape aged aggressive aghast agile agitated agricultural ahorseback ailing aimless airborne airless airy akin alarmed alfresco
algerian alienated alive alkaline alleged allied alligatored allocable allowable aloof altered alveolar amazed amazing ambiguous ambitious amenable amended
american amiable amicable amiss amorous amorphous ample amused anaerobic analeptic analogous analytic analytical anastomotic anatomic anatomical ancestral
ancient andean anemic angelic anglican angry anguished angular anhydrous animated annihilating annoyed annoying annual anomalous anomic anonymous antagonistic
antebellum anthropomorphic anti antibiotic antic anticipated antique antiseptic antithetical antithyroid antitrust anxious apocalyptic apocryphal apologetic
apostolic appalling apparent appealing applicable appointed appreciable appreciative approachable approved apt aqueous arable arbitrary arboreal arched
archeological arching architectural ardent arduous argive argumentative aristocratic aristotelian armed armored aroused arranged arrogant arterial arteriolar
artificial artistic arty ascending ascertainable ashamed ashen asleep assertive assigned assorted assured asteroidal astonished astonishing astounding astral
astringent astronomical astute asymmetric asymptotic atheistic atheromatous athletic atmospheric atomic atrophic atrophied attained attentive attired
attractive attributable atypical audacious audible austere authentic authoritarian authoritative authorized automatic automotive autonomic available avowed
awaited awakened aware awed awestruck awkward axial axiomatic babelike bacterial baffling baggy balding baleful balking bandaged barbaric barbed baronial
baroque based bashful basic basophilic battleful bawdy beaded beady beaming bearded beardown bedfast bedraggled beefy befuddled beguiling behavioral belated
belgian believable belligerent beloved belowground bended beneficial bespectacled bestial bestubbled betrothed bewhiskered bewildered bewitched biblical
bibliographical bigger bilateral bilingual billion bimolecular binomial biochemical biographical biological biomedical bipartisan bitter bittersweet bizarre
blackened bladed blanched bland blasphemous blatant blazing bleached bleak bleary blessed blighted blinded blindfolded blissful blithe blockading blond
bloodless bloodstained bloodsucking bloodthirsty bloody bluish blurred blushing blustery boastful boeotian bogartian bogus boisterous bold bony booked booted
borderline born bottomless botulinal bouffant bounded boundless bovine boyish brainy branched branded brash brassy brave brazen brazilian breathless brief
brindle brisk britannic british broad brocaded bronchial bronchiolar bronzed brotherly brown brownish brushy brutal bucolic budgetary bulging bulky bullnecked
buoyant burdened bureaucratic burly bushwhacking bushy businesslike bustling busy buttressed buzzing cackly cadaverous cagey calculating callous calloused
calorimetric canadian candid canonist canonized cantering capable capitalistic captivating cardiovascular carefree careful careless careworn carnal carpeted
cartesian carven casebook cassocked casual catapultian catastrophic catatonic categorized causal causative ceaseless celestial celtic centenary centered
central centralized ceramic cerebral certain certified challenging chambered chanted chantlike chaotic charitable charming cheap cheerful cheery cherished
chic childish childlike chilling chilly chinese chinked chinless chiseled chivalrous chockful choosy choreographic christian chromatographic chronic chunky
churchgoing churchillian churning cinematic circular circumspect civic civil civilian civilized clad clammy clamorous clandestine clanging clanking clannish
classical classificatory classified classless clearheaded clerical clever clinched clinical clockwise clogging clonic clothed clotted clouded clumsy cluttered
coarse coarsened coastal coaxial cockeyed cocky coexistent cognate coherent cohesive collapsible collective collegiate colloidal colloquial colombian colonial
colored colorful colossal columned columnlike combatant combinable combined cometary comfortable comforted comforting comic commanding commendable
commensurate commercial committed common commonsense communal communicational communicative communistic comparable comparative compatible competent
competitive completed complex complicated complimentary composed comprehensive compressed compromising concealed conceivable concentrated conceptual concerned
concerted conciliatory concise concluding conclusive concordant concretistic concurrent condemnatory condescending conditional confident confidential
confiding confining confirmed conflicting confluent confused confusing congenital congested congestive congratulatory congregational congressional conjoined
conjugal conjugated connective conscientious conscious consecutive consequent conservative considerable considerate consistent consolidated consoling
consonantal conspicuous constant constraining constricted constructive consummated consumptive contemplative contemporary contemptible contemptuous contented
contiguous continental continual continuous contraband contractual contradictory contrasting contributing contributory contrived controlled controversial
convenient conventional conversational convex convinced convincing convivial convulsive cooccurring coordinated cordial corporate corporeal correlated
corresponding corrosive corrugated cortical corticofugal cosmic costly counterbalanced countless courageous courteous covered cowardly cowled cozy crafty
craggy cranky craved craven crazy creamy creative credible creditable creedal crested crimson crippled crippling crisscrossed critical crocked crocketed
crotchety crowded crowned crowning crucial crude cruel crummy crumpled crusted cryptic cuban cubist cultural cultured cumbersome cumulative curious curly
curricular cursory curtained curved curving custodial customary cute cylindrical cynical dabbled dainty damaging damned dangerous dank dapper dappled
darkening darned dashing dated dauntless dazed dazzling deadened deadly deaf deafening deathlike deathly debilitating decadent deceased deceptive decisive
declarative declared decorative decreasing dedicated dedifferentiated deductible deductive deep defective defensible defensive defiant deficient definable
defined definite definitive deflated deformational deformed dejected deliberate delicate delicious delighted delightful demanding democratic demonstrable
demonstrated demure demythologized denominational dense dental departmental dependable dependent deplorable deprecating deprecatory depressed deranged
derisive derived descending descriptive desirable desired desolate despairing desperate despised despondent destroyed destructive desultory detachable
detailed detectable detected determinable determinate determined determining devastating developed developing developmental deviant devilish devious devoted
devotional devout dexterous dextrous diachronic diagnostic diagonal diagonalizable diaphyseal diatomic dictated dietary different differentiable
differentiated difficult diffident diffused diffusing digestible digestive dignified dilapidated diligent dim dimensional dimensioning diminished diminishing
diminutive dingy diplomatic dipylon directed directing directional disabling disappointed disappointing disastrous discarded discernable discernible
discerning disciplined disconcerted disconcerting discontented discorporate discouraged discouraging discourteous discrete discretionary discriminating
disdainful diseased disembodied disfigured disguised disgusted disgusting disheartened disheartening disheveled dishonest disillusioning disintegrative
disinterested disjointed dismayed dismaying disobedient disordered disorderly disorganized disparate dispassionate dispersed displeased dispossessed
disproportionate disputable disqualified disruptive dissatisfied dissimilar dissolved distal distant distinct distinctive distinguishable distinguished
distortable distraught distressed distressing distributive disturbed disturbing divergent diverse diversified divine divisive divorced dizzy docile
doctrinaire doctrinal dogged dogging doglike dogmatic doleful domestic dominant dominated dominating domineering doped dormant dosed dotted doubtful downcast
drab drafty dramatic draped drastic draughty dreadful dreamlike dreamy dreary drenched dressy drizzling drowsy drugged drugless drunken dual dubious dulled
dumb dumfounded duplicable durable dusky dutch dwindling dynamic eager eared earned earsplitting earthbound earthlike earthshaking earthy eastern easy eatable
ebullient ecclesiastical eclectic economic economical ecstatic edematous edentulous edgy edifying educated educational effective efficacious efficient
effortless eighteenth elapsed elastic elderly eldest elected electoral electric electrifying electromagnetic electronic electrostatic elegant elemental
elementary elevated eleventh elfin eligible elongated eloquent elusive emaciated emancipated embarrassed embarrassing embedded emblematic emboldened emeritus
emotional emphatic emphysematous empirical employed enabling enchained enchanted endearing endless endothelial endowed enduring energetic enervating
enforceable enforced engraved engrossed engrossing enigmatic enjoyable enlightened enormous enraged ensuing entangled enterprising enthusiastic entire
entitled enveloping envious environmental enzymatic eosinophilic ephemeral epileptic epiphyseal epistolatory equipotent equipped equitable equivocal
ergotropic eroded erotic erratic erroneous ersatz erudite erythroid escaped esoteric essential established estranged estranging eternal ethereal ethical
ethnic etymological eugenic euphoric eurasian european evaluative evangelical evasive eventual everlasting everyday evident evidential evolutionary exact
exaggerated exalted exasperated exasperating exceptional excessive excitatory excited exciting exclusive excruciating exhausted exhausting exhaustive
exhilarating existent existential existing exotic expanded expectable expectant expedient expendable expensive experienced experiential experimental
explanatory explicit exploratory explosive expository expressed expressible expressionistic expressionless expressive exquisite extant extensive external
extinguished extra extralegal extramarital extraneous extraordinary extraterrestrial extravagant exuberant exultant eyed eyelike fabled fabulous facetious
facilitatory factual faint faithful fallen falling fallow false famed familiar famous fanciful fantastic faraway fascinated fascinating fascist fashionable
fastidious fat fatal fateful fatigued fattening fatty favorable favored fearful fearless feasible feathered featured featureless fecund federal feeble feline
feminine ferocious ferromagnetic fertile fervent festive fetid feudal feverish fewer fibrocalcific fictional fictive fiendish fierce fiery fifteenth fiftieth
figurative filmed financial fingered finicky finite firsthand fiscal flashy flawless flecked fleeting fleshy flexible flimsy floral florentine florid fluffy
fluorescent flying foamy focal follicular fond foolhardy fooling foolish foolproof footloose foppish forbidden forced forceful forceless foregoing foreign
foremost forensic foreseeable forgetful forked formal formalized former formidable forthright fortified fortunate fourfold fourteenth fourth fractional
fragile fragmentary fragrant frail framed frank frantic freehand freewheeling frenzied frequent fresh freudian friable friendly frightened frightening
frightful frigid fringed frivolous frontal frostbitten frowzled fruitful fruitless frustrated frustrating fueled fugal fumbling functional functioning
fundamental fundamentalist fungal funny furious furnished furry furtive fusiform fussy futile fuzzed fuzzy gaelic gainful galvanic gaping garbed garbled
gaseous gastrointestinal gauche gaudy gaunt gauntleted gay generalized generous genetic genial gentile gentle gentlemanly genuine geographic geographical
geological geometric geometrical germinal gerundial gesticulating ghastly ghostlike ghostly gibelike gigantic gilded gilt girlish glad glamorous glaring
glassless glassy gleeful glinting glistening glittering global glomerular gloomy glorified glorious glottochronological gloved glowering glum goddam goddamn
goddamned godforsaken godless godlike golden gorgeous gory gossamer governing gowned graceful gracious graded gradual grammatic grammatical grandiose granted
granular granulocytic graphic graphical grassroots grateful gratified gratuitous gravid gravitational gray greater greatest grecian greedy gregarious grievous
grim grimy grizzled groggy groomed gross grotesque groundless grown gruesome gruff guatemalan gubernatorial guilty gullible gummy guttural gymnastic habitable
habitual hackneyed haggard hairless hairy hallowed handicapped handled handless handmade handsome handwoven handwritten handy hapless happy harassed
hardworking hardy harmless harmonic harmonious harsh hasty hateful hatless haughty haunted haunting hazy headed headless headstrong healthful heartening
hearty heavenly hebephrenic hebraic hectic heedless hefty hegelian helpful helpless hemolytic henpecked heraldic herculean hermetic heroic heterogeneous
heterozygous hidden hideous higher hilar hilarious hired historical hitless hoarse homegrown homely homemade homeric homicidal homogeneous homozygous honest
honorable honored hopeful horizontal horrid horrified horrifying hospitable hostile huddled huge human humane humanistic humanitarian humiliating humorous
hungarian hungry hunted husky hyaline hydrophilic hydrophobic hydrous hyperbolic hyperemic hyperfine hypertrophied hypoactive hypophyseal hypophysectomised
hypothalamic hypothetical hysterical icy idealized identical identifiable identified idiomatic idiosyncratic idiotic idolized idyllic ignorant illegal
illegitimate illicit illiterate illuminating illusionary illusory illustrative illustrious imaginary imaginative imitative immaterial immature immediate
immense imminent immoral immortal impacted impaired impartial impassable impassioned impatient impeccable impelled impending imperative imperfect imperial
impersonal impervious impetuous impious implacable implicated implicit implike important imposing impossible impotent impractical imprecise impregnable
impressive improbable improvised impudent inaccurate inactive inadequate inadvisable inanimate inappropriate inaudible incalculable incandescent incapable
incensed incertain incidental incisive inclined inclusive incoherent incoming incompatible incomprehensible inconceivable inconsequential inconsiderable
inconsistent inconvenient incorrect increased increasing incredible incurable indebted indecent indefatigable indefensible indefinable indefinite indelible
indelicate independent indescribable indeterminate indian indifferent indignant indirect indiscriminate indispensable indistinct indistinguishable
individualistic individualized indolent indoor indubitable induced indulgent industrial industrious ineffable ineligible inept inert inescapable inevitable
inexcusable inexhaustible inexorable inexpensive inexperienced inexplicable inexpressible inextricable infallible infamous infantile infectious infective
inferential inferior infernal infertile infinite inflamed inflammatory inflated inflexible influent influential informal informed infrequent infuriating
inglorious inhabited inherent inhibited inhibitory inhospitable inhuman inhumane initial injured innocent innumerable inoperable inorganic inquiring
inquisitive insane inscribed inscrutable insensitive inseparable insignificant insistent insolent insoluble inspirational inspired inspiring instantaneous
institutional institutionalized instructional instructive instrumental insubstantial insufficient insuperable insured insurmountable integral integrated
intelligent intelligible intense intensifying intensive intentional intercontinental interdepartmental interdependent interested interesting interfaith
interfering interlobular interlocking intermediate intermeshed interminable intermittent intermolecular internal international interpersonal interpretable
interpretative interrelated intersecting interspecies interstate interstellar interstitial interwoven intimal intolerable intractable intradepartmental
intrapulmonary intricate intrinsic introductory introjected introspective intrusive invaluable invariable invariant inventive inverse inverted investigative
invincible inviolate invisible inviting involuntary invulnerable inward iodinated iodinating ionic ionized irish irksome ironic ironical ironlike ironshod
irrational irreconcilable irreducible irregular irrelevant irremediable irreparable irresistible irresolute irresponsible irreversible irrevocable irritable
irritating isolated isolationist isothermal isotonic isotopic isotropic italian jacksonian jaded jagged jangling japanese jarring jaunty jazzy jealous
jeffersonian jetting jeweled jewish jingling jocose jocular jolly jolted jovial joyous jubilant judicial juicy jumbled jumpy jungian jutting juvenile keen
khaki killable kindled kindred kinesthetic kinetic kittenish knifelike knightly knotted knotty knowledgeable kosher labeled laborsaving lacking lactating lacy
laden ladened ladylike lamblike landlocked landscaped languid lanky lao lapsed large larger larval latent latest latter lavender lawless lax lazy leaded
leaden leathered leavened leering legal legendary legged leggy legislative legitimate lengthy lessened lesser lethal levelheaded lewd lexical lexicostatistic
liable liberated licensed licked lifelike lifelong lighted lighthearted likely limited limiting limitless linear lingual linguistic lipped listless literal
literary literate lithe littered livable lively livid loaded loathsome lobular local located lofty logical logistic lone lonely longstanding looted lordly
loud lousy lowly loyal lucid lucky ludicrous lugubrious lukewarm lumbar luminescent luminous lumpish lunar lunatic lurid luscious lush lusty luxurious lyrical
macabre machinelike macromolecular mad maddened maddening magical magnetic magnificent magnified maintained majestic major makeshift maladroit malformed
malign malposed mammalian mammoth mandatory maniacal manic maniclike manned mantic manufactured many marbleized marginal marital marked marketable martial
marvelous marxist masculine massive masted masterly matched matching maternal mathematical matted mauve maximal meager meandering meaningful meaningless
measurable meaty mechanical mechanistic mechanized median medical medieval meditative meek megakaryocytic melodic melodious melodramatic memorable menacing
mendacious menial mental merciful merciless mercurial mere meritorious merry mesenteric messy metabolic metallic metaphysical meteoritic meteorological
methodical methodist metropolitan microbial micrometeoritic microscopic microsomal mid midwestern mild militant military mimetic mincing mindful mindless
minimal minimized ministerial minoan minor miraculous misbranded miscellaneous mischievous miserable misguided misleading misplaced misrelated mistaken misty
misused mitral mixed mobile moblike modal modeled moderate modern modest modified moist molal molecular molten momentary momentous monastic monaural monkish
mononuclear monophonic monotonous monstrous monumental moonlit moral moralistic moroccan morose morphemic morphologic morphophonemic motional motionless
motivated motivating mottled mountainous mournful mousy muddied muddleheaded muddy muffled multidimensional multilateral multiple multiplied multitudinous
mundane municipal murdered murky muscular musical mustached mutational mute muted mutual mycenaean myeloid myocardial mysterious mystic mystical mythic
mythological nagging naive naked nameless napoleonic narrow narrowed nasal nasty natal national nationalistic natural naturalized nauseated nautical naval
neanderthal nearsighted neat nebulous necessary necrotic needless negative neglected negligent negligible neo neocortical neoliberal nerveless nervous netlike
nettlesome neurological neuromuscular neuronal neuropsychiatric neurotic neutral neutralized new newborn newtonian nibbed nighted nightmarish nihilistic
nilpotent nimble nineteenth ninth noble nociceptive nocturnal nodular nominal nonassertive nonchalant nonchurchgoing noncommissioned noncompetitive
nondescript nonenzymatic nonequivalent nonexistent nonfunctional nonionic nonlinguistic nonmetallic nonobservant nonparticulate nonpolitical nonproductive
nonresident nonspecific nonverbal nonvolatile normal northerly northern nosed noticeable notorious nourished nubile nuclear null numb numbing numerical
numerous numinous nutritional nutritive oaken obdurate obedient objectionable obligated obligational obliged oblique oblivious obnoxious obscene obsequious
observable observant observational obsessed obsolescent obtainable obvious occasional occipital occluded occlusive occupational occupied ocular odious offbeat
ohmic old older oleophilic oleophobic olympic ominous omniscient oncoming onetime opalescent opaque openmouthed operatic operating operational operative
opinionated opportunistic opposed opposing opposite optical optimal optimistic optimum opulent oral oratorical orbital orchestral ordinary organic
organizational organized oriental oriented ornery orthodox orthographic orthopedic osseous ostentatious other outclassed outdated outdoor outgoing outlined
outlying outmoded outraged outrageous outspoken outstanding overactive overall overbearing overconfident overcurious overdone overgrown overhand overloaded
overlooked overpriced overprotective overriding overt overturned overvaliant overweight overwhelming oxidised padded painful painless paired pale
paleocortical pallid palpable panicked panoramic papal papery papillary paradoxical paramagnetic parametric paramount paranoid parasympathetic pardonable
parental parisian parliamentary parochial parrotlike partial particular particularistic particulate passionate passive pasted pastelike pastoral pasty
paternalistic pathetic pathless pathogenic pathologic pathological patriarchal patriotic patristic patronizing paved payable peaceable peaceful peaked peaky
pearly peculiar pedagogical pedantic peevish pelvic penciled pending pensive peopled perambulating perceived perceptible perceptive perceptual percussive
peremptory perennial perfumed perfunctory perilous periodic peripheral perky permanent perpetual perplexed perplexing persistent personal personalized
persuasive pert pertinent perverse pessimistic pestered pestering pestilential petite petticoated pharmaceutical pharmacological philanthropic philharmonic
philological philosophic philosophical phonemic phonetic phonic phonologic phony phosphorescent photographic physical physicochemical physiological pianistic
pictorial pictured picturesque piezoelectric pigheaded pink piratical pitched piteous pithy pitiable pitiful pitiless placid plain planar planted
platitudinous platonic plausible playable playful pleasant pleased pleasing plentiful pleural pliant plump plumping pluralistic plush poetic poignant poised
polar polemical polite politic political polluted polycrystalline polytonal pomaded pompous ponderous popular populated populous portable portentous positive
possessed possessive possible posterior posthumous postwar potent powdered powerful powerless practicable practical practiced practised pragmatic precarious
precast preceding precious precise precocious preconceived precooked precooled predetermined predictable predictive predigested predisposed preeminent
preexistent preferable preferential preferred pregnant prehistoric prejudiced prejudicial preliminary preliterate premonitory preoccupied prepackaged
preparative preparatory prepared prepositional preposterous prepubescent prepupal prescribed presentable presentational presidential pretended preventive
previous prewar priceless prickly primary primeval primitive printable prior private privileged prizewinning pro probable procedural processed proclaimed
procreative prodigious productive profane professional proficient profitable profound profuse progressive projected prolific prolonged prominent promotional
prone pronounced propagandistic proper prophetic propitious proportional proportionate prosodic prospective prosperous protective proteolytic proto
protogeometric prototypical proud proverbial providential provincial provisional provocative proximal proximate prurient pseudo psychiatric psychical
psychological psychopathic psychopharmacological psychotherapeutic psychotic pubescent publicized published puckish pulmonary pulseless pulverized punishable
punitive puny puppyish pure purple purposeful pursuant pursuing puzzled puzzling pyknotic quaint qualified qualitative quantitative quarrelsome quarterly
quasi quavering queer querulous questionable quick quicksilver quiescent quilted quixotic racial racy radial radiant radioactive raftered ragged rampant
random ranging rangy ranked raped rapid rare rarified rasping ratable rational rationed raucous raw readable real realistic reasonable reassured reassuring
rebellious reborn recent receptive reciprocal reckless reclaimed recognizable recognized reconciling reconstructed recoverable recreational rectangular
recurrent red redheaded redoubled redoubtable reduced redundant reeking refined reflective reformed refreshed refreshing refrigerated regal regardant
regenerating regimental regional regular regulated regulatory related relativistic relentless relevant reliable relieved religious reluctant remarkable
remedial remorseful remorseless remote remunerative rending repayable repeated repentant repetitive reported reprehensible representational repressed
repressive reproducible repulsive reputable resentful residential residual resiny resistant resistive resolute resolved resonant resounding respectable
respected respectful respective respiratory resplendent responsible restive restless restrained restricted restricting restrictive resultant retained retarded
retentive reticulate retinal retired retrogressive revered reversible revised revolutionary rewarding rhythmic rhythmical rich rickety ridiculous righteous
rightful rigid rigorous rimless riotous ripe rising risky roasted robust rocklike rocky roiling rosy rotary roughhewn roundabout rousing rousseauan royal
rubberlike rubbery rudderless ruddy rude rudimentary ruffled rugged ruinous ruled rural rustic ruthless rutted sacred sad sadistic safe sagacious salable
salacious salient salivary sallow salty salubrious salutary same sanctified sandy sane sanguineous sapphire sarcastic sarcolemmal sardonic satanic satiric
satirical satisfactory satisfied saturated savage savory scalloped scandinavian scant scanty scarecrowish scathing scattered scenic scented scheduled
schematic schizophrenic scholarly schoolgirlish scientific sclerotic scoreless scornful scraggly scrambled scratchy scrawny screechy scriptural sculptural
sculptured scurrying searching seasonal secluded secondary sectioned sedate sedentary seductive seething segmental segregated seismic selected selective
selfish semantic semiempirical semiliterate semiprecious semipublic semiskilled senatorial senile sensational senseless sensible sensitive sensory sensual
sensuous sentient sentimental separable septic sequential serious serological settled seventeenth seventh severe sexual sexy shabby shackled shaded shadowed
shadowy shaggy shaky shallow shameful shapeless shapely shaven sheeplike sheer shielded shipshape shivery shocked shocking shod shortsighted shouldered showy
shrewd shrewish shrieked shrill shriveled shuddering sick sickish sickly sidelong signed significant silenced silent silly silvery similar simple simplex
simplistic simulated simultaneous sincere sinewy sinful single singular sinister sintered sinuous sinusoidal situated sixth sizable sized sizzling skeletal
skeptical skilled skillful skinny slanted slanting slashed slashing sleepy slender slim slippered slippery slivery sloping slovenly sluicing slurred sly
smaller smallish smart smitten smothered smothering smug snappy snobbish snuggled soaring sober sobering social socialistic socialized societal socioeconomic
sociological soiled solar soled solemn solitary soluble solved somatic somber somnolent sonorous sophisticated sorbed sordid sore sorrowful sorry sought
soundproof southbound southeastern southern soviet spaced spacious sparkling sparse spasmodic spatial special specialized specified speckled spectacular
spectral specular speculative speedy spellbinding spellbound spherical spic spidery spineless spirited spiritual spiteful splashed splattered splendid
splintery spoiled spoken spontaneous sporadic sporting spotless sprightly squalling squashed squeaky stabilized stabilizing staccato staggering stagnant stale
stalked staminate standardized stark startled startling starved starving stately statesmanlike static statistical statutory staunch steadied steady stealthy
stellar stemmed stentorian stepwise stereophonic stereotyped sterling stern sternal stilted stimulating stinking stoical stolid stooped storied stormy stout
straggling straightforward straitlaced stranded strange strangled strategic stratified streaked streaming streamlined strenuous stressed stricken strict
stringy striped strong structural structured strung stubborn studded studious stuffy stung stunned stunning stupefying stupendous stupid sturdy stylistic
stylized suave subconscious subdued subhuman subjective sublime subliterary submissive subsequent subservient subsidized substantial substantive subsurface
subtle suburban suburbanized succeeding successful successive sudden sufficient suffocating suggestive suitable sullen sultry sumptuous sunbaked sunburnt
sundry sunken sunny sunstruck suntanned superb supercilious superficial superior supernatant supersonic superstitious supine supplemental supplementary
supportive supreme sure surly surmounted surprised surprising surrounded surrounding susceptible suspended suspicious swaggering swart swarthy swaybacked
swedish sweet sweltering swift swingy symbolic symmetric symmetrical sympathetic symphonic symptomatic synchronous synergistic synonymous syntactic synthetic
syrian syrupy systematic taboo tactile tactual tailored talismanic talkative talky tall tangential tangible tangled tanned tantalizing tart tasteful tattered
taunting taut tawdry tawny taxable taxing taxpaying technical technological tedious teen teenage teensy telegraphic telltale temporal temporary tenable tender
tenebrous tensional tensionless tentative tepid terrestrial terrific terrified terrifying territorial terse teutonic textured theatrical theistic thematic
theological theoretical therapeutic thermal thermodynamic thermogravimetric thermometric thickened thickening thickspread thirsty thirteenth thirtieth
thoriated thorough thoroughgoing thoughtful thoughtless threadbare threatened threatening thrifty thrillful thrilling thriving thrombosed thronged thudding
thundering thunderous thyroidal thyrotoxic tiled tilled tilted timbered timely timeworn timid tingling tiny tipped tipsy tireless tiresome tiring titanic
titillating titled tittering toiling tokenish tolerant tonal toned tongued topical topnotch topographical tormented torpid tortuous tortured torturing
totalistic totalitarian totemic tottering tough tousled toxic traceable traditional tragic tragicomic trained traitorous tranquil transcendental transcultural
transformed transitional translucent transmissible transparent transpiring transplantable transverse trapped traveled treacherous treasured treble tremendous
triangular tribal trichrome tricolor trigonal trite triumphant trivial trophotropic tropical troubled troublesome truculent trusted trustworthy truthful
tubular tumultuous tuneful turbulent turkish tuxedoed tweedy twelfth twentieth twofold twoscore typical typographic ubiquitous ugly ulcerated ultimate ultra
ultramodern ultrasonic unabated unable unacceptable unaccompanied unaccountable unachievable unadjusted unaffected unafraid unalterable unambiguous unanimous
unanswered unarmed unasked unassisted unasterisked unattached unattractive unauthentic unauthorized unavailable unavailing unavoidable unaware unbelievable
unborn unbounded unbreakable unbroken unbuttoned uncanny uncaused uncertain uncertified unchangeable unchanged uncharged uncheckable unclaimed unclean
unclouded uncombable uncomfortable uncommon uncompromising unconcerned unconditional unconquerable unconquered unconscious unconstitutional uncontrollable
unconventional unconvincing uncooperative uncousinly uncritical undamaged undaunted undeclared undeniable undepicted undercover underdeveloped undereducated
underground underhanded underlying underprivileged undersea understandable understood underwater underway undesirable undeveloped undifferentiated undigested
undiluted undiminished undisguised undisputed undrinkable undue uneasy uneconomical unemployed unending unenthusiastic unerring uneven unexpected
unexplainable unexplained unexplored unfair unfaithful unfaltering unfamiliar unfastened unfavorable unfertile unfettered unfit unfitting unfixed unforeseen
unforgettable unfortunate unfrosted unfrozen ungainly ungodly ungrateful unhappy unhealthy unheated unheeded unheeding unholy unhurried unhurt unified
uniformed unilateral unimaginable unimaginative unimpaired unimpassioned unimpeachable unimportant unimposing unimpressed unimpressive unimproved uninitiated
uninjectable unintelligent unintended uninterrupted uninvited uninvolved unique united univalent universalistic unjust unkind unknown unlawful unlike unlikely
unlimited unlined unliterary unloaded unlocked unlovely unlucky unmalicious unmarried unmated unmeritorious unmistakable unmolested unmoved unnatural
unnecessary unneeded unnoticed unnumbered unobtainable unoccupied unofficial unopposed unorthodox unpaid unpaintable unpaired unparalleled unpatriotic unpaved
unperformed unpicturesque unpleasant unplowed unplumbed unpopular unprecedented unpredictable unpremeditated unprepared unpretentious unproblematic
unprocurable unpromising unprotected unpublished unpunished unqualified unready unreal unrealistic unreasoning unrecognizable unrecognized unreconstructed
unredeemed unreflective unregretting unrelated unreleased unreliable unremarkable unrequited unresponsive unrestricted unruly unsaid unsatisfactory
unsaturated unscathed unscientific unscrupulous unseeing unseen unselfconscious unselfish unservile unsettled unshakable unsharpened unshaved unshaven
unshielded unsigned unsloped unsmiling unsold unsolved unspeakable unspoken unstable unstained unstilted unstressed unstructured unstrung unsuccessful
unsuitable unsuited unsung unsympathetic untellable untenable untested unthematic unthinking untold untoward untraditional untrammeled untried untrue unused
unusual unvarying unventilated unwanted unwarranted unwavering unwed unwelcome unwilling unwise unwitting unwomanly unworthy unwrinkled unwritten upbeat
upcoming upland uplifted uppermost upraised upright urban urbanized urgent urinary useable useful usual utilitarian utmost utopian vacant vacuolated vague
vain valiant valid valuable valued valueless varied variegated various varying vascular vast vehement veiled veined velvety venerable verbal veridical
veritable vermilion vernal vertebral vertical vesicular veterinary viable vibrant vibrionic vicarious vicious victorian viennese vigorous vile villainous
vindictive violent virile virtual virulent visceral viscoelastic viselike visible visored visual vital vivacious vivid vocal vocalic vocational vociferous
voiced volatile voltaic volumetric voluminous voluntary voluptuous votive vulgar vulnerable vulpine wacky wailful wainscoted wakeful walloping wan warlike
warmed warming wary wasteful waterproof watery waxen waxlike wayward weakened wealthy wearied wearisome weary wearying wee weighted weird welcoming western
wheezing whiskered whitewashed wholesome wicked wide widespread widowed wifely wild willful willing wilsonian wily windblown winding windy winless wintry wiry
wise withered withering witty woeful wolflike wonderful wonderworking wondrous wooded wooden workmanlike worldly worldwide worried worthless worthwhile worthy
wounded woven wraithlike wrathful wrenching wretched writhed writhing wry yawning yielding yonder young younger youngish youthful zodiacal
`);

export const ENGLISH_ADVERBS = words(`
abed ably abnormally aboard abruptly absently absentmindedly absolutely academically accidentally accordingly accurately accusingly acoustically actively
acutely adamantly additionally adequately admirably admittedly adroitly advisedly afar affably affectingly affectionately afoot aft aggravatingly agilely
agreeably ahead aimlessly airily alarmingly alertly algebraically aloud alternately alternatively altogether amply anachronistically analogously analytically
anatomically anciently anew angrily annually anxiously anyhow anymore anywhere apiece apologetically appreciably appropriately approvingly arbitrarily
arrogantly artfully artificially artistically ashore aside assuredly astonishingly astray astride asymmetrically asymptotically atonally atop atrociously
attentively aurally auspiciously authoritatively automatically awfully awhile awkwardly axially backwards bannerlike beautifully believably belligerently
bewilderedly bewilderingly beyond bitterly blandly bleakly blindly blissfully blithely boastfully bodily boldly bravely brazenly breathlessly briefly brightly
brilliantly briskly broadly busily calculatingly callously calmly candidly carelessly casually catastrophically causally cautiously centrally ceremonially
characteristically cheerfully chemically chiefly childishly chronologically classically cleanly clearly cleverly clinically closely closer clumsily coarsely
coldly collectively comfortably comically commercially commonly comparatively compassionately competently competitively comprehensively compulsively
conceivably conceptually conclusively concretely confidentially confidently consciously consequently conservatively considerably considerately consistently
conspicuously constantly constructively contemptuously contentedly continually continuously contradictorily conveniently conventionally conversely
convincingly convulsively coolly correctly correspondingly cortically cosily covertly crazily creatively critically crudely cruelly culturally curiously
curtly curvaceously customarily daily daintily dandily dangerously darkly dearly decently deceptively decidedly decisively deeply deliberately delicately
deliciously delightfully deliriously demandingly demonstrably denominationally deplorably despairingly desperately determinedly dexterously dialectically
diametrically differently diffidently diffusely dimly directly disconcertingly discreetly dismally dispassionately disregardless distally distastefully
distinctively distinctly distractedly disturbingly divinely dizzily doctrinally doggedly dogmatically doubly doubtless dourly downright downstream downwind
dramatically drastically dreadfully dreamfully drearily drowsily drunkenly dryly dully eagerly earnestly economically edgewise editorially effectively
effectually efficiently effortlessly elaborately electrically elsewhere eminently emotionally emphatically empirically encouragingly endlessly enduringly
energetically engagingly enormously enthusiastically entirely enviably equally erratically especially essentially eternally eventually everlastingly evidently
exactly exceedingly excellently exceptionally excitedly exclusively exhaustively expansively expectantly experimentally explicitly explosively expressively
expressly extensively extraordinarily extravagantly extremely exultantly facetiously faintly faithfully familiarly farthest fascinatingly faster fatally
favorably fearfully ferociously fervently feverishly fiercely figuratively financially finely firmly flamboyantly flatly focally fondly forever formally
formerly forth forthwith fortunately frankly frantically frenziedly frequently freshly frowningly fundamentally furiously further furtively fussily gaily
gayly generally generously genuinely geographically girlishly glibly gloomily gloriously gracefully graciously gradually grammatically grandly graphically
gratifyingly gratuitously gravely greatly greedily greenly grimly grossly grotesquely grudgingly guiltily habitually haggardly haltingly haphazardly happily
harmlessly harshly hastily hatefully haughtily headlong healthily heartily helpfully helplessly hence henceforth hereabouts hereafter hereby herein
hereinafter heretofore hesitantly hideously highly hilariously historically hither hitherto hoarsely homeward homogeneously honorably hopelessly horribly
horrifyingly humanely humbly hurriedly hyperbolically hypothalamically hysterically ideally idiotically idly imaginatively immediately immensely impatiently
impeccably imperceptibly imperfectly importantly improperly impudently inadequately inadvertently incidentally incompletely inconveniently increasingly
incredibly incurably indeed indefinitely independently indifferently indignantly indirectly indiscriminately individually industriously ineffectively ineptly
inescapably inevitably inexorably infinitely informally initially insanely insidiously insignificantly insofar insolently instantly instinctively
insufficiently intellectually intensely intensively intentionally intently interestingly internally internationally intimately intramuscularly intrinsically
invariably inversely inwardly irrationally irregularly irrespective irritably jointly jubilantly jurisprudentially justifiably justly keenly kinda
kinesthetically largely lastly laughingly lavishly lazily legally legitimately leisurely lengthily lengthwise liberally likewise linearly lingeringly
lingually linguistically listlessly literally locally logically longer lopsidedly loudly lovingly loweringly lustily luxuriously macroscopically madly
magnetically magnificently mainly majestically manifestly marginally markedly marvelously materially mathematically mechanically medically meekly mellowingly
mentally merely merrily methodically meticulously microscopically mildly militarily miraculously miserably mistakenly moderately modestly momentarily morally
morosely mortally mournfully movingly musically mutely nakedly namely narrowly nationally naturally nearer neatly necessarily needlessly nervously
nevertheless newly nimbly noisily nominally nonetheless nonspecifically normally northward notably noticeably notoriously notwithstanding nowise obediently
obligingly obscurely obstinately obviously occasionally oddly officially offshore oftentimes ominously openly operationally optically orally ordinarily
organically originally ornately ostensibly otherwise outstandingly outwardly overboard overtly overwhelmingly painfully palpably paradoxically partially
particularly passionately passively paternally patiently peacefully peculiarly perchance perennially perfectly perfunctorily perilously periodically
peripherally persistently personally perversely petulantly philosophically photographically physically pictorially piteously pitilessly pityingly placidly
plainly plaintively plastically pleasantly plum politely politically pompously poorly popularly positively possibly potentially powerfully practically
precisely predominantly preferably preferentially presumably previously primarily primly principally privately profanely professedly professionally profitably
profoundly profusely progressively prominently promptly prophetically proportionally proportionately protectively proudly psychically psychologically publicly
pungently purely purportedly purposely qualitatively quantitatively quaveringly querulously questioningly quicker quietly radically rakishly randomly rapidly
rarely rationally raucously readily realistically reasonably reassuringly rebelliously recklessly redly reflectively reflexly regardless regionally
regretfully regularly relatively relentlessly reliably religiously reluctantly remarkably repeatedly reportedly reproducibly reprovingly resentfully
resignedly resolutely respectively responsibly restively restlessly rhythmically richly ridiculously rightfully rightly rigidly rigorously rollickingly
roundly routinely rudely ruefully safely satirically satisfactorily savagely scarce scarcely scathingly scholastically scientifically scornfully scrupulously
secondarily secondly secretly securely sedulously seemingly seldom semantically sensibly separately serenely seriously severely sexually shamefacedly sharply
shockingly shortly shrewdly shrilly shyly sic sidewise significantly silently similarly simply simultaneously sincerely singly singularly skillfully
slantingly slantwise sleepily sluggishly smilingly smolderingly snugly soberly sociably socially softly solely solemnly solidly someday somehow someplace
sometime somewhat sooner soothingly sorely soughingly soulfully sourly southward sparsely spatially specially specifically spectacularly speculatively
speedily spiritually splendidly spontaneously squarely staggeringly statistically steadfastly steadily stealthily steeply sternly stiffly stolidly stonily
stoutly strenuously strictly strikingly strongly structurally stubbornly studiously stupidly subconsciously subsequently substantially subtly successfully
successively succinctly suddenly sufficiently suitably sulkily sullenly superbly superficially supra supremely surely surprisingly surreptitiously
suspiciously sweetly swiftly symbolically symmetrically sympathetically syntactically systematically tactically tactually tangibly tantalizingly tartly
tearfully technically technologically tenaciously tenderly tenfold tensely tentatively tenuously terribly tersely testily theatrically thence thenceforth
theoretically thereafter thereby therefor therefore therefrom therein thereof thereon thereto theretofore therewith thermally thermodynamically thickly thinly
thither thoughtfully thrice throughout thus timidly tiredly traditionally tragically tranquilly transversally transversely tremendously triumphantly truly
trustfully tunelessly twirlingly typically ultimately ultrasonically unambiguously unanimously unashamedly unavoidably unawares unblinkingly unceasingly
uncertainly uncomfortably unconcernedly unconditionally unconsciously uncontrollably underfoot understandingly undoubtedly unduly uneasily unequally
unequivocally unerringly unevenly unexpectedly unfalteringly unfortunately unhesitatingly unhurriedly uniformly unimpeachably unintentionally uninterruptedly
uniquely universally unluckily unmanageably unmistakably unnecessarily unobtrusively unpleasantly unpredictably unqualifiedly unquestionably unquestioningly
unrealistically unreservedly unsmilingly unsteadily unsuitably unusually unutterably unwisely unwittingly upstate upwards urgently uselessly usually utterly
vacantly vaguely variously vastly victoriously vigorously violently virtually visibly visually vitally vividly vocationally vociferously volumetrically
voluntarily warily warmly watchfully weakly wearily weirdly westerly westward westwards whence wholly wickedly widely wildly wilfully wisely withal wittingly
woefully wonderfully wondrously woodenly wordlessly worriedly wrathfully wrongly wryly yearningly
`);
