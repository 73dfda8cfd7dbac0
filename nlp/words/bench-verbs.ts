/** Verbs of work on a part that the first list of verbs leaves out: measuring up, joining, coating, cutting, cleaning, rope and canvas. Base forms. */
export const BENCH_VERBS = `
scarf sister dutchman gusset hardface slacken calibrate decant desludge dilute dope electroplate emboss equalise equalize halve heat-treat reinflate inject insulate joggle limber mitre moor mortise neutralise neutralize notch offset pad pare parkerise parkerize paste
pop-rivet pressurise pressurize prick-punch quench realign re-align align rearrange rebuff recentre recenter reclamp refloat relap relube remill repin replumb resew respoke restrap restring retooth retrim retrue revarnish rewax rewrap roughen sandpaper shrink-fit silver-solder sponge
spot-weld squeegee stamp staple stitch-weld strengthen stud swab tack-weld tamp tarp vent vulcanise vulcanize waterproof whet whittle acid-dip acid-etch hot-dip airbrush plug-weld decarbonize demagnetise demagnetize jet-wash jetwash sluice sweep blow-dry air-dry
hand-paint handpaint seal-coat rust-proof rustproof underseal waxoil reglue clench clinch rabbet dowel shiplap steam-clean parts-wash reharden case-harden shot-peen magnaflux crack-test flow-test bench-test spark-test load-test spin-balance flame-cut gas-cut plasma-cut slot broach
whip resplice rehem hem re-cane recane reweb re-cover recork releather retread remetal re-metal respring repack repaper regasket recrown re-tooth redish retemper reforge forge reseal rebrush re-brush rewick rehone re-hone trammel caulk recaulk pitch creosote limewash whitewash
rough releather re-leather shot-blast grit-blast bead-blast aquablast vapour-blast wet-sand flat-back guillotine planish descale de-scale de-rust scabble power-wash passivate phosphate
adze refill regrease normalise normalize desolder unsolder heat-shrink meg megger run-in hand-scrape centre-pop centre-punch center-punch counterbore spotface deglaze screwcut screw-cut draw-file emery demask sign-write signwrite pinstripe gild
anodise anodize darn re-stuff plumb modify alter adapt warm freeze backflush back-flush build-up metal-spray metallise re-face renovate jury-rig re-jet rejet re-needle re-ring shim unjam de-coke hand-lap line-ream jack-straighten wash-down
`;

/** Work named by a word that is a part or a stuff by itself ("the band", "epoxy"): only what was done is read as its verb. Past form and base. */
export const DONE_NOUNS = `
blued blue|flatted flat|bleached bleach|lagged lag|banded band|clad clad|blanked blank|crated crate|leathered leather|flanged flange|belled bell|dimpled dimple|needled needle|inserted insert|keywayed keyway|radiused radius|stoppered stopper|knifed knife|puttied putty|glazed glaze|epoxied epoxy|epoxyed epoxy|fibreglassed fibreglass|fiberglassed fiberglass
thatched thatch|felted felt|folded fold|levelled level|leveled level|fishplated fishplate|trussed truss|babbitted babbitt|rebabbitted rebabbitt|white-metalled white-metal|doctored doctor|focused focus|focussed focus|aimed aim|dosed dose|flared flare|sheeted sheet|capped cap|wrapped wrap|splinted splint|boarded board|planked plank|tinned tin|leaded lead|corked cork|hooped hoop|spoked spoke
`;
