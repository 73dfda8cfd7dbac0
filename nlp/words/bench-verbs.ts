/** Verbs of work on a part that the first list of verbs leaves out: measuring up, joining, coating, cutting, cleaning, rope and canvas. Base forms. */
export const BENCH_VERBS = `
scarf sister dutchman gusset hardface slacken calibrate decant desludge dilute dope electroplate emboss equalise equalize halve heat-treat reinflate inject insulate joggle limber mitre moor mortise neutralise neutralize notch offset pad pare parkerise parkerize paste
pop-rivet pressurise pressurize prick-punch quench realign re-align align rearrange rebuff recentre recenter reclamp refloat relap relube remill repin replumb resew respoke restrap restring retooth retrim retrue revarnish rewax rewrap roughen sandpaper shrink-fit silver-solder sponge
spot-weld squeegee stamp staple stitch-weld strengthen stud swab tack-weld tamp tarp vent vulcanise vulcanize waterproof whet whittle acid-dip acid-etch hot-dip airbrush plug-weld decarbonize demagnetise demagnetize jet-wash jetwash sluice sweep blow-dry air-dry
hand-paint handpaint seal-coat rust-proof rustproof underseal waxoil reglue clench clinch rabbet dowel shiplap steam-clean parts-wash reharden case-harden shot-peen magnaflux crack-test flow-test bench-test spark-test load-test spin-balance flame-cut gas-cut plasma-cut slot broach
whip resplice rehem hem re-cane recane reweb re-cover recork releather retread remetal re-metal respring repack repaper regasket recrown re-tooth redish retemper reforge forge reseal rebrush re-brush rewick rehone re-hone trammel caulk recaulk pitch creosote limewash whitewash
`;
