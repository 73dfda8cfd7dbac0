/**
 * Everyday words that are a slip of one letter, or hardly a sound, away from a word of the trade ("chart", "bold", "commentator"): meant as they stand
 * wherever nothing but their spelling speaks for the other. The second half are the words of the public SCOWL lists (Debian's wamerican and wbritish) that one slip of the thumb parts from a
 * word of the trade.
 */
export const LOOKALIKES: ReadonlySet<string> = new Set(`
single double triple barge barges aback aboard actor actors actual actually adapted aerial aide aided aides aiding aids aimed aiming airline alley ally amber amend amended angel anger
ankle annual antic ants apes arise arises arising arrow assemblies assembly attack attacked attacking await awaited awaiting awaits axes babe ballet
banner barber barley barn bashing basic basket bass batches batters battle battled battles battling bean beans became beck beings believers bellow
belly better bidding bids bike bikes biking billet bitter bladder bland blaze blazing blend blending blends blot bluff blush bold bonded bonding bonds
boost booster boosters border bordering borders bored boring bother bout bouts bowel bragging bras brave brawl breathe bred breed breeding breeds brew
bridge brim broom brunt buck buckle buckles budding budge buds buffet bugs bullet bumped bumps bund buoy buses butter caches caching cafe calf caliber
cameo cancel cancer cancers carbon card cards cars cartel cartoon caste cattle cave caves cease ceased ceases cedar cell cells censor champ chanted
chanting chapter chapters charming chart charter charts chaste chat chats chef chefs chess chic chick chicks chose chrome chuckled chunks cider cite
cited cites citing clan clans clarity clash clashes classified clinch cling cloaked clone clones cloning clue clues clutter coales code coded codes
coding coffers coin coined coins collapse comet comment commentator commented commenting compete condensed contained contract contractor converted
cope cops cord coroner couch cove covert crab crabs cramped crash crashed crashes crashing crave create created creating creed crest crises crisp
crust cube cues cuff curry curs dagger dams dart dean decade decades deceive deceived decode decoding decrease decreases decreasing deed deeds deem
deemed deems dens deny denying deport derive derives deter diagram diagrams diaper dice diced diet diets dime diner dining dire docker docking docks
docs doctor dodge dodged doll dolls done donor doom dope doping dorm dots dotted doubled doubling dove downed downs draft drafted drafting drafts
drank dread dreaded drone drug drugs duck ducks duel dues duly dusk elector envelope erase erased expend expended expert experts facet facets factor
fake faked fall falling falls fame famed fared fares fast faster fasting fear feats feces fees fellow fender feud fiction fight fighter fighting filly
fins fist fists flair flank flanked flares flash flashed flashes flashing flaw flawed fled flee fleeing fluorine foam foes folders folk follow fools
forced forcing fore forg fraction frail frank freak freaking fringe frown fumble fund funding funds funky furnish furnished fuss galley gander gases
gasp gasped gays gaze gazed gazing gems gender gene genes gigs glacier glance glare glared glaring gloom glove gloves goof grad grasp grazing greed
groin grooming gross guid guise gull guts hack hacking hacks hangar harbor hatch hatched hatred haunting havens haze heel heels heir heirs hemp heroin
hike hikes hiking hinder hinge hips hive hoard hollow holster homers hopping hops hover icon ideal ideals ignite ignited imagine imaging imported
impulse inert infer inning intend irritation jail jailed jails jargon jeans kale kins knack knob labs lack lacked lacking lacks ladder lair lame
lander landslide lapse later laud lauded lawn lean leaping leaps leapt lease leased leases leash leasing letter letters lewd libel limbs lime limp
linear linen ling linger lipstick liver livers lobe lodge lodged lodging logo logos lolly lone loot looted looting lore losers loss losses lovers lull
lure lured lush mages magnet magnets maid male males mall mallow malls managers manner manor manure marriage marrow mars maths mats matt matte mature
meadow medal medals medley mellow member mental menu menus meteor miles milestone minced minion mins miser misled mode modes mods mold molds monk
monks moss mould moulds movie movies mull mullet muse mute muted myths navy nerd nerds nets netted networks niche nodded nodding node nodes nods norm
norms novice nuns oath oral orally ousted outper packet packets palate pant parley parsed parsing parsley passers pasta pastor patrol pave paved
paving paws peak peaked peaks peer peers pellet pending penned pens pension pensions perk perks pest pests petal petals pets petty phase phased phases
phony pics pillow pioneer piss pissed players plea plead pledge plot plots plummet plunder plung plunged plush poke poked poker poll polled polling
polls pomp ponder pool pools pope ported ports pose posed poses posing pots pouch premise premises prism prod pros prose psychology puff purse purses
quaint quiz quota quotas racket radio raid raided raiding raids range rapper rare rats realm realms rebel rebels receivers reduced reduces reef refer
refers reflection refuge refute refuted regular regularly reins relate relates relating relieve relieved remedy reminder remote render repeal repealed
repealing reps reserves retailer retained reveals revers rink riot riots rite rites roam roaming robe robot role roles room route routes routine rover
rudder rugged rumor rumored rumors rune runes rust saline sang savage scales scaling scanner scar scare scared scares scatter scattering scene scoff
scorn scout scouting scouts sect sections sects seeded seeds seek seeker seeking seeks selves senior separate service settles sewage shack shale sham
shark sharks sheer shin shoot shooting shoots shovel shred shrew shrine siege silicon silk silly simmer singled site sites skating skew skewed skillet
slacken slain slash slashed slashing slate slay slaying sleek slender slick slim slime slug slump smack smashing smeared smokers smoko snatch sniff
soar soared soaring sole span spanning spans sparkling sparse spear spears sped spice spices spies spike spikes spine sponge spoof spores sprang
sprint spying stag stalk stalking stark startled steer steered sterling stoked stomp stool stout strain strained strains strand strands stray stride
strides strikers stripe stripes strive strives striving strung style sucked sued summed sums surfing swamp swayed swept swift taco tacos tainted
tampering tangled tanner tart teen teens tempo tend tended tending tends tens tense text texted texting texts thigh thinkers throb tiers timers timid
tint tips token tone tones toppled tour tourist tours touting trail trailed traitor tramp trance trapped trapping traps tree trees trench troll
trolley trolling trolls trope truce tumble twine twitch udder unison urge urged urges urging users utter valley vape vast vector vein veins vending
venture vest vested vine vines visa volley volt volume vowed vows waiter waitress waived wallet waning ward wast watt watts wedge whim whims whit
wholly wield wielded wielding willow wink withdrew woke women wont woven wrestlers wrist writers yarn yield yonks zipper zone zones zoning zoom
abode adepts adjustor alined alining altar altars annals annuals apter arcking assemblers baggier baited baiting banned banning bards barter bartered
bartering barters batched battier beaked beaker beakers beaks becks behove behoved behoves behoving biffed biffing biffs bight biked billy blankest
blats bleacher blent blest bling blotched blustered blustering boars bobble bobbled bobbles bobbling bogging bogies bonged bonging bongs boogie borers
bouncers brads braised brats breached breaching breathier brigs briny brooch brooches bruiser budded bugged bugging bugled bugling bulge bulldozed
bullied bunked buoying buoys burrowed burrowing butches butted butting caret carets caries carvers castes caved caving cello chaise chaises chargers
chartered chartering charting chasers chattier choler choppier chowed chowing chows clinchers clots cloys clumped clumping coffer conch conches
continua convertor coots copping copter cornet cornier cosign cosigned cosigning cosigns countersank coupe coupes couplet cramp cramping cramps crass
crazies creel creels crepe crepes crick cricking cricks criers crock crocks cueing cuing culling culls curds curie curies curried curries currying
curter cutlass damask damasked damasking damasks daybed debarred debarring debases decoded decodes deportment descant descanted descanting descants
descried descries dibble dibbled dibbles dibbling dilly dispatchers dither docent doers doled dongle dongles doorstop dotty doublet doused dowsed
drams drays dressier dribblers driers drolly ducal duelled dumpling dyers dyking edgier endued enduing etchers examiners faeces fakir fallowed
fallowing fallows fanciers farrow fended fending fends fennel fertilised feuding feuds fiddlers fifes fillet finis finises finishers firth fixers
flashier flint flints fluke flukes fluky foaled foaling foals forte fortes foxed foxes foxing framers frieze friezes fuddle fuddled fuddles fuddling
gabbed gabbing gabby gaged gages gaging gaoled gaoling gaols garble garbles garbling garbs gasolene gelded gelds genera gibes glades gliders gloaming
globes goiter gonged groused grove groves grumblers guessers guppy gushers hallow hallowing hallows harts headier headlock hepper hieing hilts hominy
honied hooves hutches immoveable inset insets insetted insetting instill instilled instilling instills kerosine knottier lades larder laths leashed
leashes leashing leeks levee levees libelled libelling libels licensee limier limning linage lither loafer lobbied lodes loner looped looping loxes
malted malting malts manglers mangoes mantle mantled mantles mantling mashers mattes melding menage menages metes micrometre middy millet mimed mimes
miming mired mires miring modifiers molder moldered moldering molders molls molted molting molts moody mooted mooting moots moulded mugged mugger
muggers mugging munging mussed musses mussing muter neutralisers neutralizers nibbler noose offed opined opining padre padres panes parka parkas
parkour parlor pastas pastie pasties paunches pauper pealed peeked peeking peeks penning peons perked perking petrel petted phonied picket picketed
pickets piddled piddles piddling piers pitchers piton placers plaice plaint plaints plaited plaiting platters pleated pleating ploys plumped plumps
pluses pokers polishers pones pores posses potty pouted pouting powder prated prating preen preened preening preens prefect premised premising
preservers preying prickled prickling primmer pronged pucker pulped pulping pulps punks punned punning pupped puppet pupping purchasers pushers pusses
quartet quavered quoit quoited quoiting quoits rafted rattlers raved rebuses rectified reddish reeved reeving regressed regresses regressing relapse
reorged reorging replete repleted repletes repleting requites rescuers retina retinas returnee reveled reveling revolvers ribbed ribbing rioted
rippling rockier rodeo roods routeing rubes ruddier rumoring runnier ruses rutting salve salver sandpiper sandpipers satay satin satrap satraps scald
scalded scalped scorchers scorers scouted scram scrams scrip sedated sedating seedier selvage serge shads shags shammed shammies shamming shammy shams
shards sharking shavers sheering sheers shellacking sherd sherds shiftier shill shiners shire shires shlock shooing shoos shredded shredding shreds
silicons silts skein skewer skewing slays slicked slicking slicks sliders slimmed slimmer slimming slims slither slithered slithering slithers sliver
slobber slogs sloop sloops sludge snaky snare snares snaring sniffle sniffled sniffles sniffling snifter snitch snitched snitches snitching snoot
snoots snuck snuffle snuffled snuffles snuffling solvable soppy sough spacier spanned sparkled spates spattered spattering specking spied spires
splattering splatting splicers spoilt spongers sporing spotters sprat sprats spreed sprig sprigs spryer squeezers squished stabilised stags staplers
stein steins sties stoat stockiest stoners stranding strayed straying stretchers stripling strove stumblers stump stumped stumps suckle suites surfed
surfer surfers swaddle swopped swopping swops synchronised syringing takers tangoed tapir tares taros taupe teaks teasers tempera temperas terns terry
testes testier thatcher tickle tickled tickling tipple tipples tippling tokes toking tomes toque toques tracers trammed tramming trams treacle treas
trebled trebles trebling trice tripe tripled tripling tripos trolly truces tryst trysted trysting trysts tumblers tunny twits tzars vaporised
vaporized verities verity vibrato vibratos wacks waders wafer waggon waifs waled waling wares wasters weavers wedgie wedgies weirs wenches wheal
wheals whiners whistlers whittlers wholesaled whopping wigged wigging wigglers wiled wiling willows wishers wonted woodworm wrest wrested wresting
wriest wrigglers wright zincking
`.trim().split(/\s+/));
