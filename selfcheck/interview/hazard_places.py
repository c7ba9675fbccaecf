"""What tells of danger from things: lids and ground that give way, sewage where it must not be, fire, and what was hit
while digging.
"""

from __future__ import annotations

from selfcheck.interview.hazard_sentences import Rule

FIRE = (
    Rule(
        "fire",
        "fire_sure !>2:fire_other !<1:no_fire",
        who="living none it lid ground filth water fixture unknown",
        bare=True,
    ),
    Rule("fire", "fire_sure >4:near_hole/here", bare=True),
    Rule("fire", "flames/spark <4:burns_what !>2:fire_other", bare=True),
    Rule("fire", "spark !>2:fire_other", bare=True),
    Rule("fire", "fire/fire_alarm <1:start >1:end"),
    Rule("fire", "fire ~2:fire_verb !>1:fire_other !<2:fire_kind", bare=True),
    Rule("fire", "burning <3:burns_what !>2:burning_other"),
    Rule("fire", "burning_now <2:start >1:end"),
    Rule(
        "fire",
        "smoke !>4:else_smoke !>2:smoke_other !<1:no_fire <6:child/adult/self",
        who="living none name",
        sure=False,
    ),
    Rule("fire", "smoke >6:near_hole/gap/here !>4:else_smoke !<1:no_fire", who="living none name"),
    Rule("fire", "light >3:igniter !>3:else_smoke !>5:igniter_off", who="living none name"),
    Rule("fire", "igniter >6:near_hole", who="living none name"),
    Rule("fire", "smoke_noun >2:smoke_rises"),
    Rule("fire", "lid_blew"),
    Rule("fire", "smell_burn !=0:smoke_other", sure=False),
    Rule(
        "fire",
        "burning/smoke/igniter/flames !>1:fire_other/burning_other >5:near_strong >6:us_pron/near_hole",
        who="living none name thing unknown ground",
    ),
    Rule("fire", "lit_gas"),
    Rule("fire", "flash ~3:bang", bare=True),
    Rule("fire", "smoke_noun/smoke/igniter/fire_sure/fire >4:near_hole", asked=True),
    Rule("fire", "smoke/smoke_noun/igniter/explode_base/fire_risk", asked=True),
)
STRUCK = (
    Rule("struck", "hit >4:service !>5:service_other", who="living none thing ground unknown"),
    Rule("struck", "service >3:hit !>4:service_other", who="living none name"),
    Rule("struck", "hit <3:service !>1:service_other"),
    Rule("struck", "gas_leak !<2:gas_mild"),
    Rule("struck", "shock !>1:shock_other"),
    Rule("struck", "hit >5:sparked_gas", who="living none name"),
    Rule("struck", "hiss ~8:dug_at"),
    Rule("struck", "tripped ~8:dug_with"),
    Rule("struck", "egg_smell ~5:gas_meter", sure=False, bare=True),
    Rule("struck", "gas_inside ~4:indoor_word !<2:gas_mild", sure=False),
    Rule("struck", "hit_base >4:service !>5:service_other", asked=True),
)
LID = (
    Rule("lid_broken", "broken <8:lid !>2:stays", who="lid it"),
    Rule("lid_broken", "broken <4:lid !<3:thing !>2:stays !<2:moved_by", who="ground none living"),
    Rule("lid_broken", "cayo ~4:lid"),
    Rule("lid_broken", "roto ~3:lid"),
    Rule("lid_broken", "broken_first >3:lid !>4:lid_part", who="living none it lid", bare=True),
    Rule("lid_broken", "crack >2:crack_in >5:lid !>6:lid_part !>4:sludge_word", bare=True),
    Rule("lid_broken", "broken_act >3:lid !>4:lid_part !>5:stays", who="living none it", bare=True),
    Rule("lid_broken", "no_lid !>1:no_lid_other"),
    Rule("lid_broken", "where_lid"),
    Rule("lid_broken", "board >3:near_hole <6:open_or_over", sure=False),
    Rule(
        "lid_broken",
        "it_breaks !>2:rock_other !>3:soil_words !>4:wall_words !<3:thing",
        who="it none lid",
        sure=False,
        bare=True,
    ),
    Rule("lid_broken", "rocks_verb/wobbles_verb <1:start >1:when_only", sure=False),
    Rule("lid_broken", "rocks_verb <1:it_pron >2:when_words"),
    Rule("lid_broken", "gone_it =0:lid", who="it", sure=False),
    Rule("lid_broken", "soft <5:lid_hard", who="lid"),
    Rule("lid_broken", "broken_only <1:start >1:end", sure=False),
    Rule("lid_broken", "crack >4:across_it", who="none living it", sure=False, bare=True),
    Rule("lid_broken", "broke_it !>1:free_words", sure=False),
    Rule("lid_broken", "bad_fit <5:lid", who="lid it none"),
    Rule("lid_broken", "rebar ~3:shows <9:lid_hard"),
    Rule("lid_broken", "rebar ~3:shows >6:lid_hard"),
    Rule("lid_broken", "broken_off <8:lid !>2:lid_part !<2:lid_part"),
    Rule("lid_broken", "crack <3:through <8:see_word", sure=False),
    Rule("lid_broken", "light_lid =0:lid_hard", sure=False),
    Rule("lid_broken", "bad_fit >6:lid", sure=False),
    Rule("lid_broken", "limb_wheel >3:through >3:lid/ground"),
    Rule("lid_broken", "limb_wheel >2:went_through !>2:else_seen !<2:shovel_word", sure=False),
    Rule("lid_broken", "took !>1:off >3:lid !>4:off_words/lid_part !>5:stays", who="living", sure=False),
    Rule("lid_broken", "breaks_base ~4:lid", asked=True),
)
LEFT_OPEN = (
    Rule("lid_left_open", "left >4:lid/tank/it >3:open !>5:to_air", who="living none name"),
    Rule("lid_left_open", "left >3:open >4:lid/tank/it", who="living none name"),
    Rule("lid_left_open", "forgot >2:lid"),
    Rule("lid_left_open", "not_watched >3:hole/tank/lid/gap", sure=False),
    Rule("lid_left_open", "not_shut >4:lid/it >4:shut_again"),
    Rule("lid_left_open", "not_shut <4:lid >3:shut_again"),
    Rule("lid_left_open", "too_heavy <4:lid"),
    Rule("lid_left_open", "left_so <4:lid/tank"),
    Rule("lid_left_open", "not_closed >4:lid/tank/it"),
    Rule("lid_left_open", "left >1:open >6:leave_time", who="living none it"),
    Rule("lid_left_open", "is_open ~8:alone !>2:open_other", who="lid none it living ground"),
    Rule("lid_left_open", "alone ~8:is_open", sure=False),
    Rule("lid_left_open", "open_hole >3:alone_with", bare=True, sure=False),
)
GROUND = (
    Rule("ground_sunk", "sink <7:ground !>1:level_change !<3:some_dirt", who="ground it"),
    Rule("ground_sunk", "sinkhole", bare=True),
    Rule("ground_sunk", "sunk_first >2:ground/spot", bare=True),
    Rule("ground_sunk", "pit_hole >3:appears >8:ground/near_hole !<2:pump_word", bare=True),
    Rule("ground_sunk", "pit_hole >2:opened_up", bare=True),
    Rule("ground_sunk", "pit_hole >3:ground >7:near_hole !<2:pump_word !<3:dug", bare=True),
    Rule("ground_sunk", "pit_hole <2:left_a <6:ground"),
    Rule("ground_sunk", "dip >4:over_tank >3:tank/near_hole", bare=True),
    Rule("ground_sunk", "limb_wheel >2:sank !>2:else_seen"),
    Rule("ground_sunk", "limb_wheel >3:went_in >3:ground"),
    Rule("ground_sunk", "opened_up <2:ground"),
    Rule("ground_sunk", "hundir ~4:ground"),
)
IN_HOUSE = (
    Rule(
        "sewage_in_house",
        "filth ~6:fixture/indoors !~7:drain_field !~2:outside_only !>2:smell !<3:smells_like !<1:smell "
        "!>1:filth_other !=0:rusty",
        bare=True,
    ),
    Rule("sewage_in_house", "filth_weak >2:up >5:fixture/indoors !~3:smell"),
    Rule("sewage_in_house", "up <4:water/filth_weak >4:fixture/indoors !>3:from_house !<3:smell !<4:pump_word"),
    Rule("sewage_in_house", "overflow <6:fixture !>3:backs_other !<3:rain_words !<3:drain_field", bare=True),
    Rule("sewage_in_house", "up_first >2:fixture !>3:backs_other", bare=True),
    Rule("sewage_in_house", "fills <4:fixture/indoors >4:filth/filth_weak"),
    Rule("sewage_in_house", "up <5:fixture >5:filth/filth_weak"),
    Rule("sewage_in_house", "backup !>1:backs_other", bare=True),
    Rule("sewage_in_house", "backs <3:system !>5:outside/lid !>3:backs_other !<3:my_car", sure=False),
    Rule("sewage_in_house", "up <3:filth !>4:outside/lid/pole_words/in_the_tank !~3:smell !<3:dog", sure=False),
    Rule("sewage_in_house", "up_hard >3:fixture/indoors !<4:pump_word !>4:not_house"),
    Rule("sewage_in_house", "backs_base ~6:filth/fixture/system/backup_word", asked=True),
)
OUTSIDE = (
    Rule("sewage_outside", "pool ~3:filth !~3:smell !<3:dog", bare=True),
    Rule(
        "sewage_outside", "filth ~6:outside/drain_field !~2:smell !<1:elsewhere_poop !~4:dog !>1:filth_other", bare=True
    ),
    Rule("sewage_outside", "up_first >2:septic_tank", bare=True),
    Rule("sewage_outside", "pool <3:stinks >4:near_hole/drain_field", sure=False),
    Rule("sewage_outside", "soggy ~5:stinks ~7:outside/near_hole !=0:soggy_other", sure=False, bare=True),
    Rule(
        "sewage_outside",
        "sewage_word >3:place_prep !>7:tank/septic_tank !~3:smell !>1:filth_other",
        bare=True,
        sure=False,
    ),
    Rule("sewage_outside", "filth >3:around_lid !~2:smell !<1:elsewhere_poop !~4:dog"),
    Rule("sewage_outside", "filth >4:surface !~2:smell !<1:elsewhere_poop !>5:in_the_tank"),
    Rule("sewage_outside", "filth_weak >3:surface >5:outside/lid"),
    Rule(
        "sewage_outside",
        "tank_over <4:septic_tank/lid !<5:fixture !>3:backs_other",
        who="none name lid thing it unknown",
    ),
    Rule("sewage_outside", "up >4:lid_word !<2:crack !<4:rain_words !>5:smell", who="water filth it none"),
    Rule("sewage_outside", "water >3:up >4:outside_ground !<2:rain_words !>4:hose", sure=False),
    Rule("sewage_outside", "tank_over >3:septic_tank", asked=True),
)
ALARM = (
    Rule("alarm_sounding", "sounding <4:alarm !=0:alarm_other !>2:alarm_quiet", bare=True),
    Rule("alarm_sounding", "light_on !=0:alarm_other", bare=True),
    Rule("alarm_sounding", "beep ~5:panel !=0:alarm_other"),
)
