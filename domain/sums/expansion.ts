/**
 * Mean expansion near room temperature, millionths per °F.
 * Source: gray iron, bronze and aluminium of two printed tables and Callister table B.6; 4140 of the same (6.2); plain steel, stainless and brass from memory.
 */
interface Expansion {
  name: string;
  perF: number;
  range: string;
}

const MATERIALS: readonly (Expansion & { words: RegExp })[] = [
  { name: 'stainless steel', perF: 9.6, range: '9.6 for 304; 400-series is 5.7', words: /stainless|\b304\b|\b316\b|inox/ },
  { name: 'cast iron', perF: 6, range: '6.0', words: /cast.?iron|gr[ae]y.?iron|\biron\b|ductile|meehanite/ },
  { name: 'bronze', perF: 10, range: '9.8 to 10.0', words: /bronze|gun.?metal|bushing metal/ },
  { name: 'brass', perF: 10.4, range: '10.4 to 11', words: /brass/ },
  { name: 'copper', perF: 9.4, range: '9.2 to 9.4', words: /copper/ },
  { name: 'cast aluminium', perF: 11.9, range: '11.9 for 356 castings', words: /cast.?alumin|\b356\b|alumin\w* cast|pot alumin/ },
  { name: 'aluminium', perF: 12.9, range: '12.6 to 13.1 wrought', words: /alumin|alloy/ },
  { name: '4140 steel', perF: 6.2, range: '6.2', words: /4140|chrome.?moly/ },
  { name: 'steel', perF: 6.5, range: '6.3 to 6.5', words: /steel|ring gear|\bgear\b|bearing/ },
];

export const MATERIAL_CHOICES: readonly string[] = ['steel', 'cast iron', 'bronze', 'brass', 'aluminium', 'stainless'];

export const findMaterial = (text: string): Expansion | undefined => MATERIALS.find((each) => each.words.test(text.toLowerCase()));
