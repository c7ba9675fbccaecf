"""The concepts that tellings of danger are made of: who, what and where are shared; the others come from the lists.

Words are parted by spaces, the words of a phrase joined by `_`; a `*` stands for any ending, a `~` for each form of a
verb ("slip~": slip, slips, slipped, slipping). Data with no logic.
"""

from __future__ import annotations

from selfcheck.interview.hazard_lexicon_beside import BESIDE
from selfcheck.interview.hazard_lexicon_fire import FIRE
from selfcheck.interview.hazard_lexicon_ground import GROUND
from selfcheck.interview.hazard_lexicon_ill import ILL
from selfcheck.interview.hazard_lexicon_lids import LIDS
from selfcheck.interview.hazard_lexicon_people import PEOPLE
from selfcheck.interview.hazard_lexicon_sewage import SEWAGE
from selfcheck.text import words

COMMON: dict[str, str] = {
    "child": (
        "kid kids kidd kiddo kiddos child children son sons daughter daughters toddler toddlers boy boys girl girls "
        "baby babies grandson grandsons grand_son grandchild grandchildren grandkid* grand_daughter granddaughter "
        "granddaughters nephew* niece* little_one little_ones little_guy little_sister little_brother lil_brother "
        "twins teen teens teenager* nino ninos nina ninas hijo hija hijos bebe year_old yr_old infant wee_one wee_ones "
        "little_man lad lads lass lassie laddie bairn bairns wean kiddies kiddie tot tots munchkin rugrat* nipper "
        "nippers youngster* youngest preschooler* kindergartner* youngun younguns young_one young_ones young_un sprog "
        "ankle_biter* stepson stepdaughter godson grandbaby grandbabies newborn yo_boy schoolboy schoolgirl "
        "babysitter_s godchild little_monsters monsters little_monkeys monkeys rascals hooligans little_devils "
        "little_terrors gremlins sprogs larking lil_man lil_girl lil_boy lil_guy"
    ),
    "pet": (
        "dog dogs doggy puppy puppies pup cat cats kitten* kitty pet pets animal animals calf cow goat goats lamb "
        "sheep horse foal pony deer perro perra perrito gato chicken* hen pig piglet labrador lab mutt pooch hound "
        "terrier retriever beagle poodle husky collie shepherd dachshund corgi rottweiler pitbull bunny ferret duck "
        "ducks cows pigs donkey mule heifer steer bull calves alpaca kittens doggo doggie pupper kid_goat tomcat"
    ),
    "adult": (
        "husband hubby wife spouse partner dad dads daddy papa father mom moms mum mommy mama mother brother brothers "
        "sister sisters uncle aunt auntie grandpa granpa grandma granny grandfather grandmother abuelo abuela "
        "neighbor* neighbour* friend buddy guy guys dude man men woman women lady person people someone some_one "
        "somebody some_body worker workers helper* plumber contractor driver tenant* roommate cousin coworker "
        "girlfriend boyfriend he she they him her them el ella esposo esposa marido hermano hermana alguien vecino "
        "amigo both_of us_both one_of_us one_of_them one_of_the old_man gramps grampa grandad granddad gran nan nana "
        "nanna pop pops ma pa missus mrs fella fellow bloke mate pal chap hubs hubbie huband husban wifey fiance "
        "fiancee bf gf bro sis in_law handyman landlord technician pumper installer crew buddies friends neighbors "
        "neighbours workman workmen lady_next stepdad stepmom kinfolk everyone everybody tio tia amiga vecina pops_pop "
        "ol_man old_lady anyone_else sod bugger numpty idiot fool genius clown bozo goof eejit"
    ),
    "self": "i we me us myself",
    "thing": (
        "hearing_aid hearing_aids aid dentures false_teeth teeth denture stopwatch tablet flap sidewalk deal "
        "deals sale sales contract offer loan plan plans price_of change dust debris pliers pebble "
        "pebbles tweezers scissors spoon fork nails washer washers spring bracket hinge bat frisbee wallet coins card "
        "cards earring necklace headphones earbud airpod remote drill saw axe rake hoe broom mop crowbar chisel chain "
        "nozzle sponge jar notebook clipboard umbrella jacket shirt shoe shoes sandal mitten helmet badge money twig "
        "twigs acorn pinecone beetle cricket lizard toad knob lens socket ratchet level bubble cork lighter cigarette "
        "cane ladder internet server website chair computer pole poles stick sticks tape measure phone cell glove "
        "gloves cap tool tools wrench screw screws screwdriver bolt bolts nut leaf leaves rock rocks stone stones "
        "stuff cloth rag sock towel flashlight light torch glasses sunglasses hat key keys ball toy toys bucket shovel "
        "branch root roots gravel piece pieces chunk chunks clump brick tee tees baffle baffles pipe pipes filter "
        "handle rope string marker pen pencil ruler levels sludge scum crust mat rain snow tree trees wall walls price "
        "prices temperature temp numbers number some bit bits sand mouse rat mice frog* bug bugs spider insect worm* "
        "snake magnet lever bar hammer knife coin watch ring camera sample sampler bottle cup mask goggles fence roof "
        "ceiling clippings plug gasket seal rubber paper wipe wipes battery clamp float hook pump reading readings "
        "cost costs rate rates nail boots boards board sweat voice record paint driveway screen toilet sink tub shower "
        "seat pool wand knee question night bulb fuse wind birthday traffic mail files truck"
    ),
    "lid": (
        "lid lids cover covers manhole hatch tapa slab top_of_the_tank top_of_the_septic top_of_my_tank "
        "top_of_our_tank tank_top riser risers tank_roof concrete_top the_top thing_covering riser_cap septic_cap "
        "tank_cap concrete_cap cap_of_tank cap_on_tank cap_on_riser cap_over cap_for_riser cleanout_cap lid_thing "
        "covering lidd"
    ),
    "ground": (
        "ground soil dirt earth yard lawn grass land turf suelo tierra garden backyard patio hill driveway walkway "
        "flowerbed path pavement"
    ),
    "tank": (
        "septic tank tanks hole holes pit opening manhole riser chamber cesspool tanque pozo fosa hoyo agujero vault "
        "septico access_hole septik cistern bottom_of_it cesspit cess_pit latrine"
    ),
    "near_hole": (
        "hole opening tank pit manhole edge septic lid cover riser hatch hoyo agujero tanque fosa pozo tapa rim brink "
        "lip cesspit"
    ),
    "it": "it that this thing",
    "inside": "in into inside in_to dentro_de en inn down at_bottom_of at_bottom on_bottom_of down_inside",
    "through": "through thru",
    "from_inside": "from_inside from_in inside",
    "cayo": "cayo caido callo caio cae metio ahoga ahogando",
    "be": (
        "is are am was were has have had got gets been be being get now there s lying laying floating stuck trapped "
        "down fallen gone still sinking drowning esta estan yelling screaming crying calling and both just left here "
        "somewhere half halfway partway part way wedged pinned jammed caught flailing thrashing splashing bobbing "
        "struggling kicking moaning whimpering whining meowing barking drowned dead swimming standing clinging hanging "
        "hung stranded lodged waist_deep bleeding unconscious hollering shouting begging treading up knocked out cold"
    ),
    "filth": (
        "sewage sewer_water sewerwater waste_water wastewater septic_water poop poo poopy shit crap turd turds feces "
        "faeces toilet_water toilet_paper effluent aguas_negras agua_negra black_water brown_water dirty_water "
        "grey_water gray_water excrement raw_waste human_waste black_stuff nasty_water stinky_water smelly_water "
        "black_liquid brown_liquid black_goo caca mierda desague raw_sewage nasty_brown brown_stuff nasty_stuff "
        "agua_sucia stinky_black nasty_brown_stuff stinky_brown stinky_wet gross_water foul_water septage sewer_stuff "
        "number_two number_2 doo_doo doodoo dookie dung floaters floater toilet_waste poops feces_water nasty_sludge "
        "brown_gunk black_gunk brown_sludge black_sludge grey_sludge septic_stuff septic_waste septic_gunk septic_crud "
        "crud sewer_sludge sewer_gunk smelly_liquid stinky_liquid smelly_sludge brown_ooze black_ooze sewage_water "
        "brown_crap dirty_toilet stinky_stuff rank_water murky_water funky_water brown_trout trout logs turtle_heads "
        "poopy_water poonami brown_river brown_stream brown_flood brown_puddle black_puddle brown_lake brown_geyser "
        "black_geyser"
    ),
    "water": "water stuff it liquid everything something waste gunk goo agua waters sewer drains",
    "fixture": (
        "toilet toilets shower showers bathtub bathtubs tub tubs bath baths sink sinks floor_drain floor_drains drain "
        "drains commode loo washer washing_machine laundry inodoro ducha regadera bano plumbing sewer_line bidet "
        "drainpipe shower_pan fixtures crapper john throne wc lavatory lavvy potty toilet_bowl toilet_pan dunny "
        "washbasin washbowl sump floor_grate dishwasher laundry_sink utility_sink bog bogs khazi privy outhouse "
        "plughole plug_hole"
    ),
    "gap": (
        "hole opening pit manhole edge open_tank open_septic open_lid it there hoyo agujero rim brink lip "
        "uncovered_tank maw gullet hatch"
    ),
    "deep": "in_there down_there inside_there in_it inside_it down_in_there down_in_it",
}
CONCEPTS: dict[str, str] = COMMON | PEOPLE | ILL | FIRE | LIDS | GROUND | SEWAGE | BESIDE
#: words that may stand anywhere without changing what is told
FILLERS = words(
    "a actually again all already also an badly big bit both clean clearly completely definitely even fully "
    "god guys her hey his huge jesus just kinda like literally little lord my now oh ok okay omg our partially "
    "partly please pretty quite rather real really right sir slightly so some still straight suddenly super "
    "that the their then this too totally uh um very well whole your "
)
