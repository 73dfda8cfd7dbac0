/**
 * Words of the trade that a general recogniser seldom hears right: they are rare in print, or an everyday word sounds like
 * them. Used for what a doubtful word may have been, never as a list of what may be said. Base forms; plurals are made.
 * Common practice, no source: the words of engine, axle, implement, foundry, paint and workshop talk.
 */
const ENGINE = `accelerator armature babbitt bearing block bore breather camshaft carb carburetor choke coil collet combustion commutator
compression condenser conrod coolant cowl cowling crankcase crankpin crankshaft crosshead cylinder dipstick distributor dynamo exhaust
filler flange flywheel fuel gasket generator governor gudgeon head header hopper idler igniter impeller injector intake jet journal
kerosene lifter liner lubricator magneto mainshaft manifold muffler nozzle oiler paraffin petcock petrol pinion piston plunger points poppet
primer pulley pump radiator regulator ring rocker rotor seal seat shim sleeve solenoid spark sparkplug spindle starter strainer
stud sump tappet thermostat throttle timing turbine valve vane vaporizer venturi water`;

const RUNNING_GEAR = `arbor axle backlash ball bellcrank belt bevel bogie bracket brake bull bush bushing cam carrier castor chain chassis clutch
cog cotter coupling crown differential dog drawbar driveline drum fender final fork frame gearbox grouser guide half-shaft halfshaft
headlamp hitch hub jackshaft kingpin knuckle lever linkage lining lug master mudguard outrigger pawl pedal pintle pivot planetary quadrant
race rack ratchet reducer rim roller rope running selector shaft sheave shoe shackle shroud slave spider spline spring sprocket steering
straddle strut swivel tensioner thrust tie-rod track trackrod trunnion tyre undercarriage wheel winch worm yoke`;

const IMPLEMENT = `apron auger baler beater binder blade bolster canvas colter concave coulter cutter cutterbar digger disc discs drawbar
elevator feeder fingers flail grain harrow hopper knife knotter ledger ledgerplate mast mouldboard mower pitman planter platform
plough plow press rake reaper reel seed shaker share sheller sickle sieve skid spout spreader sprayer stave sweep swather tailboard tedder
thresher threshing tine treadle tub vineyard windlass windmill`;

const JOINING = `anneal annealed anvil babbitted banjo bellows blind bolt brad braze brazed brazing bronze burr bung cap capscrew castle casting chamfer
circlip clamp clevis coarse copper countersink crimp dowel drill emery enamel epoxy eyebolt ferrule file filler fillet fitting flare flux forge
foundry galvanized gland grommet gusset hacksaw hone honed hose insert jig jubilee keyway key knurl lacing lag lap lapped lathe
leather leathers machinist mandrel mandril micrometer mill millwright nipple nut o-ring oakum olive packing peen
pickle pin pipe plate plug punch ream reamed reamer rivet rod rubber sandblast screw scribe setscrew shellac
solder spanner spot-weld staple stub tack tailstock headstock faceplate tap taper tapered template tempered thread threaded thrust tin
torch torque vice vise washer weld welded welder weldment wedge wire woodruff wrench zerk`;

const STATES = `bent broken chafed chewed clogged corroded cracked crazed dented fatigued flattened fouled frayed galled glazed gummed honeycombed kinked
leaking loose missing pitted punky ragged rotted rotten rusted rusty scored seized shot slack slotted sloppy snapped split stripped stuck
sheared tacky tight tired twisted varnished wallowed warped weathered wobble worn`;

const WORK = `adjust assemble bleed blast bolted chase clean cleaned degrease degreased dismantle drain drained dress drop fabricate fettle fit fitted
flush flushed gap gapped grease greased grind grinding ground gutted hang hung install loosen lubricate mask masked measure mount mounted mocked
oil oiled overhaul paint painted patch patched polish pour poured press pressed prime primed pull pulled rebore rebuild rebuilt reface rehang
remove replace reseat retorque rewind rewire rewound sand sanded scrape scraped seal sealed shimmed soak soaked splice straighten straightened
strip tighten tightened topcoat torqued trim true turned undercoat unmask unmasked weigh`;

const SUPPLY = `carriage casting chandlery co-op consumable dealer foundry invoice linseed machinist merchant mothball penetrating quart quid salvage sawyer
scrapyard shipping solvent supplier thinner thinners turpentine upholsterer varnish waybill yard`;

const MEASURES = `backlash clearance clearances coarse crown diameter drop eighth eighths foot-pound foot-pounds gauge grade halves inch inches interference
 millimetre millimeter newton pitch pound pounds preload pressure quarter quarters radius runout sag sixteenth sixteenths
 thou thous thousandth thousandths thirty-second torque travel volt volts`;

const words = (list: string) => list.split(/\s+/).filter(Boolean);

/** Every word once, in the order above. */
export const TRADE_WORDS: readonly string[] = [
 ...new Set([ENGINE, RUNNING_GEAR, IMPLEMENT, JOINING, STATES, WORK, SUPPLY, MEASURES].flatMap(words)),
];
