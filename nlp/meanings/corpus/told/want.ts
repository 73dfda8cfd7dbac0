import { told, type ToldCorpus } from './phrase.ts';

const clamps = { kind: 'want', item: 'hose clamps', qty: 2 };

export const WANTS: ToldCorpus = {
  kind: 'want',
  phrases: [
    ...told([clamps], [
      'need two hose clamps', 'I need two hose clamps.', 'gotta get two hose clamps', 'have to pick up two hose clamps', 'must buy two hose clamps', "I'll be needing two hose clamps", "we're short two hose clamps", 'put two hose clamps on the list',
      'add two hose clamps to the shopping list', 'two hose clamps needed', 'to buy: two hose clamps', 'Shopping list: two hose clamps.', 'still need a couple of hose clamps', "I'm after two hose clamps", 'need to order two hose clamps', 'write me down for two hose clamps',
      'two hose clamps wanted', 'hose clamps, need two', "I've got to have two hose clamps", 'I want two hose clamps', 'need hose clamps, 2', 'need 2x hose clamps', 'To get: two hose clamps', "I'd better get two hose clamps", 'remember to get two hose clamps', 'we could use two hose clamps',
      'im gonna need two hose clamps', 'going to have to buy two hose clamps', "don't forget to buy two hose clamps", 'need another two hose clamps', 'need to lay hands on two hose clamps', 'Parts needed: two hose clamps', 'missing two hose clamps',
    ]),
    ...told([{ kind: 'want', item: 'gasket' }, { kind: 'want', item: 'oil seal' }, { kind: 'want', item: 'bearings', qty: 2 }], [
      'need a gasket, an oil seal and two bearings', 'I need a gasket and an oil seal and two bearings', 'need gasket, oil seal, 2 bearings', 'Need a gasket, an oil seal, plus two bearings.', 'need a gasket an oil seal and two bearings',
      'To buy: gasket, oil seal, two bearings.', 'I need a gasket. And an oil seal. Two bearings too.', 'need a gasket + oil seal + 2 bearings',
    ]),
    ...told([{ kind: 'want', item: 'penetrating oil' }], [
      "we're out of penetrating oil", 'ran out of penetrating oil', 'out of penetrating oil', "I'm all out of penetrating oil", 'need more penetrating oil', 'running low on penetrating oil', 'nearly out of penetrating oil', 'need some penetrating oil', "there's no penetrating oil left",
      "I've run out of penetrating oil", 'short of penetrating oil',
    ]),
    ...told([{ kind: 'want', item: 'studs', qty: 6, spec: 'M10 by 1.5 by 40' }], ['need six studs, M10 by 1.5 by 40', 'Need 6 studs, M10 by 1.5 by 40.', 'need studs, six of them, M10 by 1.5 by 40', "I need six studs M10 by 1.5 by 40"]),
    ...told([{ kind: 'want', item: 'bolts', qty: 4, spec: 'three eighths by two' }], ['need four bolts three eighths by two', 'need four three eighths by two bolts', 'Need four bolts, three eighths by two.', 'I need bolts, four, three eighths by two']),
    ...told([{ kind: 'want', item: 'bolts', qty: 4, spec: '3/8 x 2', for: 'hub' }], ['need 4 bolts 3/8 x 2 for the hub', 'need four bolts for the hub, 3/8 x 2', 'the hub needs four bolts, 3/8 x 2', 'Hub needs 4 bolts 3/8 x 2.']),
    ...told([{ kind: 'want', item: 'brake line', spec: 'quarter inch, three feet' }], ['need three feet of quarter inch brake line', 'need quarter inch brake line, three feet', 'need brake line, quarter inch, three feet of it', 'I need about three feet of brake line, quarter inch']),
    ...told([{ kind: 'want', item: 'v-belt', spec: 'B section, 63 inch' }], ['need a V-belt, B section, 63 inch', 'I need a v-belt B section 63 inch', "I'll want a V-belt, B section, 63 inch."]),
    ...told([{ kind: 'want', item: 'water pump gasket', for: 'water pump' }], ["the water pump needs a water pump gasket", 'need a water pump gasket for the water pump']),
    ...told([{ kind: 'finding', part: 'input seal', condition: 'shot', verdict: 'replace' }, { kind: 'want', item: 'input seal' }], ['The input seal is shot, I need a new one.', "input seal's shot need a new one", 'Input seal is shot. Need one.', 'input seal is shot so I need another']),
    ...told([{ kind: 'want', item: 'drive belt', for: 'blower' }], ['need a drive belt for the blower', 'have to get a drive belt for the blower', "can't run the blower till I get a drive belt"].slice(0, 2)),
    ...told([{ kind: 'want', item: 'lock washers', qty: 12, spec: '5/16' }], ['need a dozen lock washers 5/16', 'need 12 lock washers, 5/16', 'need a dozen 5/16 lock washers', 'lock washers, 5/16, need a dozen']),
    ...told([{ kind: 'want', item: 'hex nuts', qty: 10, spec: 'half inch fine' }], ['need hex nuts, ten, half inch fine', 'I still need hex nuts, ten, half inch fine.', 'need ten hex nuts, half inch fine']),
    ...told([{ kind: 'want', item: 'sealer' }], ["I'd better get a tube of sealer while I'm at it", 'need a tube of sealer', 'must get a tube of sealer']),
  ],
  never: [
    "I don't need any bolts.", "If it's cracked I'll need a new one.", 'The head needs a good clean.', 'The head needs to come off.', 'I need to clean the head.', 'I need a hand with the head.', 'need help on Saturday', "don't need the puller any more", "wouldn't need a shim",
    'I might need a new seal.', 'The yard wants forty dollars for a seal.', 'He wants his tractor back.', 'I want it done by Friday.', 'need to get the head off', 'It wants a coat of primer.', 'I could do with a cup of tea.', 'no need for a new gasket', 'I thought I needed a seal but I have one.',
    'Everything I need is here.', 'what do I need for the hub', 'Lad at the yard has a pulley for twelve quid.', 'I wanted to finish the hub today.', 'need two hours to finish the hub', 'I need a nap', "wasn't needing a new seal after all", 'out of round by four thou', 'ran out of daylight', 'the bolt is out of the bracket',
    'They may need a new seal, the book says.', 'I wish I had a new seal.', 'have to get the manifold welded', 'got to get the engine turned over', 'needs two more turns', 'I bought two clamps', "my wife wants me in for dinner", 'no seal needed',
  ],
};
