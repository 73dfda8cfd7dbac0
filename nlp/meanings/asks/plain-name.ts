import { nameKey } from '../../../domain/model/names.ts';
import type { KnownNames } from '../../dimensions/part/known.ts';

const FEELING = /^(?:wee|bloody|damn|damned|wretched|blasted|ruddy|flaming|flipping|stupid|silly|such|cursed|confounded) (?=[a-z])/;
const LOOKS = /^(?:little|big|small|wee|large|long|short|brass|bronze|oak|steel|iron|cast|rubber|copper|wooden|rusty|nice|fancy|bloody|damn|damned|wretched|good|cheapest|best|blasted|tiny|whole|ruddy|red|green|blue|black|blue|grey|gray|yellow|white)$/;
/** "the little brass lubricator" where the shop has one "lubricator": words of looks and stuff do not make it another part. Other names lose only "best" and what is felt of them. */
export function plainName(said: string, known: KnownNames): string {
  const words = said.replace(/^(?:cheapest|best) /, '').replace(FEELING, '').split(' ');
  for (let k = 1; k < words.length && LOOKS.test(words[k - 1]!); k++) {
    const hit = known.exact(nameKey(words.slice(k).join(' ')));
    if (hit) return hit.toLowerCase();
  }
  return words.join(' ');
}
