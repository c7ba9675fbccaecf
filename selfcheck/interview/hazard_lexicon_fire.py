"""Words for fire, and for what is struck while digging.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

FIRE: dict[str, str] = {
    "fire_sure": (
        "caught_light went_bang goes_bang flames flame fireball explosion explosions explode exploded "
        "exploding explodes blew_up "
        "blown_up blow_up on_fire caught_fire catching_fire catch_fire caught_on_fire burst_into_flames ignited "
        "sparking flash_fire flash_of_fire went_boom smoke_and_fire big_boom big_bang loud_bang loud_boom huge_boom "
        "arcing smoldering smouldering incendio exploto quemando llamas fuego chispas prendio hay_fuego "
        "electrical_fire whoosh_of boom firebomb blaze ablaze blazing inferno burst_in_to_flames went_up_in_flames "
        "went_up_in up_in_flames lit_up_like exploded_in detonated detonate kaboom explod* engulfed caught_alight "
        "alight set_fire set_on_fire set_alight fire_started burning_up flash_of_flame ball_of_fire ball_of_flame "
        "tongue_of_flame burned_my_eyebrows singed singed_my flared_up flare_up flashed_up poofed flame_up "
        "wall_of_flame"
    ),
    "fire": "fire",
    "fire_verb": (
        "by on next_to is_a a there there_is started start see coming came out shooting in from at near over inside "
        "big small everywhere electrical"
    ),
    "spark": "sparks spark sparked arc arced arcing",
    "burning": (
        "burnt smoldering on_fire sparking smouldering charred ablaze alight flaming caught burn~ smoke~ scorch~"
    ),
    "burns_what": (
        "tank hole lid pump grass gas something somethings it pole cloth truck box panel weeds vent riser wire wires "
        "motor control controls septic leaves brush shed fence bush bushes mower dirt yard lawn hedge mulch breaker "
        "outlet"
    ),
    "smoke": "lit_up welding puffing lights_a lit_one sparking_up smokin blazing smoke~ vape~ fire~_up light~_up",
    "igniter": (
        "cigarette cigarettes cigar cig cigs lighter match matches joint torch candle flare firework smoke vape "
        "cigarillo grill grilling bbq barbecue barbecuing campfire bonfire burn_barrel burn_pile brush_pile "
        "firecracker* fireworks sparkler* blowtorch blow_torch weed_burner heat_gun grinder angle_grinder "
        "cutting_torch welder zippo lantern smokes ciggie ciggy fag blunt doobie stogie pipe_lit firepit fire_pit "
        "incense ash ashes butt butts stub"
    ),
    "light": (
        "struck threw held put with has having chucked waving brought use~ drop~ light~ flick~ strike~ lit~ hold~ "
        "toss~ puff~ throw~ smoking smoked chuck~"
    ),
    "smoke_noun": "smoke",
    "smoke_rises": "coming pouring rising billowing comes from out",
    "hit": (
        "struck broke punctured pierced ruptured damaged snagged cracked dug jammed drove poked stabbed bent ripped "
        "tore touched broken busted pulled scraped strikes got_into through whacked bashed gouged tapped dug_into "
        "dinged punched poked_through knicked speared split caught crushed hacked sheared yanked snapped popped "
        "mangled messed_up sliced_into cut_into went_right_through ran_over shoveled hooked put_the_shovel drilled "
        "augered cut~ nick~ clip~ chop~ hit~ dig~ slice~ tear~ sever~ came_down fell_down line_is_down wire_is_down "
        "cable_is_down lines_are_down wires_are_down downed blew_down puncture~ pierce~ rupture~ damage~ snag~ jam~ "
        "stab~ bend~ rip~ touch~ bust~ scrape~ whack~ bash~ gouge~ punch~ shear~ yank~ mangle~ hook~ drill~ auger~ "
        "spear~ went_into went_in went_clean goes_into gone_into"
    ),
    "service": (
        "gas_line gas_pipe gasline gas_main gas power_line power_cable powerline power electric electrical electricity "
        "propane cable wire wires utility phone_line fiber conduit water_line water_main water_pipe electric_line "
        "live_wire service_line wiring yellow_pipe yellow_line yellow_plastic yellow_hose yellow_wire red_wire "
        "red_cable orange_cable black_cable black_wire electricals utility_line utility_lines buried_line buried_cable "
        "electric_feed power_feed mains main_line gas_service gas_hose lp_line lp_pipe waterline gaslines gas_lines "
        "power_lines cables cable_line electrical_line underground_line underground_cable underground_wire voltage "
        "leccy lecky juice"
    ),
    "gas_leak": (
        "smelling_natural_gas smelling_propane gas_leak gas_leaking gas_is_leaking gas_hissing gas_is_hissing "
        "hissing_gas gas_escaping smell_natural_gas smells_natural_gas smell_propane smells_propane smell_like_propane "
        "smells_like_natural_gas smells_like_propane i_smell_gas smell_gas fuga_de_gas gas_coming_out "
        "gas_is_coming_out gas_line_broke leaking_gas propane_leak smelling_gas line_is_leaking pipe_is_leaking "
        "smells_like_gas_leak gas_blowing gas_coming gas_pouring gas_escaped smell_of_propane smell_of_natural_gas "
        "odor_of_gas propane_smell natural_gas_smell propane_is_leaking leaking_propane gas_is_escaping "
        "gas_meter_is_hissing broke_gas_line hiss_of_gas lp_smell smells_of_gas stinks_of_gas whiff_of_gas "
        "smells_of_propane reeks_of_gas reeks_of_propane stinks_of_propane smell_of_gas strong_gas_smell gas_smell_by"
    ),
    "shock": (
        "gave_me_a_belt gave_me_belt gave_him_belt gave_me_a_kick gave_me_kick a_belt_off belt_from electrocute* "
        "got_shock got_shocked got_a_shock got_zapped got_a_jolt got_jolt felt_a_shock felt_shock felt_a_jolt "
        "felt_jolt electric_shock getting_shocked gave_me_a_shock gave_me_shock gave_him_a_shock gives_me_a_shock "
        "zapped shocked electrocuto got_a_bad_shock got_bad_shock got_a_nasty_shock gave_me_a_jolt got_a_zap bare_wire "
        "bare_wires live_wire live_wires exposed_wire exposed_wires me_dio_toques gave_a_shock a_shock_from jolt_off "
        "jolt_from shock_off feel_a_tingle feel_a_shock feel_current downed_power_line electrified electrocution "
        "got_a_belt got_a_buzz got_a_tingle got_tingle felt_a_zap felt_zap felt_tingle felt_a_tingle tingle_from "
        "jolted buzzed_me bit_me_when electric_jolt shocks_you gives_shock gave_shock gave_jolt gave_me_jolt "
        "gave_him_shock gave_her_shock got_a_shock_off live_cable frayed_wire frayed_wires sparking_wire "
        "wires_are_exposed wires_exposed exposed_wiring bare_cable electric_current_in hot_wire zap~_me shock~_me "
        "electrocute~ got_zap got_right_zap"
    ),
    "explode_base": "explode explodes explosive explosion flammable",
    "fire_risk": "fire flame flames sparks candle vape lighter",
    "here": "here next_to right_here over_here",
    "hit_base": "hit cut strike dig break damage",
    "lid_blew": (
        "tank_went_up tank_blew_up lid_blew cover_blew lid_flew lid_popped_off lid_blown lid_was_blown cover_flew "
        "tank_blew"
    ),
    "sparked_gas": (
        "hissing sparked sparking smell_gas gas_smell shocked_me hissed hisses smelled_gas smells_like_gas "
        "started_hissing lights_went power_went spark sparks breaker zapped shocked arc arced stinks_of_gas gas"
    ),
    "burning_now": "burning sparking",
    "flames": "flames fire flame on_fire sparking smoking sparks arcing caught_fire blew_up exploded",
    "lit_gas": "ignited lit_gas gas_lit gas_caught gas_ignited lit_fumes",
    "flash": "flash flashes flame",
    "bang": "boom bang whoosh pop bangs kaboom pow thud wallop",
    "fire_alarm": "fire_fire fuego theres_fire there_is_fire there_is_a_fire",
    "hiss": "hissing hiss hisses hissed",
    "dug_at": (
        "dug dig digging digger shovel pipe meter line ground probe hit spade hole trench where backhoe rod yard gas "
        "dirt"
    ),
    "tripped": (
        "breaker_tripped breaker_popped breaker_went tripped_the_breaker tripped_breaker popped_the_breaker "
        "lights_went_out power_went_out power_is_out power_went lights_flickered power_cut_out lights_flicker "
        "lost_power electricity_went blew_the_fuse blew_a_fuse power_died lights_died power_out"
    ),
    "dug_with": "probe shovel digger dug digging spade hit pole auger rod post_hole backhoe dig struck trench cut",
    "gas_meter": "gas_meter meter gas_tank propane_tank regulator gas_line gas_pipe",
    "egg_smell": "rotten_egg rotten_eggs egg_smell eggs sulfur gas_smell smell smells hissing stink",
    "gas_inside": (
        "smells_like_gas smell_like_gas smelled_like_gas smells_of_gas smell_of_gas gas_smell smell_gas "
        "smelling_like_gas sewer_gas_smell sewer_gas strong_gas"
    ),
    "indoor_word": "house basement kitchen bathroom inside indoors bedroom home",
    "smell_burn": (
        "smell_burning smelling_burning smells_burnt smell_smoke smells_like_burning something_burning "
        "something_is_burning burning_smell smell_of_burning see_smoke seeing_smoke smells_like_smoke smoke_coming "
        "smells_like_electrical burning_plastic burnt_smell melting_plastic"
    ),
    "bite": (
        "bitten zinged zing stung tickled jolted bit_me bit_him bit_her bites_me kicked_me kicked_him got_me belted"
    ),
    "burnt_hair": (
        "hair hairs eyebrow eyebrows lashes eyelashes beard moustache fringe whiskers arm face hand hands sleeve"
    ),
    "burnt": "burnt burned singed scorched frizzled singe~ scorch~",
    "went_up_with": "went_up_with goes_up_with whump whumph whoomph whoomp foomp woof_of_flame ",
    "wind_of": "of_wind of_air of_water wind of_leaves",
    "set_off": "set_off set_it_off sets_off sets_it_off",
    "cord": "plug cord lead extension flex cable wire wires leads cords socket",
    "in_water": (
        "in_water in_the_water in_puddle in_a_puddle under_water underwater in_wet in_tank in_the_tank in_sewage "
        "in_flood"
    ),
    "is_live": "is_live are_live gone_live went_live still_live",
    "metal_part": "casing case housing handle pump box panel railing cover lid water puddle plug cable wire socket",
}
