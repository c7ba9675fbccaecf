"""Words for sewage where it must not be, and for the alarm.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

SEWAGE: dict[str, str] = {
    "filth_weak": (
        "sludge waste gunk filth muck black_gunk septic sewer slop sludge_water slime goop goo ooze crud nastiness "
        "nasty"
    ),
    "drain_field": (
        "drain_field drain_fields drainfield leach_field field leachfield leachbed leach_bed drain_bed "
        "absorption_field soakaway drainage_field leaching_field mound drain_lines drain_line septic_field sand_mound "
        "lateral laterals"
    ),
    "indoors": (
        "house basement bathroom bathrooms kitchen laundry_room laundry floor floors hallway crawl_space crawlspace "
        "downstairs indoors bedroom cellar casa carpet utility_room living_room hall pantry mudroom rooms living "
        "dining closet hardwood carpets rug rugs tile tiles lower_level downstairs_bath half_bath guest_bath "
        "master_bath ensuite den mobile_home trailer_home cabin shower_floor bath_floor garage"
    ),
    "up": (
        "coming_through coming_from coming_in coming_into came_up came_back came_back_up came_out backup rose "
        "overflow* over_flow over_flowing over_flowed over_flows overflowing shooting running flowing all_over "
        "everywhere saliendo sale full desborda* rebosando vomiting squirting back_flow backflow backin_up up_through "
        "up_thru coming into_the covering flowing_over coming_all came_flooding creeping burbling_up belching welling "
        "shoots_up shot_up fountaining splashing backs_out trickling dripping percolating inches_of is_on on_the_floor "
        "on_floor boiling_up blowing_back rushing reappearing up_out_of up_in up_into up_from bubbling_out flood~ "
        "back~_up ooze~ gush~ seep~ leak~ spew~ fill~ bubble~ come~_up come~_out rise~ spill~ pour~ surge~ erupt~ "
        "spurt~ geyser~ return~ well~_up push~_up burp~_up spit~_up come~_back gurgl~_up bubble~_up push~_back "
        "back~_into regurgitate~ come~_back_up flow~ cover~ creep~ belch~ fountain~ percolate~ rush~ squirt~ shoots "
        "shot runs"
    ),
    "overflow": (
        "overflow* over_flow over_flowing over_flows over_flowed coming_back_up came_up vomiting desborda* rebosando "
        "running_over ran_over up_all_over all_over_the_floor on_the_floor onto_the_floor flood_over tapado_y_sale "
        "overflown overfilled overflowin brimming over_the_top over_the_rim to_the_rim running_onto gushing_over "
        "geysering boiling_over burping_up burbling_up welling_up spilled_out about_to_overflow came_over back_flow "
        "shot_up flooded_the ran_all_over back~_up bubble~_over spew~ flood~ overflow~ bubble~_up backflow~ rise~ "
        "spill~ erupt~ backup~ come~_up spit~_up shoot~_up gurgl~_up come~_over flow~_over spill~_over regurgitate~ "
        "gushing back~_right_up brim~ gush~ overfill~"
    ),
    "fills": "full has covered soaked fill~ flood~",
    "backup": (
        "sewage_backup septic_backup sewer_backup toilet_backup drain_backup basement_backup sewage_back_up "
        "septic_back_up sewer_back_up sewage_backing_up septic_backing_up sewer_backing_up septic_is_backed_up "
        "sewer_is_backed_up septic_backed_up backing_up_into backed_up_into backs_up_into backup_in_the backup_into "
        "backup_in_my sewer_backed_up sewage_backed_up backed_up_toilet backed_up_toilets backed_up_drain "
        "backed_up_drains backed_up_sink backed_up_sinks backed_up_shower backed_up_sewage backed_up_septic "
        "backed_up_tub septic_backs_up sewer_backs_up sewage_backs_up septic_backed sewer_backed backed_up_bathtub "
        "backed_up_basement backed_up_commode backed_up_bathroom backed_up_pipe backed_up_plumbing backed_up_system "
        "back_up_in_the backing_up_in backed_up_in backs_up_in backed_up_through backing_up_through backing_up_out"
    ),
    "system": (
        "it everything house whole_house drains system plumbing stuff toilets pipes sewer all_drains all_the_drains "
        "every_drain toilet drain tub shower sinks loo commode both_toilets both_bathrooms all_toilets bathrooms "
        "bathroom"
    ),
    "backs": "backing_up backed_up backs_up overflowing overflowed",
    "outside": (
        "yard lawn grass ground outside garden driveway ditch creek surface field backyard patio street pasture woods "
        "flower_bed hill slope road jardin drain_field leach_field drainfield well lake pond stream neighbor* suelo "
        "outdoors leachfield tierra back_yard front_yard flowerbed drive sidewalk path walkway gutter roadside ravine "
        "culvert swale hillside sandbox playground swing_set vegetable_garden meadow lawns front_lawn paddock property"
    ),
    "pool": (
        "lake stream river pile swamp trickle spring fountain charco mess wet_spot lagoon stream_of river_of flood "
        "wet_patch soggy_spot soggy_area soggy_patch wet_area bog marsh soup swampy_spot swampy_area muddy_spot "
        "squishy_spot squishy_area geyser bubbling_spring mudhole wet_place pool~ pond~ puddle~"
    ),
    "surface": (
        "standing bubbling_out overflowing oozing_out running_out pouring_out gushing coming_out on_the_ground "
        "coming_to_the_surface escaping everywhere_outside swamp leaching_out weeping_out weeping bubbling_from "
        "bubbling_through gurgling_up trickling running_across running_down running_along running_over flowing_across "
        "flowing_down flowing_out flowing_over spreading coming_through coming_thru geysering squirting spurting "
        "welling_up pools_up breaking_out breakout daylighting collecting leaking_from leaking coming_from puddle~ "
        "pool~ seep~ surface~ leak~_out ooze~ pond~ bubble~_up spill~_out seep~_out overflow~ gush~ weep~ trickle~ "
        "spread~ squirt~ escape~ collect~ stream~"
    ),
    "tank_over": (
        "over_flowing over_flowed over_flow flowing_over bubbling_over spewing gushing coming_up coming_out "
        "pouring_out ran_over overfull over_full overfilled brimming_over bubbling_out gushing_out welling_up burping "
        "belching squirting geysering puking vomiting flowing_out running_out leaking_out brimming up_to_the_brim "
        "pouring_over flooded_out overflown leaking_from overflow~ ooze~ leak~ seep~ spill~ flood~ run~_over "
        "spill~_out spill~_over"
    ),
    "smell": (
        "smell smells smelled smelling stink stinks stinking reek reeks odor odour stench whiff scent reeking reeked "
        "stank stunk pongs pong"
    ),
    "backs_base": "overflow* back_ups surface back~_up flood~ come~_up backup~",
    "backup_word": "backup backups back_ups sewage",
    "lid_word": "lid lids cover manhole riser cleanout clean_out top",
    "outside_ground": (
        "ground yard lawn grass field hill drain_field leach_field leach_bed lateral hillside slope soil dirt mound "
        "pasture driveway"
    ),
    "septic_tank": (
        "septic_tank tank septic manhole cleanout clean_out system cesspit cess_pit cesspool riser septic_system "
        "drywell d_box distribution_box pump_tank pump_chamber"
    ),
    "up_first": "overflowing over_flowing clogged_and_overflowing overflown gurgling_over brimming flood~ back~_up",
    "up_hard": (
        "coming_back_up came_up overflowing coming_back up_through up_thru came_back_up bubbling_out gurgling_up "
        "burping_up boiling_up welling_up spewing_out gushing_up gushing_out coming_out coming_up_out came_out_of "
        "up_from up_into backing_into regurgitating surging_up rising_up pouring_out_of back~_up spew~ come~_up "
        "push~_up bubble~_up shoot~_up come~_out_of"
    ),
    "around_lid": (
        "round_lid round_riser round_tank round_cover around_lid over_lid on_lid on_top_of_lid around_cover "
        "around_riser around_tank around_the_tank over_cover by_lid near_lid next_to_lid by_tank near_tank "
        "next_to_tank beside_tank on_tank over_tank above_tank at_tank by_riser near_riser on_riser from_lid "
        "out_of_lid from_under_lid from_riser from_tank from_cover around_manhole"
    ),
    "alarm": (
        "alarm alarms buzzer horn siren septic_alarm pump_alarm high_water_alarm alarma warning_light warning_lamp "
        "alarm_light alarm_box"
    ),
    "sounding": (
        "going went_off rang screaming wailing on lit red is_on came_on tripped triggered loud will_not_stop "
        "keeps_going not_stop not_shut_up not_shut not_quit suena sonando beep~ buzz~ sound~ blare~ ring~ chirp~ "
        "flash~ blink~ go~_off"
    ),
    "light_on": (
        "red_light_on red_light_is_on red_lamp_on red_light_flashing red_light_blinking red_light_lit light_is_red "
        "red_light_came_on red_light_on_pump red_light_on_panel red_light_on_alarm red_light_on_control "
        "light_on_panel_is_red red_light_is_flashing red_light_is_blinking red_light_has"
    ),
    "alarm_other": (
        "oven cooker microwave timer kitchen_timer smoke fire car clock burglar company set smoke_alarm "
        "phone_alarm alarm_clock silenced quiet off_now test "
        "tested ticket house_alarm security door"
    ),
    "alarm_quiet": "off quiet silent fine working",
    "panel": "panel pump box control controls alarm septic unit light thing",
    "beep": (
        "beeping buzzing blaring beeps buzzes buzzer chirping shriek~ wailing squeal~ ding~ dinging chirp~ alarming"
    ),
    "soggy": (
        "soggy swampy squishy mushy wet boggy marshy soaked sodden saturated spongy waterlogged mucky sloppy soupy"
    ),
    "stinks": (
        "smell smells smelled smelling stink stinks stinking reek reeks reeking odor odour stench whiff scent smelly "
        "stinky rank foul ripe nasty funky smellin stank stunk pong"
    ),
    "sewage_word": (
        "sewage raw_sewage sewer_water sewerwater septic_water effluent septage wastewater raw_waste human_waste feces "
        "faeces excrement sewage_water"
    ),
    "place_prep": (
        "by near on under behind beside along around across against over all_over everywhere below between outside "
        "past at running flowing dripping spilling spraying squirting puddling"
    ),
    "overflow_n": "overflow runoff run_off seepage leakage discharge outflow",
    "high_alarm": "high_water_alarm high_level_alarm water_alarm septic_alarm tank_alarm pump_alarm",
    "sewer_smell": "rotten_egg rotten_eggs sewer_gas sewer_smell smell_of_eggs egg_smell septic_gas smell_eggs",
    "foul": (
        "grey gray black brown dirty nasty smelly stinky stinking foul gross rank murky funky reeking filthy greenish "
        "green putrid disgusting yucky septic sewer toilet milky slimy rotten"
    ),
    "liquid": "water liquid stuff goo ooze gunk fluid sludge slime crud soup juice mess muck waste waters slop",
    "flows": (
        "pour~ bubble~ ooze~ seep~ leak~ gush~ spill~ dribble~ squirt~ weep~ well~ drip~ spew~ trickle~ run~ flow~ "
        "coming comes came come"
    ),
    "from_under": (
        "from_under out_from_under out_around out_from_around from_around from_beneath out_of out_under out_by "
        "out_round under around from_below out_from from_underneath out_beside out_between up_around up_round "
        "up_through"
    ),
    "runs_into": (
        "head~ move~ creep~ travel~ flow~ drain~ run running runs ran pour~ seep~ leak~ spill~ ooze~ trickle~ "
        "go going goes wash~ empty~ empties "
        "get~"
    ),
    "watercourse": (
        "creek stream river pond lake ditch beck burn brook canal dam swamp neighbor* neighbour* next_door "
        "drain_ditch storm_drain gully road street lane well beach paddock fields"
    ),
    "clean_source": "rain gutter rainwater sprinkler hose creek downspout roof ",
    "muck_word": (
        "muck gunk slop slurry poo poop sewage filth effluent goo waste brown_stuff black_stuff brown_water "
        "black_water stinky_water overflow septic"
    ),
    "that_stinks": "stinks reeks stink reek smells smelly stinking smelling stank",
    "drinking_water": (
        "well_water tap_water well drinking_water faucet tap_water borehole water_from_tap water_from_well"
    ),
    "place_into": "into in_to in to onto toward towards down",
}
