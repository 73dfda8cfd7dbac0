/**
 * Everyday words that machines have parts of the same name for. Alone they are parts where something is done to them or they are found in a state that none
 * but a part can be in; after "my" or "his" they are of a body or a house. Common practice, no source.
 */
export const EVERYDAY_PARTS = /^(stop|slide|throat|arm|keep|jumper|striker|kicker|tripper|dropper|pusher|picker|trigger|lag|batten|lath|scoop|spoon|tumbler|click|segment|cog|lantern|maul|nave|rung|stake|upright|stringer|sill|endgate|bell|fulcrum|heel|toe|boss|standard|cheek|rynd|sear|neck|lip|cradle|yoke|collar|saddle|apron|horn|jaw|shoe|tongue|tail|nose|crown|skirt|throat|mouth|hook|ladder|gate|latch|catch|trip|spider|star|worm|frog|crow|pig|cross|cup|cone|bowl|pan|plate|dish|drum|barrel|basket|cage|comb|brush|fork|knife|needle|bow|bridge|bar)s?$/;
