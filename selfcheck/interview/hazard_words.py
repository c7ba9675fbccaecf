"""Words of danger made comparable: contractions spelled out, common slips mended, denials never touched."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

from selfcheck.domain.units import one_slip
from selfcheck.text import REPLACEMENT, clean, words

#: a line longer than this is read only so far from its start and from its end
LONGEST = 1200

#: content words that are mended when one letter is wrong; none of them is one letter away from an everyday word
_MENDED = [
    "lightheaded",
    "headache",
    "nauseous",
    "nauseated",
    "unconscious",
    "unresponsive",
    "collapsed",
    "breathing",
    "breathe",
    "vomiting",
    "overflowing",
    "overflowed",
    "overflow",
    "electrocuted",
    "explosion",
    "exploded",
    "climbing",
    "climbed",
    "sinkhole",
    "cracked",
    "wobbling",
    "wobbles",
    "sewage",
    "toilet",
    "toilets",
    "basement",
    "bathtub",
    "husband",
    "daughter",
    "grandson",
    "toddler",
    "children",
    "septic",
    "reaching",
    "opening",
    "fainted",
    "fainting",
    "shocked",
    "bubbling",
    "backing",
    "flooding",
    "surfacing",
    "puddle",
    "missing",
    "broken",
    "rocking",
    "smoking",
    "cigarette",
    "tumbled",
    "slipped",
    "drowning",
    "trapped",
    "ground",
    "lawn",
    "concrete",
    "splitting",
    "crumbling",
    "shattered",
]
#: everyday words that stand one letter away from one of those
_LEFT_ALONE = words(
    "leaving learning leaking leading baking barking banking packing blacking cranked crackled breather "
    "breaths breath opened opening openings broker grounds round grinding preaching teaching beaching "
    "coaching roaching rockin docking locking smocking kissing mission misting messing painted feinted "
    "fasting shower showed puddles paddle peddle saddle slapped snipped stopped shipped skipped children "
    "toilets climber tumbles tumbler crackers cracker tracked racked blocking bucking sacking backings "
    "hacking lacking bedding bidding flooring blooding folding spoken husbands daughters trapper tripped "
    "drowsing dropping drawing growing crowding crawling wobbly backlog breeding breading brewing grown "
    "grounded shacked stocked smoke smoked smokes sewages sewer sewers sewn reacting reading resting "
    "reaping roasting rooting rocket rockets rocky ricking discrete concretes crumpling rumbling tumbling "
    "crumbing splatting spitting slitting"
)
_SLIPS = {
    "ligth": "light", "lite": "light", "lihgt": "light", "teh": "the", "hte": "the", "tnak": "tank", "tanck": "tank",
    "septik": "septic", "spetic": "septic", "hol": "hole", "watr": "water",
    "smokeing": "smoking",
    "dizy": "dizzy", "dizzi": "dizzy", "dissy": "dizzy", "dizzzy": "dizzy", "diszy": "dizzy", "dizzie": "dizzy",
    "dizz": "dizzy", "diziness": "dizziness",
    "feel": "feel", "fel": "fell", "felll": "fell", "fellin": "fell in", "fallin": "falling", "feell": "feel",
    "leanin": "leaning", "leening": "leaning", "leanng": "leaning",
    "kidd": "kid", "chld": "child", "chid": "child", "hubby": "husband", "sewege": "sewage", "sewrage": "sewage",
    "sewerage": "sewage", "seweage": "sewage", "swage": "sewage", "sewadge": "sewage",
    "poo": "poop", "poopy": "poop", "tolet": "toilet", "toliet": "toilet", "toilette": "toilet", "crakced": "cracked",
    "craked": "cracked", "crackd": "cracked", "craced": "cracked", "crackked": "cracked",
    "crackin": "cracking", "rockin": "rocking", "brocken": "broken", "brokn": "broken", "brokne": "broken",
    "borken": "broken", "sinkin": "sinking", "snuk": "sunk", "sunked": "sunk", "lidd": "lid", "ld": "lid",
    "cant": "can not", "cannot": "can not", "dont": "do not", "doesnt": "does not", "didnt": "did not",
    "isnt": "is not", "wasnt": "was not", "arent": "are not", "werent": "were not",
    "wont": "will not", "wouldnt": "would not", "couldnt": "could not", "shouldnt": "should not", "hasnt": "has not",
    "havent": "have not", "hadnt": "had not", "aint": "is not",
    "im": "i am", "ive": "i have", "ill": "ill", "hes": "he is", "shes": "she is", "theyre": "they are",
    "theres": "there is", "thats": "that is", "its": "it is", "whos": "who is", "someones": "someone is",
    "somebodys": "somebody is", "gonna": "going to", "gona": "going to", "goin": "going", "wanna": "want to",
    "gotta": "got to", "lemme": "let me", "noone": "nobody", "nobdy": "nobody", "nobodys": "nobody is",
    "kids": "kids", "ppl": "people", "pls": "", "plz": "", "u": "you", "ur": "your", "omg": "", "w": "with",
    "infront": "in front", "inside": "inside", "into": "into", "yrs": "years", "yr": "year",
    "uncontious": "unconscious", "unconcious": "unconscious", "unconsious": "unconscious",
    "unconcsious": "unconscious", "colapsed": "collapsed", "collasped": "collapsed", "colapse": "collapse",
    "nausious": "nauseous", "nausous": "nauseous", "naseous": "nauseous", "nauseus": "nauseous",
    "headake": "headache", "hedache": "headache", "headace": "headache", "breath": "breath", "breeth": "breathe",
    "breth": "breathe", "fainte": "faint", "feint": "faint", "past out": "passed out", "exploaded": "exploded",
    "tub": "tub", "overflowin": "overflowing",
    "comming": "coming", "comin": "coming", "cumming": "coming", "backin": "backing", "flodding": "flooding",
    "grond": "ground", "groud": "ground", "grund": "ground", "climing": "climbing", "climin": "climbing",
    "reachin": "reaching", "smokin": "smoking",
}  # fmt: skip
_ENDINGS = (
    (re.compile(r"\bcan't\b"), "can not"),
    (re.compile(r"\bwon't\b"), "will not"),
    (re.compile(r"\bain't\b"), "is not"),
    (re.compile(r"n't\b"), " not"),
    (re.compile(r"\bi'm\b"), "i am"),
    (re.compile(r"'re\b"), " are"),
    (re.compile(r"'ve\b"), " have"),
    (re.compile(r"'ll\b"), " will"),
    (re.compile(r"'d\b"), " would"),
    (re.compile(r"\blet's\b"), "let us"),
    (
        re.compile(
            r"\b(he|she|it|there|that|who|what|where|how|someone|somebody|nobody|everyone|lid|cover|ground|"
            r"toilet|shower|sewage|water|here|kid|son|daughter|husband|wife|dog|baby|boy|girl|mom|dad|one|"
            r"tank|tub|yard|everything|room|head|puppy|cat|grandson|brother|sister|husband|friend|cat|soil|"
            r"smell|neighbor)'s\b"
        ),
        r"\1 is",
    ),
    (re.compile(r"'s\b"), " "),
)
#: sayings with a "no" or "not" that denies nothing
_SAYINGS = re.compile(
    r"\b(?:(?:(?:i|we) )?(?:am |are )?(?:not|no) (?:kidding|joking|joke|lying|a joke|a drill|messing|"
    r"bs|lie|exaggerating|making (?:this|it) up)(?: around)?(?: you| here| guys)*|oh no|no no(?: no)*|"
    r"god no|no wait|not good|not ok(?:ay)?|not great|no good|not fun|"
    r"(?:i )?do not know what to do|(?:i )?do not know what (?:happened|is happening|is going on)|no "
    r"idea what (?:to do|happened|is going on)|not sure what (?:to do|happened)|no idea how|no clue "
    r"(?:how|what to do)|no signal|no answer|no response|no help|"
    r"can not believe (?:it|this|that)?|(?:this|it) can not be (?:good|right|happening)|why not|not "
    r"again|no way|no time|not long ago|not a minute ago|no warning|for no reason|no doubt(?: about "
    r"it)?|not only|no matter what|not sure how|can not reach (?:him|her|them|it)|"
    r"can not get (?:him|her|them|it) out|will not come out|not (?:feeling|doing|looking) (?:so |too |"
    r"very )?(?:good|well|great|hot)|(?:do|does) not feel (?:so |too |very )?(?:good|well|right|"
    r"great)|not (?:so )?well)\b"
)
_FINE = re.compile(
    r"\b(?:not (?:feeling|doing) (?:so |too |very )?(?:good|well|great|hot|right)|do not feel (?:so |"
    r"too |very )?(?:good|well|right|great|ok|okay)|does not feel (?:so |too |very )?(?:good|well|"
    r"right)|not feeling (?:ok|okay))\b"
)
_INTERJECTION = re.compile(
    r"(?:^|(?<=[|] ))(?:no|nope|nah) (?=(?:he|she|they|it|we|i|you|there|the|my|our|his|her|that|this|"
    r"someone|somebody|call|help|actually|really|please)\b)"
)


def normal(text: str) -> str:
    """The line in lower case, contractions spelled out, slips mended; clauses parted by ` | `, sentences by ` || `,
    a question ended by ` ?? `.
    """
    safe = clean(text, 4 * LONGEST).replace(REPLACEMENT, "")
    if len(safe) > LONGEST:
        safe = f"{safe[: LONGEST // 2]}\n{safe[-LONGEST // 2 :]}"
    flat = unicodedata.normalize("NFKD", safe).lower()
    flat = "".join(character for character in flat if not unicodedata.combining(character))[: 2 * LONGEST]
    flat = re.sub(r"[’‘´`′]", "'", flat)
    flat = re.sub(r"([a-z])\1{2,}", r"\1\1", flat)
    for pattern, full in _ENDINGS:
        flat = pattern.sub(full, flat)
    flat = re.sub(r"\?+", " ?? ", flat)
    flat = re.sub(r"[.;!\n]+|:(?=\s|$)", " || ", flat)
    flat = re.sub(r",|\s-+\s|[()–—]|\b(?:but|however|although|though|except|pero)\b", " | ", flat)
    words = re.findall(r"[a-z']+|\d+|\|+|\?\?", flat)
    mended = " ".join(filter(None, (_mended(word.strip("'")) for word in words[:400])))
    mended = _FINE.sub("feel unwell", mended)
    mended = _SAYINGS.sub(" | ", mended)
    mended = _INTERJECTION.sub("", " ".join(mended.split()))
    return _INTERJECTION.sub("", mended)


@lru_cache(maxsize=8192)
def _mended(word: str) -> str:
    if word in _SLIPS:
        return _SLIPS[word]
    if len(word) < 6 or len(word) > 14 or word in _LEFT_ALONE or word in _MENDED:
        return word
    for known in _MENDED:
        if one_slip(word, known) and not word.startswith(known) and not known.startswith(word):
            return known
    return word
