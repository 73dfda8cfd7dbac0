/** Parts of which a machine has one as a rule: "radiators weeping" is "the radiator's weeping". Common practice, no source. */
export const SINGLE = new Set(`radiator bonnet hood carburettor carburetor carb magneto mag dynamo generator alternator starter distributor engine motor block sump gearbox
  flywheel crankshaft camshaft crank governor manifold thermostat seat battery coil drawbar exhaust silencer muffler clutch dashboard dash differential diff condenser
  fan tank tray reel plunger sickle feederhouse cab`.split(/\s+/));
