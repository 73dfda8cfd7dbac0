import { readFileSync, readdirSync } from 'node:fs';
import { readNote } from './nlp/read.ts';
for(const f of readdirSync('fixtures/notes/learned')) { if(!/^[q-x]/.test(f)) continue; for(const l of readFileSync('fixtures/notes/learned/'+f,'utf8').split('\n')) { if(!l.trim()) continue; const x=JSON.parse(l); if(!x.known?.parts?.length) continue; const r=readNote(x.text,{at:x.at,machines:x.known.machines??[],parts:x.known.parts,prior:x.prior}) as any; for(const t of r.trace) if(t.stage==='mend') console.log([x.id,t.rule,t.text,t.gave].join('\t')); } }
