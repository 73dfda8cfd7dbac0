/** What can be said, in the fewest words that show the shape of it. */
export const HELP = [
  'Say what you did, found, measured, need, ordered or put somewhere, as you would to a mate:',
  '"radiator\'s off, it\'s on the shelf by the lathe", "need two hub bearings", "head torqued to 65 foot-pounds, retorque after 2 hours".',
  'Ask: "what\'s holding up the radiator", "what do I still need to buy", "what\'s next", "where did I put the steering arms",',
  '"how many shims were under the left arm", "what\'s only temporary", "what\'s due", "what have I spent".',
  'I speak up by myself too: "morning word at half six", "quiet from nine to seven", "no reminders". For the weather: "we\'re at 52.35, -7.70", "fetch the forecast".',
  '"Scratch that" strikes the last note; "no, six of them" puts it right; "switch to the saw bench" changes the machine.',
].join('\n');
