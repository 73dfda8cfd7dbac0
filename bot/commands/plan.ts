import { catchUp } from '../../domain/log/keeper.ts';
import { planPsplib } from '../../domain/plan/psplib.ts';
import { readConfig } from '../config.ts';
import { factsFor } from '../planning/facts.ts';
import { wholePlan, type WholePlan } from '../planning/whole-plan.ts';
import { causeLine } from '../say/blocked.ts';
import { capital, day } from '../say/words.ts';
import { openShop } from '../shop.ts';
import { argumentsOf, command, momentSaid, UsageError } from './arguments.ts';

const USAGE = 'Use: npm run -s plan -- [--data DIR] [--at ISO] [--json], or npm run -s plan -- --psplib FILE… [--schedules N]';

/** The plan of the shop, or of project files in the text format of the PSPLIB, a line a file. */
await command(() => {
  const { values, positionals } = argumentsOf(
    { data: { type: 'string' }, at: { type: 'string' }, json: { type: 'boolean' }, psplib: { type: 'string', multiple: true }, schedules: { type: 'string' } }, USAGE);
  if (values.psplib) return projects([...values.psplib, ...positionals], values.schedules);
  if (positionals.length || values.schedules !== undefined) throw new UsageError(USAGE);
  const config = readConfig();
  const at = momentSaid(values.at, config.zone, USAGE);
  const { log, deps } = openShop(values.data ?? config.dataDir, config.zone, config.weather);
  try {
    catchUp(log);
    const plan = wholePlan(log.shop, { at, zone: config.zone }, factsFor(deps, at));
    console.log(values.json ? JSON.stringify(plan) : inWords(plan, at).join('\n'));
  } finally { log.store.close(); }
});

function projects(files: readonly string[], said = '1000'): void {
  const schedules = Number(said);
  if (!Number.isInteger(schedules) || schedules < 1) throw new UsageError(`--schedules must be a whole number of 1 or more. ${USAGE}`);
  for (const file of files) {
    try {
      for (const line of planPsplib([file], schedules)) console.log(JSON.stringify(line));
    } catch (error) { throw new UsageError(`${file}: ${(error as Error).message}`); }
  }
}

function inWords(plan: WholePlan, at: string): string[] {
  const { p50, p80, driver } = plan.finish;
  const on = (date: string | null): string => (date === null ? 'no day' : day(date, at));
  return [
    p50 && p80 ? `Done as likely as not by ${on(p50)}, four in five by ${on(p80)}.${driver ? ` What decides it: ${driver}.` : ''}` : 'No day for the end of it.',
    ...plan.basis,
    ...section('Jobs', plan.jobs.map(j => `${on(j.start)}: ${j.do}${j.part ? ` · ${j.part}` : ''}${j.machine ? ` (${j.machine})` : ''}${j.why.length ? ` — ${j.why.join('; ')}` : ''}`)),
    ...section('Held up', plan.blockers.map(b => `${capital(b.part)}: ${b.causes.map(c => `${causeLine(c, { at })}${c.clears ? ` [${day(c.clears, at)}]` : ''}`).join('; ')}`)),
    ...section('Order by', plan.orderBy.map(o => `${o.item}: ${on(o.by)}${o.late ? ', and it moves the end even so' : ''}`)),
  ];
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length ? ['', title, ...lines.map(l => `  ${l}`)] : [];
}
