import { alike, type DimCorpus, read } from '../corpus.ts';

export const THREAD_CORPUS: DimCorpus<'thread'> = {
  dim: 'thread',
  reads: [
    ...alike<'thread'>({ size: '5/8-11', series: 'coarse' }, ['5/8-11', 'five-eighths eleven', 'five eighths coarse', '5/8 coarse', '5/8 UNC', '5/8-11 UNC', 'five eighths inch coarse', '5-8ths coarse', '5/8" coarse', '5/8 11']),
    ...alike<'thread'>({ size: '3/4-16', series: 'fine' }, ['three quarter fine', '3/4-16', '3/4 fine', 'three-quarter inch fine', '3/4 UNF', '3/4" fine']),
    ...alike<'thread'>({ size: '1/2-13', series: 'coarse' }, ['half inch coarse', 'half-inch coarse', '1/2-13', 'half thirteen', '1/2 inch coarse', '1/2 x 13']),
    ...alike<'thread'>({ size: 'M12x1.75', series: 'coarse' }, ['M12x1.75', 'M12 by one seventy-five', 'M12 by 1.75', 'M12 x 1.75', 'm12 coarse', 'M 12 by one point seven five', 'M12×1.75']),
    ...read<'thread'>([
      ['quarter-twenty', { size: '1/4-20' }], ['1/4-28', { size: '1/4-28', series: 'fine' }], ['5/16 coarse', { size: '5/16-18' }], ['seven sixteenths fine', { size: '7/16-20' }], ['an inch coarse', { size: '1-8' }], ['an inch and a quarter coarse', { size: '1-1/4-7' }], ['1-1/4-7', { size: '1-1/4-7' }],
      ['10-24', { size: '10-24', series: 'coarse' }], ['ten thirty-two', { size: '10-32' }], ['#8-32', { size: '8-32' }], ['number ten fine', { size: '10-32' }], ['6-32', { size: '6-32' }], ['half inch Whitworth', { size: '1/2-12' }], ['3/8 BSF', { size: '3/8-20' }], ['5/16 BSW', { size: '5/16-18' }],
      ['M16', { size: 'M16' }], ['M8x1.25', { size: 'M8x1.25' }], ['M10 fine', { size: 'M10x1.25', series: 'fine' }], ['M8 by one', { size: 'M8x1' }], ['1-8 UNC', { size: '1-8' }],
    ]),
  ],
  never: ['3/8 bolts', 'half and half', '10-12 thou', 'a fine day', 'coarse sandpaper', 'three eighths by two', '1-2 hours', 'mile 12', 'five eighths', '5/8-12'],
};
