import { type AskCorpus, same } from './phrase.ts';

export const WAS_HOW_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'wasHow', part: 'roller shaft', what: 'washers' }, ['How many washers had the roller shaft?', 'how was it with the roller shaft, how many washers', 'the washers, how many were there on the roller shaft', 'How many washers did he have on the roller shaft?']),
    ...same({ kind: 'wasHow', part: 'reel arms', what: 'spacing' }, ["what'd the reel arms have for spacing before", 'how were the reel arms spaced before I took them off', 'what did the reel arm spacing come to before I shifted it'.replace('reel arm', 'reel arms')]),
    ...same({ kind: 'wasHow', part: 'fingers', what: 'gap' }, ['what did I gap the fingers at when it was apart', 'Any chance I wrote down the original gap on the fingers?']),
    ...same({ kind: 'wasHow', part: 'gland nut', what: 'torque' }, ['Which was it I had the gland nut torqued to, before?']),
    ...same({ kind: 'wasHow', part: 'thrust washers', what: 'thickness' }, ['how thick were the thrust washers before I pulled them']),
    ...same({ kind: 'wasHow', part: 'hoist rope', what: 'length' }, ['how long was the hoist rope before I cut it']),
    { text: 'How was the ratchet lever facing, and do you have a picture of it?', asks: [{ kind: 'wasHow', part: 'ratchet lever' }, { kind: 'picture', part: 'ratchet lever' }] },
    { text: 'how many shims were behind the pinion and which way was the thrust plate facing', asks: [{ kind: 'wasHow', part: 'pinion', what: 'shims' }, { kind: 'wasHow', part: 'thrust plate', what: 'which way' }] },
    { text: 'how did the chain run before I took it down, over or under the idler?', asks: [{ kind: 'wasHow', part: 'chain', what: 'over or under idler' }] },
    { text: 'How were the drain cocks piped before I stripped them?', asks: [{ kind: 'wasHow', part: 'drain cocks', what: 'piped' }] },
    { text: 'How was the latch spring set before, how many turns?', asks: [{ kind: 'wasHow', part: 'latch spring', what: 'turns' }] },
    { text: 'What was the toe in before I had the track rods off?', asks: [{ kind: 'wasHow', part: 'track rods', what: 'toe in' }] },
    { text: 'What was the order of the washers on the idler shaft before I had it apart?', asks: [{ kind: 'wasHow', part: 'idler shaft', what: 'order of the washers' }] },
    { text: 'how many rubbers did the tank sit on when I pulled it', asks: [{ kind: 'wasHow', part: 'tank', what: 'rubbers' }] },
    { text: 'What shims were behind the pinion when I stripped it?', asks: [{ kind: 'wasHow', part: 'pinion', what: 'shims' }] },
    { text: 'What end play did the crank have to begin with?', asks: [{ kind: 'wasHow', part: 'crank', what: 'end play' }] },
    { text: 'what was the gap on the points before I touched them where are the pulsator springs', asks: [{ kind: 'wasHow', part: 'points', what: 'gap' }, { kind: 'where', part: 'pulsator springs' }] },
    { text: 'Battery bank, sixteen cells. What was the voltage on the bank before I took it down?', asks: [{ kind: 'wasHow', part: 'battery bank', what: 'voltage' }] },
    ...same({ kind: 'wasHow', part: 'carrier bearing', what: 'shims' }, [
      'how many shims were behind the carrier bearing', 'How many shims did the carrier bearing have?', 'how many shims under the carrier bearing when it came apart',
      'remind me how many shims there were behind the carrier bearing', 'How many shims came out from behind the carrier bearing?', 'what was the shim count on the carrier bearing',
      'How many shims did I take out from behind the carrier bearing', 'how many shims was on the carrier bearing originally', 'I forget how many shims were under the carrier bearing',
      'How many shims had I behind the carrier bearing before?',
    ]),
    ...same({ kind: 'wasHow', part: 'crown wheel', what: 'backlash' }, [
      'What was the backlash on the crown wheel before I pulled it?', 'what backlash did the crown wheel have', 'what backlash was on the crown wheel', 'tell me what the backlash was on the crown wheel',
      'what was the original backlash on the crown wheel', 'What was the crown wheel backlash before it came out?', 'What backlash did I measure on the crown wheel when it came apart', 'what was the backlash at the crown wheel as found',
    ]),
    ...same({ kind: 'wasHow', part: 'fan blades', what: 'which way round' }, ['Which way round did the fan blades go?', 'which way round were the fan blades', 'what way round do the fan blades go']),
    ...same({ kind: 'wasHow', part: 'thermostat', what: 'which way up' }, ['which way up was the thermostat', 'Which way up does the thermostat go?']),
    ...same({ kind: 'wasHow', part: 'vane spring', what: 'hole' }, ['which hole was the vane spring in', 'what hole was the vane spring hooked in', 'Which hole did the vane spring go in?']),
    ...same({ kind: 'wasHow', part: 'points', what: 'gap' }, ['what were the points gapped at', 'what gap did the points have', 'What was the gap on the points before I stripped it?']),
    ...same({ kind: 'wasHow', part: 'throttle linkage' }, ['how did the throttle linkage go', 'How was the throttle linkage fitted?', 'remind me how the throttle linkage was', 'how was the throttle linkage set before', 'how did the throttle linkage come apart']),
    ...same({ kind: 'wasHow', part: 'head', what: 'torque' }, ['what was the head torqued to before', 'what torque was on the head when it came apart']),
  ],
  never: [
    'There were three shims behind the carrier bearing.', 'How many hours are on it I could not say.', 'what a day', 'That is how it was when I got it.', 'Before it came apart the belt was crossed.',
  ],
};
