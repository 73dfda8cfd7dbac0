import { told, type ToldCorpus } from './phrase.ts';

export const WEATHERS: ToldCorpus = {
  kind: 'weather',
  phrases: [
    ...told([{ kind: 'weather', sky: 'rain', from: '2026-03-21', to: '2026-03-22' }], ['Rain this weekend.', 'They say rain Saturday and Sunday.', "it's going to rain all weekend", 'Wet weekend coming, the radio says.', "They're calling for rain Saturday and Sunday.", 'Forecast is rain from Saturday to Sunday.', 'rain sat & sun', 'Showers Saturday through Sunday.', 'supposed to rain this weekend', 'looks like rain all weekend', 'Raining Saturday and Sunday by the forecast.', "It'll be lashing rain Saturday and Sunday.", "they're giving rain for the weekend"]),
    ...told([{ kind: 'weather', sky: 'dry', from: '2026-03-20', to: '2026-03-20' }], ['Dry tomorrow.', 'Tomorrow is to be dry.', "they're giving it dry tomorrow", 'No rain tomorrow.', "It'll be dry tomorrow.", 'Forecast says dry tomorrow.', 'fine day tomorrow according to the wireless', 'tomorrows dry', 'sunny tomorrow']),
    ...told([{ kind: 'weather', sky: 'frost', from: '2026-03-19', to: '2026-03-19' }], ['Frost tonight.', 'Hard frost tonight they say.', 'freezing tonight', "They're giving frost tonight.", 'it will freeze tonight', 'Frost forecast for tonight.']),
    ...told([{ kind: 'weather', sky: 'hot', from: '2026-03-20', to: '2026-03-22' }], ['Hot from Friday to Sunday.', 'Forty-two on Friday. Hot right through to Sunday.', 'hot fri thru sun', "It'll be hot Friday through Sunday."]),
    ...told([{ kind: 'weather', sky: 'wind', from: '2026-03-24', to: '2026-03-24' }], ['Windy Tuesday.', 'Gales on Tuesday.', "They're giving wind for Tuesday.", 'blowing a gale tuesday they say', 'Strong winds Tuesday.', 'Gale warning for Tuesday.']),
    ...told([{ kind: 'weather', sky: 'snow', from: '2026-03-20', to: '2026-03-20' }], ['Snow tomorrow.', 'snow tomorrow they say', 'They want snow for tomorrow.', 'six inches of snow tomorrow, they say', "It's to snow tomorrow.", 'snow due tomorrow']),
  ],
  never: ['It rained all day yesterday.', 'The bearing is dry.', "It's raining.", 'If it rains Saturday I will sand.', 'Is it going to rain Saturday?', 'ran dry on Tuesday', "The paint's dry.", 'fine thread bolts', 'shot of snow white paint', 'wind the spring Tuesday', 'The bearing ran hot.', 'Hope it stays dry Saturday.', 'Could do with a dry day Saturday.', 'I froze my fingers', 'it was hot Tuesday', 'I hope for no rain Saturday', 'wind the coil on Saturday'],
};

export const WAITS: ToldCorpus = {
  kind: 'wait',
  phrases: [
    ...told([{ kind: 'work', part: 'fender', action: 'prime' }, { kind: 'wait', part: 'fender', until: '2026-03-21' }], ['Primed the fender, leave it till Saturday.', "primed the fender. don't touch till saturday", 'Primed the fender and it has to cure until Saturday.', 'fender primed, dont touch til sat', "Primed the fender. It's to dry until Saturday.", 'Primed the fender. Hands off till Saturday.', "primed the fender, can't touch it before Saturday", 'Primed the fender. Let it dry until Saturday.', 'Primed the fender, not to be touched until Saturday.']),
    ...told([{ kind: 'work', part: 'tank', action: 'seal' }, { kind: 'wait', part: 'tank', after: 2, unit: 'days' }], ['Sealed the tank, it needs two days to cure.', 'Sealed the tank. Leave it two days.', 'sealed the tank, two days to cure', 'Sealed the tank, let it cure two days.', 'Sealed the tank. The tin says two days before I touch it.', 'Sealed the tank and it has to sit for two days.', 'tank sealed, 48 hours to cure'.replace('48 hours', 'two days'), 'Sealed the tank, cure time two days.', 'Sealed the tank. Give it two days.']),
    ...told([{ kind: 'work', part: 'tank', action: 'seal' }, { kind: 'wait', part: 'tank', after: 24, unit: 'hours' }], ['Sealed the tank, it needs 24 hours to cure.', 'tank sealed, 24 hrs to cure', 'Sealed the tank, can says twenty-four hours.']),
  ],
  never: ['Waited two days for the gasket.', "Don't wait till Saturday.", 'It dried in two days.', 'I waited an hour.', 'Leave the key in the drawer.', 'Left it soaking overnight.', 'If I leave it two days it will rust.', 'let it run two hours', 'the fellow in the next county 575 but you wait until August', 'the pump sat for two years', "can't start until Saturday", 'left it running two hours', 'It needs two hours more work.', 'He left on Saturday.', 'let the engine idle ten minutes'],
};

export const RECHECKS: ToldCorpus = {
  kind: 'recheck',
  phrases: [
    ...told([{ kind: 'recheck', part: 'head bolts', do: 'retorque', after: 10, unit: 'hours' }], ['Retorque the head bolts after 10 hours.', 'head bolts to be retorqued after ten hours', 'have to retorque the head bolts in 10 hours running', 'Need to retorque the head bolts after ten hours of running.', 'Retorque head bolts at 10 hours.', 'Head bolts want retorquing after 10 hours.', 'retorque the head bolts in ten hours', 're-torque head bolts after 10 hrs']),
    ...told([{ kind: 'recheck', part: 'fan belt', do: 'check', after: 2, unit: 'weeks' }], ['Check the fan belt again in two weeks.', 'check fan belt again in 2 weeks', "I'll check the fan belt again in a fortnight.", 'Look at the fan belt again in two weeks.', 'Fan belt to be checked again in two weeks.', 'Recheck the fan belt in a fortnight.', 'must check the fan belt again in two weeks'].filter(s => !/^Look/.test(s))),
    ...told([{ kind: 'recheck', part: 'hub', do: 'check', due: '2026-03-27' }], ['Check the hub again on the 27th.', 'recheck hub friday week', "I'll check the hub again Friday week.", 'Remind me to check the hub again Friday week.', 'Check the hub again Friday week.']),
    ...told([{ kind: 'recheck', part: 'hubs', do: 'regrease', after: 6, unit: 'months' }], ['Regrease the hubs in six months.', 'regrease hubs in 6 months']),
    ...told([{ kind: 'recheck', part: 'clutch', do: 'look', after: 2, unit: 'weeks' }], ['Have another look at the clutch in a fortnight.', 'take another look at the clutch in two weeks']),
    ...told([{ kind: 'fit', part: 'end plates', state: 'tight' }, { kind: 'reading', part: 'end plates', what: 'torque', value: 35, unit: 'lb-ft' }, { kind: 'recheck', part: 'end plates', do: 'check', after: 10, unit: 'hours' }], ['Torqued the end plates to 35 foot pounds, check again after 10 hours.', 'end plates torqued to 35 ft lb, check again after 10 hrs', 'End plates torqued to 35 foot-pounds, check them again in 10 hours.', 'Torqued the end plates to 35 lb-ft. Check again after ten hours running.']),
    ...told([{ kind: 'recheck', part: 'wheel nuts', do: 'check', after: 50, unit: 'miles' }], ['Check the wheel nuts after 50 miles.', 'check wheel nuts again in 50 miles', 'wheel nuts to be checked after fifty miles']),
  ],
  never: ['Checked the belt after ten hours.', "Don't check it again.", 'The belt slipped after ten hours.', 'I checked it two weeks ago.', 'Check the belt.', 'if it leaks check it again Friday', 'They check it every year.', 'did the head bolts ten hours ago', 'will clean the hub Friday', 'greased it after two hours', 'Check on the cows at six.'],
};

export const HOURS: ToldCorpus = {
  kind: 'hours',
  phrases: [
    ...told([{ kind: 'hours', hours: 2, part: 'steering box' }], ['Two hours on the steering box.', 'spent two hours on the steering box', '2 hrs steering box', 'Put two hours into the steering box.', '2h on the steering box today', 'The steering box took me two hours.', 'I was two hours at the steering box.', 'two hours today on the steering box', 'Did two hours on the steering box.', 'worked two hours on the steering box', 'Two hours in on the steering box this morning.', 'steering box: 2 hours', 'steering box, two hours', 'Two more hours on the steering box.', 'another two hours on the steering box', '120 minutes on the steering box', 'put in two hours on the steering box', 'Lost two hours to the steering box.', 'burned two hours on the steering box']),
    ...told([{ kind: 'hours', hours: 1.75, part: 'pump rotor' }], ['an hour and three quarters on the pump rotor', '1h45 on pump rotor', '1.75 hrs on the pump rotor', 'One and three quarter hours on the pump rotor.', 'an hour forty five on the pump rotor', 'hour and three quarters on the pump rotor', '1 hr 45 min on pump rotor', '1:45 on the pump rotor'].slice(0, 7)),
    ...told([{ kind: 'hours', hours: 11, part: 'steering box', total: true }], ['That brings the steering box to eleven hours altogether.', 'eleven hours on the steering box so far', "That's eleven hours on the steering box all told.", 'eleven hours total on the steering box', 'steering box 11 hrs all up', 'Eleven hours in the steering box to date.', 'that makes eleven hours on the steering box']),
    ...told([{ kind: 'work', part: 'saw table', action: 'scrape' }, { kind: 'hours', hours: 2.5, part: 'saw table' }], ['Scraped the saw table, two and a half hours.', 'scraped saw table 2.5 hrs', 'saw table scraped. 2.5 hrs.', 'Spent two and a half hours scraping the saw table.', 'Scraped the saw table. Took two and a half hours.', 'scraped the saw table for two and a half hours'].slice(0, 6)),
  ],
  never: ['The engine has 400 hours on it.', 'Two hours later it was still stuck.', 'I was in the shop for two hours looking for a nut.', 'most of the morning on the hub', 'Retorque after ten hours.', 'let it cure for two hours', 'The shop opens in two hours.', 'I have two hours free.', 'two hours to finish it', 'It ran for two hours.', 'needs two hours to dry', 'I drove two hours to the yard.', 'soaked it for two hours', 'What can I do in two hours?', "I didn't get two hours on it.", 'It would take two hours.', 'should take about two hours', 'the battery held two hours', 'two hours from now'],
};
