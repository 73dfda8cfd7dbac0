/**
 * Contractions as they are typed in a hurry or heard without their apostrophe. A string is the same word put right; a pair is two words
 * in one, cut after `head` letters. Left out are those that are also plain words ("well", "were", "shell", "wed", "its").
 */
export const CONTRACTED: Record<string, string | { head: number; lows: [string, string] }> = Object.assign(Object.create(null), {
  dont: "don't", doesnt: "doesn't", didnt: "didn't", isnt: "isn't", arent: "aren't", wasnt: "wasn't", werent: "weren't", wont: "won't",
  wouldnt: "wouldn't", couldnt: "couldn't", shouldnt: "shouldn't", cant: "can't", hasnt: "hasn't", havent: "haven't", hadnt: "hadn't",
  shant: "shan't", aint: "ain't", mustnt: "mustn't", neednt: "needn't", cannot: "can't",
  em: 'them', "'em": 'them', ya: 'you',
  ...Object.fromEntries([
    ['that', 's'], ['what', 's'], ['where', 's'], ['how', 's'], ['who', 's'], ['when', 's'], ['he', 's'], ['she', 's'], ['there', 's'],
    ['here', 's'], ['they', 're'], ['you', 're'], ['i', 've'], ['they', 've'], ['you', 've'], ['we', 've'],
    ['they', 'll'], ['you', 'll'], ['that', 'll'], ['it', 'll'], ['he', 'd'], ['they', 'd'], ['itd', ''],
  ].filter(([, tail]) => tail).map(([head, tail]) => [`${head}${tail}`, { head: head!.length, lows: [head!, `'${tail}`] }])),
  im: { head: 1, lows: ['i', "'m"] },
  itll: { head: 2, lows: ['it', "'ll"] },
  whered: { head: 5, lows: ['where', "'d"] },
  howd: { head: 3, lows: ['how', "'d"] },
  gotta: { head: 3, lows: ['got', 'to'] },
  gonna: { head: 3, lows: ['going', 'to'] },
  wanna: { head: 3, lows: ['want', 'to'] },
  hafta: { head: 3, lows: ['have', 'to'] },
});
