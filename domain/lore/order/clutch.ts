import { usual } from './rule.ts';

export const clutch = usual('clutch', [
  ['rear main seal', 'flywheel', 'it is behind the flywheel'],
  ['ring gear', 'flywheel', 'it is shrunk on off the engine'],
  ['machine the flywheel', 'flywheel', 'bench or machine shop work'],
  ['pilot bearing', 'clutch disc', 'the shaft that centers the disc runs in it'],
  ['flywheel', 'clutch disc', 'the disc lies on it'],
  ['clutch disc', 'pressure plate', 'the plate clamps the disc'],
  ['align the clutch disc', 'tighten the pressure plate', 'the disc can no longer move afterwards'],
  ['pressure plate', 'bell housing', 'it is out of reach once engine and gearbox are joined'],
  ['release bearing', 'bell housing', 'it is out of reach once engine and gearbox are joined'],
  ['clutch fork', 'release bearing', 'the bearing hangs on the fork'],
  ['gearbox input seal', 'clutch disc', 'oil on a fresh disc ruins it'],
  ['clutch pedal', 'clutch linkage', 'the linkage ends on it'],
  ['clutch linkage', 'adjust the clutch', 'free play is set with it'],
  ['adjust the clutch', 'start the engine', 'it must let go before it runs in gear'],
]);
