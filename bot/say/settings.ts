import type { Topic } from '../../nlp/settings/reminders.ts';
import type { Chosen, Setting } from '../turn/settings.ts';
import { rounded } from '../weather/provider.ts';
import { moment, type UnaskedSaying } from './unasked.ts';
import { listed, money } from './words.ts';

const TOPIC: Record<Topic, string> = {
  morning: 'the morning word', rain: 'rain on its way', recheck: 'rechecks that are due', late: 'late orders', cured: 'cures that are over', back: 'parts due back', help: 'help coming', temporary: 'what is only temporary',
};
const degrees = (n: number, plus: string, minus: string): string => `${Math.abs(n)}° ${n < 0 ? minus : plus}`;

/** A setting read back in one line. */
export function saySetting(s: Setting, chosen: Chosen): string {
  switch (s.set) {
    case 'morning': return chosen.morning ? `Morning word at ${chosen.morning}.` : 'No morning word from now on.';
    case 'quiet': return 'from' in s ? `Quiet from ${s.from} to ${s.to}.` : 'No quiet hours: I may speak at any hour.';
    case 'topic': return s.topic === 'all' ? (s.on ? 'I will speak up again.' : 'I will say nothing unasked.') : s.on ? `I will speak of ${TOPIC[s.topic]}.` : `I won't speak of ${TOPIC[s.topic]} unasked.`;
    case 'about': return s.on ? `I will speak of the ${s.name} again.` : `I won't speak of the ${s.name} unasked; "remind me about the ${s.name} again" brings it back.`;
    case 'place': {
      const { latitude, longitude } = rounded(s);
      const use = chosen.fetches ? 'the forecast is fetched for it, and nothing finer leaves this computer' : 'used for daylight; nothing is fetched unless you say "fetch the forecast"';
      return `The shop is at ${degrees(latitude, 'north', 'south')}, ${degrees(longitude, 'east', 'west')}: ${use}.`;
    }
    case 'forecast':
      if (!s.on) return 'No forecast is fetched from now on.';
      return chosen.placed ? 'The forecast is fetched from now on; only the place, to about a kilometre, leaves this computer.' : 'I will fetch the forecast once I know where: say "we\'re at 52.35, -7.70" with your own figures.';
    case 'mile rate': return s.rate ? `A mile counts as ${money(s.rate)}.` : 'Miles cost nothing.';
  }
}

export const sayPutOff = (until: number, saying: UnaskedSaying): string => `Put off until ${moment(until, saying)}.`;

export function sayStopped(topics: readonly Topic[]): string {
  if (topics.length === 1 && topics[0] === 'morning') return 'No morning word from now on; "morning word at seven" brings it back.';
  return `I won't say that again${topics.length > 1 ? `: ${listed([...new Set(topics)].map(t => TOPIC[t]))}` : ''}. To end all of a kind, say "no rain warnings" or "no reminders".`;
}
