"""Words that stand beside a telling and show that something harmless is meant; named after what they settle.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

BESIDE: dict[str, str] = {
    "else": (
        "menu list one love line place price value half two step behind asleep house home kitchen bathroom bath "
        "bathtub tub shower street woods snow mud ditch field bed past stairs storm morning afternoon barn garage "
        "gutter sink toilet basement park forest pool pond creek river lake road driveway yard garden lawn grass car "
        "truck box sandbox trampoline couch swing shed porch store town office school january february march april may "
        "june july august september october november december spring summer fall winter year last minute hurry order "
        "details next_part front back bag book water_heater records filter window mirror fridge tv counter doorway "
        "jail loft attic hammock recliner stroller crib yes no"
    ),
    "else_seen": (
        "house window kitchen yard porch garden truck car fence doorway tv phone garage mirror counter fridge shed "
        "barn driveway room books record records filter box toilet toilets sink pool bed street answers"
    ),
    "away": (
        "away far off inside indoors house home not never stay stays school safe clear from helped filled back tied "
        "leash back_indoors house_now outta"
    ),
    "far": "away far from home house",
    "after_in": (
        "at the to for my our a an town early on back home and one side his her circles about person detail a_few "
        "order blind before because since when now case public general law another further deeper inch inches"
    ),
    "fire_other": (
        "wind of_wind of_air pit place department station wood hydrant truck ant ants alarm extinguisher ring "
        "hall code view drawing price "
        "number risk plug plugs fighter fighters drill hazard proof retardant detector arrestor messages with_messages "
        "sale sold lit_up_my"
    ),
    "service_other": "bill tape cost costs usage off meter stove grill heater company tv box grass",
    "shock_other": "price prices cost at how bill quote absorber that to much see hear learn",
    "stays": (
        "easily shut closed back_in back_on in_place into_place open over_to up_to off aside away out over solid "
        "to_the off_of bolt screw seal gasket handle window fine heavy to_side"
    ),
    "level_change": "degrees inch level",
    "backs_other": (
        "car truck trailer files computer drive driveway step bit data phone plan pump battery traffic mail generator "
        "valve insurance record my_car the_car to_the question one over_the_outlet"
    ),
    "elsewhere_poop": "dog cow chicken horse cat goose bird deer",
    "ache_figure": "this you what math thing such question form typing be_a",
    "answer_other": (
        "that_makes_no_sense this_makes_no_sense it_makes_no_sense question_makes_no_sense question questions form "
        "survey have_no_answer i_can_not_answer we_can_not_answer can_not_answer_this at_pumper from_pumper "
        "from_plumber from_company from_installer from_inspector from_contractor company office service county seller "
        "agent landlord mail mails email emails letter letters text texts message messages"
    ),
    "breath_other": (
        "walking climbing running mowing hill stairs up carrying hauling shoveling shovelling away fresh from "
        "haha lol fine digging taking easy easily ok"
    ),
    "burning_other": "hot bright bush wood up smell eyes nose sensation brisket meat sun trash leaves calories",
    "charge": "charge cost price pay money",
    "cold": "age old onions onion pollen allergies hayfever cold dirty muddy sore washed dry wet clean tired gloved",
    "dog": "dog dogs cow chicken horse cat goose deer pet bird",
    "down_other": "for to by at in from the 2 with 3 4 about there inches",
    "else_down": "couch bed house road field sofa tv sun hammock kitchen nap bottom inch inches",
    "else_smoke": (
        "inside indoors porch away house meat brisket ribs ham sign deck car garage grill turkey alarm detector never"
    ),
    "fall_other": (
        "out_with behind asleep off short apart ill sick in_love over_it through_the_cracks back to from on for under "
        "quiet flat into by of free below"
    ),
    "feel_other": (
        "about for that asking to sure it bottom like_it like_we like_this like_that like_you like_quitting "
        "like_stopping like_giving like_doing to_smell"
    ),
    "feeling": "feeling in_work in_paperwork in_bills in_debt in_numbers",
    "filth_other": (
        "from_well from_tap from_hose smell smells odor pipe line pump tank alarm bill ejector stick field truck guy "
        "company lol"
    ),
    "fine": "fine ok okay",
    "fire_kind": "no as hot_as a_camp camp bon wild brush no_more",
    "gas_mild": "no little slight bit rotten",
    "glove": "glove gloves pocket pockets",
    "hose": "hose faucet sprinkler tap rain spring spigot well",
    "house_thing": "drink lunch gloves water coffee food door paper wallet shoes boots mail dinner jacket",
    "igniter_off": "off out not_lit unlit last in_house score scores reading result record",
    "ill_figure": "price bill quote cost candy flyers not_be the_line almost_not",
    "ill_other": (
        "with_joy candy flyers line stain mark trace scent odor odour smell whiff hint inspection of_tree of_interest "
        "dirt menu pole hands the_menu test wall walls lid cover ground roof pipe baffle tank soil scum crust drain "
        "at_price handle"
    ),
    "intend_not": "not never",
    "lamp": "my_lamp on_my lamp of",
    "lid_part": "free seal gasket bolt bolts screw screws handle handles paint open smell lock key lifter hook",
    "moved_by": "we i moved_the to_move can_move",
    "my_car": "car truck trailer i_backed we_backed files mail traffic",
    "no_fire": "no not without never quit stopped",
    "no_lid_other": (
        "problem problems damage damages crack cracks issue issues weight bolt bolts screw screws lock handle movement "
        "on_pipe on_vent on_filter on_pump on_drain open movements"
    ),
    "not_house": "outside yard lawn",
    "off": "off",
    "off_words": "off up out away aside",
    "open_other": "minded ended question to_air",
    "outside_only": "outside yard lawn grass creek ground garden",
    "plea_other": "from text page menu if when for with and_do and_not then line call number in_emergency",
    "pole_words": "pole stick rod tape cloth sock to_14",
    "pump_word": "pump sump pole stick rod",
    "rain_words": "dew rain rains rained raining creek gutter gutters barrel river hose sprinkler storm dish",
    "records": "records details pocket",
    "rock_other": (
        "pepper egg eggs nuts horse chair and_roll salt open up joke jokes soil on solid out to over of easily open_an"
    ),
    "shovel_word": "shovel pole stick rod probe",
    "sludge_word": "sludge scum crust paint wall pipe baffle tee screen glove",
    "smoke_other": "meat brisket ribs ham sign alarm alarms here_is_not",
    "soil_words": "my_back my_neck knuckles soil ground garden dirt my_budget window me",
    "solid": "solid sound firm steady fine",
    "of_about": (
        "of_this of_it of_smell of_waiting of_paying of_typing of_that of_doing of_hearing of_you of_them of_all about"
    ),
    "state_other": (
        "about tired worry death smell smelling color colour taste from_work that on concrete cost it him job day "
        "season question tee at with_cold leave because_of water home"
    ),
    "to_air": "to_air air dry gate hose door window side over message",
    "to_do": "nap bed sleep reading numbers watch_tv",
    "to_look": "to_look look",
    "wallet": "wallet budget bank from_question at_price",
    "season_word": "in this last next every of the_fall fall_of",
    "stay_out": "not_go do_not never stay_out stay_back keep_out stay_away keep_everyone not_climb everyone_out",
    "some_dirt": "some clump bit of_dirt pile",
    "dug": "dug dig digs digging made dog fence post gopher mole moles",
    "free_words": "open up apart free loose off pole down",
    "away_ill": "off_sick sick_from sick_day today cold flu hospital not_come at_home home at_work in_bed doctor",
    "collapse_other": "couch bed sofa chair box menu list tent table section",
    "wall_words": "wall outlet inlet baffle tee pipe",
    "at_home": "making cooking watching sleeping eating taking washing doing",
    "rusty": "rust rusty",
    "in_other": "lid cover alarm company guy man truck area room field pump repair business store",
    "smells_like": (
        "smells_like smell_like smelling_like smell_of whiff_of odor_of stink_of stinks_of stinks_like reeks_of "
        "reeks_like smells_of smelled_like odor_like whiff"
    ),
    "soggy_other": "rain rained raining sprinkler dew morning shoes",
    "from_house": "from_house from_inside from_the_house",
    "of_word": "of",
    "fire_home": "fireplace stove woodstove wood_stove oven kitchen chimney",
    "wall_place": "wall panel garage post side basement shed corner pole deck porch",
    "modal": "can could would might may will",
    "pet_does": "pooped poops poop peed pees pee barks barked bark sniffed sleeps",
    "pill": "pill pills medicine med meds tablet tablets aspirin",
    "plant": "bush",
    "layer_word": "layer crust scum mat foam grease cake",
    "mark_word": (
        "text words font pencil notes note photo photos print_out page ink screen display monitor tv window "
        "picture bulb lamp mark marks line "
        "lines ring trace stain writing label letters number numbers print scent whiff smell odor odour stink score"
    ),
    "firm": (
        "pumper pumpers plumber company installer contractor hauler inspector technician office electrician they "
        "landlord"
    ),
    "phone_word": (
        "phone phones call calls calling called voicemail yet number rings ringing tomorrow week days today hours "
        "answering_machine"
    ),
    "else_through": "buyer seller crack cracks house budget calendar schedule plan deal sale loan",
    "indoor_cause": "cold dark raining rain rains hot lunch dinner tea supper warm bed storm wet tired late",
    "later": "later tomorrow tonight weekend saturday sunday next_week",
    "tap_on": "tap_on taps_on faucet_on water_on tap_running faucet_running left_tap left_water left_faucet",
}
