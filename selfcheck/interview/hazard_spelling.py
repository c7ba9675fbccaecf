"""Words of danger that were typed in haste, made whole: a slip of the keys, two in a long word, two words run together,
or written as they sound. Short words are never touched.
"""

from __future__ import annotations

import re
from functools import lru_cache

from selfcheck.domain.units import one_slip
from selfcheck.interview.hazard_concepts import LEXICON, forms
from selfcheck.interview.hazard_lexicon import CONCEPTS
from selfcheck.interview.hazard_lookalikes import LOOKALIKES
from selfcheck.text import words

_SHORTEST = 4
_LEAST = 3
#: with a wrong first letter, shorter words are too like others
_LEAST_TAIL = 6
#: words so long may hold two slips: few others are as near (our own choice)
_LONG = 8
_MOST_SLIPS = 2
_SLIPS = {
    "teh": "the", "hte": "the", "tnak": "tank", "tanck": "tank", "hol": "hole", "watr": "water", "lidd": "lid",
    "ld": "lid", "kidd": "kid", "felll": "fell", "fel": "fell", "feell": "feel", "cant": "can not", "cannot": "can not",
    "dont": "do not", "doesnt": "does not", "didnt": "did not", "isnt": "is not", "wasnt": "was not",
    "arent": "are not", "werent": "were not", "wont": "will not", "wouldnt": "would not", "couldnt": "could not",
    "shouldnt": "should not", "hasnt": "has not", "havent": "have not", "hadnt": "had not", "aint": "is not",
    "im": "i am", "ive": "i have", "hes": "he is", "shes": "she is", "theyre": "they are", "theres": "there is",
    "thats": "that is", "its": "it is", "whos": "who is", "someones": "someone is", "somebodys": "somebody is",
    "somethings": "something is", "gonna": "going to", "gona": "going to", "goin": "going", "wanna": "want to",
    "gotta": "got to", "lemme": "let me", "noone": "nobody", "nobdy": "nobody", "noboddy": "nobody", "noody": "nobody",
    "nobidy": "nobody", "nbody": "nobody", "nver": "never", "nevr": "never", "neverr": "never", "fixd": "fixed",
    "fixxed": "fixed", "repared": "repaired", "replacd": "replaced", "nite": "night", "nobodys": "nobody is",
    "ppl": "people", "pls": "", "plz": "", "u": "you", "ur": "your", "omg": "", "w": "with", "infront": "in front",
    "yrs": "years", "yr": "year", "cumming": "coming", "ligth": "light", "lite": "light", "lihgt": "light",
    "hedded": "headed", "feint": "faint", "whats": "what is", "wheres": "where is", "snuk": "sunk",
    "dads": "dad is", "moms": "mom is", "lids": "lids", "unconcious": "unconscious", "jst": "just", "thru": "through",
    "hight": "height", "swage": "sewage", "sewrage": "sewage", "sewerage": "sewage", "sewadge": "sewage",
    "breth": "breath", "brake": "broke", "braking": "breaking", "breeth": "breathe",
    "til": "until", "n": "in", "kollapsed": "collapsed", "wierd": "weird",
    "lil": "little", "otu": "out", "uot": "out", "upp": "up", "ont": "on", "thier": "their",
    "gte": "get", "sewidge": "sewage", "opend": "opened", "openning": "opening", "stoped": "stopped", "bouncey":
    "bouncy", "waht": "what", "wat": "what", "wut": "what", "blots":
    "bolts", "shrot": "short", "het": "the", "adn": "and", "iz": "is", "wee": "little",
    "dizzie": "dizzy", "dissy": "dizzy", "diszy": "dizzy", "dizz": "dizzy", "woosy": "woozy", "wuzzy": "woozy",
}  # fmt: skip
_TAILS = words("in into out up down over off on the it is")
_KNOWN_FIRST = words(
    "fell fall slipped went climb jump coming backing backed passed throw threw blacked caved gave sank"
)


#: "arnt", "hasent", "dosnt", "didn": a verb that denies, in any spelling
_DENYING = re.compile(
    r"(is|are?|was|were?|do|do?es?|dos|did?|has?|have?|had|could|coud|would|woud|shoud|should)(?:e?nt|en't|net|tn|nt)"
    r"|(is|did|does|was|has|would|could|should)n"
)
#: what is left of short words on which it hangs whether, when and where something is told, when a letter was lost
_LOST_LETTER = {
    f"{word[:at]}{word[at + 1 :]}": word
    for word in words(
        "can not never year years week weeks last could would should fine okay when dinner does have your"
    )
    for at in range(1, len(word))
}


def _sound(word: str) -> str:
    """What is left of a word when it is written as it sounds: its first letter and its consonants."""
    flat = re.sub(r"(?:sci|ti|ci|sh|sch)(?=[aeou])", "s", word)
    flat = re.sub(r"ch(?=e?s?$)|ck|c(?![eiy])|q", "k", flat)
    flat = re.sub(r"(?<=[kps])t$", "d", flat)
    flat = flat.replace("ph", "f").replace("gh", "").replace("z", "s").replace("c", "s")
    first, rest = flat[:1], flat[1:]
    rest = re.sub(r"[aeiouyhw]", "", rest)
    return re.sub(r"(.)\1+", r"\1", first + rest)


#: words of these concepts, other than the shortest, are worth mending; of the others only those in `_CORE`
_CONCEPTS = (
    "ill faint ache fall drown no_answer breath child adult tank hole climb lean fire_sure smoke igniter shock broken "
    "service ground sinkhole sink overflow backup fixture indoors filth pool help body senses sense_hurt weak state "
    "stuck shove_in cling stand hit limb_wheel outside sounding alarm surface up tank_over broken_act hurt"
)
_MENDABLE = sorted(
    {word for name in _CONCEPTS.split() for entry in CONCEPTS[name].split() for form in forms(entry)
     for word in form.split("_") if word.isalpha() and len(word) >= 6} | words("dizzy faint fuego fumes flame crack")
)  # fmt: skip
#: short words that tellings hang on; of two that are as near the first is meant
_CORE = (
    "fell tank hole cover down help fire went going head yard caved cant broke forgot feel feels wire wires over "
    "rocks rock into gone kids moved moves split left lawn isnt shock shocked water sick wake chest smell child "
    "edge near sparks spark blew wife inside weak loose open dirt foot stuck baby grass flame flames smoke faint "
    "puke dizzy woozy cave caving climb jump jumped slipped tripped drop dropped ground house toilet shower sink "
    "drain floor black brown sewer sewage septic riser lids under cable power line gas kid lid dog leak leaks "
    "puddle wobbly wobble wobbles rocky crack cracks cracked sank sunk sinks sunken moving blue limp breath light "
    "match alarm husband daughter toddler brother sister mother father puppy daddy grandma grandpa buddy friend "
    "lean leans leaning standing playing back backed coming bubbling flooded pooling hissing struck electric "
    "burning headache hurts hurt pounding throwing vomit passed blacked collapsed alone uncovered leaving drunk "
    "shaky bath kitchen basement bathroom boots chunk broken missing hands legs arms eyes throat breathe awake "
    "answer answering responding trapped there close reaching reach someone somebody poop crap tub stinky stinks "
    "heel wheel tire call called cold threw throw face tilts tilt spins corner tractor mower earth rescue stomach "
    "home come gave stay stop pale lips killing funny fall falls uncle aunt niece nephew girl girls cayo tapa "
    "puts putting stick numb sleepy spots knocked tight sinkhole feeling breathing leaking chair truck piece "
    "gives doesnt cannot twins spinning inhaled breathed short right bolts screws hollow fumes fasten fastened locked "
    "flimsy stolen stripped swimmy screwed appeared puddle pulse lungs hard tight knees split edge loose soil "
    "sunk sags through come open "
    "myself himself herself outside pouring bubbling oozing seeping springy hollow opening crater rotten eggs alarm "
    "beeping needs trouble cable drove leave left hatch stand attached"
)
#: words that settle whether, when and where something is told; a misspelt one can be taken for nothing else
_SETTLING = sorted(
    words(
        "nobody nothing never without before replaced fixed repaired yesterday years month months week today last "
        "next used inside indoors smoking smokes paper paint screen county email pipe pencil ladder heading phone "
        "buzzer stable tested away porch solid could would should question baffle prices front mark form toys quit"
    )
)
#: short words on which it hangs whether, when and where something is told
_PLAIN = frozenset(
    words(
        "not can was were are has had have did does why what how who when where which if any anybody anyone will must "
        "may might but and the for from with this that then there they them you your our his her its one ago last old "
        "now never none lad hit his week weeks month months year years today day days time cap car box pole tape new "
        "off out too all just only"
    )
)
_CORE_BY_START: dict[str, list[str]] = {}
for _word in _CORE.split():
    _CORE_BY_START.setdefault(_word[0], []).append(_word)
_BY_START: dict[str, list[str]] = {}
_BY_SOUND: dict[str, str] = {}
for _word in _MENDABLE:
    _BY_START.setdefault(_word[0], []).append(_word)
    if len(_word) > 6 and len(_heard := _sound(_word)) > 3:
        _BY_SOUND.setdefault(_heard, _word)


def _shuffle(word: str) -> str:
    """The first letter, the last, and those between in the order of the alphabet."""
    return f"{word[0]}{''.join(sorted(word[1:-1]))}{word[-1]}"


_SHUFFLED = {_shuffle(word): word for word in (*_MENDABLE, *_CORE.split()) if len(word) > _SHORTEST}
#: words by all but their first letter, which was missed or mistyped
_BY_TAIL = {word[1:]: word for word in (*_MENDABLE, *_CORE.split()) if len(word) >= _LEAST_TAIL}
#: words whose first two letters were swapped
_SWAPPED_START = {f"{word[1::-1]}{word[2:]}": word for word in (*_MENDABLE, *_CORE.split())}


@lru_cache(maxsize=8192)
def mended(word: str) -> str:
    """The word itself, or the words of danger that it stands for."""
    if word in _SLIPS:
        return _SLIPS[word]
    if len(word) > _SHORTEST and word.endswith("in") and f"{word}g" in LEXICON.words and word not in LOOKALIKES:
        return f"{word}g"
    if not _LEAST - 1 <= len(word) <= 16 or word in LEXICON.words or word in LOOKALIKES:
        return word
    if denying := _DENYING.fullmatch(word):
        verb = denying.group(1) or denying.group(2)
        return f"{verb} not"
    if whole := _LOST_LETTER.get(word):
        return whole
    if len(word) < _LEAST:
        return word
    near = [known for known in _CORE_BY_START.get(word[0], ()) if one_slip(word, known)]
    swapped = [known for known in near if _same_letters(word, known)]
    if not swapped and (whole := _twice_or_swapped(word)):
        return whole
    if not near and (shuffled := _SHUFFLED.get(_shuffle(word))):
        return shuffled
    for known in (*swapped, *(known for known in near if len(known) > _LEAST)):
        return _SLIPS.get(known, known)
    if len(word) < _SHORTEST:
        return word
    if whole := _SWAPPED_START.get(word):
        return whole
    for known in _KNOWN_FIRST:
        if word.startswith(known) and word[len(known) :] in _TAILS:
            return f"{known} {word[len(known) :]}"
    for known in _BY_START.get(word[0], ()):
        if one_slip(word, known) and (len(word) > _SHORTEST or _same_letters(word, known)):
            return known
    if tailed := _BY_TAIL.get(word) or _BY_TAIL.get(word[1:]):
        return tailed
    if len(word) > _SHORTEST and (sounded := _BY_SOUND.get(_sound(word))):
        return sounded
    if len(word) >= _LONG:
        for known in _BY_START.get(word[0], ()):
            if len(known) >= _LONG and len({*word} ^ {*known}) <= _MOST_SLIPS + 1 and within(word, known, _MOST_SLIPS):
                return known
    for known in _SETTLING:
        if one_slip(word, known) and (len(word) > _SHORTEST or _same_letters(word, known)):
            return known
    return word


def _twice_or_swapped(word: str) -> str:
    """The known word that was meant when a letter was struck twice, or two neighbours in the wrong order; or none."""
    for at in range(1, len(word)):
        if word[at] == word[at - 1] and _is_known(once := word[:at] + word[at + 1 :]):
            return _SLIPS.get(once, once)
    for at in range(len(word) - 1):
        if word[at] != word[at + 1] and _is_known(other := f"{word[:at]}{word[at + 1]}{word[at]}{word[at + 2 :]}"):
            return _SLIPS.get(other, other)
    return ""


def _is_known(word: str) -> bool:
    return word in _PLAIN or word in _SLIPS or (len(word) > _LEAST and word in LEXICON.words)


def within(word: str, known: str, slips: int) -> bool:
    """Whether at most so many slips turn `word` into `known`; a slip is a letter too many, lost, changed or swapped."""
    at = 0
    while word[at : at + 1] == known[at : at + 1] != "":
        at += 1
    word, known = word[at:], known[at:]
    if slips == 0 or abs(len(word) - len(known)) > slips:
        return word == known
    left = slips - 1
    return (
        within(word[1:], known[1:], left)
        or within(word[1:], known, left)
        or within(word, known[1:], left)
        or (len(word) > 1 and word[1::-1] == known[:2] and within(word[2:], known[2:], left))
    )


def _same_letters(word: str, known: str) -> bool:
    """Whether only the order or the doubling of letters differs."""
    return set(word) == set(known)
