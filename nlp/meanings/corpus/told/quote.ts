import { told, type ToldCorpus } from './phrase.ts';

export const QUOTES: ToldCorpus = {
  kind: 'quote',
  phrases: [
    ...told([{ kind: 'quote', item: 'head gasket', source: 'salvage yard', price: 40 }], [
      'The salvage yard wants 40 dollars for a head gasket.', 'salvage yard wants 40 bucks for a head gasket', 'The salvage yard is asking forty for a head gasket.', 'Salvage yard has a head gasket for $40.', 'The salvage yard quoted me 40 dollars on a head gasket.', 'The salvage yard said 40 dollars for a head gasket.',
      'Head gasket is 40 dollars at the salvage yard.', 'head gasket, salvage yard, $40', 'Head gasket: salvage yard $40.', 'Head gasket at the salvage yard: 40 dollars.', 'Got a price on a head gasket, 40 dollars from the salvage yard.', 'A head gasket runs 40 dollars at the salvage yard.', 'Rang the salvage yard, they want 40 dollars for a head gasket.',
      'salvage yard will sell me a head gasket for 40 dollars', 'The salvage yard will do me a head gasket for forty quid.', 'The salvage yard can get a head gasket for $40.', 'The salvage yard told me 40 dollars for a head gasket.', 'Called the salvage yard and a head gasket is 40 dollars.', 'Saw a head gasket at the salvage yard for $40.', 'Got a quote from the salvage yard, $40 for a head gasket.',
      'Salvage yard reckons forty quid for a head gasket.', 'salvage yard would let a head gasket go for 40 dollars', 'the salvage yard have a head gasket at forty quid',
    ]),
    ...told([{ kind: 'quote', item: 'connecting rod', source: 'machinery exchange', price: 48, shipping: 12 }, { kind: 'quote', item: 'connecting rod', source: 'steam museum', price: 55, shipping: 0 }], [
      'The machinery exchange wants 48 dollars for a connecting rod plus 12 shipping, the steam museum 55 with free shipping.', 'Connecting rod: machinery exchange 48 plus 12 ship, steam museum 55 post free.', 'connecting rod is 48 and 12 post at the machinery exchange or 55 at the steam museum, free shipping',
      'The machinery exchange has a connecting rod for $48 plus $12 shipping. The steam museum wants $55, no shipping.', 'Connecting rod, $48 plus 12 shipping from the machinery exchange, $55 shipping included from the steam museum.',
    ]),
    ...told([{ kind: 'quote', item: 'wire rope', source: 'rigging loft', price: 2.1 }], ["Wire rope's two ten a foot at the rigging loft.", 'The rigging loft wants 2.10 a foot for wire rope.', 'wire rope $2.10/ft at the rigging loft', 'Rigging loft has wire rope at 2.10 per foot.', 'wire rope is two dollars ten a foot at the rigging loft']),
    ...told([{ kind: 'quote', item: 'wear plates', source: 'steel supplier', price: 21.5 }], ['The steel supplier wants 21.50 each for the wear plates.', 'Wear plates are 21.50 apiece at the steel supplier.', 'wear plates: steel supplier 21.50 ea', 'steel supplier says twenty one fifty each for the wear plates']),
    ...told([{ kind: 'quote', item: 'fuel tap', source: 'spares lady', price: 22, shipping: 4 }], ['Fuel tap. Twenty-two plus four post from the spares lady.', 'The spares lady wants 22 for a fuel tap and 4 to post it.', 'Fuel tap from the spares lady would be 22 quid and 4 postage.', 'fuel tap 22 + 4 post, spares lady', 'The spares lady has a fuel tap for 22, postage 4.']),
    ...told([{ kind: 'quote', item: 'starter motor', source: 'fella in the next parish', price: 90 }], ['The fella in the next parish wants ninety for the starter motor.', "there's a starter motor with the fella in the next parish for ninety quid", 'fella in the next parish has a starter motor, ninety quid', 'The fella in the next parish would take ninety for the starter motor.']),
  ],
  never: [
    'Bought a head gasket for 40 dollars.', 'Ordered a head gasket from the yard, 40 dollars.', 'I paid the yard 40 dollars.', 'The yard does not have one.', "The yard didn't want 40 for it.", 'If the yard wants 40 dollars for it I will go elsewhere.', 'The head is at forty pounds.', 'torqued to 40 foot pounds', 'The yard has had my head for forty days.',
    'the mill wants 40 psi', 'He said 40 thou for the gap.', 'The foundry says two weeks.', 'The book says 35 foot pounds for the head bolts.', 'I thought the yard wanted 40 for it but I was wrong.', 'a head gasket used to be 4 dollars', 'My wife says I have spent 40 dollars too much.', 'the spring has forty coils', 'book says 0.025 for the plug gap',
  ],
};
