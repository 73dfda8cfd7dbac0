import { usual } from './rule.ts';

export const steering = usual('steering', [
  ['king pin bushing', 'king pin', 'the pin runs in it'],
  ['ream the king pin bushing', 'king pin', 'a pressed bushing has closed and must be sized to the pin'],
  ['front axle', 'king pin', 'the pin goes through its end'],
  ['king pin', 'spindle', 'the spindle turns on it'],
  ['spindle', 'steering arm', 'the arm is keyed to the spindle'],
  ['steering arm', 'tie rod', 'the rod ends hang on the arms'],
  ['steering box', 'steering column', 'the column stands on the box'],
  ['steering box', 'pitman arm', 'the arm sits on its cross-shaft'],
  ['shim the steering box', 'steering column', 'end play is felt without the weight of the column'],
  ['pitman arm', 'drag link', 'the link hangs on it'],
  ['center the steering box', 'drag link', 'the link is set to length with the box in the middle of its travel'],
  ['tie rod', 'set the toe-in', 'toe-in is set with it'],
  ['drag link', 'set the toe-in', 'wheels must point where the wheel says'],
  ['front wheel', 'set the toe-in', 'it is measured between the rims'],
  ['adjust the wheel bearing', 'set the toe-in', 'play in the hubs falsifies the measure'],
  ['steering column', 'dash', 'the column comes up through it'],
  ['steering column', 'steering wheel', 'the wheel sits on its shaft'],
  ['seal the steering box', 'fill the steering box', 'it would leak at once'],
]);
