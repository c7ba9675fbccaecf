"""Words that deny, suppose, ask, or put into the past what stands beside them."""

from __future__ import annotations

import re

from selfcheck.text import words

#: concepts whose words hold a denial, and tell of danger by it: "not breathing", "no lid"
LACKS = words(
    "nothing_for get_sense confused_lost no_answer no_breath no_feel no_lid bad_fit not_right not_out not_up not_away "
    "not_closed pit_appears"
)
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
    r"(?:years?|months?|weeks?|decades?|summers?|winters?|springs?|autumns?|seasons?) (?:ago|back|earlier)|"
    r"(?:in|back in|during) the (?:nineties|eighties|seventies|sixties|fifties|noughties|war|drought|\d+s?)|"
    r"in (?:january|february|april|june|july|august|september|october|november|december)|used to|"
    r"long (?:time )?ago|ages ago|"
    r"back in (?:the (?:days?|old|\d+)|(?:19|20)?\d\d|my day|high school|college|school|spring|summer|fall|winter|"
    r"january|february|march|april|may|june|july|august|september|october|november|december)|in (?:19|20)\d\d|"
    r"when (?:i|we|he|she) (?:was|were) (?:a |just )*(?:kid|kids|young|little|child|children|boy|girl|"
    r"growing)|previously|(?:my|our|his|her|the) (?:old|last|other|first|former) (?:house|place|home|flat|"
    r"property|farm)|"
    r"when (?:my|the|our) \w+ (?:was|were) (?:little|small|young|a baby|a kid|a child)|"
    r"in the past|one time|when (?:i|we|he|she) (?:worked|lived|rented|owned|farmed|stayed|studied|served)|"
    r"my (?:old )?job was|(?<!at )once(?= *(?:$|[|]))|(?:when|while) (?:i|we|he|she) (?:was|were) (?:a |"
    r"just )*(?:lad|lass|teenager|teen|student|boy|nipper|youth)|"
    r"at (?:my |our )?(?:last |old |first )?(?:work|school|job) (?:a|one|we|they|i) \w+|"
    r"once (?:before|when|upon|in|back)|before we (?:moved|bought|"
    r"owned)|"
    r"(?:previous|former|last|old|prior|past|ex|earlier) (?:owner|tenant|occupant|resident|householder|people|"
    r"family|folk|lot|guy|landlord|seller|couple)s?|as a (?:kid|child)|ano pasado|hace (?:\w+ )?(?:anos?|"
    r"mes(?:es)?)|history of|years before|winter before|childhood|it once|had once|ever since)\b"
)
MENDED = re.compile(
    r"\b(?:(?<!not )(?<!never )(?<!be )(?:filled(?! with| up| to| by| and| almost| nearly| right)|replaced|"
    r"fixed)|repaired|patched|swapped|"
    r"filled in|taken care of|mended|reparad[oa]|new "
    r"(?:lid|one|cover|riser|(?:drain |leach )?field|tank|pump|pipe|system)|"
    r"(?:is|are|was|it|all|everything) (?:fine|ok|okay|good|clear|sorted) now|"
    r"stopped now|has stopped|cleared up|cleared it|snaked|unclogged|plumber (?:fixed|came and)|(?:i|we|he|she|"
    r"they) (?:have |just |then )*(?:screwed|bolted|tightened|shimmed|packed|wedged|levelled|leveled|secured|"
    r"sealed|reset|glued|cemented) (?:it|them|that)(?! and it (?:is )?still)|works "
    r"(?:fine )?now|(?:until|till) (?:i|we|he|she|they) (?!leave|left|step|stand|stop|push|pull|go\b|went|"
    r"walk)\w+|(?:like|as) (?:it|they) should|which is normal|resolved)\b"
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
#: told by a screen, a page or a stage, not by what is at hand
FICTION = re.compile(
    r"\b(?:(?:in|on|from) (?:a|the|that|this|some|an|my|our) (?:old |new |scary |tv |horror )?(?:film|movie|"
    r"show|series|book|"
    r"novel|game|programme|program|documentary|podcast|advert|ad|soap|cartoon|clip|comic|play|episode|article|"
    r"leaflet|"
    r"magazine|paper|course|drill|story)|on (?:youtube|tv|telly|tiktok|facebook|reddit|netflix|the (?:news|"
    r"telly|radio|"
    r"internet|web|tv|box)|instagram|line forum)|(?:a|the|this|that) (?:film|movie|documentary|clip|video|story|"
    r"article|novel|podcast|show|programme) (?:about|of|on|where|with|in which)|(?:only|just) (?:joking|"
    r"kidding)(?= *(?:$|[|]))|jk(?= *$)|"
    r"(?:favou?rite|this|that|the|a) (?:film|movie|book|novel|show) (?:has|had|is|was|ends|starts)|"
    r"(?:tales?|legends?|jokes?|rumou?rs?|stories) (?:of|about))\b"
)
#: a house or a tank that is not the one at hand; the worst dangers are heard of there too
ELSEWHERE = re.compile(
    r"\b(?:(?:at|in|to|over at) (?:my |our |his |her |the |a )?(?:\w+ )?(?:sister|brother|cousin|friend|buddy|"
    r"neighbou?r|"
    r"uncle|aunt|mate|coworker|boss|parent|mother|father|mum|mom|dad|son|daughter|in law|grandma|gran|grandpa|work)s?"
    r"(?: is)? (?:house|place|home|farm|cottage|cabin|old place)|"
    r"(?:cousin|friend|buddy|uncle|aunt|mate|coworker|boss|sister|brother|nephew|niece)s?(?: is)? (?:house|"
    r"place|home|farm|"
    r"cottage|cabin)|(?:two|three|four|few|couple of|\d) (?:doors|houses|streets|farms) (?:down|up|away|over)|"
    r"(?:further|farther|other end|just)? ?(?:down|up) (?:the|our) (?:street|road|block|lane)|(?:cousin|friend|"
    r"buddy|uncle|aunt|mate|coworker|boss|sister|brother) (?:over |down |up |out )?in (?!the\b|a\b|there|it\b|"
    r"law)\w+ (?:had|has|have|got)|(?:not|is not) (?:ours|mine|at ours|at mine|our (?:house|tank|yard|lid)|"
    r"my (?:house|tank|yard|lid)|"
    r"here at (?:ours|mine))|(?:in|across) (?:another|a different|the next|the) (?:county|state|town|village|country|"
    r"city|street)|next (?:town|county|village) over|(?:town|county|state|valley) over)\b"
)
SUPPOSED = re.compile(
    r"\b(?:till|to (?:stop|prevent|avoid)|how (?:do|can|would|could|to) (?:i |you |we )?(?:stop|prevent|avoid|fix)|"
    r"why (?:can|should|must|would|not|no)|"
    r"what if|when (?:do|should|would|must|shall|can) (?:i|we|you|one|people)|(?:do|should|must|would|"
    r"will) (?:i|we|you|they) (?:have to|need to|ever)|even if|if|in case|suppose|supposing|imagine|pretend|"
    r"pretending|unless|whether|so "
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
#: "I could climb in" offers to; "could I" asks, and "someone could" supposes
OFFERS = words("could can may might would")
DOERS = words("i we he she dad husband wife son brother")
MODALS = words("could might may can should does do did would")
QUESTION = re.compile(
    r"(?:^|\| )(?:so |ok |okay |hey |um |and |wait |hi |well |then |but |please |quick question |"
    r"question )*(?P<word>is|are|was|were|am|did|do|does|has|have(?! to)|had|can|could|should|shall|will|"
    r"would|may|must|what|what's|how|when|where|who|which|whose|que|como|puedo|cuando|any|anyone|"
    r"anybody|anything)\b"
)
#: what befell somebody at another place
AT_OTHER_PLACE = re.compile(
    r" ?(?:at|in|during|on) (?:a|an|the|his|her|my|our)? ?(?:wedding|party|funeral|concert|church|hospital|gym|"
    r"airport|mall|pub|"
    r"restaurant|office|store|beach|stadium|match|football|fair|zoo|cinema|theatre|theater|cruise|flight|plane|"
    r"bus|train|"
    r"holiday|vacation|honeymoon|roller coaster|ride|marathon|race|shop|class|parade)\b"
)
#: "when does a lid crack", "who mends lids": of any, not of this one
OF_ANY = words("do does would will can could should shall may might did")
MENDERS = words("fixes repairs mends does checks pays replaces seals sells makes pumps would can could should will do")
#: a second question behind the first: "may I use a torch or will it spark"
AGAIN_ASKED = re.compile(r"\bor (?=(?:will|would|is|are|does|do|can|could|should|may|might) )")
WH = words("what how when where who which whose que como cuando")
DOUBT = re.compile(
    r"\b(?:maybe|might|may be|could be|think|guess|possibly|perhaps|looks like|seems|sort of|kind of|"
    r"kinda|not sure|unsure|almost|nearly|probably|afraid|worried|earlier|yesterday|was|used)\b"
)
LASTING = re.compile(
    r"pass|faint|sense|rouse|black|unconsc|unresp|collaps|conscious|cold|desmay|breath|moving|respond|wak|"
    r"answer|reply|talk|"
    r"limp|blue|down|ground|help"
)
DONE = re.compile(r"(?:ed|\w{2}ing|fell|fallen|went|gone|broke|broken|sank|sunk|stuck|cayo|hit|cut|lit|caught|left)$")
#: "nobody lit a cigarette": what the denied did it to is denied with it
ACTED = re.compile(r"(?:ing|ed|has|have|had|lit|hit|lost|got|threw|cut|took)$")
NOT_ANY = words("a an any his her their")
