"""The words around an amount: how sure the person is, whether it is this reading at all, and lines that hold no
amount.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from selfcheck.text import words


@dataclass(frozen=True, slots=True)
class Hedge:
    """What the words around `#` say.

    `about`: a rough figure. `shift`: -1 just under, +1 just over; `hair`: by very little. `below_one`: "less than an
    inch", which lies between nothing and it. `stops`: no value may be taken, `ask` or `unclear`. `loose_words`:
    words that a bare
    number cannot stand with (`14 bananas`).
    """

    about: bool = False
    shift: int = 0
    hair: bool = False
    below_one: bool = False
    stops: Literal["", "ask", "unclear"] = ""
    loose_words: bool = False
    shift_share: float = 0.0


_ABOUT = re.compile(
    r"\b(?:about|abt|abut|aboot|around|arround|round|roughly|ruffly|approx|approximately|aprox|"
    r"aproximadamente|approximatly|circa|ca|maybe|"
    r"probably|perhaps|possibly|guess|guessing|estimate|estimated|thereabouts|ballpark|close to|near|"
    r"nearer|closer to|more or less|"
    r"or so|ish|give or take|unos|unas|como|mas o menos|casi casi|hard to (?:say|tell|see|read)|not "
    r"(?:too |very |really |totally )?sure|"
    r"idk|dunno|not certain|or something|say|kinda|sort of|kind of)\b|[~≈]|[#] ?-? ?ish"
)
_SMALL = (
    r"(?:(?:just )?(?:a )?(?:tiny |wee |little |small )?(?:bit|hair|tad|touch|smidge|smidgen|shade|"
    r"little|whisker|fraction|sliver)(?: bit)?)"
)
_UNDER = re.compile(
    rf"\b(?:(?:just|slightly|barely) (?:under|below|less than|shy of|short of|beneath)|{_SMALL} "
    rf"(?:under|below|less than|shy of|short of|beneath)|"
    rf"nearly|almost|allmost|not quite|just about|casi|un poco menos de) (?:at |to )?#"
)
_UNDER_AFTER = re.compile(rf"# (?:or |, ?)?(?:{_SMALL}|just|slightly) (?:less|under|short|shy)\b")
_OVER = re.compile(
    rf"\b(?:(?:just|slightly|barely) (?:over|above|more than|past|beyond)|{_SMALL} (?:over|above|more "
    rf"than|past|beyond)|un poco mas de) #"
)
_OVER_AFTER = re.compile(
    rf"# ?(?:\+|and change|and a bit|and a little|and some|y pico|(?:or |, ?)?(?:{_SMALL}|just|"
    rf"slightly) (?:more|over|past)\b)"
)
_HAIR = re.compile(r"\b(?:hair|whisker|smidge|smidgen|tiny bit|sliver|barely)\b")
_LESS_THAN = re.compile(r"(?:\b(?:less|lower|smaller|thinner|fewer|shallower) than|\bunder|\bbelow|\bmenos de|<) #")
_LIMITING = re.compile(
    r"(?:\b(?:more|greater|higher|bigger|deeper|thicker|less|lower|smaller|thinner|shallower|other|"
    r"rather) than|\bover|\bunder|\bbelow|\babove|\bbeyond|\bpast|"
    r"\bat (?:least|most)|\bup to|\bno (?:more|less)|\bmax(?:imum)?|\bmin(?:imum)?|\bexceeds?|\bmas "
    r"de|\bmenos de|[<>]=?) (?:than |of )?#"
    r"|# (?:or|and) (?:more|less|over|under|above|below|deeper|up|higher|lower)\b|# (?:max|min|"
    r"minimum|maximum|tops|plus)\b|# ?[<>]"
)
_REACHES = re.compile(
    r"\b(?:reach(?:es|ed)?|goes|went|came|comes|stain(?:ed)?|wet|is|was|mark|marks|line|black|part|stuff|muck) (?:all "
    r"the way |right )?up to (?:about |around |roughly |maybe |like )?#"
)
_ANOTHER_TIME = re.compile(
    r"\b(?:last (?:time|year|check|summer|spring|fall|winter|month|week)|used to|previous(?:ly)?|ago|"
    r"before (?:that|it|the|i|we)|yesterday|(?<!this )years?|"
    r"antes|originally|at first|supposed to|should(?:n't)?|"
    r"would(?! (?:guess|say|call|estimate|put))|could|normally|usually|expect(?:ed|"
    r"ing)?|limit|rule|if|unless|until(?! (?:it|i|we))|next time|"
    r"el ano pasado|than)\b"
)
_DENIED = re.compile(
    r"\b(?:not|isn't|isnt|wasn't|wasnt|ain't|never|nor|neither|cannot|can't|cant|don't|dont|didn't|"
    r"didnt|doesn't|doesnt|no es|wrong|instead|"
    r"scratch|i meant|i mean|oops|correction|no wait|wait|actually no|rather|twice|double|half of "
    r"(?:that|it)|times|plus|add|added)\b"
)
_NOT_DENIED = re.compile(
    r"\b(?:not (?:too |very |really |totally |quite |\d+ ?% )?(?:sure|certain|quite|exact(?:ly)? sure|"
    r"bad|much|smeared|exact)|(?:can't|cant|cannot) (?:tell|see|read) (?:exactly|well|very well|for "
    r"sure)|"
    r"both times|(?:this|first|second|third|each|every) time|"
    r"don't know|dont know|not positive|plus or minus|wrong side)\b"
)
_QUESTION = re.compile(
    r"^(?:is|are|was|does|do|did|can|could|should|would|what|what's|whats|why|how|when|where|who|"
    r"which|will)\b(?! about #$)"
)
_NEGATIVE = re.compile(r"\b(?:minus|negative|menos|below zero) #")
_OTHER_MEASURE = re.compile(
    r"# ?(?:%|°|\$|percent|per|a year|a month|an? (?:year|month|day|week)|/|lbs?|pounds?|kgs?|kilos?|"
    r"grams?|oz|ounces?|degrees?|deg|"
    r"gal(?:lon)?s?|gpd|litres?|liters?|quarts?|qt|pints?|cups?|miles?|mi|km|kms|kilomet(?:er|re)s?|"
    r"acres?|years?|yrs?|months?|weeks?|days?|hours?|hrs?|"
    r"minutes?|mins?|seconds?|secs?|people|persons?|kids?|adults?|bedrooms?|bucks|dollars?|times|x|"
    r"euros?|psi|volts?|amps?|am|pm|o'clock|c|f|k|k?hz|litros?|galones|"
    r"square|sq|of rain|of snow|cubic|cu|feets? long)(?![a-z])|[$°] ?#|#(?: [-a-z]+)? (?:pole|stick|"
    r"ladder|board|plank|fence|post|rod|pipe|tape|man|guy|woman|dog|ruler|yardstick|tall)\b|\* ?#|# "
    r"?\*|\^"
)
_KNOWN = words(
    "# a about above again ago all almost amount and approx are around as at ballpark be because been "
    "before below between black bottom but by call came can certain check clear close cloth cm come comes "
    "crust deep depth dark down edge end exactly feels feel first floating floor for from get gets "
    "getting give goes going got grease guess had hair has have here hmm i i'd i'll i'm i've im in is ish "
    "it it's its just kinda layer less like liquid little look looked looks lot mark marks maybe me "
    "measure measured measures measuring more most mostly mud my near nearly no not now of off ok okay on "
    "one only or out over perhaps plus point pole pretty probably quite read reading reads reached "
    "reaches really right roughly rough same says say scum second see sludge so some something sort stain "
    "stained stick still sure surface tank tape than that that's thats the there there's theres thick "
    "thickness think third this tick to today too top total total touch under until up upto us use very "
    "was water we well were wet what when where which with would yeah yep yes you um uh er hmm tall long "
    "deepness gave showed shows take takes thereabouts it'll bit tad touch smidge shy short slightly "
    "barely quite just under give close is es son tiene unos unas como mas menos o y de la el lodo nata "
    "capa y hay creo que marca aproximadamente casi un una poco size length width wide high height "
    "diameter across inside holds capacity volume"
)


def hedge(skeleton: str) -> Hedge:
    """What the words around the amounts of a skeleton say."""
    if _NEGATIVE.search(skeleton) or _OTHER_MEASURE.search(skeleton):
        return Hedge(stops="unclear")
    words = re.findall(r"[a-z][a-z']*", skeleton)
    loose = any(word not in _KNOWN for word in words) and not _known_hedge(skeleton, words)
    about = bool(_ABOUT.search(skeleton)) or ("?" in skeleton and not _QUESTION.search(skeleton))
    under = bool(_UNDER.search(skeleton) or _UNDER_AFTER.search(skeleton))
    over = bool(_OVER.search(skeleton) or _OVER_AFTER.search(skeleton))
    rest = _NOT_DENIED.sub(" ", _UNDER_AFTER.sub("#", _OVER_AFTER.sub("#", _UNDER.sub("#", _OVER.sub("#", skeleton)))))
    if _QUESTION.search(skeleton):
        return Hedge(about, stops="ask", loose_words=loose)
    below_one = bool(_LESS_THAN.search(rest)) and not re.search(r"\b(?:no|not) (?:less|under|below)", rest)
    rest = _LESS_THAN.sub("#", rest) if below_one else _REACHES.sub("#", rest)
    stops = _LIMITING.search(rest) or _ANOTHER_TIME.search(rest) or _DENIED.search(rest)
    return Hedge(
        about=about,
        shift=-1 if under else 1 if over else 0,
        hair=(under or over) and bool(_HAIR.search(skeleton)),
        below_one=below_one,
        stops="ask" if stops or (below_one and skeleton.count("#") > 1) else "",
        loose_words=loose,
        shift_share=(-0.02 if under else 0.02 if over else 0.0),
    )


def _known_hedge(skeleton: str, words: list[str]) -> bool:
    """Whether every word outside the known ones belongs to a hedge or a denial."""
    rest = _ABOUT.sub(
        " ",
        _NOT_DENIED.sub(
            " ", _UNDER.sub(" ", _OVER.sub(" ", _LIMITING.sub(" ", _DENIED.sub(" ", _ANOTHER_TIME.sub(" ", skeleton)))))
        ),
    )
    return all(word in _KNOWN for word in re.findall(r"[a-z][a-z']*", rest)) if words else True


_FILL = (
    r"(?:oh|well|um|uh|hmm|so|ok|okay|honestly|sorry|really|just|there(?:'s| is| was| isn't| isnt)?|"
    r"theres|i|we|it|it's|its|that's|looks? like|think)"
)
_NOT_KNOWN = re.compile(
    rf"(?:{_FILL} )*(?:(?:i )?(?:honestly |really |just |still )?(?:don'?t|do not|dont|didn'?t|did not|"
    rf"couldn'?t|could not|can'?t|cannot|can not|wasn'?t able to|was not able to|unable to)"
    r"(?: really| quite| honestly| rightly| even)? "
    r"(?:know|no|tell|say|see|remember|recall|read|measure|get|find|check|make it out|be sure|look|"
    r"have (?:a|any) (?:clue|idea|reading|measurement)|understand)(?: .{0,40})?|"
    r"idk|dunno|i ?dunno|dont kno|unknown|unsure|not (?:too |very |really |at all |quite |100% "
    r")?(?:sure|certain|positive)(?: .{0,30})?|(?:i have |i've |ive |have |got )?(?:no|not a|not the "
    r"foggiest|zero) (?:idea|clue|ideas|earthly)(?: .{0,30})?|"
    r"(?:i'?m |im )?not (?:sure|certain)|(?:hard|impossible|difficult|tough) to (?:say|tell|see|read|"
    r"know|measure)(?: .{0,30})?|beats me|who knows|no telling|search me|"
    r"(?:i )?(?:haven'?t|have not|havent) (?:a|the|any) (?:clue|idea|foggiest|notion)(?: .{0,30})?|"
    r"(?:your|my) guess is as good as (?:mine|yours)|"
    r"\?+|\? ?\? ?\?*|na(?: [a-z0-9³]+)?|no se|ni idea|no lo se|no estoy segur[oa]|quien sabe|no reading(?: "
    r".{0,20})?|no measurement|not measured|not known|not read|"
    r"never (?:measured|checked|looked|read)(?: .{0,20})?|"
    r"(?:i |we )?(?:have |totally |completely )?(?:forgot|forgotten)(?: .{0,30})?|(?:it'?s |its |"
    r"too )?(?:unreadable|smeared|blurry|too dark(?: .{0,20})?)|huh|haven'?t (?:measured|checked|"
    r"looked|read)(?: .{0,20})?|cant say|couldnt say)"
    r"(?: (?:really|sorry|honestly|yet|at all|exactly|anymore|right now|tbh))*"
)
_THING = (
    r"(?:scum|sludge|crust|layer|layers|solids|stain|grease|fat|mat|floating (?:layer|stuff|mat)|muck|"
    r"mud|gunk|stuff|thing|buildup|build-up|sediment|lodo|nata|espuma|capa|grasa|costra)"
)
_WHERE = (
    r"(?: (?:at all|that i (?:can|could) see|that i saw|there|left|to speak of|on top|on it|at the "
    r"(?:top|bottom)|in (?:it|there|the tank)|visible|present|yet|today|now|here|whatsoever|really|"
    r"floating|anywhere))*"
)
_NOTHING = re.compile(
    rf"(?:{_FILL} )*(?:(?:none|nothing|zero|zilch|nil|nada|ningun[oa]?|not any|no hay(?: nada| {_THING})?|"
    rf"cero)(?: of it)?|(?:no|zero|without|not any|sin|ningun|ninguna) (?:\w+ )?{_THING}|"
    r"(?:there (?:isn't|isnt|is not|wasn't|wasnt|was not|aren't|are not)|there ain't|isn't|isnt|"
    r"wasn't|(?:i |we )?(?:don't|dont|do not|didn't|didnt|did not) see|(?:it |tank )?(?:doesn't|"
    r"doesnt|does not) have|(?:it )?hasn't got) "
    rf"(?:any|anything|one|a)(?: \w+)?(?: {_THING})?|(?:there is |there's |there was |i see |saw |see |"
    rf"i saw )?(?:none|nothing|no {_THING}|zero {_THING})|(?:no|not|non)(?: a| one)? {_THING}){_WHERE}"
)


def _bare(skeleton: str) -> str:
    return " ".join(re.sub(r"[.,;:!()]", " ", skeleton).split())


def says_unknown(skeleton: str) -> bool:
    """Whether a line without amounts says that the person does not know."""
    return _NOT_KNOWN.fullmatch(_bare(_mended(skeleton))) is not None


def says_none(skeleton: str) -> bool:
    """Whether a line without amounts says that there is nothing there."""
    return _NOTHING.fullmatch(_bare(_mended(skeleton))) is not None


def _mended(skeleton: str) -> str:
    """The line with letters of a few words put back in order, "slugde" and "knwo"; no other word is touched."""
    return re.sub(r"[a-z]{4,7}", lambda found: _IN_ORDER.get((found[0][0], *sorted(found[0])), found[0]), skeleton)


#: first letter and all letters in order → the word; first letters are hardly ever wrong
_IN_ORDER = {
    (word[0], *sorted(word)): word for word in ("know", "sure", "idea", "scum", "crust", "sludge", "layer", "nothing")
}
