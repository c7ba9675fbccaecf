"""What each hazard sounds like: patterns over the words that `hazard_words.normal` gives. Data with no logic of its
own.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

HazardVerdict = Literal["danger", "call_now"]


@dataclass(frozen=True, slots=True)
class Wording:
    """One way of telling a hazard. `head`: the group a denial binds to. `bare`: told without a verb, so that a
    question may hold it.

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
    r"(?:kids?|kiddos?|child|children|son|sons|daughter|daughters|toddler|toddlers|boy|boys|girl|"
    r"girls|baby|babies|grand ?son|grand ?daughter|grandkids?|grandchild(?:ren)?|nephew|niece|"
    r"little one|little ones|twins|teen|teenager|nino|nina|ninos|hijo|hija|bebe|year old|infant)"
)
PET = (
    r"(?:dog|dogs|puppy|pup|cat|cats|kitten|kitty|pet|animal|calf|cow|goat|lamb|sheep|horse|foal|pony|"
    r"deer|perro|perra|gato|perrito|doggy|chicken|hen|pig|piglet|labrador|lab)"
)
ADULT = (
    r"(?:husband|wife|spouse|partner|dad|daddy|father|mom|mum|mommy|mother|brother|sister|uncle|aunt|"
    r"grandpa|grandma|grandfather|grandmother|neighbou?r|friend|buddy|guy|man|woman|lady|person|"
    r"someone|somebody|"
    r"worker|helper|plumber|driver|tenant|roommate|cousin|coworker|he|she|they|him|her|them|el|ella|"
    r"esposo|esposa|marido|hermano|hermana|papa|mama|alguien|vecino|anybody else|one of (?:us|them|"
    r"the \w+))"
)
LIVING = rf"(?:{CHILD}|{PET}|{ADULT})"
_TANK = (
    r"(?:septic(?: tank)?|tank|hole|pit|opening|manhole|riser|access|sewage|sludge|muck|poop|chamber|"
    r"cesspool|tanque|pozo|fosa|hoyo|agujero|water|scum|thing|vault)"
)
_INTO_TANK = (
    rf"(?:in ?to|in|inside|down|down into|through|en|al|a) (?:the |that |our |my |an? |this |la |el "
    rf")?(?:open |septic |big |old )*{_TANK}"
)
_ELSE = (
    r"(?:one\b|love|line|place|price|value|half|two|pieces|with|step|behind|asleep|20\d\d|19\d\d|"
    r"january|february|march|april|may|june|july|august|september|october|november|december|spring|"
    r"summer|fall|winter|"
    r"(?:the |our |my |a |his |her )?(?:yard|garden|lawn|grass|pool|pond|creek|river|lake|road|"
    r"driveway|kitchen|house|bathroom|bath|bathtub|tub|shower|street|woods|snow|mud|ditch|field|bed|"
    r"past|stairs|storm|night|morning|afternoon|barn|garage|gutter|bucket|sink|toilet|basement|park|"
    r"forest))"
)
_THING = (
    r"(?:pole|stick|tape|measure|phone|cell|glove|gloves|lid|cover|cap|tool|tools|wrench|screw|screws|"
    r"screwdriver|bolt|bolts|nut|dirt|soil|leaf|leaves|rock|rocks|stone|stones|stuff|cloth|rag|sock|"
    r"towel|flashlight|light|torch|glasses|sunglasses|hat|"
    r"keys|key|ball|toy|toys|bucket|shovel|branch|root|roots|gravel|concrete|piece|pieces|chunk|"
    r"chunks|brick|tee|baffle|pipe|filter|handle|rope|string|marker|pen|pencil|ruler|level|levels|"
    r"sludge|scum|rain|snow|water|tree|trees|wall|price|prices|temperature|"
    r"some|bit|bits|sand|mud|mouse|rat|mice|frog|frogs|bug|bugs|spider|insect|worm|worms|snake|magnet|"
    r"lever|bar|hammer|knife|coin|watch|ring|camera|sample|sampler|bottle|cup|mask|goggles|fence|roof|"
    r"ceiling|grass|clippings|plug|gasket|seal|rubber|paper|wipe|wipes|battery|clamp|float|hook|pump|"
    r"number|numbers|reading|readings|cost|costs|rate|rates)"
)
_G2, _G3, _G4, _G6 = (rf"(?:(?!\|)[\w?']+ ){{0,{count}}}" for count in (2, 3, 4, 6))
_HOLE = r"(?:hole|opening|tank|pit|manhole|edge|septic|riser|lid|cover|access|hatch|hoyo|agujero|tanque|pozo|fosa)"
_LID = (
    r"(?:lid|lids|cover|covers|manhole|hatch|tapa|slab|top of (?:the |our |my )?(?:septic |old )?tank|"
    r"tank top|riser|tank roof)"
)
_BE = (
    r"(?:is|are|was|were|looks|look|looked|seems|seem|seemed|appears|feels|feel|got|has|have|just|now|"
    r"already|all|so|really|kind of|kinda|pretty|a bit|a little|bit|slightly|badly|completely|totally|"
    r"very|clearly|definitely|probably|maybe|may be|might be|could be|must be|also|being|been|be|to "
    r"be|too|like it is|like|half|partly|partially|both|still|sort of|esta|fully|super|quite|starting "
    r"to|started|begun|keeps|kept|it|there|right|way|even|getting)"
)
_GROUND = r"(?:ground|soil|dirt|earth|yard|lawn|grass|land|turf|area|spot|patch|driveway|suelo|tierra|garden|backyard)"
_FILTH = (
    r"(?:(?:raw |black |brown |human |dirty |nasty |stinky |smelly )*(?:sewage|sewer water|waste "
    r"?water|sewage water|septic water|septic|poop|poopy|shit|crap|turds?|feces|faeces|toilet water|"
    r"toilet paper|effluent|aguas? negras?|black water|brown water|dirty water|grey water|gray water|"
    r"gunk|sludge|filth|excrement|raw waste|human waste|waste|black stuff|nasty water|stinky water|"
    r"smelly water|black liquid|black goo))"
)
_FIXTURE = (
    r"(?:toilets?|showers?|bath ?tubs?|tubs?|baths?|sinks?|floor drains?|drains?(?! field)|"
    r"(?:basement|laundry|utility|kitchen|bathroom|downstairs|lowest|bath|shower|tub|sink) drains?|"
    r"commode|loo|washer drain|washing machine|laundry|inodoro|ducha|regadera|bano|plumbing|pipes|"
    r"sewer line|bidet)"
)
_INDOORS = (
    r"(?:house|basement|bathroom|bathrooms|kitchen|laundry room|laundry|floor|floors|hallway|crawl "
    r"?space|downstairs|indoors|bedroom|cellar|casa|bano|home|carpet|utility room)"
)
_UP = (
    r"(?:coming (?:back )?(?:up|out|in|through|from)|comes (?:back )?(?:up|out)|came (?:back )?(?:up|"
    r"out)|come up|bubbling (?:up|out)|bubbled up|backing up|backed up|backs up|back up|backup|rising|"
    r"rises|rose|overflowing|overflowed|overflows|overflow|spilling|spilled|flooding|flooded|floods|"
    r"pouring|poured|shooting|gushing|seeping|leaking|running|flowing|oozing|spewing|welling up|"
    r"regurgitating|all over|everywhere|saliendo|pushing up|filling)"
)
_OUTSIDE = (
    r"(?:yard|lawn|grass|ground|outside|garden|driveway|ditch|creek|surface|field|backyard|patio|"
    r"street|pasture|woods|flower ?bed|hill|slope|road|patio|jardin|patio|drain ?field|leach ?field|"
    r"drainfield|well|lake|pond|stream|neighbou?rs?)"
)


def _w(hazard: str, pattern: str, bare: bool = False, unsure: bool = False) -> Wording:
    return Wording(hazard, re.compile(rf"\b(?:{pattern})(?!\w)"), bare, unsure)


WORDINGS: tuple[Wording, ...] = (
    # a person or an animal in the tank
    _w(
        "fell_in",
        (
            rf"(?P<head>fell|fallen|slipped|slid|tumbled|tripped|went|gone|dropped|plunged|stumbled|toppled|"
            rf"been pushed|jumped|stepped|sank|sunk) (?:right |straight |head ?first |backwards? |all the way |"
            rf"part ?way |half ?way |part of the way |and (?:went|fell) |feet first |over |clean "
            rf")*(?:{_INTO_TANK}|in ?to it|in it\b|in there|into there|down there|down it)"
        ),
    ),
    _w(
        "fell_in",
        (
            rf"(?P<head>fell|fallen|falling|slipped|slid|tumbled|toppled) (?:right |straight |head ?first |"
            rf"backwards? |part ?way |half ?way |part of the way |all the way |clean )*(?:in ?to|in|down in|"
            rf"inside)(?! {_ELSE}\b)(?! (?:the |a |an |my |our |his |her )\w+ (?:last|20\d\d))"
        ),
    ),
    _w(
        "fell_in",
        (
            rf"{LIVING} (?:just |both |all |has |have |then )*(?P<head>went|gone|goes|fell|dropped|jumped|slid|"
            rf"slipped) (?:right |straight )*(?:in|down|under|through)(?! (?:the|to|for|my|our|a|town|there to|"
            rf"early|after|with|on|back|home|and|one)\b)"
        ),
        unsure=False,
    ),
    _w(
        "fell_in",
        (
            rf"{LIVING} (?:is |are |was |has |have |got |gets |am |be |been |now |still |just |all |down |"
            rf"lying |floating |trapped |stuck |drowning |sinking |fallen )+(?P<head>{_INTO_TANK}|in there|"
            rf"down there|inside it|in it)(?! (?:lid|cover|alarm|company|guy|man|truck|area|room|field|pump|"
            rf"repair|business|store))"
        ),
    ),
    _w(
        "fell_in",
        (
            rf"(?:there is|there are|we have|i see|i hear|i can hear|got) (?:an? |my |the |two |some ?one|some "
            rf"?body)?(?:\w+ )?{LIVING} (?P<head>{_INTO_TANK}|in there|down there)"
        ),
    ),
    _w(
        "fell_in",
        rf"(?:my |the |our |his |her )?{LIVING} (?:is |are |has |have |got |just )*(?P<head>trapped|drowning|sinking)",
    ),
    _w("fell_in", rf"(?P<head>stuck|trapped|drowning|sinking|swimming) (?:down )?{_INTO_TANK}"),
    _w(
        "fell_in",
        (
            r"(?P<head>(?:can not|could not) get (?:out|him out|her out|them out|my \w+ out)) of (?:the |this "
            r")?(?:tank|hole|pit|septic)"
        ),
    ),
    _w(
        "fell_in",
        r"(?:i am|we are) (?P<head>(?:stuck |trapped )?(?:in|inside) the (?:septic )?(?:tank|hole|pit))(?! \w+ing)",
    ),
    _w("fell_in", r"(?P<head>(?:man|woman|child|kid|person|boy|girl|dog) (?:in|down) the (?:tank|hole|pit))"),
    _w(
        "fell_in",
        (
            r"(?:se )?(?P<head>cayo|ha caido|caido|callo|se metio)(?= (?:\w+ ){0,4}(?:tanque|pozo|fosa|hoyo|"
            r"agujero|septico|dentro|adentro)|$| \|| (?:mi|el|la) \w+$)"
        ),
    ),
    _w(
        "fell_in",
        r"(?P<head>fell|fallen|falling) through (?:the )?(?:lid|cover|ground|top|grass|roof|slab|concrete|old lid)",
    ),
    _w("fell_in", rf"{LIVING} (?:is |has |was )?(?:just )?(?P<head>disappeared|vanished) (?:in|into|down|under)"),
    _w(
        "fell_in",
        (
            rf"(?:pulled|dragged|got|hauled|fished|pulling|getting) (?:my |the )?{LIVING} (?P<head>out of the "
            rf"(?:septic )?(?:tank|hole|pit|sewage))"
        ),
    ),
    # about to go in, or reaching in
    _w(
        "going_in",
        (
            r"(?P<head>going|go|goes|climb|climbing|climbed|jump|jumping|crawl|crawling|get|getting|went|run|"
            r"running|diving|dive|hop|head|heading) (?:back |right |down )?(?:in|down|inside|there|in there)? "
            r"?(?:to )?(?:in )?(?:after|to (?:get|grab|save|rescue|help|pull|reach|fetch)) (?:him|her|them|"
            r"(?:the|a|our) (?:dog|cat|puppy|kid|child|boy|girl|ball|phone|toy|pole|keys?|tape|baby|calf|goat|"
            r"animal)|my (?:ball|phone|keys|glasses|ring|pole|son|daughter|husband|wife|dog|cat|kid|child|boy|"
            r"girl|brother|dad|friend|puppy|baby))"
        ),
    ),
    _w(
        "going_in",
        (
            rf"(?:i|we|he|she|they|husband|wife|son|neighbou?r|dad|brother|guy|someone|somebody) (?:am |are |"
            rf"is |will |shall |have |has |got |just |now |about |going |to |gonna |want |wants |need |needs |"
            rf"think |might |must |decided |trying |tried |ready |planning |can |could |should |would "
            rf")*(?P<head>(?:go|going|climb|climbing|climbed|crawl|crawling|jump|jumping|get|getting|step|"
            rf"stepping|lower|lowering|drop|dropping|went|hop|hopping|enter|entering|dive|diving|head|heading|"
            rf"goes|gets|climbs)(?: myself| himself| herself| him| her)? (?:on |right |back |down |up "
            rf")*(?:{_INTO_TANK}|in there|down there|inside there|in it|into it))"
        ),
    ),
    _w(
        "going_in",
        (
            r"(?:i|we|he|she|they|husband|wife|son|neighbou?r|dad|brother|someone|somebody|let me|let us) "
            r"(?:am |are |is |will |have |just |now |about |to |want |wants |need |got |think |trying |ready |"
            r"decided |going )*(?P<head>(?:hop|hopping|dive|diving|slide|sliding|climb|climbing|climbed|crawl|"
            r"crawling|crawled|jump|jumping|jumped|lower|lowering|lowered)(?: myself| himself)? (?:on |right |"
            r"back )*(?:in|down|inside))"
        ),
    ),
    _w(
        "going_in",
        (
            r"(?:i am|we are|i will|he is|she is|they are|husband is|wife is|let me|i have to|i need to|i got "
            r"to|about to|i have got to|have to|got to|going to|wants to|want to|trying to|tries to) (?:just |"
            r"now |about |to |ready |going to )*(?P<head>(?:going|go) (?:on )?(?:in|down|under))(?! (?:the|my|"
            r"our|a|his|her) (?:house|home|kitchen|basement|garage|shed|store|stairs|town|bathroom|barn|"
            r"office)|side| circles| to (?!get (?:him|her|them|it|that|my)|grab|fetch|save|rescue|pull|help|"
            r"look for|retrieve|reach|the tank|the hole|there|it)| for| now to| and (?:wash|eat|clean|get "
            r"(?:my|the|some|a|gloves|lunch))| about| with| person| detail| \d| soon| a few| a minute| a bit| "
            r"order| blind| before| because it| since it| when it)"
        ),
    ),
    _w(
        "going_in",
        (
            rf"(?:i|we|he|she|they|husband|someone|neighbou?r|wife|son|daughter|{CHILD}) (?:am |are |is |will |"
            rf"was |just |have |has |to |going |about |can |could |had |keeps |need |needs |want |wants |"
            rf"trying |tried |got )*(?P<head>(?:reach|reaching|reached|stick|sticking|stuck|put|putting|lean|"
            rf"leaning|leaned|bend|bending|hang|hanging)(?: my| his| her| their| your)?(?: whole| bare)?(?: "
            rf"arm| arms| hand| hands| head| face| body)? ?(?:way |down |right |all the way )*(?:in|into|"
            rf"inside|down|through)) (?:to (?:get|grab|pick|fetch|pull|reach|feel|see|look|fish)|(?:the |that "
            rf")?(?:{_TANK})|there|it|and (?:grab|get|pull|fish|feel)|after|for (?:it|my|the))"
        ),
    ),
    _w(
        "going_in",
        (
            r"(?P<head>(?:i|we|he|she) (?:am |is |are )?(?:going to|will|am going to) (?:enter|climb|go down|"
            r"hop in|get in|go in after)) (?:the |in |into |down |it|to )+(?:septic|tank|hole|pit|it|there|"
            r"get)?"
        ),
    ),
    _w("going_in", r"(?P<head>voy a (?:entrar|bajar|meterme|meter|saltar)|me voy a meter|estoy entrando)"),
    # somebody feels ill
    _w(
        "feeling_ill",
        (
            r"(?P<head>dizzy|dizzi?y?ness|woozy|short(?:ness)? of breath|light ?headed|lightheadedness|head "
            r"(?:is )?(?:spinning|swimming|pounding|splitting|killing|throbbing|light)|room is spinning|"
            r"everything (?:is )?spinning|(?:lips|hands|fingers|face|feet|arms|legs) (?:is |are |feel |went |"
            r"going |all )*(?:tingling|tingly|numb)|(?:going|want|need|like i might|might|like|gonna|like i "
            r"may|may|like i will) (?:to )?(?:throw up|vomit|puke|be sick|pass out|faint|black out|barf|"
            r"collapse)|(?:can not|will not) stop (?:coughing|vomiting|throwing up|puking|gagging|shaking)|"
            r"(?:not making|makes no|is not making|making no) (?:any )?sense|talking nonsense|slurring|"
            r"(?:looks|look|looking|seems|acting|acts|getting|is getting) (?:very |really |a bit |kind of |"
            r"kinda |all )*(?:confused|pale|grey|gray|disoriented|woozy|sick|ill|green|blue|out of it|unwell)|"
            r"(?:light|foggy|swimmy) in the head|in a daze|world is spinning|queasy|nauseous|nauseated|nausea|"
            r"faint(?!ly| odou?r| smell| line| stain| mark| whiff| hint| trace| scent)|fainty|mareado|mareada|"
            r"mareo|mareos|nauseas|vertigo|disoriented|seeing (?:stars|"
            r"double|spots)|about to (?:pass out|faint|throw up|puke|vomit|black out|keel over)|throwing "
            r"up(?! (?:dirt|the|a))|threw up|puking|vomiting|barfing|dry heaving)"
        ),
        bare=True,
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>passed out|pass(?:ing|es)? out|fainted|fainting|blacked out|blacking out|knocked out|"
            r"keeled over|unconscious|unresponsive|lost consciousness|losing consciousness|out cold|se "
            r"desmayo|desmayado|desmayada|inconsciente|desmaye)"
        ),
    ),
    _w(
        "feeling_ill",
        (
            rf"(?:{LIVING}|i|we|who) (?:is |are |am |has |have |just |all |suddenly |both |was "
            rf")*(?P<head>collapsed|collapsing|collapses|went limp|gone limp|went down|is limp|is down|turned "
            rf"blue|turning blue|is blue|fell over|fell down|dropped to the ground|is lying|lying there|"
            rf"slumped|is foaming|having a seizure|seizing|is choking|choking|gasping|hurt|bleeding badly)(?! "
            rf"(?:the|a) (?:lid|cover|sheet|chair))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:not|is not|are not|stopped|quit) (?:even )?(?:breathing|moving|responding|waking up|"
            r"waking|answering|conscious|talking))(?! the)"
        ),
    ),
    _w("feeling_ill", r"(?P<head>(?:will|does|do|did) not (?:wake up|wake|respond|answer me|move and|get up|come to))"),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:can not|could not|can hardly|can barely|hard to|trouble|difficulty|struggling to|"
            r"hard time|not able to|unable to|no puedo|having trouble) (?:breathe|breathing|breath|get (?:my |"
            r"any )?(?:breath|air)|catch (?:my|his|her) breath|respirar|stand up|see straight|think straight|"
            r"feel my|stay awake|keep my eyes open))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?:have|has|having|get|got|getting|gets|with|my|bad|terrible|splitting|pounding|sudden|killer|"
            r"huge|awful|massive|and|slight|(?:smell|gas|fumes|stink|it|odou?r) (?:is )?(?:gave|giving|gives|"
            r"given) (?:me|him|her|us)) (?P<head>(?:a |an |the )?(?:really |very |bad |terrible |splitting |"
            r"pounding |killer |awful |huge |slight |sudden |little |bit of a |mild |big |nasty |strong |"
            r"major |massive )*head ?aches?)"
        ),
        bare=True,
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>head (?:really |is |started |has started |starts |just |suddenly )*(?:hurts|hurting|"
            r"aches|aching|pounds|throbs|ache|to hurt|to pound|spins))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:chest (?:hurts|pain|pains|is tight|feels tight)|tight chest|heart (?:is )?(?:racing|"
            r"pounding)|throat is (?:burning|closing)|eyes are (?:burning|stinging)|lungs (?:hurt|are burning|"
            r"burn)|me duele la cabeza|dolor de cabeza|vision is (?:blurry|going|fuzzy|blurred)|blurry vision|"
            r"ears are ringing|hands are tingling|legs (?:are|feel) (?:weak|like jelly|wobbly)|legs (?:gave|"
            r"are giving) out))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?:i|we|he|she|they|husband|wife|son|daughter|helper|kid|kids|dog|everyone|both of us|me|"
            r"neighbou?r|friend|dad|mom|brother|person|man|woman|someone|somebody|partner) (?:am |is |are |"
            r"was |were |feel |feels |felt |feeling |getting |got |starting |started |to |just |now |suddenly "
            r"|be |become |becoming |kind of |kinda |a bit |bit |a little |very |really |so |all |of |sudden |"
            r"pretty |going |sort |look |looks |looking |seem |seems |acting |both |starts |has |have |been "
            r")*(?P<head>(?:sick|ill|unwell|weak|woozy|shaky|wobbly|out of it|confused|disorientated|drowsy|"
            r"sleepy|groggy|loopy|spacey|foggy|poisoned|overcome|pale|clammy|numb|short of breath|out of "
            r"breath|breathless|slurring|vomiting|throwing up|threw up|puking|puked|barfing|vomited|gagging|"
            r"coughing (?:a lot|bad|badly|hard|blood|and)|gassed))(?! (?:about|of|and tired|with worry|to "
            r"death|smell|smelling|color|colour|taste|the|from work|that|on|gas|concrete|because of the "
            r"(?:cost|price)|it|him|ly|job|day|season))"
        ),
    ),
    _w("feeling_ill", r"(?P<head>feel(?:ing|s)? unwell)"),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:feel|feels|feeling|felt) (?:really |very |so |a bit |a little |kind of |kinda |all |"
            r"pretty |like |quite |just |suddenly |sort of |super |rather )*(?:funny|weird|strange|odd|off|"
            r"rough|terrible|awful|horrible|bad|drunk|lousy|crappy|crap|shit|death|hot and cold|clammy|dying|"
            r"sick|ill|weak|shaky|drowsy|sleepy|spacey|loopy|faint|poisoned|out of it|not right))(?! (?:about|"
            r"for|that|asking|to|smell))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:gas|gases|smell|fumes|stink|fume|stench|vapou?rs?|odou?r|it) (?:is |are |has |have |"
            r"just |really )*(?:got to (?:me|him|her|us)|gets? to (?:me|him|her)|getting to (?:me|him|her|us)|"
            r"overcame|overcoming|overwhelmed (?:me|him|her)|knocked (?:me|him|her)|making (?:me|him|her|us) "
            r"(?:sick|ill|dizzy|gag|cough|faint|feel)|made (?:me|him|her|us) (?:sick|ill|dizzy|faint|throw up|"
            r"puke|vomit|feel)|makes (?:me|him|her|us) (?:sick|ill|dizzy|faint|feel (?:sick|ill|weird|dizzy|"
            r"funny))))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:breathed|inhaled|breathing|breathing in|breathed in|inhaling|overcome by|overcome "
            r"with|whiff of|poisoned by) (?:in |a lot of |lots of |too much |some |the |all |a bunch of |that "
            r")*(?:gas|gases|fumes|fume|methane|sewer gas|vapors?))"
        ),
    ),
    _w(
        "feeling_ill",
        (
            r"(?P<head>(?:need|needs) (?:an ambulance|a doctor|a medic|paramedics)(?: now| quick| right away| "
            r"here| fast)?|(?:having|had) a heart attack)"
        ),
        unsure=True,
    ),
    # a child or anyone else too near the open hole
    _w(
        "child_near",
        (
            rf"(?:{LIVING}|i|we|everyone|everybody) (?:is |are |am |was |were |keeps |keep |just |now |has |"
            rf"have |both |all |playing |going |still |been |there |right |out |outside |got |standing |also |"
            rf"always |and |{CHILD} |{PET} )*(?P<head>(?:leaning|leans|leaned|lean|hanging|peering|bending|"
            rf"bent|crouching|kneeling|looking|looked|peeking|standing|straddling|stood|dangling|squatting|"
            rf"hovering|lying) (?:way |right |far |his head |her head |their heads? |down |out |their feet |"
            rf"his feet )*(?:over|into|in|above|across))(?! (?:the |my |our |a )?(?:house|window|kitchen|yard|"
            rf"porch|garden|truck|car|fence|doorway|tv|phone|garage|mirror|counter|fridge|shed|barn|driveway|"
            rf"room))"
        ),
    ),
    _w(
        "child_near",
        (
            rf"{CHILD} (?:is |are |was |were |keeps |keep |just |now |has |have |both |all |got |still |been |"
            rf"out |there |right |always |also |and {CHILD} |and {PET} |of mine |next door )*(?:playing |"
            rf"running |standing |sitting |walking |crawling |wandering |jumping |riding |going |getting |"
            rf"stepping |running around |walking around |messing around |hanging around |hanging out |walking "
            rf"up |coming |heading |headed |wandered |walked |ran |crawled |climbing |went |came |toddling |"
            rf"esta |estan |sneaking |dancing |bouncing |climbed |looking |play |jump |run |stand |sit "
            rf")*(?:too |very |really |so |right |way |up |over |straight |dangerously |out )*(?P<head>(?:near|"
            rf"next to|close to|closer to|by|beside|at|around|on|on top of|over|to|toward|towards|for|in front "
            rf"of|cerca del|cerca de|junto al|junto a|onto|inches from|a foot from|at the edge of|cerca)) "
            rf"(?:the |that |an |our |this |del |de la |de el )?(?:edge of the |side of the |rim of the |top "
            rf"of the )?(?:open |uncovered |septic |tank |riser )*(?:hole|opening|open tank|pit|manhole|edge|"
            rf"lid|cover|hatch|riser|tank|open one|agujero|hoyo|tanque|fosa|pozo|septic)(?! (?:closed|shut|"
            rf"alarm|company|store|school))"
        ),
    ),
    _w(
        "child_near",
        (
            rf"{CHILD} (?:is |are |was |has |have |just |now |keeps |trying |to |got |started |almost |nearly |"
            rf"came |going |about )*(?P<head>(?:peeking|peering|looking|swinging|climbing|climb|reaching|reach|"
            rf"crawling|crawl|sticking|stuck|put|putting|poking|throwing|dropping|dipping|dangling|falling|"
            rf"fall|jumping|jump|fell) (?:his |her |their |a |an |toys? |rocks? |stones? |sticks? |things |"
            rf"stuff )*(?:arms? |hands? |foot |feet |legs? |head |fingers? )?(?:around )?(?:in|into|inside|"
            rf"down|onto|on))(?: (?:the |that |our |to )?(?:open )?(?:{_HOLE}|it|there))?(?! (?:the |a |our |"
            rf"my |his |her )?(?:house|toilets?|sink|drain|box|car|tub|bath|shower|sandbox|truck|yard|pool|"
            rf"kitchen|garden|bed|school|trampoline|couch|swing|tree))"
        ),
    ),
    _w(
        "child_near",
        (
            rf"{PET} (?:is |are |keeps |was |has |just |right |standing |sniffing |running |sitting |too |"
            rf"close |lying |digging |walking |jumping )*(?P<head>(?:leaning|sniffing|going|running|walking|"
            rf"wandering|hanging|next to|near|by|close to|around|on the edge of|at the edge of|at|over|"
            rf"drinking from)) (?:over |in |into |around |at |right |up |to |toward |towards |back )*(?:the |"
            rf"that )?(?:edge of the )?(?:open )?(?:hole|opening|open tank|pit|manhole|open lid|edge)"
        ),
    ),
    _w(
        "child_near",
        (
            r"(?P<head>(?:head|face|arm|arms|hand|hands|upper body|foot|leg|feet) (?:is |are |down |right |"
            r"stuck |way |all the way )*(?:in|inside|into) the (?:hole|tank|opening|pit|manhole|septic))"
        ),
    ),
    _w(
        "child_near",
        (
            rf"(?:{ADULT}|{CHILD}|i|we) (?:is |are |am |was |just |has |have )*(?P<head>(?:standing|stood|"
            rf"jumping|jumped|sitting|sat|walking|walked|stomping|parked|playing|dancing)) (?:right |up |"
            rf"around )*(?:on|on top of|across) (?:the |that |it|our )?(?:septic |tank |concrete |plastic |old "
            rf")?(?:lid|cover|hatch|manhole)"
        ),
    ),
    _w(
        "child_near",
        (
            rf"{CHILD} (?:by|near|beside|at|next to|on|over) (?P<head>(?:the )?(?:open )?(?:hole|opening|"
            rf"manhole|pit|open tank|lid))"
        ),
        bare=True,
    ),
    _w("child_near", rf"{CHILD} (?P<head>(?:almost|nearly|just about) (?:fell|went|slipped|tumbled|stepped))"),
    _w("child_near", rf"(?:i |we )?(?P<head>(?:can not|could not) find) (?:my |the |our )?{CHILD}", unsure=True),
    _w(
        "child_near",
        (
            rf"(?:{LIVING}|i) (?:is |are |am |has |just |was )*(?P<head>(?:reaching|reached) (?:in|into|"
            rf"down)(?: there| it| the {_HOLE})?)(?! (?:the house|my|his|her))"
        ),
    ),
    # fire
    _w(
        "fire",
        (
            r"(?P<head>(?:(?:caught|on|started a|there is a|there is|catching|see|hay) fire|(?:there are|"
            r"there is|i see|we have|hay|se ven) (?:big |small |some |blue |a |little )*(?:flames?|sparks?|"
            r"fuego|fire|llamas|chispas|explosion)))(?! (?:pit|place|department|station|wood|hydrant|truck|"
            r"ants?|alarm|extinguisher|ring|hall|code))"
        ),
    ),
    _w(
        "fire",
        (
            r"(?P<head>(?:fire|flames?|sparks?|explosion|blast|fuego|llamas)) (?:is |are |just |came |coming |"
            r"shooting |shot |shoots |flying |flew |leaping )*(?:in|out|out of|from|at|near|over|by|next to|"
            r"inside|above|around|up|everywhere|came|coming|shooting) (?:the |of |from |it|there|that "
            r")?(?:the )?(?:septic )?(?:tank|hole|opening|manhole|lid|pit|pump|it|there|vent|riser|"
            r"everywhere)?"
        ),
        bare=True,
    ),
    _w(
        "fire",
        (
            r"(?P<head>(?:exploded|explosion|blew up|blown up|just blew|ignited|flash of fire|flames are|"
            r"flames came|flames shot|fireball|went boom|big boom|whoosh of flame|se prendio|hubo una "
            r"explosion|exploto|incendio))(?! (?:my|the) phone)(?! the balloon)"
        ),
    ),
    _w(
        "fire",
        (
            r"(?:it|tank|hole|lid|pump|grass|gas|something|there|pole|cloth|truck|box) (?:is |are |just |has |"
            r"have |started )*(?P<head>(?:burning(?! hot| bright| up out| bush| wood| up in)|on fire|in "
            r"flames|sparking|smoldering|smouldering|arcing|burst into flames|smoking|caught fire|throwing "
            r"sparks|making sparks))(?! (?:smell|eyes|nose|sensation|a brisket|meat))"
        ),
    ),
    _w(
        "fire",
        (
            r"(?:is|are|am|was|started|keeps|been|just|he|she|guy|man|neighbou?r) (?P<head>(?:smoking|vaping|"
            r"lighting|having a smoke|having a cigarette|lit|lighting up|flicking))(?: (?:a |an |his |her |up "
            r"|my |the |some )*(?:cigarettes?|cigars?|cig|smoke|lighter|match|pipe|joint|torch|candle|"
            r"vape))?(?= (?:\w+ ){0,3}(?:right |over |here|there|near|by|next|beside|at|above|hole|tank|"
            r"opening|while|it|lid)|$| \|)(?! (?:\w+ ){0,3}(?:inside|indoors|porch|away|house|meat|brisket|"
            r"ribs))"
        ),
    ),
    _w(
        "fire",
        (
            r"(?P<head>(?:lit|lighting|struck|dropped|threw|held|flicked|lights|uses|using|used|holding|put|"
            r"light|strike) (?:a |an |his |her |my |up |the |that |lit )*(?:match|lighter|cigarette|cigar|"
            r"candle|torch|flame|smoke|cig|flare|firework|burning \w+))(?= (?:\w+ ){0,4}(?:near|by|next|"
            r"beside|at|over|above|in|into|to see|down|look|hole|tank|opening|here|there)|$| \|)"
        ),
    ),
    _w("fire", r"(?P<head>smoke (?:is )?(?:coming|pouring|rising|billowing|comes) (?:out|up|from))"),
    # something hit while digging, or a shock
    _w(
        "struck",
        (
            r"(?P<head>(?:hit|cut|struck|nicked|broke|severed|sliced|punctured|pierced|ruptured|damaged|"
            r"clipped|snagged|cracked|dug|went into|ran into|jammed into|dug into|dug through|went through|"
            r"cut through|cut into|drove through|poked|stabbed|bent|ripped|tore)) (?:right |straight |almost "
            r")*(?:a hole (?:in|through) |in ?to |through |up |open )?(?:a |an |the |my |our |some |what "
            r"looks like a |some kind of |something like a )?(?:buried |underground |live |old |yellow |main |"
            r"natural |high voltage )*(?:gas|power|electric|electrical|electricity|propane|cable|wire|wires|"
            r"utility|buried cable|phone line|fiber|live wire|conduit|gasline|powerline|water line|water main|"
            r"water pipe)(?: (?:line|lines|pipe|pipes|cable|cables|wire|wires|main|conduit))?(?! (?:bill|tape|"
            r"costs?|usage|off))"
        ),
    ),
    _w(
        "struck",
        (
            r"(?P<head>(?:gas|propane) (?:is |line is |pipe is )?(?:leaking|hissing|escaping|leak|line broke|"
            r"line is broken|coming out)|hissing (?:gas|sound from the (?:gas|pipe))|smell (?:natural gas|"
            r"propane)|i smell gas|fuga de gas)"
        ),
    ),
    _w(
        "struck",
        (
            r"(?P<head>(?:electrocuted|got (?:a |an )?(?:electric |electrical |bad |big |nasty )?(?:shock|"
            r"shocked|zapped|jolt|zap)|shocked (?:me|him|her|us|my)|zapped (?:me|him|her|us)|electric shock|"
            r"felt (?:a |an )?(?:\w+ )?(?:shock|jolt|tingle|zap)|getting shocked|gives? (?:me|you|him|us) "
            r"(?:a|an) (?:electric )?shock|gave (?:me|him|her|us) (?:a|an) (?:electric |bad |big )?(?:shock|"
            r"jolt|zap)|electrocuto|live wire|live wires|bare wires?|exposed wires?|feel (?:a )?(?:shock|"
            r"tingle|current)|downed power line|power line is down|wires? (?:is|are) (?:sparking|bare|exposed|"
            r"live)))(?! (?:by|at|about) (?:the|how) (?:price|cost|bill|quote|much|bad))(?! (?:to|that) )"
        ),
    ),
    # the lid
    _w(
        "lid_broken",
        (
            rf"{_LID} (?:on (?:it|the tank|there|top) |over (?:it|the tank) |of (?:it|the tank) |for (?:the "
            rf")?(?:tank|riser) |edge |slipped |slid |has a |big |large |huge |hairline |long |small |tiny |"
            rf"visible |bad |couple |few |some |of |concrete |that |which |{_BE} |and |is |a |an |has |on one "
            rf"side |when |of |i |we )*(?P<head>cracked|cracking|cracks|crack|broken|broke|breaking|busted|"
            rf"bust|shattered|split|splitting|splintered|snapped|rocking|rocks|rock|rocky|wobbling|wobbles|"
            rf"wobbly|wobble|wobbled|rocked|teetering|tipping|tips|tipped|loose|caved|caving|collapsed|"
            rf"collapsing|collapse|crumbling|crumbled|crumbles|falling apart|fell apart|coming apart|missing|"
            rf"gone|disappeared|stolen|sagging|sags|sagged|sunken|sunk|sinking|sank|bowing|bowed|bending|bends|"
            rf"flexing|flexes|flexed|rotten|rotted|rusted|bent|warped|unstable|unsteady|gave way|giving way|"
            rf"gives way|fallen in|fell in|fell into|fell down|fell|falling in|dropped in|dropped into|hole in "
            rf"it|shifted|shifting|tilted|tilting|broken in|se rompio|se quebro|se rajo|rota|roto|rajada|"
            rf"quebrada|suelta|agrietada|floja|in pieces|in half|chunk missing|smashed|blew off|blown off|is "
            rf"not there|was not there|give|gives|giving|moving|moved|moves|damaged|crumbly)(?! (?:on|over) "
            rf"(?:it|top) (?:to|for)| (?:the|a) (?:lid|seal|window)| (?:easily|shut|closed|back (?:in|into|on|to "
            rf"its)|in place|into "
            rf"place|into its place|open|over to|up to|off to|aside|away|out of)\b| solid| on (?:it|top)\b| "
            rf"(?:garden|salt))"
        ),
    ),
    _w(
        "lid_broken",
        (
            rf"(?P<head>cracked|broken|busted|split|rocking|wobbly|missing|crumbling|loose|shattered|caved|"
            rf"rotten|rusted out|unstable|collapsed|damaged|unsteady|sagging|sunken|falling apart) (?:concrete "
            rf"|plastic |septic |tank |old |in |inlet |outlet |manhole |fiberglass )*(?:{_LID})(?! (?:seal|"
            rf"gasket|bolt|screw|handle))"
        ),
        bare=True,
    ),
    _w(
        "lid_broken",
        (
            rf"(?P<head>cracks?|holes?(?= (?:in|through))|split|break|gap|fracture|grieta|fissure|rotten spot|"
            rf"soft spot|chunk|piece) (?:\w+ )?(?:in|across|through|on|down|along|out of|missing from|broken "
            rf"off|running|runs|right|all|the|middle|of|side|to|around|goes|going|under|near|en|la|it|off|"
            rf"centre|center|over) (?:{_G3})(?:the |my |our |that |this |la |one )?(?:concrete |plastic |"
            rf"septic |tank |old |inlet |outlet |riser )*{_LID}"
        ),
        bare=True,
    ),
    _w(
        "lid_broken",
        (
            rf"(?P<head>broke|broken|cracked|busted|split|smashed|snapped|shattered|cracking|breaking) (?:the |"
            rf"my |our |that )(?:concrete |plastic |septic |tank |old |inlet |outlet |riser |whole "
            rf")*(?:{_LID})(?! (?:seal|gasket|bolt|screw|handle|open|a bit|a little|an inch|up|loose|off|"
            rf"free)\b)"
        ),
    ),
    _w(
        "lid_broken",
        (
            r"(?P<head>(?:there is not (?:a|any)|there is no|no(?= (?:lid|cover|tapa)(?: (?:on|over|at all|"
            r"anywhere|there|just|only)| ?$| \|))|has no|have no|without a|with no|no hay|no tiene|sin|is no) "
            r"(?:proper |real |actual |septic )?(?:lid|cover|tapa)(?! on the (?:pipe|vent|filter|pump|"
            r"drain))(?! (?:open|problem|damage|crack|issue|weight|bolts?|screws?|lock|handle)))"
        ),
    ),
    _w(
        "lid_broken",
        (
            r"\b(?:it|one of them|the thing|concrete|the top|top|this thing|the plastic|plastic) (?:is |has |"
            r"just |looks |feels |seems |really |a bit |a little |bit |kinda |kind of |slightly |totally |"
            r"definitely |also |now |all |got |and |completely |does |did |sort of |has a |starting to "
            r")*(?P<head>cracked|rocking|rocks|wobbles|wobbling|wobbly|caved in|caving in|gave way under|"
            r"giving way|crumbling|rocked|wobbled|has a crack|rocks back and forth|cracks|flexes|cracking|"
            r"crack in it|sags|rocky)(?! (?:the|and roll|salt|open|up|jokes?|soil|ground|garden|dirt))"
        ),
    ),
    _w(
        "lid_broken",
        (
            rf"{_LID} (?P<head>(?:does not|will not|is not|do not|would not|did not) (?:sit|fit|lie|lay|seat|"
            rf"close|go|sitting|fitting|lying|seating|stay|secure|stable|steady|safe|hold|shut|seal)(?: "
            rf"\w+){{0,2}} ?(?:flat|right|properly|level|down|still|back|on|steady|shut|put|all the way|"
            rf"tight)?)"
        ),
        unsure=True,
    ),
    _w(
        "lid_broken",
        rf"{_LID} (?:is )?(?P<head>(?:can not) (?:be )?(?:closed|close|shut|secured|fastened|put back))",
        unsure=True,
    ),
    _w(
        "lid_broken",
        (
            r"(?P<head>(?:foot|leg|mower|tractor|truck|car|wheel|tire|boot|heel) (?:just |almost |nearly |"
            r"went |has |gone |broke |fell |punched |poked |is )+(?:through|into the (?:ground|grass|yard|"
            r"lawn|lid|cover|hole|tank)|in the (?:ground|grass|lid|cover|hole|tank)))"
        ),
    ),
    # left open
    _w(
        "lid_left_open",
        (
            rf"(?P<head>(?:left|leaving|leave|forgot|forgotten|have left)) (?:it |the |with |that |my |our |to "
            rf"|put |close |shut |cover |fasten |screw |replace )*(?:septic |tank |hole |opening )*(?:{_LID}|"
            rf"hole|tank|opening|pit|it) (?:\w+ )?(?:off|open|uncovered|back|unattended|wide open|back on|ajar|"
            rf"unlocked|unfastened|closed|on|up|shut)(?! (?:to|for|the) (?:air|dry))"
        ),
    ),
    _w(
        "lid_left_open",
        (
            rf"(?P<head>(?:hole|tank|opening|pit|lid|manhole|it) (?:is |was |has been |just |still |left |"
            rf"sitting |wide |out there |been |there |lying )+(?:open|uncovered|off)) (?:and |with |\| "
            rf")*(?:nobody|no one|unattended|i am inside|we are inside|i am in the house|we left|we went|i "
            rf"left|i went|all night|overnight|since|i am not there|i am at|no adult|alone|{CHILD})"
        ),
    ),
    _w(
        "lid_left_open",
        (
            r"(?P<head>forgot (?:about )?(?:to (?:close|cover|shut|put|replace)|the)) (?:it|the|that) "
            r"?(?:septic |tank |hole )*(?:lid|cover|tank|hole|it|up|back)?"
        ),
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
        (
            rf"{_GROUND} (?:above |over |around |near |by |next to |beside |there |the |my |our |septic |tank |"
            rf"hole |lid |on top |of |it |where |here |right |has |have |is |are |was |just |all |suddenly |"
            rf"starting |started |to |keeps |looks |seems |kind of |kinda |a bit |a little |bit |really |in |"
            rf"back |out |at |about |an? |inch|inches |foot |feet |and |soft |spongy |got |feels |like |slowly "
            rf"|be |been )*(?P<head>sank|sunk|sinking|sunken|sinks|sink|caved|caving|cave|caves|collapsed|"
            rf"collapsing|collapses|gave way|gave out|giving way|gives way|dropped|dropping|opened up|opening "
            rf"up|subsided|subsiding|subsidence|sagging|sagged|sags|hollow|hundido|hundio|hundiendo|fell away|"
            rf"falling away|depressed|dipped|washed out|washing out|swallowed|slumped|slumping|crumbling)(?! "
            rf"(?:to|by) \d+ degrees)"
        ),
    ),
    _w(
        "ground_sunk",
        (
            r"(?P<head>sink ?holes?|sunken (?:ground|spot|area|soil|yard|patch|lawn|place)|cave ?in|"
            r"hundimiento|socavon|sunk ground|sunken)"
        ),
        bare=True,
    ),
    _w(
        "ground_sunk",
        (
            r"(?P<head>(?:hole|pit|crater|gap|void|depression|dip)) (?:has |just |is |suddenly |that |which |"
            r"was )*(?:opened|opening|appeared|appearing|formed|forming|showed|developed|developing|showing|"
            r"in the (?:ground|yard|lawn|grass|dirt) (?:over|above|near|next|by|where|beside))"
        ),
        bare=True,
    ),
    _w(
        "ground_sunk",
        (
            r"(?P<head>(?:depression|dip|sag|sinking spot|low spot)) (?:\w+ )?(?:over|above|around|on top of) "
            r"(?:the |my |our )?(?:septic )?tank"
        ),
        bare=True,
    ),
    _w(
        "ground_sunk",
        (
            r"(?P<head>(?:foot|feet|leg|legs|boot|mower|tractor|i|we|truck|car|wheel|dog) (?:just |almost |"
            r"nearly |have |has |is |started |all )*(?:sank|sunk|sinking|sinks)) (?:in|into|down|through|up "
            r"to|when|while|to my)"
        ),
    ),
    _w("ground_sunk", r"(?P<head>se hundio|se esta hundiendo|se hunde) ?(?:el|la)?"),
    # sewage in the house
    _w(
        "sewage_in_house",
        (
            rf"{_FILTH} (?:is |are |was |has |have |keeps |started |starting |just |now |all |been |water |and "
            rf"|paper |coming |to |still |stuff |literally |out )*(?:{_UP} )?(?:up |back |out |again |from |of "
            rf"|everywhere |over |all |in |into |through |on |onto |down |there |inside |the |my |our |her |"
            rf"his |a |an |both |guest |master |downstairs |upstairs |kids |kitchen |laundry |lower |bottom "
            rf")*(?P<head>{_FIXTURE}|{_INDOORS})(?! (?:smell|smells|odor|pipe|vent))"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            rf"(?:{_FILTH}|water|stuff|it|gunk|something|liquid|everything) (?:is |are |was |has |have |keeps |"
            rf"started |starting |just |now |to |all |still )*(?P<head>(?:coming (?:back )?up|comes (?:back "
            rf")?up|came (?:back )?up|bubbling up|bubbles up|backing up|backed up|backs up|back up|rising|"
            rf"rises|flooding|flooded|pouring|gushing|overflowing|overflowed|shooting up|pushing up|spilling|"
            rf"spilled|leaking up|welling up|coming out|coming in|filling)) (?:out |of |back |again |through |"
            rf"from |in |into |inside |up |over |on |onto |the |my |our |a |all |both |guest |master |"
            rf"downstairs |upstairs |basement |kitchen |laundry |kids |lower |bottom |bathroom )*(?:{_FIXTURE}|"
            rf"{_INDOORS})"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            rf"{_FIXTURE} (?:in |upstairs |downstairs |the |my |our |basement |bathroom |bath |house |room |"
            rf"drain |and |{_FIXTURE} |both |all |is |are |was |were |has |have |keeps |keep |just |now |"
            rf"started |starting |been |got |of |them |to |it |suddenly |still |down |floor |there |kitchen |"
            rf"guest |laundry |master |also |water |really |that |which |full of |with )*(?P<head>(?:(?:will "
            rf"not|can not|would not|does not) stop )?(?:overflowing|overflowed|overflows|overflow|backing up|"
            rf"backed up|backs up|back up|backup|backups|fills? (?:up )?with {_FILTH}|filled (?:up )?with "
            rf"{_FILTH}|flooding|flooded|floods|coming back up|coming up|spilling|spilled|bubbling up|bubbling "
            rf"over|regurgitating|spewing|vomiting|desbordado|desbordando|desborda|rebosando|shooting up|"
            rf"running over|ran over|full of {_FILTH}|filling (?:up )?with {_FILTH}|filling up with \w+ water|"
            rf"has {_FILTH} in it|erupting|erupted|rose to the rim|rising|tapado y sale))"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            r"(?P<head>(?:sewage|septic|sewer|toilet|shower|drain|basement|tank|waste) (?:line )?(?:back "
            r"?ups?|backing up|backed up|back up))(?! (?:pump|plan|valve|generator|insurance|battery|field))"
        ),
        bare=True,
    ),
    _w(
        "sewage_in_house",
        (
            rf"(?P<head>(?:{_FILTH}) (?:all over|everywhere|on|in|inside|into|throughout|floods?|flooding|"
            rf"flooded|covering)) (?:the |my |our |in |of )*(?:{_G2})?(?:{_INDOORS}|{_FIXTURE}|bath|carpet)(?! "
            rf"smell)"
        ),
        bare=True,
    ),
    _w(
        "sewage_in_house",
        (
            r"(?:it|everything|house|whole house|drains|all the drains|system|plumbing|all drains|all of the "
            r"drains|stuff|we) (?:is |are |has |have |just |all |now |keeps |started |started to |been |"
            r"starting |to |again |both )*(?P<head>(?:backing up|backed up(?! the (?:car|truck|trailer|"
            r"files?))|backs up|overflowing|overflowed)) ?(?:in|into|inside|again|now|through|on us|here|"
            r"everywhere|badly)?(?! (?:the (?:car|truck|trailer|files?|computer|drive(?:way)?)|my|files|a "
            r"step|a bit|to the|over the outlet|a little from|and forth))"
        ),
        unsure=True,
    ),
    _w(
        "sewage_in_house",
        rf"(?P<head>(?:back ?up|overflow|flood) (?:in|into|inside) (?:the |my |our )(?:{_INDOORS}|{_FIXTURE}))",
        bare=True,
    ),
    _w(
        "sewage_in_house",
        (
            r"(?P<head>(?:poop|sewage|shit|crap|turds?|feces|black water|brown water|wastewater) (?:in|up|"
            r"coming|came|comes|floating) (?:\w+ ){0,3}(?:shower|tub|bathtub|sink|floor|basement|house|"
            r"kitchen|drain|laundry|bath))"
        ),
        bare=True,
    ),
    _w(
        "sewage_in_house",
        r"(?P<head>(?:aguas? negras?|mierda|desague)) (?:\w+ ){0,5}(?:casa|bano|ducha|regadera|inodoro|cocina)",
    ),
    _w(
        "sewage_in_house",
        (
            r"(?P<head>(?:overflowing|flooding|backing up) (?:toilets?|showers?|tubs?|drains?|sinks?|sewage|"
            r"house|basement))"
        ),
        bare=True,
    ),
    # sewage on the ground
    _w(
        "sewage_outside",
        (
            rf"(?P<head>puddles?|pools?|pond|lake|stream|river|pile|swamp|trickle|spring|fountain|charco|mess) "
            rf"(?:of )?(?:what looks like |what smells like |standing |stinking )*(?:{_FILTH})"
        ),
        bare=True,
    ),
    _w(
        "sewage_outside",
        (
            rf"(?P<head>{_FILTH}) (?:is |are |was |has |have |keeps |started |starting |just |now |all |been |"
            rf"and |water |to |still |paper |out |there |puddle |literally )*(?:coming (?:up|out)|comes (?:up|"
            rf"out)|came (?:up|out)|bubbling(?: up)?|surfacing|surfaced|pooling|pooled|ponding|ponded|running|"
            rf"ran|seeping|seeped|leaking|leaked|oozing|flowing|spilling|spilled|rising|standing|puddling|"
            rf"everywhere|all over|showing|draining|overflowing|floating|squirting|puddles?|gushing|pouring|"
            rf"sitting)? ?(?:up |out |over |onto |into |on |in |to |through |from |of |across |down |all |the |"
            rf"my |our |around |near |at |above |by |next |top |under |in front of |beside |tank |septic |side "
            rf"|a |lid )*(?:{_OUTSIDE})(?! smell)"
        ),
    ),
    _w(
        "sewage_outside",
        (
            rf"(?P<head>{_FILTH}) (?:is |are |was |has |have |keeps |started |just |now |been )*(?:surfacing|"
            rf"pooling|ponding|bubbling (?:up|out)|spilling out|overflowing|coming out|leaking out|oozing out|"
            rf"running out|pouring out|gushing|coming to the surface|escaping|on the ground)"
        ),
    ),
    _w(
        "sewage_outside",
        (
            r"(?:septic tank|tank|septic|manhole|riser|lid|cleanout|clean out|system) (?:is |has |was |just |"
            r"keeps |started |now |are |been )*(?P<head>(?:overflowing|overflowed|overflows|spilling (?:over|"
            r"out)|flowing over|running over|bubbling over|spewing|gushing|leaking (?:sewage|out|onto|into "
            r"the yard|all over)|flooding (?:the|my|our)? ?(?:yard|lawn|grass)))"
        ),
    ),
    _w(
        "sewage_outside",
        (
            r"(?P<head>(?:overflow|overflowing|spilling|bubbling|coming|running|pouring|leaking|oozing|"
            r"gushing|water|liquid) (?:up |out |over )*(?:from|of|around|at|under|through) (?:under )?(?:the |"
            r"my |our )?(?:septic |tank )*(?:lid|cover|manhole|riser|cleanout))(?! (?:hole)? ?(?:smell|when "
            r"it rains))"
        ),
        bare=True,
    ),
    _w("sewage_outside", r"(?P<head>aguas negras) (?:\w+ ){0,4}(?:jardin|patio|suelo|afuera|yarda)"),
    _w(
        "ground_sunk",
        (
            r"(?:ground|yard|lawn|earth|grass|soil) (?:\w+ ){0,4}(?P<head>fell in|falling in|fallen in|fell "
            r"down)(?! (?:the|my))"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            rf"{_INDOORS} (?:is |has |was |got |all |now |just |been |floor |drain )*(?P<head>(?:flooded|"
            rf"flooding|full|covered|filled|filling|soaked)(?: up)? (?:with|of|in|by) {_FILTH})"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            rf"{_FILTH} (?:is |keeps |just |now |has |started |still |was |water |it |all )*(?P<head>(?:coming "
            rf"(?:back )?up|comes (?:back )?up|came (?:back )?up|backing up|backed up|backs up|bubbling "
            rf"up))(?! (?:out of |from |through |in |at )?(?:the )?(?:ground|yard|lawn|grass|outside|lid|to \d|"
            rf"to the))"
        ),
        unsure=True,
    ),
    _w(
        "fell_in",
        (
            rf"(?P<head>(?:can not |could not |trying to |try to |need to |need help |have to |help me |help "
            rf"us |help |please |how (?:do|can) (?:i|we) )(?:to )?(?:get|getting|pull|pulling|reach|save|"
            rf"rescue|lift|drag|fish) (?:the |my |our )?{LIVING} (?:back )?out(?: of (?:the |this )?(?:{_TANK}|"
            rf"there))?)"
        ),
    ),
    _w(
        "fell_in",
        (
            rf"(?:my |the |our )?(?:{CHILD}|{PET}|he|she|husband|wife|dad|mom|grandpa|grandma|someone|"
            rf"somebody) (?:just |has |have )*(?P<head>fell|fallen|slipped|tumbled)(?= *$| *\||  *(?:help|oh|"
            rf"please|what))"
        ),
        unsure=True,
    ),
    _w(
        "going_in",
        (
            rf"(?P<head>(?:lowering|lower|lowered|send|sending) (?:my |the |our )?{LIVING} (?:down |back "
            rf")?(?:in|into|down))"
        ),
    ),
    _w(
        "going_in",
        (
            r"(?:^|(?<=\| )|i am |am |just |and |let me |let me just |i can |i will )(?P<head>(?:reaching|"
            r"reach) (?:my (?:arm|hand) )?(?:in|into|down)(?: now| there| the (?:tank|hole))?)"
        ),
    ),
    _w("fire", r"(?:^|(?<=\| ))(?P<head>(?:fire|fuego)(?: fire)*)(?= *$| *\|)"),
    _w(
        "fire",
        (
            r"(?P<head>(?:flash|boom|bang|whoosh|fireball|pop) and (?:a |then |big |loud |the )*(?:boom|flash|"
            r"bang|flames?|fire|smoke)|(?:big|loud|huge) (?:flash|boom|bang))"
        ),
    ),
    _w(
        "lid_broken",
        (
            rf"(?:{_LID}) (?:[^ ]+ ){{0,6}}(?:it|and) (?:is |just |has |then |all |now |already "
            rf")*(?P<head>broke|broken|snapped|split|shattered|busted|loose|missing|gone|cracked|rotten|"
            rf"smashed|crumbled)(?! (?:ground|the|off to))"
        ),
    ),
    _w(
        "lid_broken",
        (
            r"(?:^|(?<=\| ))(?:yes |yeah |yep |it |is |its |a bit |very |just |badly |definitely |a little |"
            r"all |really )*(?P<head>cracked|rocking|caved in|wobbly|wobbling|cracked and \w+|rocking and "
            r"\w+) *$"
        ),
        unsure=True,
    ),
    _w(
        "lid_left_open",
        (
            rf"(?P<head>(?:{_LID}|hole|tank|opening|pit) (?:is |was |has been |still |just |sitting |wide |"
            rf"left |been )+(?:open|off|uncovered)) (?:and |\| |while |but |so )*(?:(?:i|we) (?:am|are|had|"
            rf"have|went|left|was|were|came|need|got)|nobody|no one|everyone)"
        ),
    ),
    _w(
        "lid_left_open",
        (
            rf"(?:^|(?<=\| )|i |we |he |she )(?:just |totally |completely |may have |might have "
            rf")*(?P<head>forgot (?:about )?(?:the |my |our )(?:\w+ )?{_LID})"
        ),
    ),
    _w(
        "sewage_in_house",
        (
            rf"(?P<head>(?:backing up|backed up|coming up|overflowing|backs up|comes up|bubbling up|coming "
            rf"back up) (?:in|into|through|out of|from|on|all over) (?:to |the |my |our |a )*(?:\w+ "
            rf")?(?:{_FIXTURE}|{_INDOORS})(?! of))"
        ),
    ),
    _w("sewage_outside", rf"(?P<head>{_FILTH} (?:puddles?|pools?|pond|swamp|everywhere))", bare=True),
    _w(
        "child_near",
        (
            rf"(?:{CHILD}|{PET}) (?:is |are |was |keeps |get |gets |getting |got |just |now |both |all |"
            rf"standing |playing |coming |way |much |really )*(?P<head>(?:too|so|dangerously|very|really) "
            rf"(?:close|near))(?! to (?:home|me|the (?:road|house|street)))"
        ),
    ),
    _w(
        "fire",
        (
            r"(?P<head>flames?|explosions?|fireball|sparks|smoke and fire)(?! (?:plugs?|detector|retardant|"
            r"proof|of joy|arrestor))"
        ),
        bare=True,
    ),
    _w("fire", rf"{_LID} (?:just |has |was |is )*(?P<head>blew|blown|flew|popped) (?:off|up|away|open)"),
    _w(
        "fell_in",
        r"(?P<head>(?:slipped|tripped|stumbled|lost (?:his|her|my|their) (?:balance|footing)) and (?:then )?"
        r"(?:went|fell|dropped|slid) (?:right |straight )?(?:in|down|under))",
    ),
    _w(
        "fell_in",
        rf"(?:{LIVING}) (?P<head>(?:half ?way |part ?way |half )?(?:in|inside|down) (?:tank|hole|septic|manhole|pit))",
    ),
    _w(
        "going_in",
        rf"(?:{LIVING}|i|we) (?:is |are |am )(?P<head>(?:half ?way|part ?way|half|already) (?:in|inside|down) "
        rf"(?:the )?{_TANK})",
    ),
    _w(
        "going_in",
        r"(?:i|we|he|she|they) (?:am |are |is |will |going to )+(?P<head>enter(?:ing)? (?:the (?:tank|hole|"
        r"septic|pit)|it)|get in and|get down and)",
    ),
    _w(
        "going_in",
        rf"(?:^|(?<=\| )|now |am |is |are )(?P<head>(?:going|climbing|getting|heading|entering|crawling) (?:down )?"
        rf"(?:into|inside) (?:the |that )?(?:septic |open )*{_TANK})",
    ),
    _w(
        "feeling_ill",
        r"(?P<head>(?:turned|gone|went|going|turning) (?:all |really |very )?(?:pale|white|grey|gray|blue|green)|"
        r"(?:barely|hardly|not|scarcely) breathing|no pulse|can not feel a pulse|not waking)",
    ),
    _w(
        "child_near",
        rf"{CHILD} (?:(?!away|far|off|inside|indoors|house|home|not|never|know|knows|stay|stays|school|safe|"
        rf"clear|from|\||helped|filled)"
        rf"[\w']+ ){{0,6}}(?P<head>near|next to|by|at|beside|past|over|into|around|toward|towards|in|on|to) "
        rf"(?:the |an |our |that )?(?:open |uncovered )?(?:edge of the )?(?:septic |tank )?"
        rf"(?:hole|opening|manhole|open tank|open lid|open pit|edge)(?! (?:for|of the (?:yard|field|woods|"
        rf"property|lawn)))",
    ),
    _w("fire", r"(?P<head>a spark|sparked|sparking)(?! (?:plug|of))", bare=True),
    _w(
        "lid_broken",
        rf"(?P<head>(?:corner|piece|chunk|edge|side|part|half) (?:is |has |was )?(?:broken|broke|cracked|"
        rf"missing|gone|snapped|split|"
        rf"chipped|fell) (?:off|from|of|out of|on)) (?:of |the |my |our )*(?:concrete |plastic )?{_LID}",
    ),
    _w(
        "lid_broken",
        rf"(?P<head>(?:took|stole|stolen|removed and lost|lost)) (?:the |my |our )(?:septic |tank )?{_LID}(?! "
        rf"(?:off|up|out|away))",
    ),
    _w(
        "lid_broken",
        rf"{_LID} (?P<head>move|wobble|rock|give|shift|flex|bend) (?:a bit |a little )?(?:under|when|as|back)",
    ),
    _w("ground_sunk", rf"(?P<head>(?:sinking|collapsing|collapsed|caving|sunk) (?:{_GROUND}))", bare=True),
    _w(
        "sewage_in_house",
        r"(?P<head>backed up (?:toilets?|drains?|sinks?|tubs?|showers?|sewage|septic|plumbing|house))",
        bare=True,
    ),
)
THINGS = re.compile(rf"\b(?:{_THING})\b")
LIVING_WORD = re.compile(rf"\b(?:{LIVING}|i|we|us|me)\b")

#: the same hazards in the base form, as a question or a "what if" puts them
ASKED: tuple[tuple[str, re.Pattern[str]], ...] = tuple(
    (hazard, re.compile(rf"\b(?:{pattern})\b"))
    for hazard, pattern in (
        ("fell_in", (
        rf"(?:falls?|fell|falling|fallen|slips?|drops?|drop|tumbles?|goes|went) (?:down )?(?:in|into|"
        rf"inside|down)\b|(?:in|inside) the tank .*{LIVING}|{LIVING} (?:is |gets |got )?(?:stuck |trapped "
        rf")?in the (?:tank|hole)"
    )),
        ("going_in", (
        r"(?:go|climb|get|crawl|jump|reach|enter|going|climbing|reaching|lean|leaning|step|entering) "
        r"(?:down |over )?(?:in|into|inside|the tank|the septic|the hole|it)\b"
    )),
        ("feeling_ill", (
        r"dizz\w+|faint\w*|headaches?|nause\w+|sick|ill|unwell|light ?headed|pass(?:es|ed)? out|"
        r"collapses?d?|breathe|unconscious|gas (?:kill|hurt|poison)\w*|fumes"
    )),
        ("fire", (
        r"fire|smok(?:e|ing)|cigarettes?|flames?|sparks?|explo\w+|lighters?|match(?:es)?|blow up|candle|"
        r"vap(?:e|ing)"
    )),
        ("struck", (
        r"(?:hit|cut|strike|dig into|break|damage) (?:a |an |the |into )*(?:buried |underground )?(?:gas|"
        r"power|electric\w*|cable|wire|utility|water)\b.*|shock\w*|electrocut\w+"
    )),
        ("lid_broken", (
        rf"(?:{_LID}) .*(?:crack\w*|broke\w*|breaks?|rock\w*|wobbl\w*|caves?|collapse\w*|missing|falls? "
        rf"in)|(?:crack\w*|broken|rocking|wobbly|missing) (?:\w+ )?(?:{_LID})|(?:it|is) (?:is )?(?:cracked|"
        rf"rocking)"
    )),
        ("lid_left_open", rf"leave (?:it|the (?:{_LID}|tank|hole)) (?:open|off|uncovered)"),
        ("ground_sunk", rf"(?:{_GROUND}) .*(?:sinks?|sank|sunk|caves?|collapses?|gives? way)|sink ?holes?|cave ?in"),
        ("sewage_in_house", (
        r"(?:sewage|septic|toilets?|showers?|drains?|water|it|system|house) .*(?:back(?:s|ed|ing)? ?up|"
        r"overflow\w*|com(?:es|e|ing) (?:back )?up|flood\w*)|back ?ups?\b"
    )),
        ("sewage_outside", r"sewage .*(?:yard|lawn|grass|outside|surfac\w*|ground)|(?:tank|septic) .*overflow\w*"),
        ("child_near", rf"{CHILD} .*(?:near|close|by|around|watch|help|play|lean)\b"),
    )
)  # fmt: skip
