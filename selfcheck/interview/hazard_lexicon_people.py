"""Words for what happens to people and animals: falling, going in, standing too near.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

PEOPLE: dict[str, str] = {
    "hole": "hole opening open_tank open_septic pit manhole edge open_lid open_pit open_one hoyo agujero rim brink lip",
    "there": "there in_there down_there",
    "in": "in into inside down through thru en al dentro adentro under underneath inn in_to headfirst",
    "near": (
        "round near next_to close_to closer_to by beside at around on on_top_of over to toward towards onto "
        "at_the_edge in_front_of past into above junto_a cerca_de cerca_del cerca close_by up_to over_to heading_for "
        "headed_for go_for in along outside against across"
    ),
    "body": (
        "head heads face nose arm arms hand hands foot feet leg legs fingers upper_body body shoulder neck chin "
        "shoulders torso elbows knees noggin bonce snout muzzle paw paws beak tail"
    ),
    "fall": (
        "fell fallen slid stumbled tripped plopped pitched plunked fallin nosedived lost_footing lost_balance keeled "
        "sucked swallowed fallen_down slip~ fall~ drop~ tumble~ topple~ plunge~ flop~ land~ splash~ plummet~ fel "
        "felled stumble~ trip~ plop~ pitch~ plunk~ nosedive~ keel~ skid~"
    ),
    "plain_fall": "fallen plummeted plunged fall~ tumble~ fell felled",
    "move": (
        "sank sunk went gone backed disappeared dissapeared vanished pushed got flew ran ended winds_up wound_up "
        "skidded lurched sucked swept pulled knocked bumped thrown flung dove dived wandered skated slithered stumbles "
        "blundered collapsed wriggled dropping pitched jump~ go~ step~ walk~ roll~ land~ crash~ end~_up broke busted "
        "crashed smashed burst skid~ lurch~ fling~ dive~ wander~ skate~ slither~ stumble~ blunder~ wriggle~ bounce~"
    ),
    "went": "went gone goes got",
    "under": "under underwater below down",
    "stuck": (
        "stuck trapped floating submerged sinking yelling screaming wedged pinned flailing thrashing bobbing clinging "
        "hollering shouting swimming moaning whimpering hanging_on holding_on crying_for_help calling_for_help "
        "going_under drown~"
    ),
    "drown": "under_water underwater sinking trapped ahogando going_under gone_under went_under drown~ drownd~",
    "pull_out": "get getting pull pulling reach save rescue lift drag fish pulled got dragged hauled fished",
    "out": "out",
    "climb": (
        "dove meterme meter scooching slip_down repel worming hop~ jump~ climb~ crawl~ lower~ enter~ squeeze~ descend~ "
        "dive~ wade~ slide~ scoot~ shimmy~ wriggle~ scramble~ rappel~ spelunk~"
    ),
    "lower": "sent lower~ send~",
    "climb_on": (
        "scrambling hop~ jump~ climb~ crawl~ lower~ squeeze~ descend~ wade~ shimmy~ dive~ enter~ wriggle~ rappel~ "
        "spelunk~ pothole~ shinny~ shin~_down"
    ),
    "go": (
        "go going goes went gone get getting gets got step stepping head heading goin run running drop dropping pop "
        "pops popping popped nip nips nipping hopping dipping pop_down"
    ),
    "going": "going go goin",
    "intend": "am is are will to going gonna about want wants need needs have got let must ready decided now",
    "entrar": (
        "voy_a_entrar voy_a_bajar voy_a_meterme voy_a_meter voy_a_saltar me_voy_a_meter estoy_entrando va_a_entrar "
        "va_a_bajar va_a_meterse esta_entrando entrar_al"
    ),
    "after": "after for_him for_her to_save to_rescue",
    "fetch": "get grab lift drag carry save rescue help pull reach fetch retrieve unclog clean fix scoop shovel",
    "lost_thing": (
        "phone ball toy ring keys glasses tape pole him her them it dog cat puppy kid child boy girl baby son daughter "
        "husband wife goat calf filter wrench rod hose tool stick wallet glove shovel float baffle pump"
    ),
    "on_lid": "on_the_lid on_lid on_top_of_lid on_top_of_the_lid on_the_cover on_the_manhole on_the_hatch on_the_riser",
    "carried": (
        "phone cell ring keys key glasses sunglasses tape pole poles stick rod wrench hose tool tools wallet glove "
        "gloves flashlight light torch hat cap watch camera hammer knife magnet bar crowbar rope cloth rag sock towel "
        "bucket shovel ball toy lighter earring bracelet necklace screwdriver pliers screw screws bolt pen marker "
        "hearing_aid teeth dentures goggles float pump tape_measure hook"
    ),
    "let_slip": "dropped drop lost let_go_of lose",
    "sank": "sank sunk sinks",
    "gone_from": "gone missing stolen vanished disappeared lost nicked taken stole",
    "reach": "reachin reach~",
    "put": (
        "put puts putting stick sticks sticking stuck poke poked poking dangle dangling dangled dip dipping has got "
        "have had"
    ),
    "ladder": "ladder",
    "lean": (
        "bent straddling hovering ducking asomada asomado hung upside_down knelt hunched poking poised teetering lean~ "
        "squat~ stoop~ crouch~ stretch~ hang~ peer~ peek~ bend~ crane~ kneel~ dangle~ balance~ hover~ hunch~ teeter~ "
        "straddle~ duck~"
    ),
    "watch": "looking_in gazing glancing peer gawking spitting look~ pee~ stare~",
    "stand": (
        "stood sat riding crawling skipping perched standin leaping romping trampling scooting wheeling leans "
        "jump~ climb~ sit~ hop~ walk~ step~ stand~ bounce~ run~ play~ stomp~ dance~ balance~ "
        "trampoline wrestle~ wrestling romp~ roughhous~ skate~ skateboard~ bike~ cartwheel~ ride~ skip~ perch~ leap~ "
        "trample~ scoot~ crawl~"
    ),
    "over": "over into in above across down inside",
    "on": "on on_top_of across over onto on_top",
    "almost": (
        "almost nearly just_about about_to gonna going_to close_to_falling came_close_to very_nearly this_close_to "
        "on_verge_of damn_near darn_near came_near could_have"
    ),
    "too_close": (
        "too_close so_close dangerously_close very_close too_near really_close way_too_close inches_from way_too_near "
        "awfully_close too_damn_close right_up_to right_up_on right_at_the_edge right_on_the_edge inches_away "
        "inch_from foot_from"
    ),
    "throw": "threw tossing putting dipping dangling sticking stuck drop~ poke~ throw~ toss~ dip~ dangle~ stick~",
    "gone_child": "can_not_find could_not_find can_not_see lost_sight",
    "after_them": "after_him after_her after_them after_my after_it after_dog after_kid after_son",
    "climbing_in": "climbing_in climbs_in crawling_in",
    "down": "down",
    "entering": "climb_inside go_inside_tank inside_tank enter~",
    "fall_went": (
        "fell fall falling went slipped tumbled stepped fallen go_in walked tripped fell_in slid slipped_in toppled "
        "pitched walk step slip tumble"
    ),
    "go_after": "go_after went_after goes_after goin_after going_after jumped_after climbed_after jump_after",
    "in_down": "in into down in_there down_there under through",
    "limb": "arm arms hand hands leg legs foot feet shoulder elbow elbows fingers",
    "near_word": "round around by near beside at next_to on over close_to",
    "not_away": (
        "not_stay_away not_get_away not_keep_away not_leave keep_coming_back keeps_coming_back keeps_going_back "
        "not_move_away keep_going_back not_listen not_stay_back not_keep_back not_get_off not_come_away keeps_getting "
        "keeps_running keep_running keeps_heading keeps_wandering keeps_playing keep_playing keep_getting keeps_trying "
        "keep_trying not_quit"
    ),
    "not_out": (
        "can_not_get_out can_not_get_him_out can_not_get_her_out can_not_get_them_out could_not_get_out "
        "can_not_climb_out can_not_get_back_out not_come_out can_not_come_out can_not_reach_him can_not_reach_her "
        "can_not_reach_them can_not_get_dog_out can_not_haul_out can_not_pull_out not_get_out not_climb_out "
        "can_not_get_myself can_not_reach_my not_able_to_get_out"
    ),
    "not_up": (
        "not_come_up not_coming_up has_not_come_up have_not_come_up not_come_back_up not_coming_back_up "
        "not_coming_back not_surfaced not_resurfaced not_come_out not_coming_out not_popped_up"
    ),
    "out_of_it": "out_of_tank out_of_hole out_of_pit out_of_sewage out_of_septic out_of_there out_of_manhole",
    "pull_plea": (
        "can_not_get could_not_get can_not_pull trying_to_get need_to_get have_to_get help_get help_me_get try_to_get "
        "how_do_i_get get_help_get please_get trying_to_pull how_do_we_get can_not_reach to_pull_out need_help_getting "
        "how_can_i_get how_can_we_get how_do_you_get can_not_lift can_not_haul can_not_drag need_to_pull have_to_pull "
        "want_to_get trying_to_drag trying_to_haul trying_to_fish trying_to_reach"
    ),
    "reach_it": "reaching_in reaching_down_in reach_in_and reach_in_now reach_in_there reaching_into reach_in_to",
    "there_is": "there_is i_hear can_hear i_see",
    "up_to_body": (
        "elbow_deep shoulder_deep armpit_deep up_to_chest up_to_waist up_to_neck up_to_hips up_to_knees "
        "up_to_shoulders in_to_hips up_to_knee_in "
        "up_to_shoulder up_to_elbow up_to_elbows up_to_armpit up_to_armpits up_to_chin up_to_ankles up_to_thighs "
        "up_to_thigh waist_deep chest_deep neck_deep knee_deep hip_deep thigh_deep"
    ),
    "vanish": "disappeared dissapeared vanished disappear",
    "watch_help": "near close by around watch help play lean come",
    "in_bare": "in under through inn down",
    "lower_in": (
        "down in_on_rope in_there into into_tank down_in down_there down_into in_tank in_hole on_rope by_rope "
        "with_rope rope"
    ),
    "in_the_tank": "in_the_tank in_tank in_my_tank",
    "oneself": "myself himself herself themselves",
    "and_now": (
        "and_i_can_not and_we_can_not and_did_not and_has_not and_nobody and_no_answer and_have_not and_now and_not "
        "and_he and_she and_can_not and_has and_is"
    ),
    "over_above": "over above across",
    "lower_only": "lower~",
    "sniff": "sniffing sniffs drinking licking",
    "leg": "foot feet leg legs boot shoe knee knees body_half",
    "stuck_word": "stuck trapped pinned wedged jammed caught",
    "cling": "hanging_onto holding_on holding_onto dangling_from hanging_from cling~ grab~ hang~_on",
    "rim": "edge rim lip side rung ladder baffle pipe rope",
    "swallow": "ate gobbled sucked swallow~",
    "sticking_out": "sticking_out sticking_up poking_out poking_up showing out_of_water above_water",
    "swim": (
        "went_for_a_swim going_for_a_swim took_a_dive takes_a_dive took_a_tumble took_a_header took_a_spill "
        "took_a_swim went_headfirst went_head_first headfirst head_first feet_first took_header took_dive took_tumble "
        "took_spill"
    ),
    "upside": "upside_down",
    "near_strong": (
        "round next_to close_to right_by right_next right_near up_to over_to around on_top_of onto beside near toward "
        "towards by all_over at_edge_of"
    ),
    "us_pron": "it that",
    "hang_other": "in_there in_here around out with on there_with of",
    "missing": "missing nowhere_to_be_found disappeared vanished gone_missing",
    "shove_in": (
        "dump~ knock~ push~ shove~ pull~ tip~ flip~ drop~ drag~ suck~ pitch~ throw~ threw toss~ yank~ launch~ roll~ "
        "bump~ kick~ flung fling~ sent carried took_down swept"
    ),
    "work_in": (
        "hose~ scrape~ scrub~ rinse~ unclog~ scoop~ shovel~ muck~ retrieve~ fish_it grab fetch unjam unblock clean_it "
        "clear_it fix_it measure_it look_around feel_around clear~ patch~ unplug~ repair~ inspect~ sort~ replace~ "
        "free~ loosen~ work"
    ),
    "benign": (
        "measure~ put puts putting look~ pour~ pump~ stick~ stuck poke~ say~ said see~ saw seen found find~ check~ "
        "flush~ shine~ push~ dip~ test~ have has had stir~ clean~ work~ works live~ buried bury~ built build~ install~ "
        "dig~ dug hose~ rinse~ snake~ with hold~ add~ drop~ lower~ use~ used read~ reads mark~ level think~ thinks "
        "throw~ threw dump~ empty emptied emptying photograph~ video~ spot~ notice~ want~ wants pulled pull~ get~ got "
        "need~ needs left leave~ lost lose~ keep~ kept shoot~ shot took take~ pee~ peed know~ knows told tell~ "
        "was_taught show~ showed smell~ replace~ replaced fix~ fixed point~ pointed film~ filmed wonder~"
    ),
    "mire": "drink soup slop goop muck filth sludge goo mess pit slime poop crap shit gunk sewage stew",
    "splash": "splash splosh kersplash plop",
    "toy_use": "trampoline stage springboard dance_floor seat bench table base skate_ramp ramp slide",
    "got_moved": (
        "got_pulled got_pushed got_dragged got_knocked got_sucked got_thrown was_pulled was_pushed was_dragged "
        "was_knocked got_yanked got_shoved been_pulled been_pushed gets_pulled getting_pulled being_pulled "
        "pulled_himself pulled_herself got_tipped got_bumped got_kicked"
    ),
    "not_keep": (
        "can_not_keep could_not_keep can_not_stop will_not_let not_let can_not_get trying_to_keep keep_telling "
        "have_to_keep"
    ),
    "off_it": "away out off back clear",
    "play_act": (
        "hold~ pull~ shove~ kneel~ poke~ play~ mess~_with messing fiddle~ fool~_with climb~ tug~ pry~ push~ lift~ "
        "drag~ bang~ kick~ stomp~ opened opens"
    ),
    "leg_in": "went_in goes_in go_in slipped_in sank_in fell_in dropped_in slid_in",
    "gave_under": (
        "collapsed broke gave caved cracked way crumbled snapped buckled went split shattered fell gives gave_way "
        "tipped flipped"
    ),
    "under_it": "under underneath beneath",
    "escaped": (
        "got_away gets_away ran_away slipped_away wandered_away snuck_away broke_away got_loose ran_off wandered_off "
        "got_past slipped_past"
    ),
    "float_word": "floating bobbing",
    "halfway_in": "halfway_in half_in partway_in part_way_in most_of_way_in all_way_in halfway_down",
    "inside_word": "inside within in_side",
    "it_word": "it that there",
    "now_word": "now",
    "up_to": "up_to to_knee",
    "after_person": "after_him after_her after_them after_dog after_kid after_son after_it",
    "standing_on": "standing_on sitting_on am_on kneeling_on stood_on is_on are_on",
    "gives_now": "giving_way gives_way giving cracking sinking sagging collapsing moving buckling",
    "hold_breath": "hold~_breath hold~_his_breath hold~_my_breath held_breath hold~_nose",
    "in_out": "grab down in in_and_out minute dive under quick go get pop nip jump fetch",
    "fish_out": "fish~ grab~ scoop~ pick~ pull~ get",
    "with_hand": (
        "with_hand with_hands with_bare_hand with_bare_hands with_arm by_hand with_fingers with_my_hand with_my_hands "
        "with_his_hand with_her_hand"
    ),
    "depth_of_body": (
        "to_knee to_knees to_waist to_thigh to_thighs to_chest to_neck to_hip to_hips to_ankle to_ankles to_armpit "
        "to_armpits to_shoulder to_shoulders up_to"
    ),
    "about_so": "about around roughly nearly grass snow weeds",
    "rope": "rope line harness strap",
    "tie": "tie~ tied tying loop~ fasten~ wrap~",
}
