import { type AskCorpus, same } from './phrase.ts';

export const BUY_CORPUS: AskCorpus = {
  phrases: [
    { text: 'do I have anything on order or late for the tedder', asks: [{ kind: 'buy', status: 'ordered', part: 'tedder' }, { kind: 'buy', status: 'late', part: 'tedder' }] },
    ...same({ kind: 'buy', status: 'ordered' }, ["What's left to come?", "Please: what's on order?"]),
    { text: "what's on the list of stuff to get for the lorry and when will the lorry be done", asks: [{ kind: 'buy', status: 'needed', part: 'lorry' }, { kind: 'finish', part: 'lorry' }] },
    { text: "what's left to get for the lorry and what's late", asks: [{ kind: 'buy', status: 'needed', part: 'lorry' }, { kind: 'buy', status: 'late' }] },
    ...same({ kind: 'buy', status: 'late' }, ['which of my orders have failed to arrive', 'is owt I sent for gone past its day', "Anything still to come that's overdue?", "have I got anything coming that should have been here"]),
    ...same({ kind: 'buy' }, ["what's on my shopping list, ordered or not?"]),
    ...same({ kind: 'buy', status: 'ordered' }, ['did I ever order the drive chain']),
    ...same({ kind: 'buy', status: 'needed' }, ['stuff left to get', 'what else is to be bought, for the record?'].slice(0, 1)),
    ...same({ kind: 'buy', status: 'needed', part: 'lorry' }, ['what is it I still got to buy for the lorry']),
    { text: "what's on order for the lorry, and what remains to be bought", asks: [{ kind: 'buy', status: 'ordered', part: 'lorry' }, { kind: 'buy', status: 'needed', part: 'lorry' }] },
    ...same({ kind: 'buy', status: 'needed', part: 'setter' }, ['What all do I need to round up for the setter?', 'whats left for me to get for the setter', 'how much more must I get for the setter', 'what all do i need yet for the setter']),
    { text: 'is owt late?', asks: [{ kind: 'buy', status: 'late' }] },
    ...same({ kind: 'buy', status: 'late' }, ["has anything gone past its date", "anything past its due date?", "which parcels should have been here by now"]),
    ...same({ kind: 'buy', status: 'ordered' }, ["what's ordered and hasn't come", "Which parts are at present ordered but not delivered?"]),
    ...same({ kind: 'buy', status: 'needed', part: 'press' }, ["what remains to be ordered for the press", "what do I still have to lay hands on for the press", "what's wanted yet for the press"]),
    ...same({ kind: 'buy', status: 'needed' }, [
      'what do I need to buy', "What's left to buy?", 'what do i still have to get', 'shopping list', 'show me the shopping list', 'What parts do I still need?', 'anything I need to pick up in town', 'what else do I need to order',
      'tell me what I need to buy', 'whats on the shopping list', 'what still needs ordering', 'what am I short of', 'what have I still to get', 'anything left to buy', "What's still to be bought?", 'give me the parts list', 'what do I have to pick up',
    ]),
    ...same({ kind: 'buy', status: 'needed', part: 'crawler' }, ['what do i still need to buy for the crawler', "what's left to get for the crawler", 'what parts does the crawler still need', 'What needs buying for the crawler?', 'shopping list for the crawler', 'what have I got to order for the crawler', 'anything still to buy for the crawler', 'what am I missing for the crawler']),
    ...same({ kind: 'buy', status: 'ordered' }, ['what have I got on order', "what's on order", 'What am I waiting on in the mail?', 'what parts are on the way', "what's coming", 'anything on order', 'which parts have I ordered', 'what have I ordered that is not here yet', 'list what is on order', 'what orders are outstanding', "What's still to come in the post?", 'What deliveries am I expecting?', 'what stuff is on order']),
    ...same({ kind: 'buy', status: 'late' }, ['is anything late', "what's overdue", 'anything I ordered late', 'whats late', 'which orders are late', "What hasn't turned up yet?", 'what should have been here by now', "Is anything I ordered overdue?", 'any parts running late', 'what is overdue from the suppliers', 'what ordered stuff is late', "what's late coming"]),
  ],
  never: ['A quart of red, thats whats needed.', 'The gaskets did come in the end.', 'What was short was the oil.', 
    "Shopping list. Head bolts, eight. Gasket spray.", "Shopping list for the drill press: two bearings for the spindle.",'I need to buy two hose clamps.', 'The rings are on order.', 'The hub bearing is late.', "That's what I need.", 'Went to town to pick up the bolts.', 'Ordered the wear plates this morning.', 'Add a gasket to the shopping list.'],
};
