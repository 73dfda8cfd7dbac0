/**
 * English nouns for made things: what a part may be called that no list of the trade holds. Taken from WordNet 3.1 (Princeton University;
 * its licence stands in WORDNET-LICENSE beside this file): the single words of which one of the first three senses is an artefact.
 */
export const ARTEFACTS: ReadonlySet<string> = new Set(`
aba abacus abatis abattis abattoir abaya abbey abm abode aborticide abortifacient abradant abrader abstractionism abutment accelerator accelerometer access
accessory accordion accouterment accoutrement accumulator ace acebutolol acetaminophen acetanilid acetanilide acetate acetophenetidin acetphenetidin
achromycin acid acoustic acrilan acropolis acrylic actifed actinometer actinomycin activase activewear actuator acular acyclovir adam adapin adapter adaptor
adder addition additive addressograph adit adjuvant admixture adobe adornment adps adrenergic adumbration advil adz adze aegis aerator aerial aerodrome
aerofoil aerogenerator aeroplane aerosol aertex afghan aflaxen afrl afterburner afterdeck afterthought agal agateware agglomerator aggregate aglet agora
ahpcrc aiglet aigret aigrette aiguilette aileron airbrake airbrush airbus aircraft airdock airdrome airfield airfoil airframe airgun airline airliner airlock
airmailer airplane airport airscrew airship airstrip airway aisle alarm alb album albuterol alcazar alcove aldomet alehouse alembic alendronate aleve
algometer alhambra alidad alidade alkeran alleviant alleviator alley alleyway allopurinol aloes alpaca alpenstock alprazolam altace altar altarpiece
altazimuth alternator altimeter alupent amati ambo ambulance ambulatory americana amethopterin amex amidopyrine aminophylline aminopyrine amiodarone
amitriptyline ammeter ammo ammunition amobarbital amoxicillin amoxil amphetamine amphibian amphitheater amphitheatre amphora amphotericin ampicillin amplifier
ampoule ampul ampule ampulla amrinone amulet amytal anachronism anaesthetic anaglyph analeptic analgesic analyser analyzer anamorphism anamorphosis anaprox
anastigmat anchor andiron android anemometer aneroid anesthetic anesthyl angiocardiogram angiogram angioscope angiotensin angiotonin angledozer animalization
anklet anklets ankus annex annexe annulet annunciator anode anodyne anorak anovulant ansaid antabuse antagonist antechamber antefix antenna anteroom
anthelminthic anthelmintic antiaircraft antiarrhythmic antibacterial antibiotic anticholinergic anticholinesterase anticoagulant anticonvulsant antidepressant
antidiabetic antidiarrheal antidiuretic antidote antiemetic antiepileptic antiflatulent antifungal antihistamine antihypertensive antimacassar antimalarial
antimetabolite antimicrobial antimicrobic antimycin antimycotic antineoplastic antiperspirant antiprotozoal antipruritic antipsychotic antipyretic antique
antiquity antiseptic antispasmodic antisyphilitic antitussive antivert antiviral anvil anxiolytic apadana apartment apc aperient aperture aphrodisiac apiary
apishamore apomorphine apparatus apparel appendage appendicle applecart appliance applicator applier applique appointment approach appurtenance apresoline
apron apse apsis aqualung aquaplane aquarium aquatint aqueduct arabesque araroba arava arbalest arbalist arbor arboretum arbour arcade arch architecture
architrave archive archway arctic areaway arena argyle argyll argyrol ark arm armament armature armband armchair armet armguard armhole armilla armlet armoire
armor armory armour armoury armrest arms arnica arquebus arras array arrester arrow arrowhead arsenal art arteriogram artery arthrogram arthroscope artillery
ascot asdic ashbin ashcan ashlar ashtray asparaginase aspergill aspersorium asphyxiator aspirator aspirin assagai assegai assemblage assembly astragal
astringent astrodome astrolabe asylum atabrine ataractic atarax atelier atenolol athanor athenaeum atheneum atherodyde athodyd ativan atm atmometer atomiser
atomizer atorvastatin atrium atropine atrovent attache attachment attenuator attic attire auberge audio audiocassette audiogram audiometer audiotape
audiovisual auditorium auger augmentin aureomycin auriscope auroscope auschwitz auto autobahn autobus autoclave autocue autofocus autogiro autogyro
autoinjector autoloader automat automatic automation automaton automobile autopilot autoradiograph autostrada autotype aventail avenue aviary awl awning axe
axle axletree azactam azathioprine azithromycin azt aztreonam babel babushka baccy bacitracin back backband backbench backboard backcloth backdoor backdrop
backhoe backing backlighting backpack backplate backrest backroom backsaw backscratcher backseat backspace backspacer backstage backstairs backstay backstitch
backstop backsword backyard bactericide baffle bag bagatelle baggage bagger bagging bagnio bagpipe bailey bait baize bakehouse bakery bakeshop balaclava
balalaika balbriggan balcony baldachin baldric baldrick bale balk ball ballast ballcock balldress ballista ballistocardiograph balloon ballpark ballpen
ballpoint ballroom balm balmoral balsam baluster balusters balustrade bandage bandana bandanna bandbox bandeau bandelet bandelette banderilla banding bandlet
bandoleer bandolier bandoneon bandsaw bandstand bandwagon banger bangle banian banister banjo banner bannister banquette banyan baptistery baptistry bar barb
barbacan barbecue barbell barbeque barbershop barbette barbican barbital barbitone barbiturate barbwire bard bareboat barge bargello baritone bark barn
barndoor barnyard barograph barometer barong barouche barque barrack barrel barrelhouse barrette barretter barricade barrier barroom barrow bars bascule base
baseball baseboard basement basic basilica basilisk basin basinet basket basketball bassinet bassoon bastard baste baster bastille bastinado basting bastion
basuco bat bath bathhouse bathometer bathrobe bathroom bathtub bathymeter bathyscape bathyscaph bathyscaphe bathysphere batik batiste baton batten battery
batting battledore battlement battleship battlesight battlewagon batwing bauble baulk bawdyhouse baycol bayer bayonet bazaar bazar bazooka bbs beachball
beachwear beacon bead beading beads beadwork beaker beam beanbag beanie beany bearskin beater becket bed bedchamber bedclothes bedcover bedding bedframe
bedlam bedpan bedpost bedroll bedroom bedsit bedsitter bedspread bedspring bedstead beefcake beehive beeper beetle belfry bell belladonna bellarmine bellows
bellpull bellyband belmont belsen belt belting beltway belvedere bema benadryl bench bend bender bennie bentwood benzedrine benzocaine benzodiazepine
benzylpenicillin beret berlin berm berretta berth besom betatron bethel bevatron bevel bextra bezel bhang bib bicorn bicorne bicycle bidet bier bifocals
biggin bijou bike bikini bilge bilges billboard billet billfold billhook billy billystick bin binder bindery binding binnacle binoculars bioarm biochip
bioscope bioweapon biplane biprism birch birchbark birdbath birdcage birdcall birdfeeder birdhouse birdie biretta biro birretta bishop bistro biteplate
bitewing bitmap bitstock bitt bitthead bitumastic bivouac blackboard blackface blackjack blackwash bladder blank blanket blazer blazon blazonry bleachers
blender blimp blind blinder blindfold bling blinker blocadren block blockade blockage blockbuster blocker blockhouse bloodmobile bloomers blouse blower
blowgun blowhole blowlamp blowpipe blowtorch blowtube blowup blucher bludgeon blue bluebonnet blueprint blunderbuss blusher boa board boarding boardinghouse
boardroom boards boardwalk boat boater boathouse boatyard bob bobber bobbin bobbysock bobbysocks bobfloat bobsled bobsleigh bodega bodice bodkin bodywork
bogey bogie bogy boiler boilerplate boilersuit bola bolero bollard bollock bolo bologram bolograph bolometer bolster bolt bolus bomb bombard bombardon
bombazine bomber bombie bomblet bombproof bombshell bombsight bones boneshaker bongo bonnet book bookbindery bookcase bookend bookmark bookmarker bookmobile
bookshelf bookshop bookstall bookstore boomerang boot bootee booth boothose bootie bootjack bootlace bootleg bootstrap bordello borer borstal bosom bota
botanical bottle bottlebrush bottlecap bottleneck boucle boudoir boule boulevard boulle bouquet bourdon bourse boutique boutonniere bow bower bowknot bowl
bowler bowline bowsprit bowstring bowtie box boxcar boxers boxershorts bra brace bracelet bracer braces bracing brad bradawl braid braiding brail brainchild
brake brakes brasier brass brassard brasserie brassie brassiere brattice brazier breadbasket breadboard breadbox breakable breaker breakwater breastpin
breastplate breastwork breathalyser breathalyzer breather breech breechblock breechcloth breechclout breeches breechloader bren brevibloc brewery brewpub
brick brickfield brickkiln brickwork brickyard bricole bridge bridgework bridle bridoon briefcase briefs brig brigandine brigantine brilliantine brim briquet
briquette bristle britches broach broadax broadaxe broadcaster broadcloth broadloom broadside broadsword brocade brochette brogan brogue broiler brokerage
brolly bronchodilator bronchoscope bronze brooch brooder broom broomstick brothel brougham brownstone brush bubblejet bubbler buchenwald buck buckboard bucket
buckle buckler buckram bucksaw buckshot buckskins buffer bufferin buffet bug buggy bugle buhl building bulb bulkhead bulla bulldozer bullet bullfight bullhorn
bullion bullnose bullpen bullring bulwark bumboat bumper bundle bung bungalow bungee bunghole bunk bunker bunsen bunting bur burberry burden bureau buret
burette burin burka burlap burner burnoose burnous burnouse burqa burr burster burthen bus busbar busby bushing buskin buspar buspirone bust bustier bustle
butacaine butazolidin butchery butt buttery button buttonhole buttonhook buttress buttressing buzzer bvd bwr bypass bypath byproduct byre byrnie byroad byway
caaba cab cabana cabaret cabasset caber cabin cabinet cabinetwork cable caboose cabriolet cache cachet caddy cafe cafeteria caff caftan cage cagoule caisson
cake calan calash calceus calcimine calculator caldron calean caleche calender calico caliper calk calkin calliope calliper calorimeter calpac calpack calumet
cam camail cambric cambridge camcorder camelhair cameo camera camion camise camisole camlet camo camouflage camp campanile camper campstool camshaft can canal
candelabra candelabrum candle candlepin candlesnuffer candlestick candlewick cane cangue caning canister cannabis cannery cannikin cannister cannon cannonball
cannula canoe canopy canteen cantilever cantle cantonment canvas canvass cap capacitance capacitor caparison cape capillary capitol capote capoten capstan
capstone capsule captopril capuchin car carabiner carack carafate carafe caravan caravansary caravanserai carbine carbomycin carbon carboy carburetor
carburettor card cardcase cardcastle cardhouse cardigan cardiograph cardizem cardroom cardura cargo carillon carminative caroche carousel carpet carpetbag
carpeting carport carrack carrefour carrel carrell carriage carriageway carrier carrousel carryall carrycot cart carton cartouch cartouche cartridge cartroad
cartwheel carvedilol carving caryatid cascabel casein casement casern cashbox cashmere casing casino cask casket casque casquet casquetel casserole cassette
cassock cast castanets caster casting castle castor catacomb catafalque cataflam catamaran cataphract cataplasm catapres catapult catboat catchall catchment
caterpillar catgut cathartic cathedra cathedral catheter cathode catholicon cathouse catling cattleship catwalk cauldron causeway cauterant cautery cavetto
cefadroxil cefobid cefoperazone cefotaxime ceftazidime ceftin ceftriaxone cefuroxime ceiling celebrex celecoxib celesta cell cellar cellarage cellaret
cellblock cello cellophane cellphone cembalo cenotaph censer center centerboard centerfield centerpiece central centreboard centrepiece centrex centrifuge
cephalexin cephaloglycin cephaloridine cephalosporin cephalothin ceramic cerate cerecloth cerement cerivastatin cesspit cesspool chachka chadar chaddar chador
chaff chain chains chainsaw chair chairlift chaise chalet chalice chalk chalkboard chalkpit challis chamber chamberpot chambray chamfer chamfron chancel
chancellery chancery chandelier chandlery chanfron changer channel chanter chantry chapeau chapel chapiter chaplet chapterhouse charabanc charcoal charcuterie
charger chariot charm charnel chart charterhouse chase chassis chasuble chateau chatelaine checker checkerboard checkout checkrein checkroom cheekpiece
cheeseboard cheesecake cheesecloth chemise chenille chequer cheroot chessboard chessman chest chesterfield chevron chiaroscuro chicane chicha chiffon
chiffonier chime chimney chimneypiece chimneypot chimneystack china chinaware chinchilla chino chinoiserie chinos chintz chip chisel chiton chlamys
chlorambucil chloramine chloramphenicol chlordiazepoxide chlorhexidine chloroform chloromycetin chloroquine chlorothiazide chlorpromazine chlortetracycline
chlorthalidone chock choir choke choker chokey choky chophouse chopine chopper chopstick chordophone chrism chrisom chromatogram chronograph chronometer
chronoscope chrysarobin chuck chuddar chukka chum chunnel church churidars churn chute cialis ciderpress cigar cigaret cigarette cigarillo cimetidine cinch
cincture cinema cinerarium cinquefoil cipro ciprofloxacin circlet circuit circuitry cistern citadel cither cithern citole cittern cityscape civies civvies
clack cladding claforan clamp clamshell clapper clapperboard clappers clarence clarinet clarion claro clasp classic classroom clavichord clavier claw
clawhammer claxon claymore clayware cleaner cleaners cleanser clearstory clearway cleat cleats cleaver clench clepsydra clerestory clevis clews click client
clinch clincher clingfilm clinic clink clinker clinometer clinoril clioquinol clip clipboard clipper cloaca cloak cloakroom cloche clock clockwork clodhopper
clofibrate clog cloisonne cloister clomid clomiphene clomipramine clone clonidine closet closeup cloth clothes clothesbrush clotheshorse clothesline
clothespin clothespress clothing clout cloverleaf clozapine clozaril club clubhead clubhouse clubroom coach coalbin coalhole coalpit coaming coaster coat
coatdress coatee coating coatrack coatroom coattail coax cobble cobblestone cobweb coca cocain cocaine cock cockade cockhorse cockleshell cockloft cockpit
cockscomb cocotte codeine codpiece coelostat coffeehouse coffeepot coffer cofferdam coffin cog cogwheel coif coign coigne coil coke colander colchicine
coldcream coliseum collage collar collectable collectible college collet collider colliery collimator collyrium cologne colonnade colonoscope colophon
colorimeter colors colosseum colours colt colter columbarium columbary column comb comber combine comforter commissary commode commodity commutator commuter
compact companionway compartment compass component compound compress compressor computer concealment concertina concourse condenser conditioner condo condom
condominium conduit cone conestoga confectionary confectionery confessional confetti conge congee connecter connection connective connector conservatoire
conservatory consignment console constituent constraint consulate container containership containment contraband contrabass contrabassoon contraceptive
contrafagotto contraption contrivance controller convector convenience convent conventicle converter convertible convertor conveyance conveyer conveyor cooker
cookfire cookhouse cookstove cookware cooler cooling coonskin coop cope copestone copier coping copperplate copperware copy copyholder coquille coracle corbel
corbiestep cord cordage cordarone cordite cordon cords corduroy corduroys corer corgard coricidin corker corkscrew corncrib corner cornerstone cornet cornice
coronal coronet corral corrective corrida corridor corsage corsair corselet corset corslet corvette cosh cosmetic cosmography cosmotron costume cosy cot cote
cottage cottar cotter cotton couch couchette coulisse coulter coumadin counter counterbalance counterbore counterfeit counterirritant counterpane counterpart
counterpoise counterpoison countersink countertop counterweight countinghouse coupe coupler coupling court courtelle courthouse courtroom courtyard cover
coverall covering coverlet covert cowbarn cowbell cowcatcher cowhide cowhouse cowl cowling cowshed coxcomb cozy cpu crack crackerjack crackle crackleware
cradle craft cramp crampon crampoon craniometer crank crankcase crankshaft crape crapper crate cravat crayon cream creamer creamery crease creation creche
credence credenza creel creep creese crematorium crematory crenel crenelation crenellation crenelle crepe crest cretonne crewelwork crewet crib crimper
cringle crinoline cristal crixivan cro crochet crocheting crock crockery crocket croft cromlech cromorne crook cross crossbar crossbeam crossbench crossbow
crosscut crosse crosshead crossjack crosspiece crossroad crosstie crosswalk crossway crowbar crown crownwork crt crucible crucifix cruet cruiser crumhorn
crupper cruse crusher crutch cryocautery cryometer cryoscope cryostat crypt cryptograph crystal cubby cubbyhole cubeb cubicle cubitiere cuddy cudgel cuff
cufflink cuirass cuisse cul culdoscope cullender cullis culotte cultivator culverin culvert cummerbund cup cupboard cupel cupola cuprimine curative curb
curbing curbside curbstone cure curet curette curio curiosity curler currycomb cursor curtain curtilage cushion cushioning cusp cuspidation cuspidor
customhouse customshouse cut cutaway cutlas cutlass cutlery cutoff cutout cutwork cyberart cybercafe cyberspace cyclobenzaprine cyclopropane cyclorama
cycloserine cyclostyle cyclotron cylinder cylix cyma cymatium cymbal cymograph cyproheptadine cytophotometer dacha dachau dacron dado dag dagger daggerboard
daguerreotype dairy dais daishiki dalmane dam damascene damask dampener damper dandy dapsone daricon darkroom darn dart dartboard dartmouth darvon dashboard
dashiki dasymeter dat datril daub davenport davit daybed daybook daypro ddc ddi deadbolt deadeye deadhead deadlight deanery deathbed deathtrap decal
decalcomania decanter deck decker deckle declinometer declomycin decoagulant decoder decolletage decongestant decor decoration decoupage decoy deedbox
deepfreeze deerstalker defibrillator defilade deflector defroster dehumidifier deicer delavirdine delf delft deli delicatessen delineation deliverable demerol
demijohn demister demitasse demodulator demulcent demulen denim densimeter densitometer dentifrice denture deodorant deodourant deoxyephedrine depiction
depilator depilatory depokene depositary depository depot depressant depressor derby derelict dermatome derrick derringer des desipramine desk desktop
destroyer desyrel detector detent detergent detonator detour detox developer device dewar dexedrine dhoti dhow diabeta diacetylmorphine diadem diaglyph
diagram dial dialyzer diamante diapason diaper diaphone diaphoretic diaphragm diary diazepam diazoxide dibber dibble dibucaine dice dicer dickey dickie dicky
dicloxacillin dicoumarol dictaphone dicumarol didanosine dideoxycytosine dideoxyinosine die diesel diestock diethylmalonylurea diethylstilbesterol
differential diffuser diffusor diflunisal digester digger diggings digitiser digitizer digitoxin digoxin digs dihydrostreptomycin dike dilantin dilater
dilator dilaudid dildo diltiazem dime dimenhydrinate dimetane dimetapp dimity dimmer diner dinette dinghy dinkey dinky dinnerware diode diorama diovan
diphenhydramine diphenylhydantoin dipole dipper dipstick diptych dirigible dirk dirndl disc disco discotheque discounter discus disguise dish dishcloth
dishpan dishrag dishtowel dishware dishwasher disinfectant disk diskette dispensary dispenser display disposable distaff distemper distillery distributer
disulfiram ditch diuretic diuril divan dive divider diwan dixie dock dockage document dodgem doeskin dogcart doghouse dogleg dogsled dogtooth doily doll
dollhouse dolly dolman dolmen dolobid dome domicile domiciliation domino dongle donjon doodad doodle doodlebug doohickey doojigger door doorbell doorcase
doorframe doorhandle doorjamb doorknob doorknocker doorlock doormat doornail doorplate doorpost doorsill doorstep doorstop doorstopper doorway dooryard dope
doriden dorm dormer dormitory dory dosage dose dosemeter dosimeter dossal dossel dosshouse doubler doublet doubletree douche dovecote dovetail dowel downcast
downer downstage dowser doxazosin doxepin doxorubicin doxycycline doyley doyly dozer draft dragee dragger dragnet dragunov drain drainboard drainpipe
drainplug dramamine drape drapery drawbar drawbridge drawer drawers drawing drawknife drawnwork drawshave drawstring dray dreadnaught dreadnought dreck dredge
dredger dress dresser drier drill drip dripstone drive driveshaft driveway drixoral drogue drome dronabinol dropper droshky drosky drove drug drugget
drugstore drum drumhead drumstick drydock dryer drygoods drywall dsl dubbing duckboard duckpin duct dudeen duds duffel duffle dugout dulciana dulcimer
dumbbell dumbwaiter dumdum dummy dumpcart dumper dumpster dungaree dungeon duomo duplex duplicate duplication duplicator durables durbar dustbin dustcart
dustcloth duster dustmop dustpan dustrag duvet dvd dwelling dyke dynamite dynamo dynamometer dynapen eardrop earflap earlap earmuff earphone earpiece earplug
earring earthenware earthwork easel eatery eaves echelon echinus echocardiograph echoencephalograph echogram ecstasy edecrin edge edger edging edifice edronax
eds effigy eggbeater eggcup eggwhisk egis eiderdown eight ejector elastic elastoplast elavil elbow electric electrocardiograph electrode electrodynamometer
electroencephalograph electrograph electrolytic electromagnet electrometer electromyograph electrophorus electroplate electroscope element elevated elevator
elixophyllin ell elongation elspar elvis embankment embassy embellishment emblem embossment embouchure embrasure embrocation embroidery emergency emeside
emetic emetrol emitter emollient empennage empirin emplacement emporium empty emulsion enalapril enamel enamelware enbrel encainide encampment encaustic
encephalogram enclosure encrustation encumbrance endoscope energiser energizer enflurane engine engineering enginery engraving enkaid enlarger enovid ensign
entablature entanglement entrance entranceway entrant entree entrenchment entrepot entresol entryway envelope eolith epaulet epaulette epauliere epee epergne
epidiascope epilator eprom equaliser equalizer equanil equatorial equipage equipment eraser erection ergometer erythrocin erythromycin escalator escapement
escarp escarpment escritoire escutcheon esidrix esmolol esophagoscope espadrille espalier esplanade estaminet estazolam etagere etamin etamine etanercept
etcetera etching etd ethchlorvynol ethernet ethocaine ethosuximide ethoxyethane ethrane ethril etna etodolac etui eudiometer euphonium euphoriant evaporometer
eveningwear ewer excalibur excavation excavator excitant exerciser exercycle exhaust exit exocet expectorant expectorator explosive export exportation express
expressway extinguisher extra extractor eyebath eyecup eyeglass eyeglasses eyehole eyelet eyeliner eyepatch eyepiece eyeshade eyeshadow eyewash fabric facade
faceplate facility facing facsimile factory fae fag faggot faggoting fagot fagoting faience faille fairlead fake falchion falderol fallal fallboard falsie
famotidine fan fancywork fanion fanjet fanlight fantail farm farmhouse farmplace farmstead farmyard farthingale fascia fastener fastening fastness fathometer
fatigues faucet fauld fauteuil fax featherbed featheredge febrifuge fedora feedbag feedlot feldene fell felloe felly felt felucca fence fencing fender
fenestella fenoprofen fentanyl feosol fergon ferrule ferry ferryboat ferule fess fesse festoon festoonery fet fetich fetish fetoscope fetter fez fiberboard
fiberscope fibreboard fichu fiddle fiddlestick fieldwork fife fighter figurehead figurine filagree filature file filet filigree fillagree film filter fin
finder finery finger fingerboard fingerpaint fingerstall finial fipple firearm firebase fireboat firebomb firebox firebrick firecracker firedog fireguard
firehouse firelock fireplace fireplug fireroom fireside firetrap firewall firework firkin fishbowl fishery fishgig fishhook fishnet fishplate fitment fitting
five fixative fixing fixings fixture fizgig flack flag flagellum flageolet flagging flagon flagpole flagship flagstaff flagstone flagyl flail flak flambeau
flamethrower flange flannel flannelette flap flaps flashboard flashboarding flashbulb flasher flashgun flashing flashlight flask flat flatbed flatboat flatcar
flatiron flatlet flats flattop flatware flatwork fleabag fleapit flecainide fleece flexeril flight flintlock flipper floatplane flood floodgate floodlight
floor floorboard flooring flophouse floppy florist floss flotilla flotsam flounce flowerbed flowerpot floxuridine flue fluegelhorn fluff flugelhorn fluke
flume flunitrazepan fluorescent fluoroscope fluorouracil fluoxetine fluphenazine flurazepam flurbiprofen flute fluting fluvastatin fluxmeter fly flybridge
flyover flyswat flyswatter flytrap flywheel fob foetoscope foghorn foglamp foible foil folder folderal foliage foliation folio followup font foodstuff footage
football footbath footboard footbridge footgear foothold footing footlights footlocker footpath footplate footrest footstall footstool footwear forceps fore
forecastle forecourt foredeck foredge foreground foremast foresail forestage forestay foretop forge forgery fork forklift formal formalwear formica fort
fortaz forte fortification fortress forum fosamax fosse fots foulard foundation foundry fount fountain four foxhole foyer fpd fraction fradicin fragment frail
fraise frame framework framing freeway freewheel freezer freight freighter fresco freshener fret fretsaw fretwork friary fridge frieze frigate frill frippery
frisbee frivolity frock frog frontage frontal frontispiece frontlet frontstall fruit frypan fugo fulcrum fulvicin fumigator fundament fungible fungicide
funicular funnel fur furbelow furnace furnishing furniture furosemide furring furrow fusain fuse fusee fuselage fusil fustian futon future fuze fuzee
gabapentin gabardine gaberdine gable gad gaddi gadget gadgetry gaff gaffsail gag gage gaiter galleon gallery galley gallous gallows gallus galosh galvanometer
gamba gambrel gamebag gameboard gamp gangboard gangplank gangsaw gangway ganja gantanol gantlet gantrisin gantry gaol gap garage garamycin garand garb garbage
garboard garden gargoyle garibaldi garment garner garnish garotte garret garrison garrote garrotte garter gasbag gash gasket gasmask gasometer gastroscope
gasworks gat gate gatehouse gatepost gateway gather gaud gauffer gauge gauntlet gauntry gaussmeter gauze gavel gazebo gear gearbox gearing gearset gearshift
gearstick geartrain gel gelatin gelignite gelly gem gemfibrozil gemonil generator generic gentamicin georgette germicide geta getup gewgaw gharry ghat ghb
ghillie ghq gibbet gig gildhall gilding gillie gilt gimbal gimcrack gimcrackery gimlet gimmick gin gingham ginmill girandola girandole girder girdle girth
gismo gittern gizmo gladstone glass glasses glasshouse glassware glasswork glassworks glengarry glider glipizide globe glockenspiel glossy glove glucophage
glucotrol glutethimide glyburide glyph glyptics glyptography gnomon goad goal goalmouth goalpost goblet godown goffer goggles golconda goldbrick goldmine
golem golfcart golfclub golliwog golliwogg golosh gondola gong goniometer goop gore gorgerin gorget gossamer gouache gouge gourd governor gown gps grab
graduate graffiti graffito grail gramicidin gramophone granary grand grandstand grange graniteware granny grape grapeshot graphic graphics grapnel grapple
grappler grate grater graticule grating grave graver gravestone gravimeter gravure gray greasepaint greatcoat greave greegree greengrocery greenhouse
greenmarket greenroom grenade greybeard grid griddle gridiron grigri grill grille grillroom grillwork grinder grindstone grip gripsack grisaille griseofulvin
gristmill grizzle grocery grogram groin grommet groover grosgrain grotesque grounds groundsheet groundwork grove groyne grummet guanabenz guard guardhouse
guardrail guardroom guarnerius gubbins gueridon guesthouse guestroom guildhall guilloche guillotine guimpe guitar gulag gumshield gumshoe gun gunboat gunflint
gunlock gunnel gunnery gunny gunnysack gunpoint gunsight gunstock gunwale gurney gusher gusset gut gutter guy gym gymnasium gymslip gyro gyrocompass gyroplane
gyroscope gyrostabiliser gyrostabilizer haart haberdashery habergeon habiliment habit habitation hacienda hackamore hackbut hackney hacksaw haematinic
haematocrit haemostat haft hagbut haick haik hairbrush haircloth hairdressing hairgrip hairnet hairpiece hairpin hairspring halberd halcion haldol halftone
hall halliard hallstand hallucinogen hallway haloperidol halothane halter halyard hame hammer hammerhead hammock hamper handbag handball handbarrow handbasin
handbasket handbell handbow handcar handcart handcraft handcuff handgrip handgun handhold handicraft handiwork handkerchief handle handlebar handline handlock
handloom handrail handrest handsaw handset handspike handstamp handwear handwheel handwork hangar hanger hanging hank hankey hankie hanky hansom harbor
harbour hardback hardcover hardtop hardware hareem harem harmonica harmonium harness harp harpoon harpsichord harquebus harrow harvard harvester haschisch
hash hasheesh hashish hasp hassock hat hatband hatbox hatch hatchback hatchel hatchet hatchway hatpin hatrack hauberk hautbois hautboy havelock haven
haversack hawk hawse hawsehole hawsepipe hawser hayfork hayloft haymaker haymow hayrack hayrig haywire hazard headband headboard headdress header headfast
headgear heading headlamp headlight headphone headpiece headpin headquarters headrace headrest headsail headscarf headset headshot headstall headstock
headstone heap hearse hearth hearthrug hearthstone heater heating heaume heaver heckelphone heckle hectograph hedge hedgerow heel helicon helicopter
heliograph heliogravure heliometer heliotype heliport helix helm helmet helminthic helve hem hematinic hematocrit hemodialyzer hemostat hemp hemstitch
hemstitching hencoop henhouse henroost heparin heraldry herm hermitage heroin herringbone hessian hexachlorophene hibachi hideaway highboard highboy highchair
highlighter highroad highway hijab hill hilt hinderance hindrance hinge hipflask hippodrome hitchrack hive hoarding hob hobble hobby hobbyhorse hobnail hod
hodometer hodoscope hoe hogan hogshead hoist holdall holder holdfast hole holloware hollowware hologram holograph holster homburg home homeroom homespun
homestead homestretch hone honeycomb honkytonk hoodmold hoodmould hoodoo hook hookah hookup hoop hoopskirt hoosegow hoosgow hooter hopper hopsack hopsacking
horn hornpipe horologe horoscope horror horse horsebox horsecar horsecloth horsehair horseshoe horsewhip hose hosepipe hosiery hospice hospital hostel
hostelry hotbed hotbox hotel hothouse hotplate hotspot houdah hourglass house houseboat housecoat houselights housepaint housetop housing hovel hovercraft
howdah howitzer hoy huarache huaraches hub hubcap huck huckaback hulk humanoid humidifier humvee hurdle hut hutch hutment hydantoin hydralazine hydrant
hydrochlorothiazide hydrodiuril hydroflumethiazide hydrofoil hydrometer hydromorphone hydroplane hydroxychloroquine hydroxytetracycline hydroxyzine hygrodeik
hygrometer hygroscope hygroton hyoscine hyoscyamine hypercoaster hypermarket hyperstat hypertensin hypnotic hypo hypodermic hypsometer hysterosalpingogram
hytrin ibuprofen icbm iceboat icebox icebreaker icehouse icepick icetray icon iconography iconoscope identikit idol ied igloo iglu igniter ignition ignitor
ikon ilosone image imaret imavate imbrication imipramine imitation immunogen immunosuppressant immunosuppressive immunosuppressor impasse impediment
impedimenta impeller imperial implant implement import importation impost impressionism improver improvisation imuran incendiary incinerator incline
inclinometer incrustation incubator incumbrance indapamide inderal indiaman indicator indinavir indocin indomethacin inductance inductor infield infirmary
inflater inflator infliximab infrastructure inglenook ingot ingredient inh inhalant inhalation inhalator inhaler injector inkle inkpad inkpot inkstand inkwell
inlay inlet inn innersole innovation inocor insert inset insole inspiration installation instep instillator institution instrument instrumentality
instrumentation intaglio intake integrator intelnet interceptor interchange intercom interface interferometer interferon interlayer interlock intermixture
internet interphone interrupter intersection interstate interstice intoxicant intranet intrenchment invention inventory inverter invirase iodine
iodochlorhydroxyquin iodoform iol ipecac ipod iproclozide ipv iris iron ironclad ironing ironmonger ironmongery irons ironware ironwork ironworks irregular
island isocarboxazid isoflurane isoniazid isoproterenol isoptin isordil isosorbide isuprel item itraconazole iud ivp izar jabot jackboot jacket jackhammer
jackknife jacklight jackscrew jackstones jackstraw jaconet jacquard jag jail jailhouse jakes jalopy jalousie jamb jambeau jamjar jammer jammies jampan jampot
japan jar javelin jaw jdam jean jeans jeep jellaba jemmy jerkin jeroboam jersey jet jetliner jetsam jetty jewel jewellery jewelry jib jibboom jig jigger
jiggermast jigsaw jimdandy jimhickey jimmy jinrikisha jitney job jobcentre jock jockstrap jodhpur jodhpurs joggle john joinery joint jointer joist jolly jook
jorum joss joystick jug juggernaut juicer juju juke jukebox jumbojet jumper jumpsuit junction junk kaaba kachina kaffiyeh kafocin kaftan kakemono kalansuwa
kalashnikov kaleidoscope kalian kalpac kameez kamikaze kanamycin kantrex kanzu kaopectate karabiner kat katharometer kavrin kayak kazoo keel keelboat keelson
keep keepsake keflex keflin keftab keg kemadrin kennel kepi keratoscope kerb kerbstone kerchief kern ketalar ketamine ketch ketoprofen ketorolac kettle
kettledrum key keyboard keyhole keypad keystone khaddar khadi khaki khakis khan khat khimar khukuri kibble kicksorter kickstand kiley kiln kilt kimono
kinescope kinetoscope kingbolt kingpin kiosk kirk kirpan kirtle kit kitbag kitchen kitchenette kitchenware kite kitsch klavier klaxon klystron knapsack knave
knee kneeler knickerbockers knickers knickknack knickknackery knife knight knit knitting knitwear knitwork knob knobble knobkerrie knobkerry knockabout
knockoff knot knout knuckles knucks kohl kotex koto kraal kremlin kris krummhorn kurdistan kurta kylie kylix kymograph laager lab labetalol laboratory
labyrinth lace lacework lacing lacquer lacquerware lacuna lacunar ladder lading ladle lag lagan lagend lager lagerphone lally lamasery lambrequin lame lamella
laminate lamination lamisil lamivudine lamp lamphouse lamppost lampshade lan lanai lance lancet landau lander landing landline landrover landscape landscaping
landside lane laniard lanolin lanoxin lantern lanyard lap laparoscope lapboard lapel lappet lapping laptop larboard larder lariat larium larotid laryngoscope
laser lash lashing lasix lasso lastex latch latchet latchkey latchstring lateen latex lath lathe lathee lathi latrine lattice latticework laudanum launch
launcher launchpad launderette laundromat laundry laurel lav lavabo lavalava lavalier lavaliere lavalliere lavatory laver lawcourt laxative layby layer
layette lazaret lazarette lazaretto lcd leader leading leaf leash leatherette leatherwork lectern led lederhosen ledger leflunomide leftfield leg legging
leghorn leging lego lei leister lem lenitive lens lense leotard leotards lescol leukeran levallorphan levee lever levis levitra lgb library libritabs librium
lichgate lid lidar lido lidocaine lifeboat lifeline lifesaver liftgate ligament ligan ligature light lightbulb lighter lighthouse lighting lightship likeness
lilo limber limbers limekiln limelight limited limiter limning limo limousine linac linchpin lincocin lincomycin linecut linen liner lingerie liniment lining
link linkage links linkup linocut linotype linstock lint lintel lipitor lipstick liquaemin liquidiser liquidizer lisinopril lisle lister lithoglyptics
lithograph litter litterbin livery load loading loafer loaner lobby local lock lockage lockbox locker locket locknut lockring lockstitch lockup locomotive
locoweed lodge lodging lodgings lodine loestrin loft loge loggia loincloth lomotil lomustine longbeard longboat longbow longshot longyi loniten loo lookout
loom loop loophole lopid lopper lopressor lorazepam lorfan lorgnette lorry lota lotion loudspeaker lounge lounger loungewear loupe louver louvre lovastatin
loveseat lowboy lower loxapine loxitane lozal lozenge lsd lucifer luff lug luge luger luggage lugger lugsail lumber lumberjack lumbermill lumberyard luminal
lunchroom lunette lungi lungyi lunula lure lusterware lute lyceum lychgate lymphangiogram lynchpin lypressin lyre mac macadam machete machicolation machine
machinery machmeter macintosh mack mackinaw mackintosh macrame macrodantin madhouse madras magazine magnet magneto magnetograph magnetometer magnetron
magnifier magnum mahlstick mail mailbag mailboat mailbox maildrop maillot mailsorter main mainframe mainmast mainsail mainsheet mainspring mainstay maiolica
maisonette maisonnette majolica makeup makeweight making malacca mall mallet mammogram manacle manakin mandala mandelamine mandola mandolin mandrel mandril
manger mangle mangonel manhole manifold manikin mannequin mannikin mannitol manometer manor manpad mansard manse mansion manta mantel mantelet mantelpiece
mantilla mantlepiece mantlet mantrap mantua manufactory maoi map maquiladora maraca marble marihuana marijuana marimba marina marineland marionette marker
market marketplace marline marlinespike marlingspike marlinspike marmite marocain maroon marplan marquee marqueterie marquetry marquise marseille mart
martingale mascara maser masher mashie masjid mask masking masonite masonry masquerade mast mastaba mastabah masterpiece masthead mat match matchboard
matchbook matchbox matchet matchlock matchstick material materiel matting mattock mattress maul maulstick mauser mausoleum mavik max maxi maxzide mayflower
maypole maze mazer mdma means mebaral mebendazole meccano mecholyl meclizine meclofenamate meclomen medicament medication medicine medline meerschaum
meetinghouse mefloquine mefoxin megalith megaphone mellaril melphalan membrane membranophone memorial menagerie mend mending menhir meniscus menorah menthol
mepacrine meperidine mephaquine mephenytoin mephobarbital meprin meprobamate merbromine mercaptopurine merchandise merchantman mercurochrome merlon merrimac
merthiolate mesantoin mescaline meshing meshwork messuage metallic metalware metalwork metalworks metaproterenol meter meterstick metformin meth methacholine
methadon methadone methamphetamine methapyrilene methaqualone metharbital methedrine methenamine methicillin methocarbamol methotrexate methyldopa
methylenedioxymethamphetamine methylphenidate metoprolol metrazol metrestick metro metronidazole metronome metycaine mevacor mews mexiletine mexitil mezzanine
mezzotint mic miconazole microbalance microbrewery microchip microcircuit microcomputer microdot microfiche microfilm micrometer micronase micronor microphone
microphotometer microprocessor microscope microtome microwave microzide midazolam middlebreaker middling middy midiron mifepristone mihrab mike mileometer
milkwagon mill milldam milliammeter millinery milling millivoltmeter millrace millrun millstone millwheel millwork milometer milontin miltown mimeo mimeograph
minaret mincer mine minelayer mineshaft minesweeper mini miniature minibar minibike minibus minicab minicar minicomputer minipress miniskirt ministry minisub
minisubmarine minivan miniver mink minocin minocycline minoxidil minster minuteman miotic mirror missile mit miter mithracin mithramycin mitomycin mitre mitt
mitten mixer mizen mizenmast mizzen mizzenmast moat moban mobcap mobile mocassin moccasin modeling modem modernism modicon modification modillion module
mohair moire moistener mold moldboard molding moleskin molindone monastery moneybag mongrel monistat monitor monochrome monocle monocycle monolith monoplane
monorail monotype monstrance montage monument mooring mop mopboard moped moquette moreen morgue morion morphia morphine mortar mortarboard mortice mortise
mortuary mosaic mosque motel mothball motif motive motley motor motorbike motorboat motorbus motorcar motorcoach motorcycle motortruck motorway motrin
mouldboard moulding moulin mound mounting mousepad mousetrap mousse mouthpiece mow mower mudguard mudhif muff muffle muffler mufti mugshot mukataa mulch mule
mullion multiplex multiplexer multiprocessor munition mural musette museum musjid musket muslin musnud mutamycin mute muumuu muzzle mycomycin mycostatin
mydriatic myelogram myotic mysoline mystification nabumetone nacelle nadolol nafcil nafcillin nail nailbrush nailfile nailhead nainsook nalfon nalline
nalorphine naloxone naltrexone nameplate nammad nankeen nap napery naphazoline napkin nappy naprosyn naproxen naqua narcan narcoleptic narcotic nard nardil
narghile nargileh narrowboat narthex nasdaq natatorium naumachia naumachy nauseant nautilus navane nave nearside nebcin nebuchadnezzar nebuliser nebulizer
neckband neckcloth neckerchief necking necklace necklet neckline neckpiece necktie neckwear needle needlecraft needlepoint needlework nefazodone negative
neggram neglige negligee nelfinavir nembutal neobiotic neolith neomycin neosporin neostigmine nephoscope nest net netting network neuroleptic neurontin
nevirapine newel newgate newmarket newspaper newsroom newsstand nib niblick nicad niche nick nickelodeon nicknack nifedipine nightcap nightclothes nightclub
nightdress nightgown nightie nightshirt nightspot nightstick nightwear nine ninepin ninon nipple niqab nitrazepam nitrofurantoin nitrospan nitrostat nnrti nog
nogging noisemaker nomogram nomograph nonsense nonsmoker nontricyclic nook noose norflex noria norinyl norlestrin normodyne nortriptyline norvasc norvir nose
nosebag noseband nosegay nosepiece nosewheel nostrum notch notebook notecase novel novelty novillada novobiocin novocain novocaine nozzle nrl nrti nsaid nude
nuke numberplate numdah nunnery nuprin nursery nut nutcracker nuthouse nydrazid nylon nylons nyse nystan nystatin oar oarlock oasis oast obelisk
objectification objective oboe observatory obstacle obstructer obstruction obstructor obturator obverse ocarina octant ocular oddity oddment odometer
oesophagoscope oeuvre office offstage ogee ogive ohmmeter oil oilcan oilcloth oiler oilrig oilskin oilstone oilstove ointment oled omnibus omnirange onager
oncovin opener openwork opera ophthalmoscope opiate opium opv oracle orbiter orchard orchestra ordnance organ organdie organdy organiser organizer organza
oriel oriflamme original orinase orlon orlop ornament ornamentation ornithopter orphanage orphenadrine orphrey orrery orthicon orthopter orthoscope orudis
oruvail oscillator oscillogram oscillograph oscilloscope osmitrol ossuary ostensorium otoscope ottoman oubliette ouija outboard outbuilding outerwear outfall
outfield outfit outfitter outhouse outlet outpost output outrigger outsole outturn outwork oven ovenware overall overburden overcast overcasting overclothes
overcoat overcoating overcrossing overdrive overgarment overhang overlap overlapping overlay overlayer overload overmantel overnighter overpass overprint
override overshoe overskirt ovocon ovolo ovral ovrette ovulen oxacillin oxaprozin oxazepam oxbow oxbridge oxcart oxeye oxford oximeter oxyphenbutazone
oxyphencyclimine oxytetracycline oxytocic pacemaker pachouli pacifier pack package packaging packet packinghouse packsack packsaddle packthread pad padding
paddle paddlewheel paddock padlock pager pagoda pail paillasse painkiller paint paintball paintbox paintbrush painter painting paisley pajama palace palaestra
palankeen palanquin pale paleolith palestra palette paling palisade pall pallet pallette palliasse palliative pallium pamelor pan panacea panache panadol
panama panatela pane panel paneling panelling panetela panetella panga panhandle pannier pannikin panopticon panorama panpipe pant pantaloon pantechnicon
pantheon pantie panting pantograph pantry pants pantsuit panty pantyhose panzer papaverine paperback paperclip paperknife paperweight parachute paramagnet
parang parapet paraphernalia parasail parasol parcel paregoric parer pargeting pargetry pargetting park parka parkway parlor parlour paroxetime parquet
parqueterie parquetry parsonage part parterre parthenon partisan partition partizan parvis paseo passage passageway passementerie passkey pastiche pasty patch
patchboard patchcord patchouli patchouly patchwork paternoster path pathway patina patio patisserie patka patten pattern pave pavement pavilion paving pavior
paviour pavis pavise pawl pawn pawnshop paxil payload pcp pda peacekeeper peacemaker peacoat peag peavey peavy pectoral peculiarity pedal pedestal pediamycin
pedicab pediment pedometer peeler peen peephole peg pegboard pegleg peignoir pel pelham pelisse pellet pelmet pelvimeter pen pencil pendant pendent pendulum
penicillamine penicillin penitentiary penknife penlight penn pennant pennon pennoncel pennoncelle pennsylvania pennywhistle penoncel penstock pentaerythritol
pentagon pentamethylenetetrazol pentazocine penthouse pentimento pentobarbital pentode pentothal pentoxifylline pentylenetetrazol pepcid peplos peplum peplus
perambulator percale perch percolator percussor perforation perfume perfumery pergola periactin peripheral periscope peristyle peritrate periwig perpendicular
perphenazine peruke pessary pesthouse pestle petard petcock petticoat pew peyote phaeton pharmaceutic pharmaceutical pharmacopoeia pharmacy pharos phenacetin
phenaphen phenazopyridine phencyclidine phenelzine phenergan pheniramine phenobarbital phenobarbitone phenolphthalein phensuximide phentolamine
phenylacetamide phenylbutazone phenylephrine phenylpropanolamine phenyltoloxamine phenytoin phial phlebogram phone phonograph photo photocathode photocell
photocoagulator photocopier photocopy photoengraving photoflash photoflood photograph photogravure photolithograph photometer photomicrograph photomontage
photomosaic photostat phrontistery physic piano pianoforte pianola pibgorn pic piccolo pickax pickaxe pickelhaube pickup picot picture piece pier pieta
piezometer pigboat pigeonhole piggery pigment pigpen pigsty pike pikestaff pilaster piling pill pillbox pillion pillory pillow pillowcase pilocarpine
pilothouse pimlico pimozide pin pinafore pinata pincer pincushion pindolol pinfold pinger pinhead pinhole pinion pinnace pinnacle pinner pinny pinpoint
pinprick pinstripe pintle pinwheel piolet pipage pipe pipefitting pipeline piperacillin piperazine piperocaine pipet pipette pipework piping pipracil pique
pirate pirogue piroxicam piscary piste pistol piston pitcher pitchfork pitfall pithead piton pitot pitprop pitsaw pivot pix pixel pizzeria placebo placidyl
placket plaid plain plait plan planchet planchette plane planer planetarium planimeter planking planner plant plantation planter plaque plaquenil plaster
plasterboard plasterwork plastique plastron plat plate platen platform plating platter plavix playback playbox playground playhouse playpen playroom playsuit
plaything plaza pleat plectron plectrum plenum plessimeter plessor plethysmograph pleximeter plexor pliers plimsoll plinth plough ploughshare plow plowshare
plug plugboard plughole plumb plumbing plume plummet plunger plush pluviometer ply plyboard plyers plywood pneumoencephalogram pneumovax poacher pob pocket
pocketbook pocketcomb pocketknife podium pointel pointer pointillism pointrel poke poker pokey poky polarimeter polariscope polaroid pole poleax poleaxe
polisher polonaise polychrome polycillin polyester polygraph polymox polymyxin polypropenonitrile pomade pomatum pommel pompon poncho pongee poniard ponstel
pontifical pontoon ponycart pool poolroom poorhouse popgun poplin popper poppet porcelain porch porkpie porringer port portable portage portal portcullis
portfolio porthole portico portiere portion portmanteau portrait positioner positive post postbag postbox postern posthole posthouse postiche postmodernism
posy pot potbelly potentiometer potholder pothook pothouse potpourri potsherd pottery pottle potty pouch pouf pouffe poultice pounder powder powderpuff
powerboat powerhouse praetorium pram pravachol pravastatin prazosin precipitator predictor prefab presbytery prescription presidio press pressing pressor
pretorium preventative preventive pricker pricket primaquine primaxin primer primidone priming primitivism primus princeton principen prinival print printer
priory prism prison privateer privine privy prize probe probenecid procaine procarbazine procardia processor prochlorperazine proctoscope procyclidine prod
product production projectile projector prolonge promenade promethazine prompter prong prop propanolol propeller propellor prophylactic propjet propoxyphene
proscenium prosom prosthesis prostigmin protection proteosome protractor protriptyline proventil prow prozac pruner pry psaltery psilocin psilocybin
psychrometer pto pub puck pullback pulley pullman pullover pulpit pump punch punchball punchboard puncher puncture pung punkah punnet punt puppet purdah
purgative purifier purinethol purl purple purse pushcart pushchair pushpin puttee putter puzzle pwr pyelogram pyjama pylon pyocyanase pyocyanin pyramid
pyridium pyrilamine pyrograph pyrometer pyroscope pyrostat pyrotechnic pyx pyxis qat quaalude quad quadrangle quadraphony quadruplicate quarrel quarry
quarterdeck quartering quarterlight quarters quarterstaff quat quay quern quill quilt quilting quinacrine quinidex quinidine quinine quinora quipu quirk quirt
quiver quoin quoit rabato rabbet raceabout racecourse racer racetrack raceway rachet rack racquet racquetball radar radial radiator radio radiogram radiograph
radiolocation radiometer radiomicrometer radiopharmaceutical radiophone radiophoto radiophotograph radiotelegraph radiotelegraphy radiotelephone radome raft
rafter rag ragbag raglan rail railcar railhead railing railroad rails railway railyard raiment raincoat rainfly rake ram ramekin ramequin ramipril ramjet
rammer ramp rampart ramrod ranch rangefinder ranitidine rapier rappee rapper rariora rarity rasp raster ratan ratch ratchet rathole rathskeller ratlin ratline
rattan rattle rattler rattrap raudixin ravehook rayon rayons razor razorblade reactor readout reamer reaper reata rebate rebato reboxetine rebozo recap
receiver receptacle recliner record recorder recording rectifier rectory redoubt reducer reef reefer reel refectory refill refinery reflectometer reflector
reformatory reformer refractometer refractory refrigerator refuge regalia regimentals regulator rein relafen relaxant release relic relievo reliquary remake
remaking remedy remicade remise remnant remote rep repeater repertory replica repository repp representation reproducer reproduction rerebrace reredos
rescriptor reseau reserpine reservoir reset residence resistor resonator respirator restaurant restorative restoril restroom resuscitator retainer reticle
reticulation reticule retort retractor retread retrenchment retrofit retrorocket retrovir revere revers reverse reversible revetement revetment revolver
rheometer rheostat rhinoscope riata rib riband ribavirin ribband ribbing ribbon ricer rickrack ricksha rickshaw ricrac riddle ride ridgepole rifadin rifampin
rifle rig rigger rigging right rightfield rigout rilievo rim rimactane ring ringlet rings ringside ringway rink ripcord ripsaw riser ritalin ritonavir ritz
rivet riveter rivetter roach road roadbed roadblock roadhouse roadside roadster roadway robaxin robe robitussin robot rocephin rockery rocket rod rodeo
roentgenogram roentgenoscope rofecoxib rogaine rohypnol roller rollerblade rolodex rom romper roneo roneograph rood roof roofing rooftree roofy rook room
roomette rooms roost rope ropewalk ropeway rophy rosary rosemaling rosette rostrum rotary rotisserie rotor rotunda rouge roughcast rouleau roulette round
roundabout roundel rounder roundhouse route router rowboat rowel rowlock royal rubbing rubefacient rucksack rudder rudderpost rudderstock ruff ruffle rug ruin
ruler rumble rummer runabout rundle rung runway rushlight russet rya sabaton saber sable sabot sabre sachet sack sackbut sackcloth sacking sacque sacristy
saddle saddleback saddlebag saddlebow saddlecloth saddlery safe safehold safety sail sailboat sailcloth sailor sailplane salade salamander saleroom salesroom
salinometer sallet salon saloon saltbox saltcellar saltire saltshaker saltworks salve salver salvinorin salwar salyut sam samisen samite samovar sampan
sampler sanatarium sanatorium sanctuary sandal sandbag sandblaster sandbox sander sandglass sandpile sandpit sandril sangraal sanitarium sap saquinavir
sarafem sarape sarcenet sarcophagus saree sari sarong sarsenet sash satchel sateen satellite satin satinet satinette sauceboat saucepan saucepot saucer sauna
sausage saw sawbuck sawhorse sawmill sawtooth sax saxhorn saxophone scabbard scaffold scaffolding scag scaler scalpel scan scanner scantling scanty scape
scapular scapulary scarecrow scarer scarf scarfpin scarp scattergun scauper scenery scheduler schematic schlock schnorchel schnorkel school schoolbag
schoolhouse schoolroom schooner scimitar scissors sclerometer sconce scooter scope scopolamine scoreboard scorper scourge scow scrabble scrambler scrap
scrapbook scraper scratcher scratchpad screed screen screening screw screwdriver screwtop scribble scriber scrim scrimshaw scriptorium scrubber scrubs scsi
scuba scuff scuffer scuffle scull scullery sculpture scum scupper scutcheon scuttle scyphus scythe seabag seal sealskin seam seaplane searchlight seascape
seat seatbelt seating seats seawall seaway secateurs secobarbital seconal secondary secretaire sectional sectral sedan sedative seedbed seeder seeker
seersucker seesaw segment segway seidel seine seismogram seismograph seizing selector sellotape selsyn selvage selvedge semaphore semblance semi semiautomatic
semiconductor semigloss semitrailer sender sennit sens sensitometer sensor separate separator sepulcher sepulchre sepulture sequenator sequence sequencer
sequin seraglio serail serape serax serge serger serigraph serpasil serpent serration sertraline server serviette servo servomechanism servosystem serzone
sess setline setoff setscrew sett settee setting settle setup seven sewer sewerage sewing sextant sgraffito shabu shack shackle shade shades shadowgraph shaft
shag shaker shako shalwar sham shambles shamisen shampoo shank shantung shanty shaper shard sharkskin sharp sharpener sharpie sharpshooter shaver shawl shawm
shay sheaf shear shears sheath sheathing shed sheepcote sheepfold sheeprun sheepshank sheepwalk sheesha sheet sheeting sheetrock shelf shell shellac shelter
shelterbelt sheraton sherd shield shielding shifter shillalah shillelagh shim shimmy shingle shinpad ship shipment shipping shipway shipwreck shipyard shirt
shirtdress shirtfront shirting shirtsleeve shirttail shirtwaist shirtwaister shisha shiv shlock shoe shoebox shoehorn shoelace shoestring shoetree shofar
shoji shoofly shook shooter shop shopfront shophar shopping shopwindow shore shoring short shortcut shorts shot shotgun shovel showboat showcase shower
showerhead showpiece showroom shrapnel shred shredder shrimper shrine shroud shunt shunter shutter shuttle shuttlecock siamese sickbag sickbay sickbed sickle
sickroom sideboard sidecar sidelight sideline sidesaddle sidetrack sidewalk sidewall sidewinder siding sieve sifter sights sigmoidoscope signboard signet
sildenafil silencer silesia silex silhouette silk silks silkscreen sill silo silverpoint silverware silverwork similitude simulacrum simulation simulator
simvastatin sinapism sinequan singlestick singlet singleton sink sinker siphon sitar six sixpack skag skate skateboard skeg skein skep sketch sketchbook
sketcher skewer ski skiagram skiagraph skibob skid skidder skidpan skiff skillet skimmer skin skirt skittle skivvies skullcap skunk skybox skyhook skylab
skylight skyrocket skysail skyscraper skywalk slab slacks slammer slapstick slasher slat slate slaughterhouse sled sledge sledgehammer sleepwear sleeve sleigh
slicer slick slicker slide slideway sling slingback slingshot slipcover slipknot slipover slipper slipstick slipway slit sloop slops slopshop slot slug sluice
sluicegate sluiceway smack smelter smeltery smithy smock smocking smokehouse smoker smokescreen smokestack smoothbore smoother snaffle snapline snapper
snapshot snare sneaker snifter snip snippet snipping snips snood snorkel snorter snowbank snowboard snowman snowmobile snowplough snowplow snowshoe snowsuit
snuff snuffbox snuffer snuffers snug snuggery soap soapbox sock socket socle soddy sofa soffit softback softball solarium sole solenoid solitaire solleret
sombrero sonar sonogram sonograph sonometer soporific sorbonne sordino sorter souk soundboard soundbox sounder soundtrack soupspoon sourdine sousaphone
soutache soutane souvenir spa spacecraft spaceship spacesuit spade spandau spandex spandrel spandril spangle spanker spanner spar spare sparker sparkler
spasmolytic spat spatula speakeasy speaker speakerphone spear spearhead spearpoint specific specs spectacle spectacles spectator spectinomycin spectrogram
spectrograph spectrometer spectrophotometer spectroscope speculum speedboat speedometer speedway spermatocide spermicide sphere spherometer sphinx
sphygmomanometer spicemill spider spigot spike spikenard spile spill spiller spillikin spillway spindle spinet spinnaker spinner spire spirogram spirograph
spirometer spit spitball spittoon splashboard splasher splat splay splice splicer splicing spliff spline splint splitsaw spode spoke spokeshave spool spoon
sporanox spork sporran sportswear spotlight spout spouter sprag spray sprayer spread spreader sprig spring springboard springer sprinkler sprit spritsail
sprocket spud sputnik spyglass spyhole squab squawker squeaker squeegee squeezer squelch squelcher squib squinch squirter ssri stabile stabiliser stabilizer
stable stabling stacks staddle stadium staff stage stagecoach staging stair staircase stairhead stairs stairway stairwell stake stall stalls stammel stamper
stanchion stand standby standee standpipe stanford stanhope staple staplegun stapler starboard starship starter statehouse stateroom statin station stator
statue statuette stave stays staysail steakhouse steamboat steamer steamroller steamship steel steelworks steelyard steeper steeple steerage stein stela stele
stem stencil stenograph stent stepladder stepper steps stereo stereophony stereoscope steriliser sterilizer stern sternpost sternwheeler stethoscope stetson
stewpan stick stickpin stilbesterol stile stiletto still stillroom stilt stimulant stinger stinker stirrer stirrup stitch stitchery stob stock stockade
stockcar stockhorn stockinet stockinette stocking stockpot stockroom stocks stockyard stoep stogie stogy stokehold stokehole stoker stole stomacher stone
stoneware stonework stool stoop stopcock stoppage stopper stopping stopple stopwatch storage store storefront storehouse storeroom storey story stoup stove
stovepipe stowage strad stradavarius straight straightaway straightedge straightener straightjacket strainer straitjacket strake strand strap strapless
strawman streamer streamliner street streetcar streetlight strengthener streptomycin streptothricin stretch stretcher strickle string stringer strip stripe
strobe stroboscope stroller strongbox stronghold strongroom strop structure strut stud studio stuff stuffing stump stupa sty stylus styptic sub subbase
subcompact subject sublimaze submarine submersible subsection substation substructure subtilin subtracter subway subwoofer succinylcholine sucralfate sudafed
sudatorium sudatory sudorific suede suit suitcase suite suiting sulamyd sulfa sulfacetamide sulfadiazine sulfamethazine sulfamethoxazole sulfamezathine
sulfanilamide sulfapyridine sulfisoxazole sulfonamide sulfonylurea sulindac sulky sulpha summerhouse sump sunblind sunblock sunbonnet sunburst sundial
sundress sundries sunglass sunglasses sunhat sunlamp sunporch sunroof sunroom sunscreen sunshade sunsuit suntrap supercharger supercomputer superficies
superhet superhighway superload superman supermarket superstructure supertanker supplejack supplement suppository suppressant suppresser suppressor surbase
surcoat surface surfboard surfboat surgery surmontil surplice surprint surrey surtout suspender suspensor suspensory suture suv swab swag swage swallowtail
swatch swathe swathing swatter sweatband sweatbox sweater sweatpants sweats sweatshirt sweatshop sweatsuit sweeper swimsuit swimwear swing swingletree switch
switchblade switchboard swivel swob sword synagogue synchro synchrocyclotron synchroflash synchromesh synchroniser synchronizer synchronoscope synchroscope
synchrotron synergist synthesiser synthesizer synthetism syphon syringe syrinx system tab tabard tabernacle tabi tabis table tablecloth tablefork tablespoon
tablet tabletop tableware tabor taboret tabour tabouret tabulator tach tacheometer tachistoscope tachograph tachometer tachymeter tack tacker tacking tackle
tadalafil taenia taffeta taffrail tag tagamet tailboard tailcoat tailfin tailgate taillight tailpiece tailpipe tailplane tailrace tails tailstock talaria
talcum talisman tallboy tallis tallith talwin tam tambocor tambour tambourine tammy tamoxifen tamp tampax tamper tampion tampon tandearil tandem tandoor
tangency tangram tank tanka tankard tanker tannery tannoy tap tapa tape tapeline taper tapestry taphouse taping tapis tappa tappet taproom tarboosh tarmac
tarmacadam tarot tarp tarpaulin tartan tasse tassel tasset tatter tatting tattoo tavern taw tawse taxi taxicab taximeter taxiway tazicef tchotchke teacart
teacup teahouse teakettle teapot tearoom teashop teaspoon technical technology teddy tee teepee teeter teeterboard teetertotter teetotum telamon telegraph
telegraphy telemeter telephone telephoto telephotograph teleprinter teleprompter telescope telethermometer teletypewriter television telex telfer telferage
telly telpher telpherage temazepam tempera temple tempra ten tenement tenia tenon tenoretic tenormin tenoroon tenpin tensimeter tensiometer tent tenter
tenterhook tepee terazosin terbinafine terminal terminus terrace terramycin terrarium terry terrycloth terylene tessella tessera tester testiere testudo
tether tetracaine tetrachlorethylene tetrachloroethylene tetracycline tetrahydrocannabinol tetraskele tetraskelion tetrode textile thalidomide thalidone thc
theater theatre theobid theodolite theophylline therapeutic theremin thermel thermistor thermocouple thermograph thermogravimeter thermohydrometer
thermojunction thermometer thermometrograph thermopile thermoregulator thermos thermostat thiabendazole thiazide thill thimble thimerosal thingamabob
thingamajig thingmabob thingmajig thingumabob thingumajig thingummy thioguanine thiopental thioridazine thiosulfil thiotepa thiothixene thole tholepin thong
thorazine thoroughfare thrasher thread threader threads three thresher threshold thriftshop throat thrombolytic throne throstle throttle throughput throughway
thruster thruway thumb thumbhole thumbnut thumbscrew thumbstall thumbtack thunder thunderer thurible thwart tiara ticker ticking tidemark tidy tie tieback
tiepin tightrope tights tile till tiller tilter timber timbrel timecard timekeeper timepiece timer timolol timpani tin tinderbox tine tinfoil tinplate tinsel
tinsnips tintack tintometer tinware tipi tipper tippet tire tirolean titfer titrator tnt toaster toastrack tobacco tobacconist toboggan tobramycin toby
tocainide tocsin toe toecap toehold tofranil toga toggle togs toilet toiletry tokamak token tolazamide tolazoline tolbooth tolbutamide tole tolectin tolinase
tollbar tollbooth tollgate tollhouse tomahawk tomb tombstone tomograph tompion toner tongs tonocard tonometer tool toolbox toolhouse toolshed tooth toothbrush
toothpaste toothpick toothpowder topcoat tope topee topgallant topi topiary topknot topmast topsail topside topv toque toradol torch tore tormenter tormentor
tornado torodal torpedo torus total totalisator totaliser totality totalizator totalizer tote totem touchscreen toupe toupee tourer tourniquet towboat towel
toweling towelling tower towline towpath towrope toy toyshop tracer tracery tracing track trackball tractor trail trailer train trainer tram tramcar tramline
trammel trampoline tramway trandate trandolapril tranquilizer tranquilliser tranquillizer transcription transducer transept transformer transistor transit
transmitter transom transparency transponder transport transportation transporter tranylcypromine trap trapeze trapping trappings trave traverse trawl trawler
tray trazodone tread treadle treadmill treadwheel treasure trebuchet trebucket treenail trefoil treillage trellis trenail trench trencher trental trepan
trephine trestle trestlework trews trey triavil triazolam tribromoethanol tribune trichlormethiazide trichloromethane triclinium tricolor tricolour tricorn
tricorne tricot tricycle tricyclic trident trifle trigger trigon triiodomethane trike trilby trim trimaran trimipramine trimmer trimming trimmings trimox
trinitrotoluene trinket triode triphammer triplicate tripod triptych trireme triskele triskelion trivet trivia triviality troika troll trolley trolleybus
trombone troopship trophy trotline trough trouser trousering trousers trousseau trowel truck truckle trump trumpery trumpet truncheon trundle trunk trunks
trunnel truss tsatske tshatshke tub tuba tube tubeless tubing tuck tudung tuffet tug tugboat tuileries tuille tulle tumbler tumbrel tumbril tumulus tun tuner
tunic tunnel tupek tupik turban turbine turbofan turbogenerator turbojet turboprop tureen turnaround turnbuckle turncock turnery turnoff turnout turnpike
turnspit turnstile turntable turnup turret turtle turtleneck tutu tux tuxedo tweed tweeter tweezer twill twine twinjet two tylenol tympan tympani tympanum
typewriter tyre tyrocidin tyrocidine tyrolean tyrothricin udometer uke ukulele ulster ultracef ultracentrifuge ultramicroscope ultrasuede umbrella unction
underbodice undercarriage undercharge underclothes underclothing undercoat undercut underdrawers underfelt underframe undergarment underground underlay
underlayment underpants underpass underseal undershirt underskirt understructure underwear undies unguent unicycle uniform unitard university unmentionable
upcast upholstery uplift upper upright upstage upstairs urceole urex urinal urn usacil utensil uzi vaccine vaccinum valance valdecoxib valenciennes valise
valium valsartan valve vambrace vamp van vancocin vancomycin vane vaporiser vaporizer vardenafil variometer varnish vase vaseline vasoconstrictive
vasoconstrictor vasodilative vasodilator vasomax vasopressor vasotec vat vatican vault vaulting vcr vdu vehicle veil veiling velban velcro velocipede
velodrome velour velours velvet velveteen veneer veneering venogram vent ventail venthole ventilation ventilator ventolin venturi veranda verandah verapamil
verdigris vermicide vermiculation vermifuge vernier veronal versailles versed verso vertical vessel vest vestibule vestiture vestment vestry vesture viaduct
viagra vial vibes vibraharp vibramycin vibraphone vibrator vicarage victrola vicuna video videocassette videodisc videodisk videotape viewer viewfinder
viewgraph vignette villa vinblastine vincristine vinery vineyard viocin viol viola violin violoncello viomycin vioxx viracept viramune virazole virginal virtu
viscometer viscose viscosimeter vise visken visor vistaril vitrine vivarium viyella vizor voider voile volary volleyball voltaren voltmeter volume volumeter
volute vomit vomitive vomitory voodoo vouge voussoir waders waft waggon wagon wain wainscot wainscoting wainscotting waist waistband waistcloth waistcoat
wakeboard wale walkman walkway wall wallboard wallet wampum wampumpeag wan wand ward wardrobe wardroom ware warehouse warfarin warhead warhorse warmer
warplane warship wash washables washbasin washboard washbowl washcloth washer washhouse washing washrag washroom washstand washtub wastebasket wastebin
wasteweir watch watchband watchstrap watchtower watercannon watercolor watercolour watercourse watercraft waterfinder waterproof waterproofing waterscape
waterskin waterspout waterway waterwheel waterworks wats wattle wattmeter waveguide waxwork ways wayside weapon weaponry wear wearable weathercock
weatherglass weatherstrip weatherstripping weathervane weave web webbing webcam wedgie wedgwood weed weeder weeds weekender weft weighbridge weight weir weld
weldment well wellhead wellington wellpoint welt whacker whaleboat whaler wharf wharfage whatchamacallit whatchamacallum whatnot whatsis wheel wheelbarrow
wheelchair wheelhouse wheelwork wherry whetstone whiffletree whip whipcord whipping whippletree whipsaw whipstitch whipstitching whirler whirligig whirlybird
whisk whistle whitewash whizbang whizzbang whopper whorehouse whorl wick wicker wickerwork wicket wickiup widening widget wiffle wifi wig wigwam wikiup
wildcat willow willowware wilton wimble wimple wincey winceyette winch winchester windbreak windbreaker windcheater winder windjammer windlass windmill window
windowpane windowsill windscreen windshield wineglass winepress winery wineskin wing winker wiper wire wireless wirework wiring withe wlan wmd wobbler wok
woodcarving woodcut woodenware woodlet woodscrew woodshed woodwind woodwork woof woofer wool woolen woollen work workbag workbasket workbench workboard
workbox workhorse workhouse working workings workpiece workplace workroom works workshop workstation worktable workwear worsted wrap wraparound wrapper
wrapping wreath wreckage wrecker wrench wringer wristband wristlet wristwatch wtc www wytensin xanax xerox xtc xylocaine xylophone yacht yagi yale yard
yardarm yarder yardstick yarmelke yarmulka yarmulke yarn yashmac yashmak yataghan yawl yield yoke yurt zalcitabine zamboni zantac zapper zarf zarontin zdv zen
zeppelin zestril zidovudine ziggurat zikkurat zikurat zill zimmer zinacef zipper zither zithern zithromax zocor zodiac zoloft zoo zori zovirax zyloprim
`.trim().split(/\s+/));
