"""Yes or no as people type them. Nothing here is matched by likeness."""

from __future__ import annotations

import re
from typing import Literal

from selfcheck.domain.hedges import says_unknown
from selfcheck.domain.number_words import plain


def _phrases(listed: str) -> list[str]:
    return listed.split("|")


_YES = frozenset(
    _phrases(
        "yes|y|yep|yup|yeah|yea|ya|yah|yas|ye|yess|yes i did|yes i have|yes it is|yes it does|"
        "yes they are|yes they did|yes sir|yes maam|yes ma'am|yes please|sure|sure did|sure is|sure thing|"
        "of course|ok|okay|k|kk|okey|okie|done|all done|its done|it's done|i did|did it|did that|i have|"
        "i do|i am|it is|it does|it did|it has|they are|they do|we did|we have|we are|we do|true|correct|"
        "right|that's right|thats right|that is right|that's correct|thats correct|absolutely|definitely|"
        "certainly|affirmative|aye|uh huh|uhhuh|mhm|mm hmm|mmhm|indeed|you bet|for sure|of course it is|"
        "si|claro|claro que si|si claro|hecho|listo|por supuesto|correcto|i think so|i believe so|"
        "there is|there are|there was|it was|he is|she is|yes there is|yes there are|yes we are|"
        "yes we did|yes it was|yes he is|yes she is|yes i am|yes i do|yes done|yes did it|yep done|"
        "yep did it|yes yes|yes absolutely|yes definitely|yes of course|looks right|sounds right|"
        "that is correct|good|i can|we can|yes i can|i will|yes i will|yes that's right|yes thats right|"
        "ready|i'm ready|im ready"
    )
)


_NO = frozenset(
    _phrases(
        "no|n|nope|nah|naw|noo|nop|not yet|no not yet|not really|no not really|not at all|no not at all|"
        "never|negative|no way|i did not|i didn't|i didnt|didn't|didnt|did not|haven't|havent|i haven't|"
        "i havent|i have not|not done|not done yet|it is not|it isn't|it isnt|it's not|its not|it doesn't|"
        "it doesnt|it does not|it did not|it didn't|it didnt|isn't|isnt|it wasn't|it wasnt|they are not|"
        "they aren't|they're not|theyre not|we didn't|we didnt|we haven't|we havent|we don't|we dont|"
        "we do not|they don't|they dont|they do not|"
        "he isn't|she isn't|he is not|she is not|we are not|we aren't|there was not|there wasn't|i am not|i'm not|"
        "im not|i don't|i dont|i do not|false|wrong|incorrect|that's wrong|thats wrong|that is wrong|"
        "that's not right|thats not right|not right|not correct|uh uh|nuh uh|no sir|no ma'am|no maam|"
        "no i didn't|no i didnt|no i did not|no i haven't|no i havent|no it isn't|no it isnt|no it is not|"
        "no it's not|no its not|no it doesn't|no it doesnt|no it wasn't|no there isn't|no there isnt|"
        "no there is not|there isn't|there isnt|there is not|there are not|there aren't|no i don't|"
        "no i dont|no we didn't|no we haven't|no they aren't|no they are not|no i am not|no i'm not|"
        "no im not|i don't think so|i dont think so|no i don't think so|todavia no|aun no|no todavia|"
        "para nada|claro que no|no no|no thanks|no thank you|can't|cannot|i can't|i cant|i can not|"
        "no i can't|no i cant|not now|not ready|i'm not ready|nobody|no one|none|won't|i won't|i wont"
    )
)


_TAIL = re.compile(r" (?:yet|thanks|thank you|sir|ma'am|now|already|just now|tbh|for sure|i think|gracias|please)$")


def read_yes_no(text: str) -> Literal["yes", "no", "unknown"] | None:
    """`yes`, `no`, `unknown` when the person does not know, None when the line is none of these. Exact wordings
    only.
    """
    flat = plain(text)
    if flat is None:
        return None
    bare = " ".join(re.sub(r"[^\w']+", " ", flat).split())
    if not bare:
        return "unknown" if "?" in flat else None
    for candidate in (bare, _TAIL.sub("", bare)):
        first, _, rest = candidate.partition(" ")
        if candidate in _YES or (first in _YES and rest in _YES):
            return "yes"
        if candidate in _NO or (first in _NO and rest in _NO):
            return "no"
    return "unknown" if says_unknown(bare) else None
