"""Words of danger made comparable: contractions spelled out, common slips mended, denials never touched."""

from __future__ import annotations

import re
import unicodedata

from selfcheck.interview.hazard_spelling import mended
from selfcheck.text import REPLACEMENT, clean

#: a line with more characters, or more words and marks, is read only half so far from its start and from its end
#: (our own choice)
LONGEST, _MOST_WORDS = 1000, 220

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
    (
        re.compile(r"\b(lid|cover|tank|hole|hatch)s (?=(?:wide )?(?:open|off|gone|missing|broken|loose|cracked)\b)"),
        r"\1 is ",
    ),
)
#: sayings with a "no" or "not" that denies nothing
_SAYINGS = re.compile(
    r"\b(?:do not worry|(?:(?:i|we) )?(?:am |are )?(?:not|no) (?:kidding|joking|joke|lying|a joke|a drill|messing|"
    r"bs|lie|exaggerating|making (?:this|it) up)(?: around)?(?: you| here| guys)*|oh no|no no(?: no)*|"
    r"god no|no wait|not good|not ok(?:ay)?|not great|no good|not fun|"
    r"(?:i )?do not know what to do|(?:i )?do not know what (?:happened|is happening|is going on)|no "
    r"idea what (?:to do|happened|is going on)|not sure what (?:to do|happened)|no idea how|no clue "
    r"(?:how|what to do)|no signal|no help|"
    r"can not believe (?:it|this|that)?|(?:this|it) can not be (?:good|right|happening)|not "
    r"again|no way|no time|not long ago|not a minute ago|no warning|for no reason|no doubt(?: about "
    r"it)?|not only|no matter what|not sure how|not (?:feeling|doing|looking) (?:so |too |"
    r"very )?(?:good|well|great|hot)|(?:do|does) not feel (?:so |too |very )?(?:good|well|right|"
    r"great)|not (?:so )?well)\b"
)
_FINE = re.compile(
    r"\b(?:not (?:feeling|doing) (?:so |too |very )?(?:good|well|great|hot|right)|do not feel (?:so |"
    r"too |very )?(?:good|well|right|great|ok|okay|hot)|does not feel (?:so |too |very )?(?:good|well|"
    r"right)|not feeling (?:ok|okay)|(?<=i )am not (?:so |very )?well|"
    r"feel not (?:so |too |very )?(?:good|well|right|ok))\b"
)
_NOT_OK = re.compile(
    r"\b(he|she|i|we|they|husband|wife|dad|mom|son|daughter|kid) "
    r"(?:am|is|are) not (?:ok|okay|alright|good|right)(?= *$| *[|])"
)
#: "lid is no fixed": so do learners of the language deny
_NO_FOR_NOT = re.compile(
    r"\b(is|are|am|was) no (?=(?:fixed|closed|shut|safe|stable|firm|tight|solid|secure|breathing|moving|"
    r"answering|awake|"
    r"good|well|on|there)\b)"
)
#: figures of speech that hold a word of danger
_FIGURES = re.compile(
    r"\b(?:(?:as )?(?:(?:steady|solid|firm|hard|safe|stable|sound) )?as (?:a )?rocks?|rock (?:hard|solid|steady)|"
    r"rocky (?:bit|ground|soil|spot|patch|outcrop|hill|land|yard|area)|(?:nearly |"
    r"almost )?died? (?:of )?(?:laughing|laughter|"
    r"embarrassment|boredom|of shame)|dying (?:for|to) (?!breath|death)|(?:had|have|having|get|got|gave|give|"
    r"gives|giving)"
    r"(?: me| him| her| us)?(?: near| nearly| almost)*(?: a)?(?: small| mini)? heart attack (?:at|when|over|"
    r"from|seeing) "
    r"(?:the |this |that |i (?:saw|heard) (?:the )?)?(?:price|bill|quote|cost|invoice|estimate|fee)s?|(?:price|"
    r"bill|quote|"
    r"cost|invoice|estimate|fee)s? (?:\w+ ){0,2}(?:gave|give|giving) (?:me|us|him|her) (?:a )?(?:near )?heart attack|"
    r"(?:doing|does|did|do) (?:my|his|her|our) head in|(?:a )?cracking (?:day|good|job|time|deal|view|morning|"
    r"evening|"
    r"weather)|(?:crack|cracked|cracking) on(?= |$)(?! (?:the|my|our|its|it|top|one|both|either|all|each))|"
    r"crack free|free (?:of|from) "
    r"cracks|(?:spins?|spinning|hurts?|aching|aches|dizzy|swimming|sick|pounding) (?:with|from|of|at|"
    r"over) (?:all |of )*"
    r"(?:these |those |the |your |this |so many )?(?:numbers?|figures?|questions?|choices?|options?|forms?|"
    r"maths?|prices?|"
    r"paperwork|typing|reading|readings|sums|rules|words|waiting|screens?)|(?:nearly|"
    r"almost) died (?:when i (?:saw|got|heard|read)|at|from) (?:the |that )?(?:\w+ )?(?:bill|price|quote|cost|"
    r"invoice|joke)|(?:price|bill|quote|cost|fee)s? (?:really |nearly |almost )?(?:knocked|floored|killed|"
    r"shocked|choked) (?:me|us)(?: out| over| down)?|burning up in (?:this|the) (?:heat|sun)|(?:he|"
    r"she) is a (?:real |proper )?live wire|"
    r"last legs|on its last leg)\b"
)
#: lids and covers of other things, and keys of other things
_OTHER_LIDS = re.compile(
    r"\b(?:(?:mailbox|trash ?can|garbage can|bin|dustbin|jar|pool|hot tub|book|seat|toilet|box|barrel|pan|pot|"
    r"kettle|car|truck|couch|sofa|duvet|quilt|phone|"
    r"light|switch|meter|bbq|grill|boot|chest|cooler|bucket|biscuit|boat|compost|sandbox|tool ?box|gutter|"
    r"radiator|engine|battery)"
    r" (?:lid|cover)s?(?! (?:over|on|for|across) )|(?:car|truck|house|van|shed|office|barn) (?=keys?\b))"
)
_THINGS_LID = re.compile(
    r"\b(mailbox|trash can|bin|dustbin|jar|bucket|pan|pot|barrel|box|cooler) (?:has|have|with|had) no (?:lid|cover)\b"
)
#: lamps, not what burns
_LAMPS = re.compile(
    r"\b(?:led|head|pocket|battery|electric|phone|little|bike|wind up|rechargeable|camping) torch(?:es)?\b"
)
#: "my mother in law" is in nothing
_IN_LAW = re.compile(r"(?<=[rn]) in laws?\b")
#: words that break off what was being said
_ALARM = re.compile(r"\b(?:oh (?:my )?(?:god|lord|no)|hold on|hang on|uh oh|oh shit|wait)\b")
_HAS_ANY = re.compile(
    r"\b(?:has|have|did) (?:anyone|anybody|someone|somebody|you) (?=(?:called|call|rung|ring|phoned|phone|dialled) )"
)
_I_WILL = re.compile(r"\bill (?=(?:just|be|go|climb|get|jump|reach|hop|crawl|call|do|never|not|have)\b)")
_KEEPS = re.compile(r"\b(?:can|will|would|does|do|did|could) not (?:(?:stop|quit) (?=\w+ing\b)|put out )")
#: asked of a helper: a plea, and no question
_PLEAS = re.compile(
    r"\b(?:can|could|would|will) (?:someone|somebody|anyone|anybody|you) (?:please )?"
    r"(?=(?:get|save|reach|help|pull|fetch) (?:my|him|her|them|us|the|our|an?)\b|(?:call|send|ring|phone|dial|"
    r"fetch) )"
)
_INTERJECTION = re.compile(
    r"(?:^|(?<=[|] ))(?:no|nope|nah) (?=(?:he|she|they|it|we|i|you|there|the|my|our|his|her|that|this|"
    r"someone|somebody|call|help|actually|really|please)\b)"
)


def normal(text: str) -> str:
    """The line in lower case, contractions spelled out, slips mended; clauses parted by ` | `, sentences by ` || `,
    a question ended by ` ?? `.
    """
    if len(text) > 4 * LONGEST:
        text = f"{text[: 2 * LONGEST]}\n{text[-2 * LONGEST :]}"
    safe = clean(text, 5 * LONGEST).replace(REPLACEMENT, "")
    if len(safe) > LONGEST:
        safe = f"{safe[: LONGEST // 2]}\n{safe[-LONGEST // 2 :]}"
    flat = unicodedata.normalize("NFKD", safe).lower()
    flat = "".join(character for character in flat if not unicodedata.combining(character))[: 2 * LONGEST]
    flat = re.sub(r"[’‘´`′]", "'", flat)
    flat = re.sub(r"([a-z])\1{2,}", r"\1\1", flat)
    for pattern, full in _ENDINGS:
        flat = pattern.sub(full, flat)
    flat = flat.replace("|", " ")
    flat = re.sub(r"\?+", " ?? ", flat)
    flat = re.sub(r"[.;!\n]+|:(?=\s|$)", " || ", flat)
    flat = re.sub(r",|\s-+\s|[()–—]|\b(?:(?<!nothing )but|however|although|though|except|pero)\b", " | ", flat)
    words = re.findall(r"[a-z']+|\d+|\|+|\?\?", flat)
    if len(words) > _MOST_WORDS:
        words = [*words[: _MOST_WORDS // 2], "||", *words[-_MOST_WORDS // 2 :]]
    whole = " ".join(filter(None, (mended(word.strip("'")) for word in words)))
    whole = _FIGURES.sub(
        "so to say",
        _LAMPS.sub(
            "flashlight",
            _OTHER_LIDS.sub(
                "bottle ", _THINGS_LID.sub("bottle open", _NO_FOR_NOT.sub(r"\1 not ", _IN_LAW.sub("", whole)))
            ),
        ),
    )
    whole = _NOT_OK.sub(r"\1 feel unwell", whole)
    whole = _FINE.sub("feel unwell", whole)
    whole = _I_WILL.sub("i will ", _ALARM.sub(" | ", whole))
    whole = _KEEPS.sub("keeps ", whole)
    whole = _PLEAS.sub("please ", _HAS_ANY.sub("please ", whole))
    whole = _SAYINGS.sub(" | ", whole)
    whole = _INTERJECTION.sub("", " ".join(whole.split()))
    return _INTERJECTION.sub("", whole)
