import { table } from './table.ts';

/** How a fast thumb writes: the word meant, for reading; what was typed is kept. */
export const SHORTHAND: Readonly<Record<string, string>> = Object.assign(Object.create(null), {
  b4: 'before', w: 'with', thru: 'through', tmrw: 'tomorrow', tmr: 'tomorrow', tomoz: 'tomorrow', tomorow: 'tomorrow', tommorow: 'tomorrow', tonite: 'tonight', nite: 'night', yest: 'yesterday', yday: 'yesterday',
  fri: 'friday', thurs: 'thursday', tues: 'tuesday', weds: 'wednesday', wk: 'week', wks: 'weeks', wkend: 'weekend', hr: 'hour', hrs: 'hours', mins: 'minutes', mo: 'month', mos: 'months', yr: 'year', yrs: 'years', gona: 'going', frm: 'from', ordrd: 'ordered', orderd: 'ordered', shd: 'should', wd: 'would', wat: 'what', hw: 'how', bk: 'back',
  brg: 'bearing', brgs: 'bearings', whl: 'wheel', whls: 'wheels', cyl: 'cylinder', cyls: 'cylinders', assy: 'assembly', ea: 'each', soz: 'sorry', rt: 'right', lft: 'left', nxt: 'next', prob: 'probably', abt: 'about', cuz: 'because', coz: 'because', bc: 'because', u: 'you', ur: 'your', pls: 'please', plz: 'please',
  chk: 'check', chkd: 'checked', agn: 'again', fwd: 'forward', rdy: 'ready', gskt: 'gasket', gskts: 'gaskets', elev: 'elevator', instld: 'installed', clnd: 'cleaned', grsd: 'greased', pntd: 'painted', til: 'till', dia: 'diameter', retq: 'retorque', retorq: 'retorque', tq: 'torque', torq: 'torque', torqed: 'torqued', torqd: 'torqued', approx: 'about', lites: 'lights', lite: 'light', hyd: 'hydraulic', alt: 'alternator', gen: 'generator', dizzy: 'distributor', eng: 'engine', xmission: 'transmission', trans: 'transmission', mani: 'manifold', thermo: 'thermostat',
  batt: 'battery', batts: 'batteries', frt: 'freight', frght: 'freight', shpg: 'shipping', shpng: 'shipping', clrnce: 'clearance', clrnc: 'clearance', clrance: 'clearance', gd: 'good', shft: 'shaft', shfts: 'shafts', jt: 'joint', jts: 'joints', brkt: 'bracket', brkts: 'brackets', blt: 'bolt', blts: 'bolts', mtr: 'motor', ctr: 'centre', btm: 'bottom', lwr: 'lower', upr: 'upper', frnt: 'front', pkg: 'package', qty: 'quantity', dmgd: 'damaged', msrd: 'measured', msd: 'measured', tmp: 'temporary', bn: 'been', bfr: 'before', aftr: 'after', sumthin: 'something', nthn: 'nothing',
  // today's and tomorrow's own forms are words that begin with a figure and are cut by the tokenizer: see `figures` in shorthand reading
});

/** Figures that stand for words: "2day", "2mrw", "2nite". */
export const FIGURED: Readonly<Record<string, string>> = table({ '2day': 'today', '2mrw': 'tomorrow', '2moro': 'tomorrow', '2nite': 'tonight', '2night': 'tonight', '2moz': 'tomorrow' });

/** Sides written in letters: which corner, or which hand. */
export const SIDED: Readonly<Record<string, readonly string[]>> = Object.assign(Object.create(null), {
  lf: ['left', 'front'], rf: ['right', 'front'], lr: ['left', 'rear'], rr: ['right', 'rear'], lh: ['left'], rh: ['right'], lhs: ['left'], rhs: ['right'],
});

/** How some regions say a common word: the word meant. */
export const REGIONAL: Readonly<Record<string, string>> = Object.assign(Object.create(null), {
  aff: 'off', oot: 'out', heid: 'head', heids: 'heads', oul: 'old', ould: 'old', doon: 'down', aboot: 'about', roon: 'round', richt: 'right', nicht: 'night', ane: 'one', twa: 'two', efter: 'after', afore: 'before', auld: 'old', snaw: 'snow', whaur: 'where', wha: 'who', haudin: 'holding', hauds: 'holds', haud: 'hold', isnae: "isn't", wasnae: "wasn't", didnae: "didn't", cannae: "can't", willnae: "won't", dinnae: "don't", daein: 'doing',
  oors: 'hours', t: 'the', 'th': 'the', gie: 'give', gied: 'gave', tak: 'take', taen: 'taken', mak: 'make', wi: 'with', frae: 'from', yin: 'one', wheesht: 'quiet', upon: 'on', whilst: 'while', ye: 'you', yer: 'your', yiz: 'you', youse: 'you', thon: 'that', yon: 'that',
});
