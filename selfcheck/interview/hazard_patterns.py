"""What each hazard sounds like: patterns over the words that `hazard_words.normal` gives. Data with no logic of its own."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

HazardVerdict = Literal["danger", "call_now"]


@dataclass(frozen=True, slots=True)
class Wording:
    """One way of telling a hazard. `head`: the group a denial binds to. `bare`: told without a verb, so a question may hold it.

    `unsure`: it may be meant otherwise, and is confirmed first.
    """

    hazard: str
    pattern: re.Pattern[str]
    bare: bool = False
    unsure: bool = False


#: worst first: of two hazards in a line the earlier one is given
VERDICTS: dict[str, HazardVerdict] = {
    "fell_in": "danger",
    "going_in": "danger",
    "feeling_ill": "danger",
    "child_near": "danger",
    "fire": "danger",
    "struck": "danger",
    "lid_broken": "call_now",
    "lid_left_open": "call_now",
    "ground_sunk": "call_now",
    "sewage_in_house": "call_now",
    "sewage_outside": "call_now",
}

CHILD = (
    r"(?:kids?|kiddos?|child|children|son|sons|daughter|daughters|toddler|toddlers|boy|boys|girl|girls|baby|babies|grand ?son|grand ?daughter|grandkids?|grandchild(?:ren)?|nephew|niece|"
    r"little one|little ones|twins|teen|teenager|nino|nina|ninos|hijo|hija|bebe|year old|infant)"
)
PET = r"(?:dog|dogs|puppy|pup|cat|cats|kitten|kitty|pet|animal|calf|cow|goat|lamb|sheep|horse|foal|pony|deer|perro|perra|gato|perrito|doggy|chicken|hen|pig|piglet|labrador|lab)"
ADULT = (
    r"(?:husband|wife|spouse|partner|dad|daddy|father|mom|mum|mommy|mother|brother|sister|uncle|aunt|grandpa|grandma|grandfather|grandmother|neighbou?r|friend|buddy|guy|man|woman|lady|person|someone|somebody|"
    r"worker|helper|plumber|driver|tenant|roommate|cousin|coworker|he|she|they|him|her|them|el|ella|esposo|esposa|marido|hermano|hermana|papa|mama|alguien|vecino|anybody else|one of (?:us|them|the \w+))"
)
LIVING = rf"(?:{CHILD}|{PET}|{ADULT})"
_TANK = r"(?:septic(?: tank)?|tank|hole|pit|opening|manhole|riser|access|sewage|sludge|muck|poop|chamber|cesspool|tanque|pozo|fosa|hoyo|agujero|water|scum|thing|vault)"
_INTO_TANK = rf"(?:in ?to|in|inside|down|down into|through|en|al|a) (?:the |that |our |my |an? |this |la |el )?(?:open |septic |big |old )*{_TANK}"
_ELSE = (
    r"(?:love|line|place|price|value|half|two|pieces|with|step|behind|asleep|20\d\d|19\d\d|january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|fall|winter|"
    r"(?:the |our |my |a |his |her )?(?:yard|garden|lawn|grass|pool|pond|creek|river|lake|road|driveway|kitchen|house|bathroom|bath|bathtub|tub|shower|street|woods|snow|mud|ditch|field|bed|past|stairs|storm|night|morning|afternoon|barn|garage|gutter|bucket|sink|toilet|basement|park|forest))"
)
_THING = (
    r"(?:pole|stick|tape|measure|phone|cell|glove|gloves|lid|cover|cap|tool|tools|wrench|screw|screws|screwdriver|bolt|bolts|nut|dirt|soil|leaf|leaves|rock|rocks|stone|stones|stuff|cloth|rag|sock|towel|flashlight|light|torch|glasses|sunglasses|hat|"
    r"keys|key|ball|toy|toys|bucket|shovel|branch|root|roots|gravel|concrete|piece|pieces|chunk|chunks|brick|tee|baffle|pipe|filter|handle|rope|string|marker|pen|pencil|ruler|level|levels|sludge|scum|rain|snow|water|tree|trees|wall|price|prices|temperature|"
    r"some|bit|bits|sand|mud|mouse|rat|mice|frog|frogs|bug|bugs|spider|insect|worm|worms|snake|magnet|lever|bar|hammer|knife|coin|watch|ring|camera|sample|sampler|bottle|cup|mask|goggles|fence|roof|ceiling|grass|clippings|plug|gasket|seal|rubber|paper|wipe|wipes|battery|clamp|float|hook|pump|number|numbers|reading|readings|cost|costs|rate|rates)"
)
_G2, _G3, _G4, _G6 = (rf"(?:(?!\|)[\w?']+ ){{0,{count}}}" for count in (2, 3, 4, 6))
_HOLE = r"(?:hole|opening|tank|pit|manhole|edge|septic|riser|lid|cover|access|hatch|hoyo|agujero|tanque|pozo|fosa)"
_LID = r"(?:lid|lids|cover|covers|manhole|hatch|tapa|slab|top of (?:the |our |my )?(?:septic |old )?tank|tank top|riser|tank roof)"
_BE = r"(?:is|are|was|were|looks|look|looked|seems|seem|seemed|appears|feels|feel|got|has|have|just|now|already|all|so|really|kind of|kinda|pretty|a bit|a little|bit|slightly|badly|completely|totally|very|clearly|definitely|probably|maybe|may be|might be|could be|must be|also|being|been|be|to be|too|like it is|like|half|partly|partially|both|still|sort of|esta|fully|super|quite|starting to|started|begun|keeps|kept|it|there|right|way|even|getting)"
_GROUND = r"(?:ground|soil|dirt|earth|yard|lawn|grass|land|turf|area|spot|patch|driveway|suelo|tierra|garden|backyard)"
_FILTH = r"(?:(?:raw |black |brown |human |dirty |nasty |stinky |smelly )*(?:sewage|sewer water|waste ?water|sewage water|septic water|septic|poop|poopy|shit|crap|turds?|feces|faeces|toilet water|toilet paper|effluent|aguas negras|black water|brown water|dirty water|grey water|gray water|gunk|sludge|filth|excrement|raw waste|human waste|waste|black stuff|nasty water|stinky water|smelly water|black liquid|black goo))"
_FIXTURE = r"(?:toilets?|showers?|bath ?tubs?|tubs?|baths?|sinks?|floor drains?|drains?(?! field)|(?:basement|laundry|utility|kitchen|bathroom|downstairs|lowest|bath|shower|tub|sink) drains?|commode|loo|washer drain|washing machine|laundry|inodoro|ducha|regadera|bano|plumbing|pipes|sewer line|bidet)"
_INDOORS = r"(?:house|basement|bathroom|bathrooms|kitchen|laundry room|laundry|floor|floors|hallway|crawl ?space|downstairs|indoors|bedroom|cellar|casa|bano|home|carpet|utility room)"
_UP = r"(?:coming (?:back )?(?:up|out|in|through|from)|comes (?:back )?(?:up|out)|came (?:back )?(?:up|out)|come up|bubbling (?:up|out)|bubbled up|backing up|backed up|backs up|back up|backup|rising|rises|rose|overflowing|overflowed|overflows|overflow|spilling|spilled|flooding|flooded|floods|pouring|poured|shooting|gushing|seeping|leaking|running|flowing|oozing|spewing|welling up|regurgitating|all over|everywhere|saliendo|pushing up|filling)"
_OUTSIDE = r"(?:yard|lawn|grass|ground|outside|garden|driveway|ditch|creek|surface|field|backyard|patio|street|pasture|woods|flower ?bed|hill|slope|road|patio|jardin|patio|drain ?field|leach ?field|drainfield|well|lake|pond|stream|neighbou?rs?)"


def _w(hazard: str, pattern: str, bare: bool = False, unsure: bool = False) -> Wording:
    return Wording(hazard, re.compile(rf"\b(?:{pattern})(?!\w)"), bare, unsure)


WORDINGS: tuple[Wording, ...] = (
    # a person or an animal in the tank
    _w(
        "fell_in",
        rf"(?P<head>fell|fallen|slipped|slid|tumbled|tripped|went|gone|dropped|plunged|stumbled|toppled|been pushed|jumped|stepped|sank|sunk) (?:right |straight |head ?first |backwards? |all the way |and (?:went|fell) |feet first |over )*(?:{_INTO_TANK}|in ?to it|in it\b|in there|into there|down there|down it)",
    ),
    _w(
        "fell_in",
        rf"(?P<head>fell|fallen|falling|slipped|slid|tumbled|toppled) (?:right |straight |head ?first |backwards? )*(?:in ?to|in|down in|inside)(?! {_ELSE}\b)(?! (?:the |a |an |my |our |his |her )\w+ (?:last|20\d\d))",
    ),
    _w(
        "fell_in",
        rf"{LIVING} (?:just |both |all )*(?P<head>went|goes|fell|dropped|jumped|slid|slipped) (?:right |straight )*(?:in|down|under|through)(?! (?:the|to|for|my|our|a|town|there to|early|after|with|on|back|home|and)\b)",
        unsure=False,
    ),
    _w(
        "fell_in",
        rf"{LIVING} (?:is |are |was |has |have |got |gets |am |be |been |now |still |just |all |down |lying |floating |trapped |stuck |drowning |sinking |fallen )+(?P<head>{_INTO_TANK}|in there|down there|inside it|in it)(?! (?:lid|cover|alarm|company|guy|man|truck|area|room|field|pump|repair|business|store))",
    ),
    _w(
        "fell_in",
        rf"(?:there is|there are|we have|i see|i hear|i can hear|got) (?:an? |my |the |two |some ?one|some ?body)?(?:\w+ )?{LIVING} (?P<head>{_INTO_TANK}|in there|down there)",
    ),
    _w(
        "fell_in",
        rf"(?:my |the |our |his |her )?{LIVING} (?:is |are |has |have |got |just )*(?P<head>trapped|drowning|sinking)",
    ),
    _w("fell_in", rf"(?P<head>stuck|trapped|drowning|sinking|swimming) (?:down )?{_INTO_TANK} (?:and|help|call)"),
    _w(
        "fell_in",
        r"(?P<head>(?:can not|could not) get (?:out|him out|her out|them out|my \w+ out)) of (?:the |this )?(?:tank|hole|pit|septic)",
    ),
    _w(
        "fell_in",
        r"(?:i am|we are) (?P<head>(?:stuck |trapped )?(?:in|inside) the (?:septic )?(?:tank|hole|pit))(?! \w+ing)",
    ),
    _w("fell_in", r"(?P<head>(?:man|woman|child|kid|person|boy|girl|dog) (?:in|down) the (?:tank|hole|pit))"),
    _w(
        "fell_in",
        r"(?:se )?(?P<head>cayo|ha caido|caido|callo|se metio) (?:en el |en la |al |a la |dentro|adentro|en )?(?:tanque|pozo|fosa|hoyo|agujero|septico|dentro|adentro)?",
    ),
    _w(
        "fell_in",
        r"(?P<head>fell|fallen|falling) through (?:the )?(?:lid|cover|ground|top|grass|roof|slab|concrete|old lid)",
    ),
    _w("fell_in", rf"{LIVING} (?:is |has |was )?(?:just )?(?P<head>disappeared|vanished) (?:in|into|down|under)"),
    _w(
        "fell_in",
        rf"(?:pulled|dragged|got|hauled|fished|pulling|getting) (?:my |the )?{LIVING} (?P<head>out of the (?:septic )?(?:tank|hole|pit|sewage))",
    ),
    # about to go in, or reaching in
    _w(
        "going_in",
        r"(?P<head>going|go|goes|climb|climbing|climbed|jump|jumping|crawl|crawling|get|getting|went|run|running|diving|dive|hop|head|heading) (?:back |right |down )?(?:in|down|inside|there|in there)? ?(?:to )?(?:after|to (?:get|grab|save|rescue|help|pull|reach|fetch)) (?:him|her|them|my (?:son|daughter|husband|wife|dog|cat|kid|child|boy|girl|brother|dad|friend|puppy|baby))",
    ),
    _w(
        "going_in",
        rf"(?:i|we|he|she|they|husband|wife|son|neighbou?r|dad|brother|guy|someone|somebody) (?:am |are |is |will |shall |have |has |got |just |now |about |going |to |gonna |want |wants |need |needs |think |might |must |decided |trying |tried |ready |planning |can |could |should |would )*(?P<head>(?:go|going|climb|climbing|climbed|crawl|crawling|jump|jumping|get|getting|step|stepping|lower|lowering|drop|dropping|went|hop|hopping|enter|entering|dive|diving|head|heading|goes|gets|climbs)(?: myself| himself| herself| him| her)? (?:on |right |back |down |up )*(?:{_INTO_TANK}|in there|down there|inside there|in it|into it))",
    ),
    _w(
        "going_in",
        r"(?:i|we|he|she|they|husband|wife|son|neighbou?r|dad|brother|someone|somebody) (?:am |are |is |will |have |just |now |about |to |want |wants |need |got |think |trying |ready |decided |going )*(?P<head>(?:climb|climbing|crawl|crawling|jump|jumping|lower|lowering)(?: myself| himself)? (?:on |right |back )*(?:in|down|inside))",
    ),
    _w(
        "going_in",
        r"(?:i am|we are|i will|he is|she is|they are|husband is|wife is|let me|i have to|i need to|i got to|about to|i have got to|have to|got to) (?:just |now |about |to |ready |going to )*(?P<head>(?:going|go) (?:on )?(?:in|down|under))(?! (?:the|my|our|a|his|her) (?:house|home|kitchen|basement|garage|shed|store|stairs|town|bathroom|barn|office)|side|circles|to (?:town|bed|work|wash|eat|get|clean|grab|check|take|make|drink|lunch|the|my|find|look|use|put|call|have|rest|sleep|change|warm|cool|start)| for| now to| and (?:wash|eat|clean|get)| about| with| person| detail| \d| soon| a few| a minute| a bit| order| blind| before| because it| since it| when it)",
    ),
    _w(
        "going_in",
        rf"(?:i|we|he|she|they|husband|someone|neighbou?r|wife|son|daughter|{CHILD}) (?:am |are |is |will |was |just |have |has |to |going |about |can |could |had |keeps |need |needs |want |wants |trying |tried |got )*(?P<head>(?:reach|reaching|reached|stick|sticking|stuck|put|putting|lean|leaning|leaned|bend|bending|hang|hanging)(?: my| his| her| their| your)?(?: whole| bare)?(?: arm| arms| hand| hands| head| face| body)? ?(?:way |down |right |all the way )*(?:in|into|inside|down|through)) (?:to (?:get|grab|pick|fetch|pull|reach|feel|see|look|fish)|(?:the |that )?(?:{_TANK})|there|it|and (?:grab|get|pull|fish|feel)|after|for (?:it|my|the))",
    ),
    _w(
        "going_in",
        r"(?P<head>(?:i|we|he|she) (?:am |is |are )?(?:going to|will|am going to) (?:enter|climb|go down|hop in|get in|go in after)) (?:the |in |into |down |it|to )+(?:septic|tank|hole|pit|it|there|get)?",
    ),
    _w("going_in", r"(?P<head>voy a (?:entrar|bajar|meterme|meter|saltar)|me voy a meter|estoy entrando)"),
    # somebody feels ill
    _w(
        "feeling_ill",
        r"(?P<head>dizzy|dizziness|woozy|light ?headed|lightheadedness|head is (?:spinning|swimming|pounding|splitting|killing|throbbing|light)|room is spinning|everything is spinning|world is spinning|queasy|nauseous|nauseated|nausea|faint(?!ly)|fainty|mareado|mareada|mareo|mareos|nauseas|vertigo|disoriented|seeing (?:stars|double|spots)|about to (?:pass out|faint|throw up|puke|vomit|black out|keel over))",
        bare=True,
    ),
    _w(
        "feeling_ill",
        r"(?P<head>passed out|pass(?:ing|es)? out|fainted|fainting|blacked out|blacking out|knocked out|keeled over|unconscious|unresponsive|lost consciousness|losing consciousness|out cold|se desmayo|desmayado|desmayada|inconsciente|desmaye)",
    ),
    _w(
        "feeling_ill",
        rf"(?:{LIVING}|i|we|who) (?:is |are |am |has |have |just |all |suddenly |both |was )*(?P<head>collapsed|collapsing|collapses|went limp|gone limp|went down|is limp|is down|turned blue|turning blue|is blue|fell over|fell down|dropped to the ground|is lying|lying there|slumped|is foaming|having a seizure|seizing|is choking|choking|gasping|hurt|bleeding badly)(?! (?:the|a) (?:lid|cover|sheet|chair))",
    ),
    _w(
        "feeling_ill",
        r"(?P<head>(?:not|is not|are not|stopped|quit) (?:even )?(?:breathing|moving|responding|waking up|waking|answering|conscious|talking))(?! the)",
    ),
    _w("feeling_ill", r"(?P<head>(?:will|does|do|did) not (?:wake up|wake|respond|answer me|move and|get up|come to))"),
    _w(
        "feeling_ill",
        r"(?P<head>(?:can not|could not|can hardly|can barely|hard to|trouble|difficulty|struggling to|hard time|not able to|unable to|no puedo|having trouble) (?:breathe|breathing|breath|get (?:my |any )?(?:breath|air)|catch (?:my|his|her) breath|respirar|stand up|see straight|think straight|feel my|stay awake|keep my eyes open))",
    ),
    _w(
        "feeling_ill",
        r"(?:have|has|having|got|getting|gets|with|my|bad|terrible|splitting|pounding|sudden|killer|feel|a|his|her|huge|awful|massive|the) (?P<head>(?:a |an |the )?(?:really |very |bad |terrible |splitting |pounding |killer |awful |huge |slight |sudden |little |bit of a |mild |big |nasty |strong |major |massive )*head ?aches?)",
        bare=True,
    ),
    _w(
        "feeling_ill",
        r"(?P<head>head (?:really |is |started |has started |starts |just |suddenly )*(?:hurts|hurting|aches|aching|pounds|throbs|ache|to hurt|to pound|spins))",
    ),
    _w(
        "feeling_ill",
        r"(?P<head>(?:chest (?:hurts|pain|pains|is tight|feels tight)|tight chest|heart (?:is )?(?:racing|pounding)|throat is (?:burning|closing)|eyes are (?:burning|stinging)|lungs (?:hurt|are burning|burn)|me duele la cabeza|dolor de cabeza|vision is (?:blurry|going|fuzzy|blurred)|blurry vision|ears are ringing|hands are tingling|legs (?:are|feel) (?:weak|like jelly|wobbly)|legs (?:gave|are giving) out))",
    ),
    _w(
        "feeling_ill",
        r"(?:i|we|he|she|they|husband|wife|son|daughter|helper|kid|kids|dog|everyone|both of us|me|neighbou?r|friend|dad|mom|brother|person|man|woman|someone|somebody|partner) (?:am |is |are |was |were |feel |feels |felt |feeling |getting |got |starting |started |to |just |now |suddenly |be |become |becoming |kind of |kinda |a bit |bit |a little |very |really |so |all |of |sudden |pretty |going |sort |look |looks |looking |seem |seems |acting |both |starts |has |have |been )*(?P<head>(?:sick|ill|unwell|weak|woozy|shaky|wobbly|funny|weird|strange|off|out of it|confused|disorientated|drowsy|sleepy|groggy|loopy|spacey|foggy|poisoned|overcome|pale|clammy|numb|terrible|awful|horrible|rough|green|short of breath|out of breath|breathless|slurring|vomiting|throwing up|threw up|puking|puked|barfing|vomited|gagging|coughing (?:a lot|bad|badly|hard|blood|and)|gassed))(?! (?:about|of|and tired|with worry|to death|smell|smelling|color|colour|taste|the|from work|that|on|gas|concrete|because of the (?:cost|price)|it|him|ly|job|day|season))",
    ),
    _w("feeling_ill", r"(?P<head>feel(?:ing|s)? unwell)"),
    _w(
        "feeling_ill",
        r"(?P<head>(?:gas|gases|smell|fumes|stink|fume|stench|vapou?rs?|odou?r|it) (?:is |are |has |have |just |really )*(?:got to (?:me|him|her|us)|gets? to (?:me|him|her)|getting to (?:me|him|her|us)|overcame|overcoming|overwhelmed (?:me|him|her)|knocked (?:me|him|her)|making (?:me|him|her|us) (?:sick|ill|dizzy|gag|cough|faint|feel)|made (?:me|him|her|us) (?:sick|ill|dizzy|faint|throw up|puke|vomit|feel)|makes (?:me|him|her|us) (?:sick|ill|dizzy|faint|feel (?:sick|ill|weird|dizzy|funny))))",
    ),
    _w(
        "feeling_ill",
        r"(?P<head>(?:breathed|inhaled|breathing|breathing in|breathed in|inhaling|overcome by|overcome with|whiff of|poisoned by) (?:in |a lot of |lots of |too much |some |the |all |a bunch of |that )*(?:gas|gases|fumes|fume|methane|sewer gas|vapors?))",
    ),
    _w(
        "feeling_ill",
    _w("feeling_ill", r"(?P<head>(?:need|needs) (?:an ambulance|a doctor|a medic|paramedics)(?: now| quick| right away| here| fast)?|(?:having|had) a heart attack)", unsure=True),
        unsure=True,
    ),
    # a child or anyone else too near the open hole
    _w(
        "child_near",
        rf"(?:{LIVING}|i|we|everyone|everybody) (?:is |are |am |was |were |keeps |keep |just |now |has |have |both |all |playing |going |still |been |there |right |out |outside |got |standing |also |always |and |{CHILD} |{PET} )*(?P<head>(?:leaning|leans|leaned|lean|hanging|peering|bending|bent|crouching|kneeling|looking|looked|peeking|standing|straddling|stood|dangling|squatting|hovering|lying) (?:way |right |far |his head |her head |their heads? |down |out |their feet |his feet )*(?:over|into|in|above|across)) (?:the |that |it|to |there|an |our |this )?(?:open |big |edge of the )?(?:{_HOLE}|it|edge|side)?",
    ),
    _w(
        "child_near",
        rf"{CHILD} (?:is |are |was |were |keeps |keep |just |now |has |have |both |all |got |still |been |out |there |right |always |also |and {CHILD} |and {PET} |of mine |next door )*(?:playing |running |standing |sitting |walking |crawling |wandering |jumping |riding |going |getting |stepping |running around |walking around |messing around |hanging around |hanging out |walking up |coming |heading |headed |wandered |walked |ran |crawled |climbing |went |came |toddling |sneaking |dancing |bouncing |climbed |looking |play |jump |run |stand |sit )*(?:too |very |really |so |right |way |up |over |straight |dangerously |out )*(?P<head>(?:near|next to|close to|closer to|by|beside|at|around|on|on top of|over|to|toward|towards|for|in front of|onto|inches from|a foot from|at the edge of|cerca)) (?:the |that |an |our |this |del |de la |de el )?(?:edge of the |side of the |rim of the |top of the )?(?:open |uncovered |septic |tank |riser )*(?:hole|opening|open tank|pit|manhole|edge|lid|cover|hatch|riser|tank|open one|agujero|hoyo|tanque|fosa|pozo|septic)(?! (?:closed|shut|alarm|company|store|school))",
    ),
    _w(
        "child_near",
        rf"{CHILD} (?:is |are |was |has |have |just |now |keeps |trying |to |got |started |almost |nearly |came |going |about )*(?P<head>(?:climbing|climb|reaching|reach|crawling|crawl|sticking|stuck|put|putting|poking|throwing|dropping|dipping|dangling|falling|fall|jumping|jump|fell) (?:his |her |their |a |an |toys? |rocks? |stones? |sticks? |things |stuff )*(?:arms? |hands? |foot |feet |legs? |head |fingers? )?(?:around )?(?:in|into|inside|down|onto|on))(?: (?:the |it|that |there|our |to )?(?:{_HOLE}|it|there)?)(?! (?:house|yard|pool|kitchen|garden|bed|school|trampoline|couch|swing|tree))",
    ),
    _w(
        "child_near",
        rf"{PET} (?:is |are |keeps |was |has |just |right |standing |sniffing |running |sitting |too |close |lying |digging |walking |jumping )*(?P<head>(?:leaning|sniffing|hanging|next to|near|by|close to|around|on the edge of|at the edge of|at|over|drinking from)) (?:over |in |into |around |at |right )*(?:the |that )?(?:edge of the )?(?:open )?(?:hole|opening|open tank|pit|manhole|open lid|edge)",
    ),
    _w(
        "child_near",
        r"(?P<head>(?:head|face|arm|arms|hand|hands|upper body|foot|leg|feet) (?:is |are |down |right |stuck |way |all the way )*(?:in|inside|into) the (?:hole|tank|opening|pit|manhole|septic))",
    ),
    _w(
        "child_near",
        rf"(?:{ADULT}|{CHILD}|i|we) (?:is |are |am |was |just |has |have )*(?P<head>(?:standing|stood|jumping|jumped|sitting|sat|walking|walked|stomping|parked|playing|dancing)) (?:right |up |around )*(?:on|on top of|across) (?:the |that |it|our )?(?:septic |tank |concrete |plastic |old )?(?:lid|cover|hatch|manhole)",
    ),
    _w(
        "child_near",
        rf"{CHILD} (?:by|near|beside|at|next to|on|over) (?P<head>(?:the )?(?:open )?(?:hole|opening|manhole|pit|open tank|lid))",
        bare=True,
    ),
    _w("child_near", rf"{CHILD} (?P<head>(?:almost|nearly|just about) (?:fell|went|slipped|tumbled|stepped))"),
    _w("child_near", rf"(?:i |we )?(?P<head>(?:can not|could not) find) (?:my |the |our )?{CHILD}", unsure=True),
    _w(
        "child_near",
        rf"(?:{LIVING}|i) (?:is |are |am |has |just |was )*(?P<head>(?:reaching|reached) (?:in|into|down)(?: there| it| the {_HOLE})?)(?! (?:the house|my|his|her))",
    ),
    # fire
    _w(
        "fire",
        r"(?P<head>(?:caught|on|started a|there is a|there is|catching|see) fire)(?! (?:pit|place|department|station|wood|hydrant|truck|ants?|alarm|extinguisher|ring|hall|code))",
    ),
    _w(
        "fire",
        r"(?P<head>(?:fire|flames?|sparks?|explosion|blast|fuego|llamas)) (?:is |are |just |came |coming |shooting |shot |shoots |flying |flew |leaping )*(?:in|out|out of|from|at|near|over|by|next to|inside|above|around|up|everywhere|came|coming|shooting) (?:the |of |from |it|there|that )?(?:the )?(?:septic )?(?:tank|hole|opening|manhole|lid|pit|pump|it|there|vent|riser|everywhere)?",
        bare=True,
    ),
    _w(
        "fire",
        r"(?P<head>(?:exploded|explosion|blew up|blown up|just blew|ignited|flash of fire|flames are|flames came|flames shot|fireball|went boom|big boom|whoosh of flame|se prendio|hubo una explosion|exploto|incendio))(?! (?:my|the) phone)(?! the balloon)",
    ),
    _w(
        "fire",
        r"(?:it|tank|hole|lid|pump|grass|gas|something|there|pole|cloth|truck|box) (?:is |are |just |has |have |started )*(?P<head>(?:burning|on fire|in flames|sparking|smoldering|smouldering|arcing|burst into flames|smoking|caught fire|throwing sparks|making sparks))(?! (?:smell|eyes|nose|sensation|a brisket|meat))",
    ),
    _w(
        "fire",
        r"(?:is|are|am|was|started|keeps|been|just|he|she|guy|man|neighbou?r) (?P<head>(?:smoking|vaping|lighting|having a smoke|having a cigarette|lit|lighting up|flicking))(?: (?:a |an |his |her |up |my |the |some )*(?:cigarettes?|cigars?|cig|smoke|lighter|match|pipe|joint|torch|candle|vape))?(?= (?:\w+ ){0,3}(?:right |over |here|there|near|by|next|beside|at|above|hole|tank|opening|while|it|lid)|$| \|)(?! (?:\w+ ){0,3}(?:inside|indoors|porch|away|house|meat|brisket|ribs))",
    ),
    _w(
        "fire",
        r"(?P<head>(?:lit|lighting|struck|dropped|threw|held|flicked|lights|uses|using|used|holding|put|light|strike) (?:a |an |his |her |my |up |the |that |lit )*(?:match|lighter|cigarette|cigar|candle|torch|flame|smoke|cig|flare|firework|burning \w+))(?= (?:\w+ ){0,4}(?:near|by|next|beside|at|over|above|in|into|to see|down|look|hole|tank|opening|here|there)|$| \|)",
    ),
    _w("fire", r"(?P<head>smoke (?:is )?(?:coming|pouring|rising|billowing|comes) (?:out|up|from))"),
    # something hit while digging, or a shock
    _w(
        "struck",
        r"(?P<head>(?:hit|cut|struck|nicked|broke|severed|sliced|punctured|pierced|ruptured|damaged|clipped|snagged|cracked|dug into|dug through|went through|cut through|cut into|drove through|poked|stabbed|bent|ripped|tore)) (?:in ?to |through |up |open )?(?:a |an |the |my |our |some |what looks like a |some kind of |something like a )?(?:buried |underground |live |old |yellow |main |natural |high voltage )*(?:gas|power|electric|electrical|electricity|propane|cable|wire|wires|utility|buried cable|phone line|fiber|live wire|conduit|gasline|powerline|water line|water main|water pipe)(?: (?:line|lines|pipe|pipes|cable|cables|wire|wires|main|conduit))?(?! (?:bill|tape|costs?|usage|off))",
    ),
    _w(
        "struck",
        r"(?P<head>(?:gas|propane) (?:is |line is |pipe is )?(?:leaking|hissing|escaping|leak|line broke|line is broken|coming out)|hissing (?:gas|sound from the (?:gas|pipe))|smell (?:natural gas|propane)|i smell gas|fuga de gas)",
    ),
    _w(
        "struck",
        r"(?P<head>(?:electrocuted|got (?:a |an )?(?:electric |electrical |bad |big |nasty )?(?:shock|shocked|zapped|jolt|zap)|shocked (?:me|him|her|us|my)|zapped (?:me|him|her|us)|electric shock|getting shocked|gives? (?:me|you|him|us) (?:a|an) (?:electric )?shock|gave (?:me|him|her|us) (?:a|an) (?:electric |bad |big )?(?:shock|jolt|zap)|electrocuto|live wire|live wires|bare wires?|exposed wires?|feel (?:a )?(?:shock|tingle|current)|downed power line|power line is down|wires? (?:is|are) (?:sparking|bare|exposed|live)))(?! (?:by|at|about) (?:the|how) (?:price|cost|bill|quote|much|bad))(?! (?:to|that) )",
    ),
    # the lid
    _w(
        "lid_broken",
        rf"{_LID} (?:on (?:it|the tank|there|top) |over (?:it|the tank) |of (?:it|the tank) |for (?:the )?(?:tank|riser) |edge |has a |concrete |that |which |{_BE} |and |is |a |an |has |on one side |when |of |i |we )*(?P<head>cracked|cracking|cracks|crack|broken|broke|breaking|busted|bust|shattered|split|splitting|splintered|snapped|rocking|rocks|rock|rocky|wobbling|wobbles|wobbly|wobble|wobbled|rocked|teetering|tipping|tips|tipped|loose|caved|caving|collapsed|collapsing|collapse|crumbling|crumbled|crumbles|falling apart|fell apart|coming apart|missing|gone|disappeared|stolen|sagging|sags|sagged|sunken|sunk|sinking|sank|bowing|bowed|bending|bends|flexing|flexes|flexed|rotten|rotted|rusted|unstable|unsteady|gave way|giving way|gives way|fallen in|fell in|fell into|fell down|fell|falling in|dropped in|dropped into|hole in it|shifted|shifting|tilted|tilting|broken in|rota|roto|rajada|quebrada|suelta|agrietada|floja|in pieces|in half|chunk missing|smashed|give|gives|giving|moving|moved|moves|damaged|crooked)(?! (?:on|over) (?:it|top) (?:to|for)| (?:the|a) (?:lid|seal|window)| (?:easily|open|over to|up to|off to|aside|away|out of)| solid| on (?:it|top)\b| (?:garden|salt))",
    ),
    _w(
        "lid_broken",
        rf"(?P<head>cracked|broken|busted|split|rocking|wobbly|missing|crumbling|loose|shattered|caved|rotten|rusted out|unstable|collapsed|damaged|unsteady|sagging|sunken|falling apart) (?:concrete |plastic |septic |tank |old |in |inlet |outlet |manhole |fiberglass )*(?:{_LID})(?! (?:seal|gasket|bolt|screw|handle))",
        bare=True,
    ),
    _w(
        "lid_broken",
        rf"(?P<head>cracks?|holes?|split|break|gap|fracture|grieta|fissure|rotten spot|soft spot|chunk|piece) (?:\w+ )?(?:in|across|through|on|down|along|out of|missing from|broken off|running|runs|right|all|the|middle|of|side|to|around|goes|going|under|near|en|la|it|off|centre|center|over) (?:{_G3})(?:the |my |our |that |this |la |one )?(?:concrete |plastic |septic |tank |old |inlet |outlet |riser )*{_LID}",
        bare=True,
    ),
    _w(
        "lid_broken",
        rf"(?P<head>broke|broken|cracked|busted|split|smashed|snapped|shattered|cracking|breaking) (?:the |my |our |that )(?:concrete |plastic |septic |tank |old |inlet |outlet |riser |whole )*(?:{_LID})(?! (?:seal|gasket|bolt|screw|handle|open|a bit|a little|an inch|up|loose|off|free)\b)",
    ),
    _w(
        "lid_broken",
        r"(?P<head>(?:there is no|has no|have no|without a|with no|no hay|no tiene|sin|is no) (?:proper |real |actual |septic )?(?:lid|cover|tapa)(?! (?:open|problem|damage|crack|issue|weight|bolts?|screws?|lock|handle)))",
    ),
    _w(
        "lid_broken",
        r"\b(?:it|one of them|the thing|concrete|the top|top|this thing|the plastic|plastic) (?:is |has |just |looks |feels |seems |really |a bit |a little |bit |kinda |kind of |slightly |totally |definitely |also |now |all |got |and |completely |does |did |sort of |has a |starting to )*(?P<head>cracked|rocking|rocks|wobbles|wobbling|wobbly|caved in|caving in|gave way under|giving way|crumbling|rocked|wobbled|has a crack|rocks back and forth|cracks|flexes|cracking|crack in it|sags|rocky)(?! (?:the|and roll|salt|open|up|jokes?|soil|ground|garden|dirt))",
    ),
    _w(
        "lid_broken",
        rf"{_LID} (?P<head>(?:does not|will not|is not|do not|would not|did not) (?:sit|fit|lie|lay|seat|close|go|sitting|fitting|lying|seating|stay|secure|stable|steady|safe|hold|shut|seal)(?: \w+){{0,2}} ?(?:flat|right|properly|level|down|still|back|on|steady|shut|put|all the way|tight)?)",
        unsure=True,
    ),
    _w(
        "lid_broken",
        rf"{_LID} (?:is )?(?P<head>(?:can not) (?:be )?(?:closed|close|shut|secured|fastened|put back))",
        unsure=True,
    ),
    _w(
        "lid_broken",
        rf"(?P<head>(?:foot|leg|mower|tractor|truck|car|wheel|tire|boot|heel) (?:just |almost |nearly |went |has |gone |broke |fell |punched |poked |is )+(?:through|into|in)) (?:the |that |it|our )?(?:septic |tank )?(?:{_LID}|ground|grass|yard|lawn|top|hole|tank|dirt|it)?",
    ),
    # left open
    _w(
        "lid_left_open",
        rf"(?P<head>(?:left|leaving|leave|forgot|forgotten|have left)) (?:it |the |with |that |my |our |to |put |close |shut |cover |fasten |screw |replace )*(?:septic |tank |hole |opening )*(?:{_LID}|hole|tank|opening|pit|it) (?:\w+ )?(?:off|open|uncovered|back|unattended|wide open|back on|ajar|unlocked|unfastened|closed|on|up|shut)(?! (?:to|for|the) (?:air|dry))",
    ),
    _w(
        "lid_left_open",
        rf"(?P<head>(?:hole|tank|opening|pit|lid|manhole|it) (?:is |was |has been |just |still |left |sitting |wide |out there |been |there |lying )+(?:open|uncovered|off)) (?:and |with |\| )*(?:nobody|no one|unattended|i am inside|we are inside|i am in the house|we left|we went|i left|i went|all night|overnight|since|i am not there|i am at|no adult|alone|{CHILD})",
    ),
    _w(
        "lid_left_open",
        r"(?P<head>forgot (?:about )?(?:to (?:close|cover|shut|put|replace)|the)) (?:it|the|that) ?(?:septic |tank |hole )*(?:lid|cover|tank|hole|it|up|back)?",
    ),
    _w(
        "lid_left_open",
        r"(?P<head>(?:open|uncovered) (?:septic |tank )?(?:hole|tank|manhole|pit)) (?:in|with) (?:the|our|my|nobody)",
        bare=True,
        unsure=True,
    ),
    # the ground
    _w(
        "ground_sunk",
        rf"{_GROUND} (?:above |over |around |near |by |next to |beside |there |the |my |our |septic |tank |hole |lid |on top |of |it |where |here |right |has |have |is |are |was |just |all |suddenly |starting |started |to |keeps |looks |seems |kind of |kinda |a bit |a little |bit |really |in |back |out |at |about |an? |inch|inches |foot |feet |and |soft |spongy |got |feels |like |slowly |be |been )*(?P<head>sank|sunk|sinking|sunken|sinks|sink|caved|caving|cave|caves|collapsed|collapsing|collapses|gave way|gave out|giving way|gives way|dropped|dropping|opened up|opening up|subsided|subsiding|subsidence|sagging|sagged|sags|hollow|hundido|hundio|hundiendo|fell in|falling in|fell away|falling away|depressed|dipped|washed out|washing out|swallowed|slumped|slumping|crumbling|moved)(?! (?:to|by) \d+ degrees)",
    ),
    _w(
        "ground_sunk",
        r"(?P<head>sink ?holes?|sunken (?:ground|spot|area|soil|yard|patch|lawn|place)|cave ?in|hundimiento|socavon|sunk ground|sunken)",
        bare=True,
    ),
    _w(
        "ground_sunk",
        r"(?P<head>(?:hole|pit|crater|gap|void|depression|dip)) (?:has |just |is |suddenly |that |which |was )*(?:opened|opening|appeared|appearing|formed|forming|showed|developed|developing|showing|in the (?:ground|yard|lawn|grass|dirt) (?:over|above|near|next|by|where|beside))",
        bare=True,
    ),
    _w(
        "ground_sunk",
        r"(?P<head>(?:depression|dip|sag|sinking spot|low spot)) (?:\w+ )?(?:over|above|around|on top of) (?:the |my |our )?(?:septic )?tank",
        bare=True,
    ),
    _w(
        "ground_sunk",
        r"(?P<head>(?:foot|feet|leg|legs|boot|mower|tractor|i|we|truck|car|wheel|dog) (?:just |almost |nearly |have |has |is |started |all )*(?:sank|sunk|sinking|sinks)) (?:in|into|down|through|up to|when|while|to my)",
    ),
    _w("ground_sunk", r"(?P<head>se hundio|se esta hundiendo|se hunde) ?(?:el|la)?"),
    # sewage in the house
    _w(
        "sewage_in_house",
        rf"{_FILTH} (?:is |are |was |has |have |keeps |started |starting |just |now |all |been |water |and |paper |coming |to |still |stuff |literally |out )*(?:{_UP} )?(?:up |back |out |again |from |of |everywhere |over |all |in |into |through |on |onto |down |there |inside |the |my |our |her |his |a |an |both |guest |master |downstairs |upstairs |kids |kitchen |laundry |lower |bottom )*(?P<head>{_FIXTURE}|{_INDOORS})(?! (?:smell|smells|odor|pipe|vent))",
    ),
    _w(
        "sewage_in_house",
        rf"(?:{_FILTH}|water|stuff|it|gunk|something|liquid|everything) (?:is |are |was |has |have |keeps |started |starting |just |now |to |all |still )*(?P<head>(?:coming (?:back )?up|comes (?:back )?up|came (?:back )?up|bubbling up|bubbles up|backing up|backed up|backs up|back up|rising|rises|flooding|flooded|pouring|gushing|overflowing|overflowed|shooting up|pushing up|spilling|spilled|leaking up|welling up|coming out|coming in|filling)) (?:out |of |back |again |through |from |in |into |inside |up |over |on |onto |the |my |our |a |all |both |guest |master |downstairs |upstairs |basement |kitchen |laundry |kids |lower |bottom |bathroom )*(?:{_FIXTURE}|{_INDOORS})",
    ),
    _w(
        "sewage_in_house",
        rf"{_FIXTURE} (?:in |upstairs |downstairs |the |my |our |basement |bathroom |bath |house |room |drain |and |{_FIXTURE} |both |all |is |are |was |were |has |have |keeps |keep |just |now |started |starting |been |got |of |them |to |it |suddenly |still |down |floor |there |kitchen |guest |laundry |master |also |water |really |that |which |full of |with )*(?P<head>(?:overflowing|overflowed|overflows|overflow|backing up|backed up|backs up|back up|backup|backups|flooding|flooded|floods|coming back up|coming up|spilling|spilled|bubbling up|bubbling over|regurgitating|spewing|vomiting|desbordado|desbordando|desborda|rebosando|shooting up|running over|ran over|full of {_FILTH}|filling (?:up )?with {_FILTH}|filling up with \w+ water|has {_FILTH} in it|erupting|erupted|rose to the rim|rising|tapado y sale))",
    ),
    _w(
        "sewage_in_house",
        r"(?P<head>(?:sewage|septic|sewer|toilet|shower|drain|basement|tank|waste) (?:line )?(?:back ?ups?|backing up|backed up|back up))(?! (?:pump|plan|valve|generator|insurance|battery|field))",
        bare=True,
    ),
    _w(
        "sewage_in_house",
        rf"(?P<head>(?:{_FILTH}) (?:all over|everywhere|on|in|inside|into|throughout|floods?|flooding|flooded|covering)) (?:the |my |our |in |of )*(?:{_G2})?(?:{_INDOORS}|{_FIXTURE}|bath|carpet)(?! smell)",
        bare=True,
    ),
    _w(
        "sewage_in_house",
        r"(?:it|everything|house|whole house|drains|all the drains|system|plumbing|all drains|all of the drains|stuff|we) (?:is |are |has |have |just |all |now |keeps |started |started to |been |starting |to |again |both )*(?P<head>(?:backing up|backed up(?! the (?:car|truck|trailer|files?))|backs up|overflowing|overflowed)) ?(?:in|into|inside|again|now|through|on us|here|everywhere|badly)?(?! (?:the (?:car|truck|trailer|files?|computer|drive(?:way)?)|my|files|a step|a bit|to the|over the outlet|a little from|and forth))",
        unsure=True,
    ),
    _w(
        "sewage_in_house",
        rf"(?P<head>(?:back ?up|overflow|flood) (?:in|into|inside) (?:the |my |our )(?:{_INDOORS}|{_FIXTURE}))",
        bare=True,
    ),
    _w(
        "sewage_in_house",
        r"(?P<head>(?:poop|sewage|shit|crap|turds?|feces|black water|brown water|wastewater) (?:in|up|coming|came|comes|floating) (?:\w+ ){0,3}(?:shower|tub|bathtub|sink|floor|basement|house|kitchen|drain|laundry|bath))",
        bare=True,
    ),
    _w(
        "sewage_in_house",
        r"(?P<head>(?:aguas negras|mierda|desague)) (?:\w+ ){0,5}(?:casa|bano|ducha|regadera|inodoro|cocina)",
    ),
    _w(
        "sewage_in_house",
        r"(?P<head>(?:overflowing|flooding|backing up) (?:toilets?|showers?|tubs?|drains?|sinks?|sewage|house|basement))",
        bare=True,
    ),
    # sewage on the ground
    _w(
        "sewage_outside",
        rf"(?P<head>puddles?|pools?|pond|lake|stream|river|pile|swamp|trickle|spring|fountain|charco|mess) (?:of )?(?:what looks like |what smells like |standing |stinking )*(?:{_FILTH})",
        bare=True,
    ),
    _w(
        "sewage_outside",
        rf"(?P<head>{_FILTH}) (?:is |are |was |has |have |keeps |started |starting |just |now |all |been |and |water |to |still |paper |out |there |puddle |literally )*(?:coming (?:up|out)|comes (?:up|out)|came (?:up|out)|bubbling(?: up)?|surfacing|surfaced|pooling|pooled|ponding|ponded|running|ran|seeping|seeped|leaking|leaked|oozing|flowing|spilling|spilled|rising|standing|puddling|everywhere|all over|showing|draining|overflowing|squirting|puddles?|gushing|pouring|sitting)? ?(?:up |out |over |onto |into |on |in |to |through |from |of |across |down |all |the |my |our |around |near |at |above |by |next |under |in front of |beside |tank |septic |side |a |lid )*(?:{_OUTSIDE})(?! smell)",
    ),
    _w(
        "sewage_outside",
        rf"(?P<head>{_FILTH}) (?:is |are |was |has |have |keeps |started |just |now |been )*(?:surfacing|pooling|ponding|bubbling (?:up|out)|spilling out|overflowing|coming out|leaking out|oozing out|running out|pouring out|gushing|coming to the surface|escaping|on the ground)",
    ),
    _w(
        "sewage_outside",
        r"(?:septic tank|tank|septic|manhole|riser|lid|cleanout|clean out|system) (?:is |has |was |just |keeps |started |now |are |been )*(?P<head>(?:overflowing|overflowed|overflows|spilling (?:over|out)|flowing over|running over|bubbling over|spewing|gushing|leaking (?:sewage|out|onto|into the yard|all over)|flooding (?:the|my|our)? ?(?:yard|lawn|grass)))",
    ),
    _w(
        "sewage_outside",
        r"(?P<head>(?:overflow|overflowing|spilling|bubbling|coming|running|pouring|leaking|oozing|gushing|water|liquid) (?:up |out |over )*(?:from|of|around|at|under|through) (?:under )?(?:the |my |our )?(?:septic |tank )*(?:lid|cover|manhole|riser|cleanout))(?! (?:hole)? ?(?:smell|when it rains))",
        bare=True,
    ),
    _w("sewage_outside", r"(?P<head>aguas negras) (?:\w+ ){0,4}(?:jardin|patio|suelo|afuera|yarda)"),
)
THINGS = re.compile(rf"\b(?:{_THING})\b")
LIVING_WORD = re.compile(rf"\b(?:{LIVING}|i|we|us|me)\b")

#: the same hazards in the base form, as a question or a "what if" puts them
ASKED: tuple[tuple[str, re.Pattern[str]], ...] = tuple(
    (hazard, re.compile(rf"\b(?:{pattern})\b"))
    for hazard, pattern in (
        ("fell_in", rf"(?:falls?|fell|falling|fallen|slips?|drops?|drop|tumbles?|goes|went) (?:down )?(?:in|into|inside|down)\b|(?:in|inside) the tank .*{LIVING}|{LIVING} (?:is |gets |got )?(?:stuck |trapped )?in the (?:tank|hole)"),
        ("going_in", r"(?:go|climb|get|crawl|jump|reach|enter|going|climbing|reaching|lean|leaning|step|entering) (?:down |over )?(?:in|into|inside|the tank|the septic|the hole|it)\b"),
        ("feeling_ill", r"dizz\w+|faint\w*|headaches?|nause\w+|sick|ill|unwell|light ?headed|pass(?:es|ed)? out|collapses?d?|breathe|unconscious|gas (?:kill|hurt|poison)\w*|fumes"),
        ("fire", r"fire|smok(?:e|ing)|cigarettes?|flames?|sparks?|explo\w+|lighters?|match(?:es)?|blow up|candle|vap(?:e|ing)"),
        ("struck", r"(?:hit|cut|strike|dig into|break|damage) (?:a |an |the |into )*(?:buried |underground )?(?:gas|power|electric\w*|cable|wire|utility|water)\b.*|shock\w*|electrocut\w+"),
        ("lid_broken", rf"(?:{_LID}) .*(?:crack\w*|broke\w*|breaks?|rock\w*|wobbl\w*|caves?|collapse\w*|missing|falls? in)|(?:crack\w*|broken|rocking|wobbly|missing) (?:\w+ )?(?:{_LID})|(?:it|is) (?:is )?(?:cracked|rocking)"),
        ("lid_left_open", rf"leave (?:it|the (?:{_LID}|tank|hole)) (?:open|off|uncovered)"),
        ("ground_sunk", rf"(?:{_GROUND}) .*(?:sinks?|sank|sunk|caves?|collapses?|gives? way)|sink ?holes?|cave ?in"),
        ("sewage_in_house", r"(?:sewage|septic|toilets?|showers?|drains?|water|it|system|house) .*(?:back(?:s|ed|ing)? ?up|overflow\w*|com(?:es|e|ing) (?:back )?up|flood\w*)|back ?ups?\b"),
        ("sewage_outside", r"sewage .*(?:yard|lawn|grass|outside|surfac\w*|ground)|(?:tank|septic) .*overflow\w*"),
        ("child_near", rf"{CHILD} .*(?:near|close|by|around|watch|help|play|lean)\b"),
    )
)  # fmt: skip
