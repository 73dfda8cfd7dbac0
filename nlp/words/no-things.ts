/**
 * English nouns that name no thing of a machine: people, animals, food, feelings, times, deeds, places, sayings. Taken from WordNet 3.1
 * (Princeton University; its licence stands in WORDNET-LICENSE beside this file): the single words seen in its tagged texts of which no
 * sense is an artefact, a part of a body, a shape or a substance. A name that the shop or the trade has is a part whatever stands here.
 */
export const NO_THINGS: ReadonlySet<string> = new Set(`
abandon abandonment abasement abbot aberration ability abjection ablation abnormality abolition abolitionist aborigine abortion abreaction abridgment
abruptness abscess abscissa absence absenteeism absolute absorbency absorption abstention abstract abstruseness absurdity abundance abuse abyss academic
academicianship acapulco acceleration accent accenting acceptance accident accompaniment accomplice accomplishment accordance account accountant accounting
accreditation accretion acculturation accumulation accuracy accusation acetonemia ache achievement acidity acolyte acquaintance acquiescence acquisition acre
acreage acres acrobatics act acting activism activity actor actress actuality adaptation address adenoma adequacy adherence adherent adieu adios adjective
adjournment adjudication adjunct adjustment administration administrator admiration admirer admission admonition ado adolescence adolescent adonis adoption
adroitness adult adulterer adulthood advance advantage advent adventure adventurer adverb adversary adversity advertisement advertising advice advisability
advisor advocacy advocate aegean aeon aeration aeschylus affair affairs affect affection affidavit affiliation affinity affirmation affluence affront africa
aftereffect afternoon age aged agency agenda agglomeration agglutination aggregation aggression aggressiveness aggressor agitation agony agreement agriculture
ague aid aide ailment aim aimlessness airflow airs airspeed alabama alabaman alabamian alaska albany alderman alerting alertness algae alibi alien alienation
alignment aliquot allegation allegiance allegory allocation allotment allowance allusion ally aloneness aloofness alpha alteration altercation alternative
altruism amateur amateurishness amazement ambassador ambiance ambiguity ambition ambuscade ambush amendment america american americanism amity amorist amount
amphibology amplification amplitude amsterdam amusement anabaptist anaconda anaesthesia analogue analogy analysis analyst analyticity anaplasmosis anarchist
anarchy anatomical ancestor ancestry ancistrodon andrena anecdote anemia angel anger anglican anglophilia angst anguish animal animosity anion annihilation
anniversary announcement annoyance anomie anonymity anorexia answer ant antares anteater antecedent antelope anthill anthropologist anthropology anticipation
anticoagulation antipathy antiredeposition antithesis anxiety apache ape apex aplomb apogee apologia apologist apology apothecary appalling apparition appeal
appearance appetite applause apple applejack applicability applicant appointee appraisal appraiser appreciation apprehension apprentice apprenticeship
appropriation approval approximation april aptitude archaeologist archangel archbishop architect archives ardor argot argument arianism arianist aridity
aristocracy aristotle arithmetic arizona arkansas armadillo armful army aroma arousal arrangement arrest arrival arrogance arroyo arteriolosclerosis arthritis
article artifact artifice artilleryman artisan artist artistry arts ascendancy asia aspect aspirant aspiration assassin assault assent assertion assertiveness
assessment assessor asset assiduity assignee assigning assignment assist assistance assistant associate association assortment assumption assurance assyrian
assyriology asterisk astonishment astronomy astrophysics asymmetry asynchrony athabascan atheist athens athlete athleticism athletics atlanta atlantic
atmosphere atrophy attack attacker attainment attempt attendance attendant attention attica attitude attorney attraction attribute audacity audience audit aug
august aunt austerity austin australia authenticity author authorities authority authorization authorship autofluorescence autonomy autopsy autumn auxiliary
avail availability avarice average aversion aviation avocado avoidance awakening award awarding awareness awe awfulness axiom babe baby babylonian bachelor
backbend backer backwoods bacon bacteria bad badge badness baffled bali balinese balkiness ballad ballerina ballet balletomane ballot ballplayer ballyhoo
baltimore balzac ban banana bandit bandwidth banging banker bankruptcy banquet banshee banter baptist barbarian bargain bargaining barkeep barley barnburner
barnful barony barrage bartender baseline bash basileus basis batch bather bathing bathos battalion batter battle battlefield battlefront battleground bavaria
beach beachhead beadle beadsman bear bearer beast beat beating beatnik beau beauty bedground bedside bedtime bee beech beef beer beggar beggary beginner
beginning behalf behavior being belch belching belief believer belle bellhop bellow belshazzar benediction beneficiary benefit bennington bent bequest
bereavement berg bern berry besieger best bestowal bet beta betrayal better betterment beverage bevy bewilderment bible bibliography bickering bid bidder
bidding bilharziasis billion binomial bioassay biography biologist biology biomedicine biophysicist biopsy birefringence birmingham birth birthday birthplace
birthright biscuit bishopry bite biter bitterness bitters blackberry blackening blackmailer blackness blackout blacksmith blame blandness blare blaring
blasphemy blast blatancy blaze bleat blemish blend blending blessing blight blindness blizzard bloat bloc bloke blonde bloodhound bloodshed bloom blooming
blossom blot blotch blowfish blowing bluefish blues bluestocking bluff blunder blur bluster boast boating boatload boatswain bobbysoxer bodybuilder
bodybuilding bodyguard bog boiling boldness bolshevik bombast bombay bombing bombus bondsman bonfire bonn bonus booby booker booking boon boost bootlegger
bootlegging booty booze boredom borough borrower borrowing boston bottomland bough boulder bounce bouncing bounds bourbon bourgeoisie bout bowlder boxer boy
boyhood braggadocio bramble brandy brassica bravado bravery brazenness brazil breach bread breadth break breakaway breakdown breakfast breaking breakthrough
breakup breathing breed breeding breeze brevity bribe briber bricklayer bricklaying bride bridegroom bridgehead brief briefing brier brigade brigadier
brightness brilliance brilliancy bringing britain british broadcast broadcasting broadening broadway broker bronc bronchiolitis brood brooding brook brooklyn
brother brotherhood brucellosis bruise brushing brutality brute bud buddha buddhist buddy budget buffalo buffoon bugler buildup bulgaria bulk bull bulletin
bully bullyboy bumblebee bunch bunkmate bunt bunter bureaucracy burglar burglary burial burma burn burning burrow bursitis burst busboy bushel bushwhacker
business businessman businessmen butler butter buyer buying buzz bygone cabbage cadence cadenza cadre caesar calamity calcification calculation calculus
calendar caliber calibration calibre california californian caliph call caller callousness calm calmness calumny calving camaraderie cambodia campaign
campfire camping campmate campus canada cancellation cancer candidacy candidate candour candy canon canter canyon canyonside capability capacity capitalism
capitalist captain captive captivity captor capture carabao carcass cardinal cardiomegaly cards care career careerism carelessness caress caretaker caribbean
carload carnival carpenter carpentry carping carry cartoon cartoonist cash cassite castigation catalog catalogue catastrophe catcall catcher catching category
caterer catharsis catholic catholicism catkin cattle cattleman cause caution cautious cavalcade cavalry cavalryman cave caveat caveman cavern celebrant
celebration celebrity celerity cemetery censorship censure census cent centennial centering centimeter centralization centrifugation century ceremony
certainty certificate certification certiorari certitude ceylon chagrin chairman challenge chambermaid champ champagne champion championship chance chaos
chapter character characteristic characterization charisma charity charlatan charleston charter chastisement chastity chatter chattering checkbook checklist
checkup cheer cheerfulness cheering cheese chela chemist cherokee cheyenne chicago chick chicken chief chieftain child childhood childishness chill chinese
chiropractor chivalry chocolate choice choirboy cholelithiasis chomp chopin chore choreography chorine chorus chosen christ christendom christening christian
christianity christmas chromatography chrysanthemum chuckle chump chunk churchgoer churchman churchyard cicada ciliate cincinnati cipher circulation
circumference circumstance circumstances citation citizen citron citrus city civilian civilization claim claimant clairvoyance clam clamor clamoring clan
clang clangor clangoring clannishness clap clapping claret clarity clash class classicist classics classification classifier classmate clatter clause
claustrophobia clean cleaning cleansing clearance clearing clearness clergy clergyman cleric clerk clerking cleveland cleverness cliche clientele cliff
climate climax clique clocking clod close closing cloud cloudburst clover clown clowning clubfoot cluck clue clump cluster clutches coaching coalescence
coalition coast cobbler coccidioidomycosis coccidiosis cockatoo cockroach coconut cocoon code codification coefficient coexistence coffee cognizance cohesion
cohesiveness coin coincidence cold coldness coleridge collaboration collaborator collapse colleague collection collective collegian collision collusion
colonel colonial colony colorado coloratura columbine columbus columnist coma combat combination combo combustion comeback comedian comedy comer comet
comforts coming command commander commandment commando comment commentary commentator commerce commercial commercialism commercialization commie commiseration
commission commissioner commitment committee committeeman common commoner commonplace commonwealth commotion commune communicating communication communion
communique communism communist community commutation commuting companion companionship company comparison compassion compatriot compensation competence
competition competitor compiling complaint complaisance completeness completion complexion complexity compliance complication complicity compliment
comportment composer composing composite composure compounding comprehension compromise compulsion compulsive compulsivity compunction computation comrade con
conceit concentration concept conception conceptuality conceptualization concern concert concerto concession concessionaire concierge conciseness conclave
conclusion concord concurrence concussion condemnation condensation condescension condition conditioning conduct conduction conductivity confederacy
confederate conference confession confessor confidant confidante confidence confidentiality configuration confinement confines confirmation conflict
conformity confrere confrontation confusion congestion congo congratulation congratulations congregation congress congressman conjecture connecticut
connoisseur connotation conqueror conquest conscience consciousness conscription consensus consent consequence conservation conservatism conservative
consideration consistence consistency consolation consolidation consonant conspiracy conspirator constable constancy constant constatation constellation
consternation consultant consultation consumer consumption contemplation contemporaries contemporary contempt contention contest contestant context continence
continent contingency contingent continuance continuation continuity continuum contour contraception contract contraction contradiction contradistinction
contralto contrary contrast contribution contributor contrition controversy contusion convection convention conversation conversion convert convict conviction
convoy cook cookie cooking coolness coon cooperation cooperative coordinate coordination coordinator cop copenhagen coquette corn cornfield cornmeal coroner
corporal corporeality corps corpulence correction correctness correlation correspondence correspondent corruption cosecant cosigner cosmos cost cottonmouth
council counsel counseling counselor count counterattack counteroffensive counterpoint counterproposal countershot counting country countryman countryside
county coup couple coupon courage courier courtesy courtier cousin cove coverage covetousness cow coward cowardice cowboy cowhand cowpuncher cows coyness
coyote cps crab cracking crackpot crafter craftsman craftsmanship crag crash crassness crawl craze creaking creativeness creativity creator creature credit
credo creed creek creeper crescendo crew cricket crime criminal criminality crimson cripple crisis crisp crispness criterion critic criticism croaking crofter
crone crony crossroads crouch crow crowbait crowd crucifixion crudity cruelty crunch crusade crust cry crystallite crystallography cuba cubism cud culmination
culprit cult cultist cultivation culture cumulus cur currant currency current curriculum curse curtness cuss custodian custody custom customer cutting
cyclades cyclist cynic czechoslovakia dab dad dadaism daddy daffodil daiquiri dairyman daisy dallas damage damascus dame damn damnation damned dance dancer
dancing dandelion dane danger danish dante daring dark darkness darling darwin dash data date datum daughter dawn dawning day daybreak daylight days daytime
deacon dead deadline deadlock deaf dealer dealing dealings dean dear death debacle debate debauch debility debt debunking debut dec decade decay deceased
decedent deceit deceleration december decency decimeter decision declamation declaration decline declivity decomposition decorativeness decorator decorum
decrease decree decrement dedication deduction deed deepening deer default defeat defect defection defendant defender deference defiance deficiency deficit
defining definition deflection deformation degeneration degradation degree deity delaware delay delegate delegation deliberation delicacy delight delirium
deliverance delivery deluge demagogue demand demander demarcation demeanor demimonde demineralization democracy democrat demolition demon demonstration
demonstrative demonstrator demoralization demythologization denial denmark denomination denouement denseness densitometry density dentist denunciation denver
department departure dependence dependency dependent depletion deportee depositor depravity depreciation depredation depth deputy dereliction derision
derivation dervish descendant descendants descendent descent description desecration desert desertion designation designer desire desolation desorption
despair desperate desperation despoiler despondency despotism dessert destination destiny destruction desynchronizing detachment detail details detecting
detection detective detergency deterioration determination deterrent detractor detroit development deviation devil devilment devisee devotee devotion diabetes
diabetic diagnosing diagnosis diagnostician dialect dialectic dialogue dialysis diam diarrhea diarrhoea diatom dichondra dickens dictate dictatorship
dictionary dictum diet difference differentiation difficulty diffraction diffusion digitalization dignitary dignity dilemma diligence dimension diminution din
dinner dinnertime diplomacy diplomat direction directionality directive directivity director directory dirge disability disabled disadvantage disagreement
disappearance disappointment disapprobation disapproval disarmament disarray disassembly disaster disbelief disciple discipline disclosure discomfited
discomfort discontent discontinuance discontinuity discount discourse discovery discredit discrepancy discretion discrimination discussion disdain disease
disenfranchisement disengagement disgrace disgust dishonor disillusionment disintegration disinterest dislike dislocation disloyalty dismay dismissal
disobedience disorder disparagement dispatch dispensation dispersal dispersion displacement displeasure disposition dispossession dispute disregard disrepair
disrepute disruption dissatisfaction dissection dissemination dissension dissent dissenter disservice dissociation dissolution dissolve distance distaste
distension distinction distinctness distraction distress distribution district distrust disturbance ditty divergence diversification diversion diversity
divertimento divestiture dividend divine diving divinity division divorce doctor doctorate doctrine documentary dodge dodging doggerel dogma dogwood dollar
domain dominance domination dominion don donation donor doom doomed doorman double doubleheader doubt dough dove doweling downfall downpour downtown dowry
dozen dozens drafting dragon drainage drama dramatics dramatist draper drawl dread dream dreamer dregs drink drinker drinking drizzle droplet dropout drought
drover drowsiness drugging drumlin drummer drunk drunkard drunkenness dryness dublin ducking due duel duelist duffer duke dullard dun dune durability duration
dusk dustpanful duty dwarf dweller dyeing dying dynamics dynasty dysentery eagerness eagle earl earnest earnestness earnings earthman earthquake ease east
easter eating ebbing ebony eccentric ecclesiasticism echo eclipse ecliptic economics economist economy edema edition editor editorial education educator eeg
effect effectiveness efficacy efficiency effort egalitarianism egghead eggplant eggs ego egotism egotist egypt ejaculation ejection elaboration elasticity
elation elder election elector electricity electrolysis electromyography electron electronics electrophoresis electroshock electrotherapist elegance elephant
elimination elite elizabethan elm elution embargo embarrassment embodiment embrace embracing emergence emigration emotion emotionalism emotionality emphasis
emphysema empire empiricism employ employee employer employment enactment enchantment enclave encounter encouragement encroachment encyclopedia endeavor
ending endowment endpoint endurance enemy energy enervation enforcement engagement engineer england english englishman engraver enigma enjoyment enlightenment
enormity enough enrichment enrollee enrollment enterotoxemia enterprise entertainer entertainment enthalpy enthusiasm enthusiast entirety entity entrepreneur
environment environs envy epic epicenter epicure epidemic epigram epiphany epistemology epitaph epithet epitome epoch equal equality equanimity equation
equipping equity equivalence equivalent era erosion errand error eruption escalation escapade escheat escort espionage essay essential estate esteem esthetic
estimate estrangement estuary eternity ethic ethics ethiopian ethos etiquette euphoria europe european evacuation evaluation evangelist evaporation eve
evening evensong event evidence evil evildoer evocation evolution exacerbation exaggeration examination example exasperation excellence exception excess
excitability excitement exclaiming exclamation exclusion exclusiveness excursion excursus excuse execution executioner executive executor exemplar exemption
exercise exercising exertion exhaustion exhibit exhibition exhortation exhumation exigency existence existentialist exodus expanse expansion expansiveness
expectancy expectation expedition expenditure expense experience experiment experimentalism experimentation experimenter expert expertise expiration
explanation expletive exploit exploitation exploration explorer explosion exporter exposition expression expressiveness expulsion expurgation extent exterior
extern extraneousness extrapolation extravaganza extreme extremum exultation eyes eyesight eyestrain fact faction faculty fadeout failure fair fairness
fairway fairy fairyland fairytale faith faithful faker falcon fall falloff falsity faltering fame familiarity family fanatic fanaticism fancy fanfare fantasia
fantasist fantasy fantods farce fare farewell farmer farming farmland fasciculation fascination fascism fast fastball fate father fatigue fault favorite fawn
fear feasibility feast feat feather feb february fecundity fee feebleness feed feedback feeding feel feeler feeling feelings felicity fella fellow fellowship
felon female femininity fermentation ferocity fervor festival festivity fever fiat fibrosis fiction fidelity fielder fieldhand fielding fiend fierceness
fifteen fifth fifties fifty fig fight fighting figuring filing filipino fillip filly filming finale finance financing finding fineness fingering fingerprint
fingerprinting finish finishing finn firelight fireman firepower firing firm firmness fish fisher fisherman fishing fishmonger fishwife fistfight fit fitness
fix flame flapper flashback flatness flattery flatus flautist flavor flaw flea fleck fledgling fleet flexibility flick flip flocculation flock floodhead
florence florida floridian flour flourish flow flower flowering flowing flu fluorescence flurry flush flutter flyer flyway focus focusing foe fog folk
folklore folks follower following folly fondness food fool foolishness footnote footprint footstep foraging force foreboding forecast forecasting forefather
foreigner foreknowledge foreman forerunner foresight forest forgetfulness formalism formative formula forties fortitude fortune forwarding fostering found
founder founding fountainhead foursome fourteen fourth fowl fracas fractionation fragmentation fragrance frambesia franc france franchise frangipani
fraternisation fraternity fraud freak freedom freeman freewheeler freezing french frenchman frenzy frequency freshman freshness freud friction friday friend
friendliness friendship fright frolic frontier frostbite froth fruitfulness frustration fugitive fulfillment fullback fullness fumble fun function fund
fundamentals funds funeral furlong furlough furor fury fusion fuss futility gadfly gagwriter gaiety gain gait gal galaxy gallant gallantry gallon gallop
galvanism gambler gambling gamecock gamin gamma gamut gangster gardener gardening gasp gassing gauss gavotte gaze gee gegenschein gelding gender general
generalist generalization generation generosity genesis geneticist genie genius gentian gentleman gentry genus geochemistry geographer geologist geology
geometry georgia georgian german germany gesture ghana ghetto ghost ghoul giant giddiness gift giggle ginkgo girl girlfriend give giveaway given givenness
giver giving glacier gladiator glamor glance glanders glare glaucoma gleam gleaming glee glibness glimmer glimpse glint glitter gloom glory glossary
glottochronology glow glutton gnome gnp goat goddess going goitre goldsmith golf golfer golfing goner goodness goose gop gospel gospeler gospels gossip
gourmet gout governed governess government grace grade gradient grading graduation graining gram grammarian grandchild grandeur grandfather grandma
grandmother grandparent grant granule grapevine graph grappling grasping grassfire grasshopper gratification gratitude graveyard gravity graybeard greatness
greece greed greek greenland greenness greens greeting grief grievance grin grinding grinning gripe groan grocer groom grounder grouping grower growing growl
growling grownup growth grub grudge grumble grumbling grunt guam guarantee guardian guatemala guerrilla guess guessing guidance guidepost guilt gulf gully
gulp gulping gunfire gunman gunner gunplay gunshot gunslinger guru gust gusto guts gymnast gymnastics gynecologist gyration habitat hacker hackwork haiku hail
half halfback halftime hallelujah hallmark halloween hallucination halt ham hamlet hamming handclasp handful handicap handling hands handshaking handstand
handwriting handyman hangout hangover hanukkah happening happiness harangue hardbake hardship hare harlem harm harmony harshness harvest haste hatching hate
hater hatred haul haunt havoc hawaii hawaiian hawker hay hayfield haystack haze headache headland headline headlinese headmaster headsman headstand healer
healing health hearer hearing heartbeat heaven heavens heaviness heaving hebrew hedonism heed hegel height heights heir hell hellenic hellion hello help
helper helplessness hemorrhage hemorrhoid hen hepatitis herald herb herd here heredity heretic heritage hermeneutics hero heroics heroine heroism
herpetologist hesitancy hesitation hex hexameter heyday hideout hiding hierarchy highness highschool highwayman hijacker hike hilarity hillbilly hillock
hillside hint hipline hissing histology historian history histrionics hitler hitter hodgepodge hokan holding holdup holiday holland holler hollering
hollowness hollyhock hollywood holmes holocaust holystone homebound homefolk homeland homer homesteader hometown homicide homogeneity homosexual honesty honey
honeybee honeymoon honeysuckle honolulu honor honour hoof hookworm hoot hop hope hopscotch horde horizon horseback horselaugh horseman horsemanship
hospitality hostess hostility hotelman hotness hotshot hound hour hours housebreaker housebreaking household householder housekeeping housewife housework
houston howl howling hubbub hubris huckster huddle hudson hue hugging human humanism humanist humanity humidity humiliation humility humming humorist hun
hunch hundred hungary hunger hunting hurler hurricane hurry hurt husband husbandry hush hyalinization hymn hypercellularity hyperemia hyperplasia hypertrophy
hypervelocity hypoadrenocorticism hypocellularity hypocrisy hypocrite hypothesis hypothyroidism hysteria iceland icelandic idea ideal idealist idealization
identification identity ideologist ideology idiom idiosyncrasy idiot idleness idler ignoramus ignorance iliad ilk illegitimacy illinois illness illusion
illustrator imagery imagination imaging imbalance imbecile immediacy immensity immigrant immigration imminence immobility immortality immunity
immunoelectrophoresis imp impact impairment impatience imperialism impetus impinging implementation implication importance importunity imposition impossible
impotence impotency imprecation impressionist imprimatur imprisonment impromptu impropriety improvement impulse impunity inability inaccuracy inaction
inadequacy inadvertence inaugural inauguration incantation incarnation incentive inception inch incidence incident incipience incipiency incitement income
incompatibility incompetence incompetent inconvenience incorporation incorruptibility increase incubation incubus inculcation incursion indecision indefinity
independence indexing india indiana indianapolis indication indictment indifference indigestion indignation indignity indirection individual individualism
individualist individuality indolence indonesia inducement induction industrialism industrialization industry inequality inertia inevitability inevitable
inexperience infancy infant infantry infantryman infatuation infection inference inferiority infidelity infielder infiltration infinitive infirmity inflation
inflection infliction inflow influence influx informant information infrared ingratitude ingroup inhabitant inheritance inhibition initial initiation
initiative injury injustice inkling inmate inning innocence inoculation inquest inquiry inquisitor inroad insanity inscription inscrutability insect inside
insight insignificance insinuation insistence insolence insouciance inspection inspector instability installment instance instancy instant instinct institute
instruction instructions instructor instrumentalist insubordination insularity insult insurance insurrection intangible integer integral integrating
integration integrity intellect intellectual intelligence intensification intensity intent intention intentness interaction intercept interconnectedness
intercourse interdependence interest interim interior interlude intermarriage intermediary intermission interne interplay interposition interpretation
interpreter interpreting interrelation interrelationship interrogation interrogative interruption interval intervention interview interviewer intimacy
intimidation intolerance intonation intransigence intrigue introduction introject intruder intrusion intuition inundation invader invalid invasion inventor
inversion investigating investigation investigator investment investor invitation invocation involvement invulnerability iodination ion iran iraq ireland
irish irishman ironworker irony irregularity irreproducibility irresolution irresponsibility irreverence irrigation irritability irritation irruption isle ism
isolation isopleth israeli issuance italian italic italy ivy jab jabbing jackass jackdaw jam jamaican jan janissary janitor jansenist january jap japanese
java jealousy jeopardy jerk jerking jerusalem jest jesuit jesus jew jeweler jibe jockey johnny joke jolt jonquil jot journalese journalism journalist journey
journeying joust joy judaism judge judgment judiciary july jumble june junior junkyard jupiter jurisdiction jurisprudence jurist juror jury justice
justification justness juxtaposition kale kansas keenness keeping ken kent kentucky kerygma ketosis keynote khartoum khmer kick kickoff kidnapper kill killer
killing kilometer kind kindergarten kingdom kinship kipling kiss kissing kitten knack knock knocking knoll knowledge knuckleball korea korean krauthead labor
laborer labour labrador lack lackey lad lady laggard lagoon lair laity lamb lamentation lamplight land landler landlord landmass landowner landslide language
languor laos lapse larkspur larva lasher lather latin latitude laugh laughter launching laundering laurels law lawman lawn lawyer laxness laying layman layoff
layout leaders leadership leafhopper league leak leakage leap leapfrog leaping learner learning lease leave leaving lecher lecture lecturer lecturing ledge
leech lefty legacy legatee legation legend legibility legion legislation legislator legislature legitimacy legume leisure leitmotiv lemma lemonade lending
lengthening lentil leprosy lesion lessening lesson letdown lethality lethargy letter letterhead lettering letterman letters lexicon lexicostatistics leyte
liability liaison liar liberal liberalism liberation libertine liberty librarian libretto license licking lie lieutenant life lifetime lifter lightning
lightweight likelihood liking lilac lilt limbo limit limitation lincoln linden lineage linebacker lineman lineup linguist linguistics lion liquidation lisbon
list listener liter literalism literalness literature litigant litigation little livelihood liveliness liverpool livestock living lizard loaf loan loblolly
lobscouse lobscuse lobularity locale locality localization locust logarithm logger logging logic logistics london londoner loneliness longevity longhand
longing longitude longshoreman look looking lookup loon loot lord lordship lore lorelei loser loss losses lost lots lotus louisiana louisianan louse lousiness
love loveliness lover lowland loyalist loyalty lucidity luck lull lullaby luminary luminescence luminosity lummox lump lunation lunch luncheon lunge lunkhead
lurch lust luster lustre luxury lyric lyricist machinist madam madman madness maggot magic magician magistrate magnetism magnificence magnitude magpie
mahogany maid maiden mailman maimed maine mainland maintenance majesty major majority majors make maker makeready malady malaise malaria male malediction
maleness malevolency malfeasant malignancy malingering mama mammal management manager manchester mandamus mandate maneuver maneuverability manfulness
manhattan manhood mania maniac manifestation manipulation manner manners manpower manservant manual manufacture manufacturer manufacturing manumission
manuscript manzanita maple marathon marbleizing marbles march marching mare marginality maria marine mark marketing marking marksman marksmanship marmalade
marriage marrowbone mars marsh marshal martian martini martyr marvel mary maryland masculinity mass massachuset massachusetts massage masses masseur mastery
materialism math mathematics mating matriarch matrimony matron matsyendra matter maturation maturity maxim maximum may mayor meadow meal mean meaning
meaningfulness meanness measurement measuring meat mechanic mechanics medal meddling mediocrity meditation mediterranean medley meet meeting megalomania
megalopolis megaton mekong melee melioration melodrama melody melon melting membership memoir memorabilia memorandum memorization memphis men menace menarche
mentality mention menu meq mercenary mercer merchandising merchant mercy merger merging merit mermaid merriment merrymaking message messenger metaphor meteor
meteorite method metis metropolis mexican mexico micelle michigan microcosm micrometeorite micron microorganism microphoning microscopy microsecond midair
midday midnight midshipman midst midsummer midwatch midwest mien might migration mile mileage milestone milieu military militia millenarianism millennium
milliampere millidegree milligram milliliter millimeter million millpond milquetoast milwaukee mimesis mimicry min mind miner mineralogy mingling minimum
mining minister ministration minneapolis minnesota minor minority minstrel minuet minute minutia miracle misanthrope misbehavior miscalculation miscegenation
mischief misconception misconstruction misdeed misdemeanor misery misfortune misgiving misinterpretation mismanagement misnomer misogynist misrepresentation
miss mission missionary mississippi missive missouri mist mistake mistaking mistress misunderstanding misuse mite mitigation mixing moan mob mobility
mobilization mocker mockery mode moderate moderation modern modernity modernization modesty modulation moisture moment momentum mommy monarch monday money
moneymaker moneymaking monitoring monk monkey monograph monologist monologue monopolization monopoly monosyllable monotone monotony monsieur monsoon monster
monstrosity month montreal mood moon moonlight moral morale moralist morality morals mores morning morphology morphophonemics morrow morse morsel mortal
mortality mortgage mortician mortification moscow moses mosquito moss moth motherland motion motivation motto mountain mountainside mourner mouthful move
mover movie moviegoer mph much muddle multiplication multiplicity multitude munich murder murderer murmur murmuring muscleman muse music musical musician
musicianship musing musketry mutant mutilation mutineer mutiny muttering mutton mutuality myelofibrosis myriad myrtle mystery mystique myth mythology nadir
nakedness name namesake napoleon naprapath narrative narrowing narrowness nashville nassau nation national nationalism nationality native naturalism
naturalness nature naturopath naught nausea navigation navigator navy nay nazi nazism nearness nebraska necessity necropsy necrosis nectary need neglect
negligence negotiation negro neighbor neighborhood neighborliness neighbourhood nemesis neoromanticism nephew neptune nerves nervousness nestling neurosis
neurotic neuter neutralism neutralist neutrality neutralization newcastle newcomer newfoundland newport news newsboy newsletter newsman newspaperman newton
nicety nickname niece night nightfall nightingale nightmare nighttime nihilism nineteen nineties ninth nirvana nobility nobody nod noise nomia nomination
noncom nonconformist nondriver nonequivalence nonfiction noninterference nonoccurrence noon norm north northeast northerner northland northwest norway
nostalgia notable notation note nothing notice notification noun nourishment nov novelist november novitiate now nowhere nuance nubbin nuisance numbering
numbness nun nurse nursing nutrient nymph nymphomaniac oak oat oath oatmeal obedience object objection objectivity obligation obliteration oblivion obscenity
obscurity observance observation observer obtrusiveness occasion occasions occidental occupancy occupant occupation occurrence ocean ocelot oct octave october
odds odessa odor odyssey offence offender offense offensive offer offering officer official offspring ogress ohio oilfield oklahoma oldster oleander ology
olympics omen omission one oneness onlooker onrush onset onslaught open operagoer operation operations operator operetta opinion opponent opportunism
opportunity opposite opposition oppression optimism optimum opus oration orator oratorio orchestration orchid ordeal order ordering orderliness orderly
ordinance ordinate oregon organification organism organization orgy orient orientation origin originality orinoco orphan orthodoxy orthography oscillation
ossification osteoporosis ounce outbreak outburst outcast outcome outcry outfielder outflow outing outlaw outlay outline outlook outrage outreach outset
outside outsider outskirt outskirts overachievement overachiever overeating overestimation overflow overpayment overprotection oversimplification overthrow
overtime overtone overture owl owner ownership oxen oxidation oyabun oyster pace pachinko pacific pacification pacing pact paean pagan paganism page pageant
paging pain pains pair pakistan palermo palestine pallor pamphlet pander pang panic pansy panther pantomime papa papers paperwork par parable parade paradigm
paradise paradox paragon paragraph parakeet parallelism parameter paranoiac paraphrase parasite pardner pardon parent parenthesis parenthood parimutuel paris
parish parishioner parisology parking parlance parliament parody paroxysm parrot parson participant participation particular partner partnership parts party
pass passenger passerby passing passion passivity past pastel pastime pastor pasture patent pathogenesis pathologist pathology pathos patience patient patriot
patriotism patrol patroller patrolman patron patronage patronne patter paucity pause pay payday payment payroll pea peace peacock peal pealing pear peasant
pebble peddler pedigree peer pelting pemmican penalty penance penetration peninsula penny pension pensioner penutian peony people percent percentage
perception percussion perfectibility perfection perfectionism perfectionist performance performer perfusion peril period periodical periodicity periwinkle
permanence permian permission permit perpetration perpetuation persecution persistence persistency persona personage personality personification personnel
perspective pertinence perturbation peru perusal pervaporation pessimism pessimist pet petal petition petitioner petting petulance pfennig phantasy phantom
pharmacist phase pheasant phenomenon philadelphia philanthropist philippic philippines philosopher philosophizing philosophy phloem phoenix phoneme phonemics
phonetics phonology phony photography photon phrase phraseology phrasing phylum physicalness physician physicist physics physiology pianism pianist piazza
picasso pickle picnic picturing pidgin pie piedmont piety piezoelectricity pigeon pilgrim pilgrimage pimp pimple pinball pine pinecone pink pinning pioneer
piper pisces pistoleer pitching pith pittsburgh pity pixie pizza place placement plainclothesman planet planetoid planning planting plasterer plasticity plato
platonism platonist platoon play playacting player playing playmate playwright pleasure plenitude plenty plight plodding plot plowing pluck plumber plumpness
plunder plunge plunker pneumonia pocketful poem poet poetry poignancy poise poland polarity polarization police policeman policy polio politeness politician
politics polka pollen polls pollution polymerization polymyositis polynomial pompousness pond pop pope popping poppy populace popularism popularity population
porcupine pork porkchop porosity porter porterhouse portugal portuguese portwatcher pose poseur position positivism positivist posse posseman possession
possibility possible possum poster postmark postscript postulate posture potato potency potential potentiality pothole potshot potter poultry pounding poverty
pow power powerfulness powwow practice practitioner prairie praise prank prayer preacher preaching preamble precaution precedence precedent prechlorination
precinct precipice precision preconception predecessor predicament predicator prediction predilection predominance predomination preexistence preface
preference preferment prefix prejudice prelude premiere premise premises premium premix premonition preoccupation preposition prerequisite presbyterian
preseason presence present presentment presentness preservation preserve presidency president pressure prestige presumption presupposition pretence pretense
pretension pretext prettiness prevalence prevention prevision prey price pricing pride priest primacy primate primates prime primping prince principal
principle printing priority prisoner privacy private privilege prizefight pro probability problem procedure proceeding proceedings proceeds processing
proclamation procrastination procreation procurement procurer produce producer productivity profanity profession professional professor professorship
proficiency profile profit profitability profits profundity profusion program programming progress progression progressivism prohibition project proletariat
proliferation prolongation prometheus promise promoter promotion promulgator pronoun pronouncement propaganda propagandist propagation prophecy prophet
proponent proportionality proposal proposition proprietor proprietorship propriety prose prosecution prosecutor prosody prospect prosperity prostitute
prostitution protagonist protectorate protege proteolysis protest protestant protestantism protestation proton prototype protozoa protozoan provenance proverb
providence province provincialism provision provisions proviso provocation prowess prowler proximity prudence pseudophloem psi psithyrus psyche psychiatrist
psychologist psychology psychopath psychophysiology psychopomp psychotherapy public publication publicist publicity publisher publishing pulling pulsation
pulse pun punctuality pundit punishment punster pup puppy purchase purgatory purging purification purity purpose pursued pursuer pursuit purveyor pushing
pushup putout puzzlement python quack quackery quadrupling quake quaker qualification quality qualm quantity quart quarterback quatrain quaver query quest
question questioner questioning questionnaire quickening quickie quickness quiet quietness quintet quiz quota quotation rabat rabbi rabble racine racing
racist racketeer radiance radicalism radish ragamuffin rage raid rainbow rainfall raise raising rajah rally rallying rancher rancor randomization rank ransom
rap rapidity rapist rapport rapture rascal rate rating ratio ration rationale rationalism rationalization rationing rattlesnake rattling ravage rbi reach
reaction reactionary reactivity reader readiness reading readjustment ready realism realist reality realization realm reappearance rearguard rearing rearward
reason reasoning reassurance reb rebel rebellion rebuff rebuilding receipt receipts reception receptionist recipient recital recklessness reckoning
reclassification reclining recluse recognition recollection recommendation reconsideration reconstruction recourse recovery recreation recrimination recruit
recruitment rectitude recuperation recurrence red redcoat redefinition redemption redeposition redevelopment redheader rediscovery redress reducing reduction
redundancy reelection reenforcement reevaluation referee reference referendum refinement reflectance reflex refocusing reform refrain refrigeration refueling
refugee refund refusal regard regime regiment regimentation registrant registration registry regret regular regularity regulation rehabilitation
reharmonization rehearing rehearsal reich reign reimbursement reissue rejection rejoicing relatedness relation relations relationship relative relentlessness
relevance relevancy reliability reliance religion religionist religiousness relish reliving remark remembrance reminder remission remonstrance remorse removal
remuda remuneration renaissance rendezvous rendition renewal renovation rent renunciation reorientation repair repairman repayment repeal repeat repentance
repetition replacement replacing replenishment reply report reporter reporting repose representative repression reprieve reprint reprisal reproach reprobate
reproducibility reproof reptile republic republican repugnance repulsion reputation repute request requirement requisition rescue research researcher
resemblance resentment reservation reserve reserves resident resignation resilience resolution resolve resonance resort resource resourcefulness respect
respects respiration respite response responsibility responsiveness restatement restlessness restriction result resume resumption retail retailer retailing
retaliation retardation retention retentiveness retirement retraining retreated retribution retrospect retrospective retrovision reunion revel revelation
reveller revelry revenge revenue reverberation reverend reverie reversal reversibility revery review reviewer revision revival revolt revolution revulsion
reward rhetorician rheumatism rhino rhinoceros rhinotracheitis rhubarb rhyme rhythm ribes rice richmond richness rider ridicule rifleman rift righteousness
rightness rigor ringing riot ripening ripple rise risk rite ritual rival river riverbank rivulet roar roarer roaring robber robbery robustness rogue role
roleplaying roman romance romantic romanticism rome romp roofer rooftop rookie roomful roosevelt rooster rooting rose rosebud roster rot rotation rotc
rotundity roughneck roughness roundup rousseau routine rowdy royalty rpm rubric rudeness ruffian ruling rumanian rumen rumor rumpus run runaway rundown
running runoff rush rushing russia russian rustle rustler rustling rutabaga ruthlessness sabbath sabine sabotage sacrament sacramento sacrifice sacrilege
sadism sadness safebreaker safeguard saga sage sagebrush sailing saint sake salad salary sale salesgirl saleslady salesman salesmanship salish sally salmon
salvation salvo sameness sample sampling sanction sanctity sandalwood sandwich sanitation sanity sapling saracen sarcasm sassing satiety satire satirist
satisfaction saturation saturday saturn sauce savage savageness savannah saver saving savings savior scamper scandal scar scarcity scenario scent scepticism
schedule scheme scherzo schism schizophrenic scholar scholarship scholastic schoolboy schooldays schoolgirl schooling schoolmarm schoolmaster schoolmate
schoolmistress sciatica science scientist scoffing scores scorn scot scotchman scotland scoundrel scouring scours scout scouting scowl scramble scrape
scrapheap scraping scratchiness scream screaming screech screeching screenplay scrimmage script scripture scrubbing scrutiny sculptor sea seacoast seafarer
seagull seahorse sealing seaman seaquake search season seattle seaweed sec secessionist secrecy secret sect secularism secularist sediment sedimentation
seduction seedling seedpod seepage seer segregationist seizure selection selectman self selfishness selling seminarian seminary semitrance senate senator
sending senior seniority sensation sense sensibility sensing sensitivity sensuality sentence sentiment sentimentalist sentimentality sentinel sentry
separation sept septation september sequestration serenade serenity sergeant serialism series seriousness sermon servant services session setback settlement
settler severalty severing severity sex sextet sforzando shading shadow shakespeare shaking shallowness shame shamrock shaping sharer shark sharpness shaving
sheep sheepman shenanigan shepherd sheriff sherry shibboleth shining shipbuilding shirking shirtsleeves shiver shivering shoeful shoes shooting shopkeeper
shopper shortage shortness shortstop shout shouting show showdown showing shriek shrieking shrub shrubbery shrug shucks shuffling shutdown siberia sicilian
sicily sick sickness siege sigh sight sightseeing signal signaling signature significance signore signpost silence silkworm similarity simile simplicity sin
sincerity sinfulness singer singing single singsong singularity sinking sinner sinning sioux sip sipper sir sirloin sis sister site sitting situation sixties
skeet skeptic skepticism skill skimming skirmish skirmisher skit skulking sky slain slant slaughter slave slavery slavic sleep sleeping sleepwalker slight
slinging slippage slob sloe slogan sloganeering slope slovenliness slowing slowness slugger slum slumber slump smallness smallpox smash smell smile smiling
smoking smoothness smuggler snack snail snapdragon snarl sneer sniper sniveling snoring snowfall soaking soapsuds sobriety sociability social socialism
socialist sociality society sociologist softening softness sojourn solace soldier soldiering soldiery solemnity solicitude solidarity solidity solipsism
solitude solo soloist someone somersault somersaulting son song songwriter sonnet sonny sonority soothsayer sophisticate sophistication sophomore soprano sore
sorority sorption sorrow sort soul sound south southeast southerner southernism southpaw southwest sovereign sovereignty soviets sowbelly spacing spaciousness
spain spaniel spanish spark sparkle sparrow spasm spatiality spatter speaking special specialist specialization specialty species specification specificity
specter spectroscopy spectrum speculation speech speechlessness spell spelling spending spinnability spirit spirits spiritual spite splash splatter splendor
splenomegaly splinter splutter spokesman sponsor sponsorship spontaneity spoonful spore sport sportsman sportswoman spouse sprawling spraying spree
springfield springtime sprinkling sprinter sprue spume sputtering spy squabble squad squadron squat squatting squeak squeal squeeze squire stability
stabilization stager staginess stagnation staining stalin stamen stampede stance standing standpoint standstill stardom stare starlet starlight start starting
startup starvation state statement statesman statesmanship stationery statistic statistician statuary stature status statute stead steak stealing stealth
steed stenography stepchild stepmother steppe steprelationship stereotype steward stewing stiffening stiffness stillness stimulation stimulus sting stirring
stockbroker stockholder stoic stoicism storekeeper storeria storm storyline storyteller straggler strain straining strait strangeness stranger strangulation
stratagem strategist strategy stratification stratum stravinsky strawberry stray streak stream strength stress stretching stride strife strike striving stroke
stroll struggle stubbornness student stumping stunt stupid stupidity stupor stylemark stylist stylization subcommittee subcontinent subgroup subjectivist
subjugation submission subordinate subpart subscription subsidy subsistence subspace subspecies substitute substitution subsystem subterfuge subtlety suburb
suburbanite success succession successor succor suck sucker suction sudanese suddenness suds sufferer suffering suffix suffocation suffrage suggestion suicide
suitability suitor sultan sumatra summary summation summer sun sunday sundown sunlight sunray sunshine superficiality superintendent superior superiority
superlative supernatural supernaturalism superstition supervision supervisor supper suppleness supplier supply supporting supremacy surety surf surge surgeon
surmise surplus surprise surrender surroundings surveillance survey surveying surveyor survival survivor susceptibility sushi suspect suspense suspicion
sustenance swad swahili swallow swami swamp swan sward swarm swash swashbuckler sway swearing swede sweden sweeping sweetheart sweetness swell swerve swig
swimming swiss switching switzerland swoop syllabicity syllable symbol symbolism symbolist sympathy symphony symposium symptom synchronism synchrony syndicate
syndrome synergism synonym syntax synthesis syria syringa systematization tableau tabulation tact tactic tactics tadpole taffy tahiti tailback taint taiwan
takeoff takeover takings tale talent talk talking talks tally tampering tan tang tangle tango tantrum tapping tariff task taste taunt tax taxidriver taxpayer
tea teacher teaching teakwood team teammate teamster tears tease teasing teaspoonful technician technique teenager teens teetotaler telegram telegrapher
telepathy temerity temper temperament temperature tempest tempo temptation tenacity tenancy tenant tendency tenderness tending tenet tennessee tennis tenor
tense tension tentacle tenth tenting tenure termination terminology terms terrain terrier territory terror terrorist test testament testimonial testimony
testing texan texas text texture thailand thamnophis thankfulness thanks thanksgiving thaw thawing theatregoer theme then theologian theology theorem theorist
theory therapist therapy thermodynamics thermometry thermostatics thesis thick thicket thickness thief thieving things thinker thinking thinness thirst
thirteen thirties thirty thoreau thorn thoroughness thought thousand threat threshing thrill thriller throbbing throe thrombosis thrombus throng thrust thud
thuggee thumping thursday thwack tibet tibetan ticket tidbit tide tidewater tidings tiger tightening tilth timbre time timeliness times timetable timidity
timing tinkle titer title titration toad toast today toddy toffee tokyo tolerance toll tomato tomorrow ton tone tonight tons topic topography torment toronto
torpor torrent torture tory toss toter touch touchdown touchstone toughness tour tourist tournament tow town townsman tractarian trade trademark trader
tradesman trading tradition traditionalism traditionalist traffic tragedian tragedy traineeship training trainman trait traitor trampling trance tranquility
transaction transfer transformation transfusion transgression transience transition translation translucence transmitting transmutation transpiration
transvestitism trapper travel traveler traveller travelogue treachery treason treasurer treatment treaty treetop trembling tremor trend trepidation trial
tribunal tribute trick trill trio triple triumph troop trooper troops tropidoclonion trot trouble troubleshooter troupe trucking truculence trumpeter trust
trustee truth truthfulness try tsunami tuberculosis tudor tuesday tuft tuition tularemia tulip tumble tumbling tumor tumour tumult tune tuning tunisia
turbulence turf turkey turmoil turnover tutor tutorial twelve twenties twentieth twenty twig twilight twinge twinkling twirler twisting typewriting typhoid
typhus typing typography tyranny tyrant ubermensch ugliness ukrainian ulcer ulceration ultimatum ultracentrifugation ultraviolet unambiguity unawareness
unbalance uncertainty uncle unconcern unconfessed unconscious underachievement underachiever underbrush undercurrent undergraduate underling undersecretary
underside understanding understatement undertaker undertaking underworld undoing uneasiness unemployment unfolding unfortunate unhappiness unification
uniformity uninitiate uniqueness unit unitarian unity universality universe unknown unloading unpredictability unrealism unreality unreason unrest
unselfconsciousness unselfishness untruth unwillingness upheaval upkeep uplifting uppercut uprising uproar upshot uptake uptown urchin urge urgency urging
usage use usefulness uselessness user ussr utah utilization utmost utopia utopian utopianism utterance vacation vacationing vaccinating vaccination
vacuolization vagabond vagueness valet validation validity valley valor valuation value values vandal vandalism vanguard vaporization vaquero variability
variable variant variety vaudeville vegetable vehemence velocity vending vendor venezuela vengeance venice venture venus veracity verb verbena verdict
verification verisimilitude vermont vermouth versatility verse version vertebrate vertex vertigo verve vestige vet veteran veto vexation viability viand
vibrancy vibration vicar vice vicinity victim victor victory vienna vientiane viewers viewpoint vigilance vigilantism vigor village villager villain
vindication vine vintage violation violence violet violinist virgin virginia virginian virginity virtue virtuoso virulence virus viscosity visibility vision
visit visitor vista visualization vitality vividness vocabulary vocalist vocation vogue voice volcano volition volley voltage voltaire volunteer vomiting vote
voter voting vowel voyage voyager vulnerability vulture wads waffle wag wage wager wages wail wailing wait waiter waiting waitress wake wakefulness walkout
walkover wallflower walnut walrus wanderer waning want war warehousing warfare warmongering warmth warning warrant warrior warsaw washington washup wasteland
watcher watching watchmaker watchman watercolorist waterfall waterfront watermark watershed watt wavelength waxing weakening weakness wealth weaning wearer
weariness weather wedding wednesday week weekday weekend weekly weeping weighting weightlessness welcome welfare weltanschauung welter west western westerner
wet wetness wetting whale wheat wheeze whereabouts whiff whig while whim whir whirring whiskey whisky whisper whistling whit whiteface whiteness whiz whodunit
whole wholesaler whore wickedness widow widower widowhood width wife wigmaker wildcatter wildlife wildness wile will willing willingness willpower win windbag
wine wingback wingman wings wink winner winning winnipeg winter wintertime wisdom wise wisenheimer wish wishing wisp wit witch withdrawal withholding witness
wizard woe wolf woman wonder wonderfulness woodcarver woodgrain woodgraining woodpecker woods word wording words wordsworth worker workman workout worksheet
workweek world worriment worry worse worship worshipper worst worth worthlessness wound wounded wrack wrangle wrath wrestler wrestling wretch wretchedness
writ writer writing writings wrong wrongdoing wyoming xylem yank yankee yardage yawn yaws year yearning years yell yelling yellow yelp yelping yen yes
yesterday yesteryear yoga yokel yokuts young youngster youth yucca yugoslavia zeal zenith zest zionism zionist zloty zombie zoning
`.trim().split(/\s+/));
