"""Words for lids that are weak, and for what is left open.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

LIDS: dict[str, str] = {
    "broken": (
        "jump~ lift~_when been_taken got_taken taken vanished slid slid_sideways walked_off in_two in_three in_four "
        "two_bits three_pieces three_bits nicked swiped pinched rolls_around crushed came_apart has_hole hole_you "
        "rust_hole broken broke brok shattered rocky wobbly wobly tippy loose crumbly falling_apart fell_apart "
        "fallen_apart missing gone disappeared stolen sunken sunk sinking sank bent flexy rotten rusted warped "
        "unstable unsteady gave_way gave_out gave fallen_in fell_in fell_into fell_down fell falling_in dropped_in "
        "dropped_into dropped dropped_down rust_holes broken_in se_rompio se_quebro rompio quebro rajo rota roto "
        "rajada quebrada suelta agrietada floja se_mueve in_pieces in_half two_pieces chunk_missing smashed blew_off "
        "blown_off is_not_there was_not_there damaged brittle wonky move_under move_when move_a_bit slides_around "
        "slipped flipped spins chipped_off crooked_and loosened went_in went_down fracture* hairline_crack compromised "
        "disintegrat* spongy went tumbled not_stable not_secure not_safe not_solid rusted_out see_saw see_saws "
        "see_sawing see_sawed totters jiggly wiggly shaky bounces bouncy springy gives_a squishes squishy cockeyed "
        "cattywampus askew lopsided skewed flaking_apart exposed_rebar fissured busted_up knackered buggered munted "
        "kaput toast perished corroded eaten_away rotted_out rotten_out paper_thin delaminating swaybacked punctured "
        "riddled two_halves halves had_it done_for shot concaved caved_down trembles shudders rolled_off cracks_all "
        "disintegrating dissolving crumbs crack_ing fractures broke_through broken_through fell_through "
        "falling_through not_hold unsafe dodgy sketchy iffy crunched mangled pieces blown_away stoved_in hollowed "
        "cracky floats dented_in split_open came_loose worked_loose broken_up busted_in smashed_in crack_ed cracked_up "
        "lifted_up rusty_through bowing_down groaned rock~ crack~ wobble~ teeter~ tip~ cave~ sag~ move~ bust~ flex~ "
        "give~ tilt~ budge~ split~ shift~ jiggl~ creak~ crumble~ seesaw~ wiggle~ pop~_up collapse~ come~_apart bow~ "
        "rot~ pop~ roll~ snap~ bend~ fall~ slide~ spall~ chip~ break~ buckle~ rattle~ clunk~ pivot~ droop~ give~_way "
        "splinter~ deteriorate~ come~_loose rust~_through gone_to_pieces gone_to_bits in_bits to_bits to_pieces "
        "hanging_by hang~_by crush~ shatter~ smash~ damage~ loosen~ flip~ tremble~ shudder~ shake~ totter~ bounce~ "
        "squish~ fracture~ crunch~ mangle~ disintegrate~ dissolve~ groan~ spin~ warp~ corrode~ puncture~ sway~ lurch~ "
        "bob~ dip~ bulge~ drop~ disappear~ heave~ has_holes has_a_hole full_of_holes has_gaps swiss_cheese "
        "has_big_hole has_crack has_cracks"
    ),
    "broken_act": (
        "broke broken split smashed snapped shattered ran_over drove_over backed_over destroyed crushed dented "
        "split_open punctured wrecked ruined drove_on parked_on ran_over_the drove_across ran_into chipped mashed "
        "caved crack~ bust~ break~"
    ),
    "broken_first": (
        "cracked broken busted split rocking wobbly missing crumbling loose shattered caved rotten rusted_out "
        "rusted_through unstable collapsed damaged unsteady sagging sunken falling_apart quebrada rota stolen brittle "
        "smashed wonky teetering tippy seesawing spalled crumbly chipped corroded perished snapped splintered rickety "
        "dodgy unsafe warped loosened buckled fractured punctured crushed"
    ),
    "crack": (
        "crack cracks grieta fissure fracture break gap split hole holes rotten_spot soft_spot chunk piece corner edge "
        "part spiderweb spider_web cracklines fissures gash gouge hairline web bits corners spalling slit fractures"
    ),
    "crack_in": (
        "came_off come_off comes_off coming_off came_away out_of all_over in across through on down along missing "
        "broken off running runs of goes en it broke cracked snapped gone fell collapsed missing_from came chipped "
        "busted from_the cracked_off popped snapped_off falling fallen spreading running_across over_the off_the"
    ),
    "it_breaks": (
        "collapsing collapses collapsed wobbly gave_way has_a_crack has_crack flexes crack_in_it rocky tippy "
        "has_a_big_crack has_cracks got_crack got_big_crack gives_when gave_when bends_when broke_when cracked_when "
        "loose_and split_when wobles see_saws see_sawing totters jiggles wiggles wiggly jiggly wonky clunks shattered "
        "snapped_in bowed_when sank_when dipped_when bounces_when bouncy broke_in split_in splintered bends_in "
        "split_down cracked_in gave_a has_crack_in gave_out sag~ wobble~ crumble~ cave~ buckle~ seesaw~ teeter~ "
        "give~_way move~_when move~_under flex~_when shift~_when cracked cracks cracking rocking rocked tips tipping "
        "jiggle~ totter~ flex~ sway~ shake~ shudder~"
    ),
    "bad_fit": (
        "not_attached not_connected not_sit not_fit not_lie not_lay not_seat not_close not_stay not_hold not_shut "
        "not_seal not_sitting not_fitting not_lying not_seating not_secure not_stable not_steady not_safe "
        "can_not_close can_not_be_closed can_not_shut can_not_secure can_not_fasten can_not_put not_go_back not_lock "
        "not_lock_down not_there not_here not_fit_anymore not_back_on not_stay_put not_stay_on not_stay_down "
        "not_stay_shut not_stay_closed not_lay_flat not_lie_flat not_sit_flat not_sit_right not_sit_level not_flush "
        "not_level not_centered not_in_place not_sit_down not_seated not_screwed not_bolted not_fastened not_latched "
        "not_locked not_tight not_fit_right not_fixed not_catch not_latch not_bolt not_screw not_fasten "
        "not_hold_weight not_strong not_held not_held_down not_sturdy nothing_holding nothing_to_hold nothing_keeping "
        "nothing_holds hanging_by hangs_by hanging_on_by not_feel_solid not_feel_firm not_feel_safe not_look_right "
        "not_look_safe not_look_solid not_look_good not_firm not_sound not_feel_right not_seem_right held_by only_held "
        "barely_attached barely_held held_on_by barely_on barely_hanging"
    ),
    "no_lid": (
        "carpet_over_hole carpet_over_the_hole bin_lid nothing_over_it nothing_over_the_hole nothing_over_the_tank "
        "nothing_over_hole nothing_over_tank nothing_over_opening "
        ""
        "piece_of_wood_over cardboard_over no_lid no_cover "
        "no_proper_lid without_a_lid without_lid without_cover has_no_lid has_no_cover not_a_lid not_any_lid "
        "no_hay_tapa no_tiene_tapa sin_tapa no_real_lid no_lids "
        ""
        ""
        "plywood_on_top boards_on_top sheet_metal_over pallet_on_top "
        ""
        "rotten_boards rotten_plywood "
        "old_boards using_plywood used_plywood nothing_covering nothing_covers no_covering not_covered_by_anything "
        "nothing_on_the_hole nothing_on_hole"
    ),
    "where_lid": "where_lid_was where_cover_was where_has_the_lid where_has_lid where_did_the_lid",
    "took": "took stole stolen lost swiped nicked stealing pinched stole_my",
    "left": "left forgot forgotten forgetting never_put did_not_put did_not_close never_closed leave leaving",
    "open": (
        "open off uncovered unattended wide_open ajar unlocked unfastened back close shut cover screw fasten replace "
        "put closed on gaping agape exposed"
    ),
    "is_open": (
        "at_open open_tank open_hole open_lid tank_is_open lid_is_off lid_is_open cover_is_off hole_is_open "
        "uncovered_hole uncovered_tank opened_up_tank is_open is_off is_uncovered was_off was_open been_open been_off "
        "left_open left_off left_uncovered sitting_open wide_open still_off still_open lid_off cover_off has_no_cover "
        "no_cover tank_open lid_open hole_open with_it_open with_lid_off with_cover_off already_opened opened_it "
        "have_it_open has_it_open got_it_open open_now uncovered exposed lid_is_up cover_is_up lid_up gaping "
        "not_covered without_a_cover_on standing_open stands_open open_since off_since is_out lid_lying cover_lying "
        "lid_next_to_it open_and open_still lying_open laying_open been_uncovered"
    ),
    "alone": (
        "getting_dark it_is_dark getting_late by_himself by_herself by_themselves on_his_own on_her_own "
        "himself herself with_nobody without_me only_him "
        "no_one_else nobody_else drove_away driving_away indoors nobody no_one unattended inside_eating i_am_inside "
        "we_are_inside i_am_in_the_house we_left we_went i_left i_went all_night overnight since all_day "
        "i_am_not_there not_home i_am_at at_the_store at_work at_home no_adult alone had_to_leave had_to_go "
        "have_to_leave went_inside when_i_got_up this_morning last_night not_watching nobody_watching we_are_at "
        "went_to_the_store came_inside need_to_leave kids_are_coming walked_away walked_off drove_off driven_off "
        "wandered_off stepped_away gone_home went_off left_me ran_inside gone_inside going_inside come_inside "
        "nobody_with_me no_one_with_me by_myself all_alone alone_here on_own on_my_own all_by_myself helper_left "
        "helper_went helper_is_gone helper_is_not left_early took_off is_gone_now went_out cleared_off been_hours "
        "for_hours since_morning since_this_morning since_yesterday since_noon since_last all_afternoon all_morning "
        "nobody_around no_one_around nobody_near nobody_here no_one_here not_near_it unguarded unsupervised unwatched "
        "no_one_watching without_anyone nobody_to_watch ran_to run_to back_in_the_house gone_to had_to_run not_outside "
        "in_the_house in_house having_lunch eating_lunch taking_a_break on_break watching_tv i_am_in been_gone "
        "no_helper without_helper just_me only_me it_is_just_me have_to_go need_to_go got_to_go must_go going_to_work "
        "leaving_for have_to_run need_to_run should_go got_to_run called_away gone_in popped_in nipped_in in_for "
        "went_for for_days for_two for_three for_couple all_week for_week for_some days_now two_days few_days "
        "couple_of_days for_long so_long leaving i_am_leaving leave_now about_to_leave heading_out heading_home "
        "back_inside am_inside am_back_in"
    ),
    "leave_time": (
        "overnight all_night last_night all_day went_inside went_to went_home had_to_go had_to_leave at_work "
        "at_the_store for_hours today yesterday for_hour for_an_hour for_a_while this_morning since came_inside "
        "came_in came_home left_home drove_off when_i_left while_i"
    ),
    "alone_with": "in_yard with_nobody with_kids in_garden outside",
    "board": "plywood board boards tarp pallet sheet",
    "breaks_base": "broken wobbly missing loose fell rock~ crack~ cave~ fall~ move~ break~ wobble~ collapse~",
    "forgot": "forgot forgotten forget forgetting",
    "open_or_over": "there no only over missing open instead hole",
    "rocks_verb": "rocks rocky",
    "it_pron": "it",
    "when_words": "when if back little bit side and under",
    "gone_it": "missing gone stolen cracked broken rotten loose",
    "soft": (
        "soft bouncy spongy unsafe sagging squishy mushy springy flexible bends weak thin flimsy hollow_sounding gives "
        "brittle crumbly rotten punky flex~"
    ),
    "lid_hard": "lid lids cover covers manhole",
    "broke_it": "cracked_it broke_it busted_it split_it smashed_it",
    "roto": "rompio quebro rajo rota roto rompida rajada quebrada suelta floja agrietada mueve",
    "not_closed": (
        "never_closed did_not_close never_put_back never_covered did_not_cover not_put_back did_not_shut never_shut "
        "did_not_put_back have_not_put_back have_not_closed has_not_been_closed not_been_put_back never_got_put "
        "not_put_lid without_closing without_covering without_shutting without_putting not_replaced never_replaced"
    ),
    "wobbles_verb": "wobbles tips moves shifts gives",
    "when_only": "when if",
    "across_it": "across_it in_it down_it through_it across_top",
    "broken_only": (
        "unstable it_is_unstable it_is_not_stable it_is_damaged rocking wobbly wobbling loose broken tippy caved_in "
        "it_moved it_moves it_tips it_shifted it_wobbles it_rocks yes_cracked yes_loose yes_rocks it_is_cracked "
        "it_is_rocking it_is_loose it_is_broken yes_it_is_loose yes_it_rocks yeah_it_rocks yeah_it_wobbles "
        "yes_it_is_cracked yes_it_wobbles yes_it_moves bit_loose it_has_crack i_see_crack there_is_crack "
        "there_is_crack_in it_shifts yes_it_moved kinda_wobbly kinda_loose cracked_and_loose it_cracked wobbles_bit "
        "yeah_cracked it_is_wobbly yes_rocking it_gives missing it_teeters teeters seesaws it_seesaws it_see_saws "
        "it_wiggles wiggles it_jiggles it_broke it_broke_in lid_broke cracked_badly badly_cracked "
        "cracked_right_through it_split it_crumbled it_shattered shattered crumbling it_sagged it_gave it_gave_way "
        "gave_way it_caved_in rotten rotted it_is_rotten rocks_bit rocks_little wobbly_as it_is_loose_and it_dropped "
        "crack~"
    ),
    "left_so": "was_left_open been_left_open left_open left_off left_uncovered",
    "rebar": "steel_bars iron_bars steel_rods iron_rods rebar rebars reinforcing_steel mesh wire_mesh",
    "shows": "showing shows exposed visible sticking poking seen see coming",
    "not_shut": (
        "can_not_get could_not_get can_not_put could_not_put can_not_fit can_not_slide can_not_move can_not_lift "
        "unable_to_get unable_to_put not_able_to_get struggling_to_get trying_to_get having_trouble_getting "
        "trouble_getting can_not_drag can_not_push will_not_go would_not_go does_not_go do_not_go will_not_slide "
        "not_gone can_not_budge can_not_work can_not_manage not_got not_getting did_not_get have_not_got "
        "without_putting did_not_put never_put has_not_put have_not_put not_put forgot_to_put without_getting "
        "can_not_shift can_not_heave can_not_lug can_not_wrestle can_not_pull can_not_manhandle can_not_drop "
        "can_not_be could_not_be will_not_come"
    ),
    "shut_again": (
        "back_on back_in_place back_down back_over back_into back shut closed on_again in_place over_the_hole "
        "over_the_tank over_hole over_tank to_close to_shut to_seat"
    ),
    "too_heavy": "too_heavy_to heavy_to_put heavy_to_lift_back heavy_to_get too_heavy_for",
    "light_lid": (
        "could_lift weighs_nothing weighs_next_to weighs_almost_nothing thin_plastic flimsy light_as_a is_light "
        "too_light so_light feather_light lightweight light_weight hardly_weighs barely_weighs one_finger "
        "kid_could_lift child_could_lift kid_could_open child_could_open lift_right_off lifts_right_off "
        "comes_right_off pops_right_off anyone_could_lift anyone_could_open just_sitting_there just_sits_there "
        "just_resting unfastened unlocked unsecured unbolted unscrewed"
    ),
    "not_watched": (
        "not_watching nobody_watching no_one_watching nobody_is_watching no_one_is_watching nobody_guarding "
        "no_one_guarding nobody_minding nobody_is_guarding no_one_is_guarding nobody_minds unguarded unattended "
        "unwatched"
    ),
    "broken_off": (
        "break~_off broke_off broken_off chip~_off crack~_off crumble~_off flake~_off snap~_off come~_off_hinges "
        "fall~_to_bits fall~_to_pieces flipped_over flips_over tipped_over tips_over flip_over flipping_over "
        "rolled_over turned_over rock~_side rock~_back wobble~_side tip~_side sway~_side"
    ),
    "see_word": "see seeing saw look looking light daylight",
    "no_shut": (
        "anything_to_cover nothing_to_cover something_to_cover can_not_close can_not_shut can_not_cover can_not_seal "
        "can_not_re_cover could_not_close could_not_shut not_able_to_close unable_to_close unable_to_shut "
        "will_not_close will_not_shut"
    ),
    "took_off": "took_off takes_off removed pulled_off lifted_off opened took_the_lid",
    "left_word": "left leave walked went drove disappeared gone vanished",
    "not_shut_right": (
        "not_shut_properly not_close_properly not_shut_right not_close_right not_close_all not_shut_all "
        "not_sit_properly not_go_on_properly not_go_down_all not_seat_properly not_shut_proper not_close_proper "
        "not_shut_fully"
    ),
    "no_fastener": (
        "no_screws no_bolts no_fasteners no_lock no_latch no_screw no_bolt without_screws without_bolts missing_screws "
        "missing_bolts missing_bolt missing_screw stripped_screws stripped_bolts no_lid_screws no_lid_bolts"
    ),
    "fastener": "screws screw bolts bolt fasteners latch padlock",
    "fastener_lost": "missing gone stripped stolen nicked taken snapped broke broken lost sheared rusted",
    "shade": "gray grey green brown blue color colored colour tan pink",
    "torn": "blew blown blow torn ripped knocked swept kicked tore carried",
    "concrete": "concrete cement slab",
    "wind_word": "wind winds storm gale hurricane tornado plow plough tractor mower flood itself own night",
    "made_off": "made_off makes_off walked_off ran_off making_off",
    "came_off": "came_off comes_off come_off came_away off",
    "material": (
        "brick bricks ply iron roofing corrugated metal_sheet old_doors hardboard chipboard osb sheeting "
        "plywood board boards tarp pallet sheet door carpet tin cardboard wood planks plank mattress tabletop "
        "tire "
        "bin_lid crate"
    ),
    "covered_by": (
        "covered_by covered_with covering only_covered covers only just_a just nothing_but instead_of used_as"
    ),
    "cap": "cap plug top",
    "drive": (
        "drove driven driving drives drive park parked parks parking ran_over running_over went_over gone_over "
        "rolled_over backed backing reversed reversing goes_over rode ride riding trundled crossed"
    ),
    "vehicle": (
        "car cars van vans lorry truck trucks pickup tractor mower ride_on rider trailer caravan camper rv motorhome "
        "digger excavator backhoe bobcat skid_steer forklift bus motorbike motorcycle atv quad suv jeep ute wagon "
        "skip dumpster loader minivan tanker vehicle"
    ),
    "onto_it": "on over on_top_of across onto above",
    "tank_lid": "lid lids cover covers tank septic_tank septic manhole hatch riser slab",
    "drive_other": "road street drive driveway way grass well_away hitch jack plate",
    "cover_with": "to_cover to_put_over to_put_on to_put_across to_lay_over to_go_over to_close to_block",
    "no_thing": "nothing",
    "nothing_for": (
        "not_find_anything not_got_anything not_have_anything not_find_something no_board no_plank not_see_anything"
    ),
    "covered_with": "covered_with covered_by covered_in topped_with",
    "over_it": "over on_top_of across cover~ covering atop",
    "all_that_covers": (
        "all_that_is_covering all_that_covers only_thing_covering only_thing_over all_that_is_over covering_it "
        "all_that_is_on is_all_that"
    ),
    "only_some": "only just nothing_but merely got_only",
    "is_lid": "is_lid are_lid is_cover as_lid as_cover for_lid for_cover",
    "made_of": "is are of was from",
}
