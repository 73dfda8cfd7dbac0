import { usual } from './rule.ts';

export const cooling = usual('cooling', [
  ['flush the block', 'water pump', 'scale loosened later would run through the new seal'],
  ['flush the block', 'radiator', 'loosened scale would lodge in the clean core'],
  ['flush the radiator', 'radiator', 'both ways are easy to flush on the bench'],
  ['test the radiator', 'radiator', 'a leak found on the bench needs no second draining'],
  ['water pump', 'fan', 'the fan hangs on the pump shaft'],
  ['water pump', 'radiator', 'the pump bolts are out of reach behind the core'],
  ['fan', 'radiator', 'no room to bring the fan in behind the core'],
  ['fan shroud', 'radiator', 'the shroud does not pass between fan and core'],
  ['radiator support', 'radiator', 'the core must stand on its mounts without strain'],
  ['paint the radiator support', 'radiator', 'it is hidden once the core stands'],
  ['thermostat', 'thermostat housing', 'it sits under the housing'],
  ['thermostat housing', 'radiator hose', 'the top hose ends on it'],
  ['radiator', 'radiator hose', 'hoses are cut and clamped to where the core stands'],
  ['radiator hose', 'fill the radiator', 'it would run out again'],
  ['drain cock', 'fill the radiator', 'it would run out again'],
  ['temperature gauge', 'fill the radiator', 'its bulb closes a hole in the water jacket'],
  ['fill the radiator', 'start the engine', 'a dry head cracks within minutes'],
]);
