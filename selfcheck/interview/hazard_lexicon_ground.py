"""Words for ground that gives way.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

GROUND: dict[str, str] = {
    "limb_wheel": (
        "foot feet leg legs boot boots mower tractor truck car wheel wheels tire heel shoe tires tyre tyres legs_of "
        "atv quad trailer backhoe lawnmower lawn_mower rider wheelbarrow bike stroller golf_cart hoof"
    ),
    "sink": (
        "washed_away washed_out washing falling_into sank sunken gave_way gave_out gave giving_out subsidence hundido "
        "hundida hundio hundiendo fell_away falling_away depressed fell_in falling_in fallen_in settled_a gives "
        "moved_and slipping slumped_in gave_in giving_in gave_under caving_in cracking_open dropped_down fell_down "
        "going_down gone_down vanished collapsing_in fallen_away dished parted spongy bouncy squishy mushy quaking "
        "gave_a cave~ collapse~ sag~ dip~ sink~ drop~ hollow~ swallow~ bow~ open~ erode~ slump~ settle~ shift~ "
        "subside~ crumble~ give~_way open~_up wash~_out slide~_into wash~_away disappear~ sunk sunked saggy droopy "
        "slip~_away vanish~ quake~ fall~_in fall~_away go~_down slid~ slide~_in"
    ),
    "sinkhole": (
        "sinkhole* sink_hole sink_holes cave_in cavein hundimiento socavon se_hundio se_hunde se_esta_hundiendo "
        "esta_hundiendo cave_ins caving_ground sink_whole sinkhold sinkholes swallow_hole earth_opened ground_opened"
    ),
    "sunk_first": "sunken sunk hollow hollowed_out caved_in sinking_in sagging_spot squishy_hole cave~ sink~ collapse~",
    "appears": (
        "opened opening opens appeared appearing formed forming showed developed developing up all_of_a_sudden "
        "suddenly new opened_up was_not_there that_was_not opens_up showing popped_up popped emerged came_up "
        "getting_bigger growing bigger_every overnight out_of_nowhere from_nowhere there_now this_morning today "
        "yesterday"
    ),
    "dip": (
        "depression dip sag low_spot sinking_spot sunken_spot sunken sinking hollow crater hollow_spot low_area "
        "low_place sunken_area sunken_patch sunken_place sunk_spot sinking_area dent bowl trough swale void soft_spot "
        "soft_place hump_gone"
    ),
    "over_tank": (
        "over above around on_top_of near by next_to where beside next_to_the along on at right_over right_above "
        "right_by right_where"
    ),
    "hundir": "hundio hunde hundiendo hundida hundido",
    "left_a": "left_a left",
    "open_hole": (
        "open_hole uncovered_hole open_manhole open_septic uncovered_tank open_pit open_hole_in open_septic_tank "
        "open_tank wide_open_hole exposed_hole"
    ),
    "opened_up": "opened open~_up",
    "pit_hole": (
        "hole pit crater gap void depression dip cavity sinkhole agujero crevice chasm crack_in_ground "
        "fissure_in_ground opening opened_hole holes pits"
    ),
    "sank": (
        "sank sunk went_in went_through went_down dropped_into dropped_in dropped_through dropped_down fell_into "
        "fell_in goes_in punched_into broke_into slipped_into got_swallowed sunk_into sinking_into plunged sink~"
    ),
    "spot": "spot area ground soil yard patch lawn place",
    "went_in": (
        "went_in went_through went_into fell_in sank_in sank_into in_to_ground went_down dropped_into dropped_in "
        "dropped_through fell_into slipped_into broke_into punched_into plunged_into sunk_into sunk_in go~_through"
    ),
    "went_through": (
        "went_through went_thru gone_through broke_through fell_through punched_through pushed_through plunged_through "
        "dropped_through busted_through crashed_through slipped_through poked_through goes_right_through "
        "went_straight_through punched_thru broke_thru fell_thru gone_thru go~_through"
    ),
    "where_word": "where",
    "place_was": "tank septic yard lawn garden grass",
    "hollow_sound": (
        "sounds_empty sounds_hollow sound_hollow sounded_hollow hollow_sound hollow_sounding sounding_hollow "
        "hollow_when sounds_empty_under hollow_under hollow_underneath"
    ),
    "ground_weak": (
        "bog sponge waterbed marshmallow cake pillow mattress hollow soft squishy spongy springy bouncy mushy squelchy "
        "jelly pudding jello quicksand trampoline giving loose unstable wobbly shaky weak give gives bounce bounces "
        "bouncing cracking cracked cracks crack moving moves shaking trembling"
    ),
    "underfoot": (
        "underfoot under_foot under_feet under_me under_us when_i_step when_i_walk when_i_stand when_i_tread "
        "when_you_step when_you_walk when_we_walk when_step if_i_step if_step on_top_of_it on_top_of_tank over_it "
        "above_it where_i_stand where_i_step"
    ),
    "crater": "crater craters chasm cavity void abyss",
    "pit_appears": "that_was_not was_not_there was_not_before not_there_before not_there_yesterday never_there",
    "pit_came": "appeared formed developed opened_up has_opened popped_up is_new",
    "walk_on": "walking_on walk_on stepping_on step_on treading_on walking_over",
    "from_under": "from_under out_from_under from_beneath away_under away_from_under",
}
