import { usual } from './rule.ts';

export const fuel = usual('fuel', [
  ['clean the fuel tank', 'seal the fuel tank', 'sealer does not hold on rust and varnish'],
  ['test the fuel tank', 'paint the fuel tank', 'a pinhole found later spoils the paint'],
  ['seal the fuel tank', 'fuel tank', 'it is turned on all sides to coat it'],
  ['paint the fuel tank', 'fuel tank', 'its underside and straps are hidden afterwards'],
  ['fuel tap', 'fill the fuel tank', 'it would run out again'],
  ['fuel tank', 'fuel line', 'lines are bent to where it sits'],
  ['sediment bowl', 'fuel line', 'the line starts at it'],
  ['fuel line', 'fill the fuel tank', 'it would run out again'],
  ['flush the fuel line', 'carburetor', 'dirt in the line ends in the jets'],
  ['rebuild the carburetor', 'carburetor', 'bench work'],
  ['intake manifold', 'carburetor', 'it hangs on the manifold'],
  ['vaporizer', 'carburetor', 'on a two-fuel engine it hangs on the vaporizer'],
  ['governor', 'governor linkage', 'the linkage ends on it'],
  ['carburetor', 'governor linkage', 'the linkage is set between the two'],
  ['carburetor', 'choke cable', 'the cable ends on it'],
  ['carburetor', 'air cleaner hose', 'the hose ends on it'],
  ['air cleaner', 'air cleaner hose', 'the hose starts at it'],
  ['fill the air cleaner', 'start the engine', 'an oil-bath cleaner without oil lets dust through'],
  ['governor linkage', 'start the engine', 'without it the engine runs away'],
  ['fill the fuel tank', 'start the engine', 'fuel comes after the oil pressure has been seen'],
]);
