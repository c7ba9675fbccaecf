"""Words for what happens to things: lids and ground that give way, sewage, fire, what is hit while digging.

Words are parted by spaces, the words of a phrase joined by `_`; a `*` stands for any ending. Data with no logic.
"""

from __future__ import annotations

PLACES: dict[str, str] = {
    "limb_wheel": "foot feet leg legs boot boots mower tractor truck car wheel wheels tire heel shoe",
    "fire_sure": (
        "flames flame fireball explosion explosions explode exploded exploding explodes blew_up blown_up "
        "blow_up on_fire caught_fire catching_fire catch_fire caught_on_fire burst_into_flames ignited "
        "sparking flash_fire flash_of_fire went_boom smoke_and_fire big_boom big_bang loud_bang loud_boom "
        "huge_boom arcing smoldering smouldering incendio exploto quemando llamas fuego chispas prendio "
        "hay_fuego electrical_fire whoosh_of boom"
    ),
    "fire": "fire",
    "fire_verb": (
        "by on next_to is_a a there there_is started start see coming came out shooting in from at near over "
        "inside big small everywhere electrical"
    ),
    "spark": "sparks spark sparked",
    "burning": "burning burns burned burnt smoking smokes smoldering on_fire sparking",
    "burns_what": (
        "tank hole lid pump grass gas something somethings it pole cloth truck box panel weeds vent riser "
        "wire wires motor control controls septic"
    ),
    "smoke": "smoking vaping smokes lighting_up lights_up lit_up welding",
    "igniter": (
        "cigarette cigarettes cigar cig cigs lighter match matches joint torch candle flare firework smoke "
        "vape cigarillo"
    ),
    "light": (
        "lit lighting light lights struck dropped threw held flicked flicking using use used holding put "
        "strike with has having smoking uses tossed"
    ),
    "smoke_noun": "smoke",
    "smoke_rises": "coming pouring rising billowing comes from out",
    "hit": (
        "hit cut struck nicked broke severed sliced punctured pierced ruptured damaged clipped snagged "
        "cracked dug went jammed drove poked stabbed bent ripped tore touched broken busted pulled scraped "
        "strikes hits cuts chopped got_into through"
    ),
    "service": (
        "gas_line gas_pipe gasline gas_main gas power_line power_cable powerline power electric electrical "
        "electricity propane cable wire wires utility phone_line fiber conduit water_line water_main "
        "water_pipe electric_line live_wire service_line wiring"
    ),
    "gas_leak": (
        "smelling_natural_gas smelling_propane gas_leak gas_leaking gas_is_leaking gas_hissing gas_is_hissing "
        "hissing_gas gas_escaping smell_natural_gas smells_natural_gas smell_propane smells_propane "
        "smell_like_propane smells_like_natural_gas smells_like_propane i_smell_gas smell_gas fuga_de_gas "
        "gas_coming_out gas_is_coming_out gas_line_broke leaking_gas propane_leak smelling_gas "
        "line_is_leaking pipe_is_leaking"
    ),
    "shock": (
        "electrocuted electrocute* got_shock got_shocked got_a_shock got_zapped got_a_jolt got_jolt "
        "felt_a_shock felt_shock felt_a_jolt felt_jolt electric_shock getting_shocked gave_me_a_shock "
        "gave_me_shock gave_him_a_shock gives_me_a_shock zapped shocked electrocuto got_a_bad_shock "
        "got_bad_shock got_a_nasty_shock gave_me_a_jolt got_a_zap bare_wire bare_wires live_wire live_wires "
        "exposed_wire exposed_wires shocked_me zapped_me me_dio_toques gave_a_shock a_shock_from jolt_off "
        "jolt_from shock_off feel_a_tingle feel_a_shock feel_current downed_power_line"
    ),
    "broken": (
        "rolls_around crushed rolls breaks come_apart comes_apart came_apart has_hole hole_you rust_hole "
        "cracked cracking cracks crack broken broke breaking brok busted bust shattered split splits "
        "splitting splintered snapped rocking rocks rock rocky wobbling wobbles wobbly wobble wobbled wobly "
        "rocked teetering teeters tipping tips tipped tippy loose caved caving caves collapsed collapsing "
        "collapse crumbling crumbled crumbles crumbly falling_apart fell_apart coming_apart fallen_apart "
        "missing gone disappeared stolen sagging sags sagged sunken sunk sinking sank bowing bowed bending "
        "bends bent flexing flexes flexed flexy rotten rotted rotting rusted_through rusted warped unstable "
        "unsteady gave_way giving_way gives_way gave_out gave gives give giving fallen_in fell_in fell_into "
        "fell_down fell falling_in fall dropped_in dropped_into dropped dropped_down rust_holes shifted "
        "shifting shifts tilted tilting tilts broken_in se_rompio se_quebro rompio quebro rajo rota roto "
        "rajada quebrada suelta agrietada floja se_mueve in_pieces in_half two_pieces chunk_missing smashed "
        "blew_off blown_off is_not_there was_not_there moving moved moves damaged deteriorated brittle wonky "
        "move_under move_when move_a_bit slides_around slipped flipped spins slides slid chipped_off "
        "crooked_and loosened went_in went_down buckled buckling fracture* hairline_crack compromised falling "
        "disintegrat* spongy went tumbled not_stable not_secure not_safe not_solid rusted_out"
    ),
    "broken_act": (
        "broke broken cracked busted split smashed snapped shattered cracking breaking ran_over drove_over "
        "backed_over destroyed"
    ),
    "broken_first": (
        "cracked broken busted split rocking wobbly missing crumbling loose shattered caved rotten rusted_out "
        "rusted_through unstable collapsed damaged unsteady sagging sunken falling_apart quebrada rota stolen "
        "brittle"
    ),
    "crack": (
        "crack cracks grieta fissure fracture break gap split hole holes rotten_spot soft_spot chunk piece "
        "corner edge part"
    ),
    "crack_in": (
        "all_over in across through on down along out_of missing broken off running runs of goes en it broke "
        "cracked snapped gone fell collapsed missing_from"
    ),
    "it_breaks": (
        "cracked rocking wobbles wobbling wobbly caved caving gave_way giving_way crumbling rocked wobbled "
        "has_a_crack has_crack cracks flexes cracking crack_in_it sags rocky tips tippy tipping "
        "has_a_big_crack has_cracks got_crack got_big_crack moved_when moves_when moves_under moved_under "
        "shifts_when shifted_when gives_when gave_when bends_when flexes_when broke_when cracked_when "
        "loose_and split_when wobles"
    ),
    "bad_fit": (
        "not_attached not_connected not_sit not_fit not_lie not_lay not_seat not_close not_stay not_hold "
        "not_shut not_seal not_sitting not_fitting not_lying not_seating not_secure not_stable not_steady "
        "not_safe can_not_close can_not_be_closed can_not_shut can_not_secure can_not_fasten can_not_put "
        "not_go_back not_lock not_lock_down not_there not_here not_fit_anymore"
    ),
    "no_lid": (
        "plywood_for_lid board_for_lid plywood_as_lid board_as_lid no_lid no_cover no_proper_lid "
        "without_a_lid without_lid without_cover has_no_lid has_no_cover not_a_lid not_any_lid no_hay_tapa "
        "no_tiene_tapa sin_tapa no_real_lid no_lids just_a_board just_plywood only_plywood only_a_board "
        "plywood_over_the_hole board_over_the_hole plywood_over_it"
    ),
    "where_lid": "where_is_the_lid where_is_lid where_did_the_lid",
    "took": "took stole stolen lost",
    "left": "left leaving leave forgot forgotten forgetting never_put did_not_put did_not_close never_closed",
    "open": (
        "open off uncovered unattended wide_open ajar unlocked unfastened back close shut cover screw fasten "
        "replace put closed on"
    ),
    "is_open": (
        "is_open is_off is_uncovered was_off was_open been_open been_off left_open left_off left_uncovered "
        "sitting_open wide_open still_off still_open lid_off cover_off has_no_cover no_cover"
    ),
    "alone": (
        "nobody no_one unattended inside_eating i_am_inside we_are_inside i_am_in_the_house we_left we_went "
        "i_left i_went all_night overnight since all_day i_am_not_there not_home i_am_at at_the_store at_work "
        "at_home no_adult alone had_to_leave had_to_go have_to_leave went_inside when_i_got_up this_morning "
        "last_night not_watching nobody_watching we_are_at went_to_the_store came_inside need_to_leave "
        "kids_are_coming"
    ),
    "leave_time": (
        "overnight all_night last_night all_day went_inside went_to went_home had_to_go had_to_leave at_work "
        "at_the_store for_hours today yesterday"
    ),
    "sink": (
        "sliding_into slid_into falling_into sank sunk sinking sunken sinks sink caved caving cave caves "
        "collapsed collapsing collapses collapse gave_way gave_out gave giving_way gives_way giving_out "
        "dropped dropping drops opened_up opening_up opened subsided subsiding subsidence sagging sagged sags "
        "hollow hundido hundida hundio hundiendo fell_away falling_away depressed dipped washed_out "
        "washed_away washing_out swallowed slumped slumping crumbling fell_in falling_in fallen_in settled_a "
        "sunked gives moved_and settling"
    ),
    "sinkhole": (
        "sinkhole* sink_hole sink_holes cave_in cavein hundimiento socavon se_hundio se_hunde "
        "se_esta_hundiendo esta_hundiendo"
    ),
    "sunk_first": "sunken sinking collapsing collapsed caving sunk sink hollow caved",
    "appears": (
        "opened opening opens appeared appearing formed forming showed developed developing up "
        "all_of_a_sudden suddenly new opened_up was_not_there that_was_not"
    ),
    "dip": "depression dip sag low_spot sinking_spot sunken_spot sunken sinking hollow",
    "over_tank": "over above around on_top_of near by next_to",
    "filth_weak": "sludge waste gunk filth muck black_gunk septic sewer",
    "drain_field": "drain_field drain_fields drainfield leach_field field leachfield",
    "indoors": (
        "house basement bathroom bathrooms kitchen laundry_room laundry floor floors hallway crawl_space "
        "crawlspace downstairs indoors bedroom cellar casa carpet utility_room living_room"
    ),
    "up": (
        "coming_up coming_back coming_back_up coming_out coming_through coming_from coming_in coming_into "
        "comes_up comes_back comes_out comes_back_up came_up came_back came_back_up came_out come_up come_out "
        "bubbling bubbled bubbles backing_up backed_up backs_up back_up backup rising rises rose overflow* "
        "over_flow over_flowing over_flowed over_flows overflowing spilling spilled flooding flooded floods "
        "flood pouring poured shooting gushing seeping leaking running flowing oozing spewing welling_up "
        "regurgitating all_over everywhere saliendo sale pushing_up filling fills filled full desborda* "
        "rebosando erupting erupted vomiting squirting back_flow backflow backin_up up_through up_thru coming "
        "into_the covering flowing_over coming_all"
    ),
    "overflow": (
        "rising rises overflow* overflowing overflowed overflows over_flow over_flowing over_flows "
        "over_flowed backing_up backed_up backs_up back_up backup backups flooding flooded floods coming_up "
        "coming_back_up came_up comes_up spilling spilled bubbling_up bubbling_over regurgitating spewing "
        "vomiting desborda* rebosando shooting_up running_over ran_over erupting erupted bubbles_over "
        "flowing_over flow_over up_all_over bubble_over bubbles_up spilling_over all_over_the_floor "
        "on_the_floor onto_the_floor flood_over tapado_y_sale"
    ),
    "fills": "fill fills filling filled full has covered flooded flooding soaked",
    "backup": (
        "sewage_backup septic_backup sewer_backup toilet_backup drain_backup basement_backup sewage_back_up "
        "septic_back_up sewer_back_up sewage_backing_up septic_backing_up sewer_backing_up "
        "septic_is_backed_up sewer_is_backed_up septic_backed_up backing_up_into backed_up_into backs_up_into "
        "backup_in_the backup_into backup_in_my sewer_backed_up sewage_backed_up backed_up_toilet "
        "backed_up_toilets backed_up_drain backed_up_drains backed_up_sink backed_up_sinks backed_up_shower "
        "backed_up_sewage backed_up_septic backed_up_tub"
    ),
    "system": "it everything house whole_house drains system plumbing stuff toilets pipes sewer",
    "backs": "backing_up backed_up backs_up overflowing overflowed",
    "outside": (
        "yard lawn grass ground outside garden driveway ditch creek surface field backyard patio street "
        "pasture woods flower_bed hill slope road jardin drain_field leach_field drainfield well lake pond "
        "stream neighbor* suelo outdoors leachfield tierra back_yard front_yard"
    ),
    "pool": (
        "puddle puddles pool pools pond lake stream river pile swamp trickle spring fountain charco mess wet_spot"
    ),
    "surface": (
        "surfacing surfaced pooling pooled ponding ponded seeping seeped oozing standing puddling bubbling_up "
        "bubbling_out spilling_out overflowing leaking_out oozing_out running_out pouring_out gushing "
        "coming_out on_the_ground coming_to_the_surface escaping puddle puddles everywhere_outside pools "
        "swamp"
    ),
    "tank_over": (
        "overflowing overflowed overflows over_flowing over_flowed over_flow overflow spilling_over spilling "
        "flowing_over running_over bubbling_over spewing gushing leaking leaked leaks flooding coming_up "
        "coming_out pouring_out spilling_out"
    ),
    "smell": "smell smells smelled smelling stink stinks stinking reek reeks odor odour stench whiff scent smelly",
    "alone_with": "in_yard with_nobody with_kids in_garden outside",
    "backs_base": (
        "back_up backs_up backing_up backed_up overflow* flood floods flooding come_up comes_up coming_up "
        "backup backups back_ups surface"
    ),
    "backup_word": "backup backups back_ups sewage",
    "board": "plywood board boards tarp pallet sheet",
    "breaks_base": (
        "break breaks crack cracks rock rocks wobble wobbles collapse collapses cave caves cracked broken "
        "rocking wobbly missing loose fall falls fell move moves"
    ),
    "explode_base": "explode explodes explosive explosion flammable",
    "fire_risk": "fire flame flames sparks candle vape lighter",
    "forgot": "forgot forgotten forget",
    "here": "here next_to right_here over_here",
    "hit_base": "hit cut strike dig break damage",
    "hundir": "hundio hunde hundiendo hundida hundido",
    "left_a": "left_a left",
    "lid_blew": "lid_blew cover_blew lid_flew lid_popped_off lid_blown lid_was_blown cover_flew tank_blew",
    "lid_word": "lid lids cover manhole riser cleanout clean_out top",
    "open_hole": "open_hole uncovered_hole open_manhole open_septic uncovered_tank open_pit",
    "open_or_over": "there no only over missing open instead hole",
    "opened_up": "opened_up opened opening_up",
    "outside_ground": "ground yard lawn grass field hill drain_field leach_field",
    "pit_hole": "hole pit crater gap void depression dip cavity sinkhole agujero",
    "sank": "sank sunk sinking sinks went_in went_through went_down",
    "septic_tank": "septic_tank tank septic manhole cleanout clean_out system",
    "sparked_gas": "hissing sparked sparking smell_gas gas_smell shocked_me",
    "spot": "spot area ground soil yard patch lawn place",
    "up_first": "overflowing flooding backing_up backed_up over_flowing clogged_and_overflowing",
    "up_hard": (
        "coming_up coming_back_up comes_up came_up bubbling_up backing_up backed_up backs_up overflowing "
        "coming_back up_through up_thru came_back_up coming_out_of"
    ),
    "went_in": (
        "went_in went_through went_into fell_in sank_in sank_into goes_through go_through in_to_ground went_down"
    ),
    "went_through": (
        "went_through went_thru goes_through gone_through broke_through fell_through punched_through go_through"
    ),
    "rocks_verb": "rocks rocky",
    "it_pron": "it",
    "when_words": "when if back little bit side and under",
    "gone_it": "missing gone stolen cracked broken rotten loose",
    "soft": "soft bouncy spongy unsafe sagging",
    "burning_now": "burning sparking",
    "lid_hard": "lid lids cover covers manhole",
    "broke_it": "cracked_it broke_it busted_it split_it smashed_it",
    "flames": "flames fire flame on_fire sparking smoking sparks arcing caught_fire blew_up exploded",
    "roto": "rompio quebro rajo rota roto rompida rajada quebrada suelta floja agrietada mueve",
    "not_closed": "never_closed did_not_close never_put_back never_covered did_not_cover not_put_back",
    "around_lid": "around_lid over_lid on_lid on_top_of_lid around_cover around_riser around_tank around_the_tank",
    "lit_gas": "ignited lit_gas gas_lit gas_caught gas_ignited lit_fumes",
    "wobbles_verb": "wobbles tips moves shifts gives",
    "when_only": "when if",
    "across_it": "across_it in_it down_it through_it across_top",
    "flash": "flash",
    "bang": "boom bang whoosh pop",
    "fire_alarm": "fire_fire fuego theres_fire there_is_fire there_is_a_fire",
    "broken_only": (
        "unstable it_is_unstable it_is_not_stable it_is_damaged cracked rocking wobbly wobbling loose broken "
        "tippy caved_in it_moved it_moves it_tips it_shifted it_wobbles it_rocks yes_cracked yes_loose "
        "yes_rocks it_is_cracked it_is_rocking it_is_loose it_is_broken yes_it_is_loose yes_it_rocks "
        "yeah_it_rocks yeah_it_wobbles yes_it_is_cracked yes_it_wobbles yes_it_moves bit_loose crack "
        "it_has_crack i_see_crack there_is_crack there_is_crack_in it_shifts yes_it_moved kinda_wobbly "
        "kinda_loose cracked_and_loose it_cracked wobbles_bit yeah_cracked it_is_wobbly yes_rocking it_gives "
        "missing cracks"
    ),
    "left_so": "was_left_open been_left_open left_open left_off left_uncovered",
}
