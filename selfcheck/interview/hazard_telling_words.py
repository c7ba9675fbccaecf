"""Words that deny, suppose, ask, or put into the past what stands beside them."""

from __future__ import annotations

import re

from selfcheck.text import words

#: concepts whose words hold a denial, and tell of danger by it: "not breathing", "no lid"
LACKS = words("no_answer no_breath no_feel no_lid bad_fit not_right not_out not_up not_away not_closed pit_appears")
PRONOUNS = words("he she they we i you someone somebody everyone alguien el ella")
DETERMINERS = words("the my our his her their a an this that your")
PREPOSITIONS = words("of in from at on near by with to over around into under through about like for inside")
DENIALS = words("not never no nobody none neither nor nothing without zero sin nadie nunca ningun ninguna jamas")
BINDING = words("think believe say said suspect that mean means creo")
LOOKING = words(
    "see seen saw notice noticed sign signs evidence find found hear heard look looks any have had got "
    "feel let want seeing aware report"
)
NEW_SUBJECT = words("lid cover ground sewage toilet shower husband wife son daughter dog kid water basement tub drain")
FINITE = words("looks look is has keeps seems acts feels are have")
ANSWERED_NO = re.compile(
    r"^[\s|?]*(?:no|none|nope|nah|negative|not|not really|not at all|no sir|no not at all|nothing|"
    r"never|ninguna?)[\s|]*$"
)

LONG_PAST = re.compile(
    r"\b(?:last (?:christmas|xmas|thanksgiving|easter|"
    r"year|week|month|summer|winter|spring|fall|autumn|owner|season|decade|time)|"
    r"(?:years?|months?|weeks?|decades?) (?:ago|back|earlier)|used to|long (?:time )?ago|ages ago|"
    r"back in (?:the (?:days?|old|\d+)|(?:19|20)?\d\d|my day|high school|college|school|spring|summer|fall|winter|"
    r"january|february|march|april|may|june|july|august|september|october|november|december)|in (?:19|20)\d\d|"
    r"when (?:i|we|he|she) (?:was|were) (?:a |just )*(?:kid|kids|young|little|child|children|boy|girl|"
    r"growing)|previously|(?:old|last|other|first) house|"
    r"when (?:my|the|our) \w+ (?:was|were) (?:little|small|young|a baby|a kid|a child)|"
    r"in the past|one time|once (?:before|when|upon|in|back)|before we (?:moved|bought|"
    r"owned)|"
    r"(?:previous|former|last|old|prior) owners?|as a (?:kid|child)|ano pasado|hace (?:\w+ )?(?:anos?|"
    r"mes(?:es)?)|history of|years before|winter before|childhood|it once|had once|ever since)\b"
)
MENDED = re.compile(
    r"\b(?:filled(?! with| up)|replaced|fixed|repaired|patched|swapped|filled in|taken care of|mended|reparad[oa]|new "
    r"(?:lid|one|cover|riser|(?:drain |leach )?field|tank|pump|pipe|system)|"
    r"(?:is|are|was|it|all|everything) (?:fine|ok|okay|good|clear|sorted) now|"
    r"stopped now|has stopped|cleared up|cleared it|snaked|unclogged|plumber (?:fixed|came and)|works "
    r"(?:fine )?now|resolved)\b"
)
#: a lid of long ago that is not the one at hand
OLD_LID = re.compile(
    r"\b(?:old|previous|original|former|neighbou?rs?|friends?|parents|uncles|brothers|sisters|boss) "
    r"(?:is )?(?:lid|cover|tank)\b"
)
HAD = re.compile(r"\b(?:had|was|were|felt) (?:a |an |some |bad |really |very |kind of |bit )*$")
DAY_PAST = re.compile(r"\b(?:yesterday|last night|the other (?:day|night)|(?:two|three|few|couple of|\d) days ago)\b")
GONE = re.compile(
    r"\b(?:(?:is|has|are|it|now|all|headache|completely) gone|went away|gone (?:away|now)|no longer|"
    r"any ?more|passed now|cleared up|stopped|wore off|much better|feel(?:s|ing)? (?:fine|better|ok|"
    r"okay|good|great) now|(?:is|am|are) (?:fine|better|ok|okay) now)\b"
)
STORY = re.compile(
    r"\b(?:(?:heard|read|saw|seen|watched|told|warned|know|knew|learned|remember|reading|hear) "
    r"(?:about|of|that|on|in|a story|an article|stories|me about|us about|me that)|(?:news|story|"
    r"stories|article|video|movie|tv|book|online|pamphlet|brochure|internet|website|guide|"
    r"videos) .*|they say|people (?:have )?(?:died|die|get|got)) "
)
INDEFINITE = re.compile(
    r"\b(?:a|an|some|someone|somebody|people|kids|children|they|man|how|folks|workers|lids|tanks|"
    r"septic|where|who|whose)\b"
)
SUPPOSED = re.compile(
    r"\b(?:till|how (?:do|can|would|could|to) (?:i |you |we )?(?:stop|prevent|avoid|fix)|"
    r"why (?:can|should|must|would|not|no)|"
    r"what if|even if|if|in case|suppose|supposing|imagine|pretend|pretending|unless|whether|so "
    r"that|so (?:no ?one|nobody|nothing)|"
    r"(?:normal|ok|okay|usual|common|bad|safe|true) (?:that|if|when)|"
    r"so (?:they|he|she|kids?|the kids?|people) (?:can|could|do|does|will|would|might|may|should)|"
    r"to keep|keeping|(?:^|"
    r"(?<=[|] )|please |i |we |must |will |should )keep|prevent|avoid|make sure|making sure|"
    r"ensure|careful|worr(?:y|ied) about|afraid (?:of|to)|scared (?:of|to)|fear of|risk of|danger of|dangers of|"
    r"chance of|chances of|odds of|possibility of|in the event|in the event of|signs? of|signs? that|"
    r"watch(?:ing)? (?:out )?for|look(?:ing)? (?:out )?for|check(?:ing|ed)? for|check(?:ed)? (?:if|"
    r"whether)|beware|"
    r"how (?:do|can|would|will|could|to) (?:i |you |we |one )?(?:know|tell|check|see|spot)|how likely|"
    r"what happens (?:when|if)|what (?:do|should|would|can) (?:i|we|you) do (?:when|if)|what to do "
    r"(?:when|if)|do i do if|"
    r"when (?:a|an|someone|somebody|people|kids|children|you|sewage|things?|it)|"
    r"before (?:the|it|anyone|anybody|somebody|people|kids|he|she|they|"
    r"someone|a|sewage|my|our)|until|would|wish|hope(?:fully)?|hoping|ever|difference between|meaning "
    r"of|what is|what are|define|como se si|que pasa si|si se|rather than|instead of|"
    r"by accident could|supposed to|insurance|"
    r"cover(?:s|ed)? by (?:my |our |the )?(?:home )?(?:insurance|warranty|policy)|"
    r"cost of|price of|cost to|how much|"
    r"could|might|may|can|should|does|do|did|dont|never let|not let|in order|rule|rules)\b(?! "
    r"be\b)"
)
#: a clause that begins so asks ahead, all of it
AHEAD = re.compile(
    r" ?(?:so |ok |okay |and |hey |um |well )*(?:what if|"
    r"what (?:do|should|would|can|must) (?:i|we|you|one) do (?:if|when)|what (?:happens|to do) (?:if|when)|in case|"
    r"suppose|what (?:makes|causes|would make)|"
    r"what (?:does|do|would)(?! i | we )|how (?:would|do|will|can) (?:i|we|you) (?:know|tell) (?:if|when)) "
)
#: "can smell", "does not": what the modal stands by is told, not supposed
PLAINLY = words("hardly barely not smell see hear feel taste no")
#: "he did fall"
EMPHATIC = words("do does did")
MODALS = words("could might may can should does do did would")
QUESTION = re.compile(
    r"(?:^|\| )(?:so |ok |okay |hey |um |and |wait |hi |well |then |but |please |quick question |"
    r"question )*(?P<word>is|are|was|were|am|did|do|does|has|have|had|can|could|should|shall|will|"
    r"would|may|must|what|what's|how|when|where|who|which|whose|que|como|puedo|cuando|any|anyone|"
    r"anybody|anything)\b"
)
WH = words("what how when where who which whose que como cuando")
DOUBT = re.compile(
    r"\b(?:maybe|might|may be|could be|think|guess|possibly|perhaps|looks like|seems|sort of|kind of|"
    r"kinda|not sure|unsure|almost|nearly|probably|afraid|worried|earlier|yesterday|was|used)\b"
)
LASTING = re.compile(
    r"pass|faint|black|unconsc|unresp|collaps|conscious|cold|desmay|breath|moving|respond|wak|answer|reply|talk|"
    r"limp|blue|down|ground|help"
)
DONE = re.compile(r"(?:ed|ing|fell|fallen|went|gone|broke|broken|sank|sunk|stuck|cayo|hit|cut|lit|caught|left)$")
#: "nobody lit a cigarette": what the denied did it to is denied with it
ACTED = re.compile(r"(?:ing|ed|has|have|had|lit|hit|lost|got|threw|cut|took)$")
NOT_ANY = words("a an any his her their")
